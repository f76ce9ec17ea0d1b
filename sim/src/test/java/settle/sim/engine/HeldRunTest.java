package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.control.Control;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.Room;
import settle.sim.valve.WaxValve;

class HeldRunTest {

  private static final double DAY = 86_400;
  private static final double OUTDOOR = -1;

  static Stream<Arguments> houses() {
    House boiler = withoutPlay(SampleHouses.twoRooms(1, SampleHouses.boiler()));
    Control thermostat =
        Control.simple(Control.Setback.SOURCE, boiler.rooms().get(0).name(), 0.5)
            .withThermostat(new Thermostat.OnOff(0.5, 600));
    return Stream.of(
        Arguments.of("eight rooms", withoutPlay(SampleHouses.eightRooms(1, SampleHouses.ideal()))),
        Arguments.of("a boiler", boiler),
        Arguments.of("a thermostat", cooler(SampleHouses.withControl(boiler, thermostat))),
        Arguments.of("a heat pump", withoutPlay(SampleHouses.wetSystem(1))));
  }

  /** A head within its play remembers which way it came, so a plain run may end elsewhere. */
  private static House withoutPlay(House house) {
    return SampleHouses.withValves(
        house,
        branch -> {
          WaxValve v = (WaxValve) branch.valve();
          return new WaxValve(
              v.name(),
              v.setPoint(),
              v.proportionalBand(),
              0,
              v.lags(),
              v.waterInfluence(),
              v.bias(),
              v.pressureInfluence(),
              v.kvNominal(),
              v.kvMaximum(),
              v.sensing());
        });
  }

  /** Wants that the thermostat reaches before the heads do. */
  private static House cooler(House house) {
    return house.withRooms(
        house.rooms().stream().map(r -> r.withWant(r.want().raised(-3))).toList());
  }

  /** A plain run of a month, begun at one temperature and never hastened, ends alike. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("houses")
  void itEndsWhereAPlainLongRunDoes(String name, House house) {
    HeldRun.Day day = HeldRun.of(house, house.arrangements().get(0), OUTDOOR);
    Timetable none = Timetable.constant(0);
    List<Room> rooms = house.rooms().stream().map(r -> r.withGains(none, none)).toList();
    House still = SampleHouses.steady(house.withRooms(rooms), OUTDOOR);
    RunSettings as = house.run();
    RunSettings plain =
        new RunSettings(20, 30 * DAY, DAY, as.shortestStep(), as.longestStep(), List.of());
    Trace trace = Simulation.run(still.withRun(plain), still.arrangements().get(0)).trace();
    double[] time = trace.time();
    for (int r = 0; r < house.rooms().size(); r++) {
      double[] operative = trace.column(RoomColumn.OPERATIVE, r);
      double sum = 0;
      double least = Double.POSITIVE_INFINITY;
      double most = Double.NEGATIVE_INFINITY;
      for (int i = 1; i < time.length; i++) {
        sum += (operative[i] + operative[i - 1]) / 2 * (time[i] - time[i - 1]);
        least = Math.min(least, operative[i]);
        most = Math.max(most, operative[i]);
      }
      // Swings of a source or thermostat fall otherwise into one day than into another.
      double uneven = 0.005 + 0.05 * (most - least);
      assertThat(day.operative()[r]).as("room %d", r).isCloseTo(sum / DAY, within(uneven));
      assertThat(day.least()[r]).as("room %d", r).isCloseTo(least, within(10 * uneven));
      assertThat(day.most()[r]).as("room %d", r).isCloseTo(most, within(10 * uneven));
    }
  }

  @Test
  void itSaysHowItEnded() {
    House still = withoutPlay(SampleHouses.eightRooms(1, SampleHouses.ideal()));
    assertThat(HeldRun.of(still, still.arrangements().get(0), OUTDOOR).ending())
        .isEqualTo(HeldRun.Ending.AT_REST);
    House cycling = SampleHouses.wetSystem(1);
    HeldRun.Day day = HeldRun.of(cycling, cycling.arrangements().get(0), OUTDOOR);
    assertThat(day.ending()).isEqualTo(HeldRun.Ending.REPEATS);
    assertThat(day.supply().blocked()).isZero();
    assertThat(day.supply().called()).isEqualTo(1);
  }
}
