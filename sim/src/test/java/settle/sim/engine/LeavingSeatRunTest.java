package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.valve.MotorHead;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;
import settle.sim.weather.Weather;

/**
 * A head that a warm start or the sun has shut leaves its seat hours later, when steps have grown
 * long, and hot water comes at once: the run is where a run in steps of 5 s is.
 */
class LeavingSeatRunTest {

  private static final double HOUR = 3600;
  private static final double LENGTH = 16 * HOUR;
  private static final double FINE = 5;

  /** Budget outside ten minutes after a head has left its seat, and inside [K]. */
  private static final double OUTSIDE = 0.02;

  private static final double INSIDE = 0.05;

  /** From when on every head has shut [s]. */
  private static final double BOTH_SHUT = 2 * HOUR;

  /** Opening above which a head is off its seat [-]. */
  private static final double OFF = 1e-6;

  private static Valve wax(double play) {
    return new WaxValve(
        "head",
        20,
        2,
        play,
        new WaxValve.Lags(1200, 0, 0),
        0.7 / 30,
        0,
        0.5,
        0.25,
        0.5,
        RoomSensing.OPERATIVE);
  }

  static Stream<Arguments> cases() {
    List<Valve> valves =
        List.of(
            wax(0),
            wax(0.4),
            wax(1),
            new MotorHead("motor", 21, 0.5, 3600, 120, 0.5, RoomSensing.AIR));
    return valves.stream().flatMap(v -> Stream.of(false, true).map(sun -> Arguments.of(v, sun)));
  }

  /** Warm at the beginning, or made so by two hours of sun. */
  private static House house(Valve valve, boolean sun) {
    House house =
        SampleHouses.withValves(
            SampleHouses.steady(SampleHouses.twoRooms(1, SampleHouses.ideal()), 6), b -> valve);
    RunSettings run = house.run();
    double[] outdoor = new double[18];
    Arrays.fill(outdoor, 6);
    double[] irradiance = new double[18];
    Arrays.fill(irradiance, 1, 4, 700);
    return house
        .withWeather(
            sun ? new Weather.Series(0, HOUR, outdoor, irradiance) : new Weather.Constant(6))
        .withRun(
            new RunSettings(
                sun ? 22 : 27, 0, LENGTH, run.shortestStep(), run.longestStep(), List.of()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void comesWhereFineStepsComeInTheHourAfter(Valve valve, boolean sun) {
    House house = house(valve, sun);
    for (int arrangement = 0; arrangement < 2; arrangement++) {
      Trace usual = Steps.usual(house, arrangement);
      Trace fine = Steps.of(house, arrangement, FINE, FINE);
      double leaves = leavesSeat(fine, BOTH_SHUT);
      // What follows another opening is a matter of when that was.
      double until = Math.min(leaves + HOUR, leavesSeat(fine, leaves + FINE));
      assertThat(longestStepBefore(usual, leaves)).isGreaterThanOrEqualTo(320);
      int compared = 0;
      for (int k = 1; k < usual.size() && usual.time()[k] <= until; k++) {
        double time = usual.time()[k];
        int i = Steps.at(fine, time);
        if (time < leaves) {
          continue;
        }
        compared++;
        for (int r = 0; r < usual.rooms().size(); r++) {
          assertThat(Math.abs(usual.column(RoomColumn.AIR, r)[k] - air(fine, r, i)))
              .as("air of room %s at %s s, arrangement %s", r, time, arrangement)
              .isLessThan(time - leaves > 600 ? OUTSIDE : INSIDE);
        }
      }
      assertThat(compared).isGreaterThan(5);
      if (valve instanceof WaxValve) {
        assertNoLongStepAcrossTheSeat(usual);
      }
    }
  }

  private static void assertNoLongStepAcrossTheSeat(Trace trace) {
    for (int b = 0; b < trace.branches().size(); b++) {
      double[] opening = trace.column(BranchColumn.OPENING, b);
      for (int k = 2; k < trace.size(); k++) {
        if (trace.time()[k] > BOTH_SHUT && opening[k] > 0 && opening[k - 1] == 0) {
          assertThat(trace.time()[k] - trace.time()[k - 1])
              .as("step in which head %s leaves its seat at %s s [s]", b, trace.time()[k])
              .isLessThanOrEqualTo(RunSettings.DEFAULT_SHORTEST_STEP * (1 + 1e-9));
        }
      }
    }
  }

  private static double air(Trace trace, int room, int row) {
    return trace.column(RoomColumn.AIR, room)[row];
  }

  /** When a head first leaves its seat from an instant on [s]. */
  private static double leavesSeat(Trace trace, double from) {
    for (int i = 1; i < trace.size(); i++) {
      for (int b = 0; b < trace.branches().size(); b++) {
        double[] opening = trace.column(BranchColumn.OPENING, b);
        if (trace.time()[i] > from && opening[i] > OFF && opening[i - 1] <= OFF) {
          return trace.time()[i];
        }
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  private static double longestStepBefore(Trace trace, double time) {
    double longest = 0;
    for (int k = 1; k < trace.size() && trace.time()[k] < time; k++) {
      longest = Math.max(longest, trace.time()[k] - trace.time()[k - 1]);
    }
    return longest;
  }
}
