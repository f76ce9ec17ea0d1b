package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;
import settle.sim.weather.Weather;

/**
 * What switches by a room's temperature or by a valve's lift, and heads that begin to move out of
 * their play, hours after anything else happened: from beginning to end the air is where it is in
 * steps of 2.5 s. Whatever switches late goes on late, cycle by cycle, so small errors of time
 * would not stay small.
 */
class SwitchingRunTest {

  private static final double HOUR = 3600;
  private static final double FINE = 2.5;
  private static final double BUDGET = 0.02;

  private static final House TWO = SampleHouses.twoRooms(1, SampleHouses.ideal());

  static Stream<Arguments> cases() {
    List<Arguments> cases = new ArrayList<>();
    for (boolean sun : new boolean[] {false, true}) {
      for (RoomSensing sensing : new RoomSensing[] {RoomSensing.AIR, RoomSensing.OPERATIVE}) {
        Valve actuator = new OnOffActuator("actuator", 21, 0.5, 180, 0.5, sensing);
        cases.add(Arguments.of("actuators, " + sensing, sun, of(actuator, sun, 12)));
      }
      for (double play : new double[] {0.4, 1}) {
        cases.add(Arguments.of("play of " + play + " K", sun, of(head(play), sun, 24)));
      }
    }
    Valve motor = new MotorHead("motor", 21, 0.5, 3600, 120, 0.5, RoomSensing.AIR);
    House interlocked = under(of(motor, true, 16), new Thermostat.None(), true);
    cases.add(Arguments.of("interlock", true, interlocked));
    for (double lag : new double[] {0, 600}) {
      House under = under(of(head(0.4), true, 12), new Thermostat.OnOff(0.5, lag), false);
      cases.add(Arguments.of("room thermostat, lag " + lag, true, under));
    }
    return cases.stream();
  }

  private static WaxValve head(double play) {
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

  /** Warm at the beginning, or made so by two hours of sun. */
  private static House of(Valve valve, boolean sun, double hours) {
    double[] outdoor = new double[(int) hours + 2];
    Arrays.fill(outdoor, 6);
    double[] irradiance = new double[outdoor.length];
    Arrays.fill(irradiance, 1, 4, 700);
    RunSettings run = TWO.run();
    return SampleHouses.withValves(SampleHouses.steady(TWO, 6), b -> valve)
        .withWeather(
            sun ? new Weather.Series(0, HOUR, outdoor, irradiance) : new Weather.Constant(6))
        .withRun(
            new RunSettings(
                sun ? 22 : 27, 0, hours * HOUR, run.shortestStep(), run.longestStep(), List.of()));
  }

  private static House under(House house, Thermostat thermostat, boolean interlock) {
    return SampleHouses.withControl(
        house,
        new Control(
            Control.Setback.HEADS,
            house.rooms().get(0).name(),
            0.5,
            thermostat,
            Optional.empty(),
            new OptimumStart.None(),
            interlock));
  }

  @ParameterizedTest(name = "{0}, sun {1}")
  @MethodSource("cases")
  void comesWhereFineStepsComeFromBeginningToEnd(String what, boolean sun, House house) {
    for (int arrangement = 0; arrangement < 2; arrangement++) {
      Trace usual = Steps.usual(house, arrangement);
      Trace fine = Steps.of(house, arrangement, FINE, FINE);
      for (int r = 0; r < usual.rooms().size(); r++) {
        double[] air = usual.column(RoomColumn.AIR, r);
        for (int k = 1; k < usual.size(); k++) {
          assertThat(Math.abs(air[k] - airAt(fine, r, usual.time()[k])))
              .as("air of room %s at %s s, arrangement %s", r, usual.time()[k], arrangement)
              .isLessThan(BUDGET);
        }
      }
    }
  }

  /**
   * Straight between the rows of a trace: a step that ends where something switches ends between.
   */
  private static double airAt(Trace trace, int room, double time) {
    double[] air = trace.column(RoomColumn.AIR, room);
    int i = Steps.at(trace, time);
    double share = (time - trace.time()[i - 1]) / (trace.time()[i] - trace.time()[i - 1]);
    return air[i - 1] + share * (air[i] - air[i - 1]);
  }
}
