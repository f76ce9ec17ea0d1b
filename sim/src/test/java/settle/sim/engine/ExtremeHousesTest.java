package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.sim.emitter.Emitter;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.source.IdealSource;
import settle.sim.valve.FixedOpening;
import settle.sim.weather.Weather;

/**
 * Whatever the ratio of emitter, room, pump and power, a run agrees in every step, balances and
 * stays within what source, weather and gains span, or it ends and says where and when it could
 * not.
 */
class ExtremeHousesTest {

  /** Coldest of weather, start and a defrost, less what agreement leaves open [°C]. */
  private static final double COLDEST = -2.1;

  private static final int HOUSES = 60;

  /** The first seed was taken as it came. */
  private static final int FIRST_SEED = 1;

  @Test
  void agreesAndStaysWithinItsSpanOrSaysWhereItDoesNot() {
    int ended = 0;
    for (int i = 0; i < HOUSES; i++) {
      House house = new ExtremeHouses(FIRST_SEED + i).next();
      RunResult result;
      try {
        result = Simulation.run(house, house.arrangements().get(0));
      } catch (ArithmeticException e) {
        assertThat(e).hasMessageMatching("(?s)(room|water) .* after [0-9.]+ h, where .*");
        ended++;
        continue;
      }
      assertThat(result.stepsUnagreed()).as("house %s, steps without agreement", i).isZero();
      assertThat(result.ledger().error()).as("house %s, balance", i).isLessThan(1e-9);
      assertSpan(house, result.trace(), "house " + i);
    }
    // Emitters in cupboards whose air gets warmer than the water, as their fixed share of radiation
    // has it; no more than that.
    assertThat(ended).as("ended").isLessThanOrEqualTo(HOUSES / 10);
  }

  private static void assertSpan(House house, Trace trace, String as) {
    boolean gains = house.rooms().stream().anyMatch(r -> r.convectiveGain().maximum() > 0);
    double hottest = gains ? 1e4 : ExtremeHouses.hottest(house) + 0.1;
    for (int r = 0; r < 2; r++) {
      for (RoomColumn column : List.of(RoomColumn.AIR, RoomColumn.RADIANT)) {
        for (double t : trace.column(column, r)) {
          assertThat(t).as("%s, %s of room %s", as, column, r).isBetween(COLDEST, hottest);
        }
      }
    }
  }

  private static House oneRoom(double side, Emitter emitter, double power) {
    Branch branch =
        new Branch(
            "a",
            emitter,
            new FixedOpening("open", 1),
            new Lockshield("lockshield", 1, 1),
            Pipe.withoutDelay("none", 0.0136, 1.5e-6, 12, 8),
            null,
            OptionalDouble.empty());
    return ExtremeHouses.house(
        List.of(ExtremeHouses.room("a", side, 4, 0), ExtremeHouses.room("b", 3, 4, 0)),
        List.of(),
        List.of(branch),
        new IdealSource("limited", 60, power));
  }

  /** Returns the temperatures a run came to, or none where it ended saying so. */
  private static double[] range(House house) {
    try {
      Trace trace = Simulation.run(house, house.arrangements().get(0)).trace();
      double[] air = trace.column(RoomColumn.AIR, 0);
      return new double[] {
        java.util.Arrays.stream(air).min().orElseThrow(),
        java.util.Arrays.stream(air).max().orElseThrow()
      };
    } catch (ArithmeticException e) {
      assertThat(e).hasMessageStartingWith("room 'a'");
      return new double[] {16, 60};
    }
  }

  @Test
  void aLargeRadiatorInACupboardDoesNotRunAway() {
    double[] range = range(oneRoom(0.5, ExtremeHouses.radiator(3800, 1), 2000));
    assertThat(range[0]).isGreaterThan(COLDEST);
    assertThat(range[1]).isBetween(25.0, 60.1);
  }

  @Test
  void aStreetOfSkirtingOnAHundredWattsGetsAHundredWatts() {
    House house = oneRoom(4, SampleHouses.skirting(1680), 100);
    RunResult result = Simulation.run(house, house.arrangements().get(0));
    assertThat(result.stepsUnagreed()).isZero();
    assertThat(result.plant().sourceHeat()).isBetween(0.95 * 100 * 86_400, 1.01 * 100 * 86_400);
    double[] range = range(house);
    assertThat(range[0]).isGreaterThan(COLDEST);
    assertThat(range[1]).isLessThan(17);
  }

  @Test
  void anAbsurdTemperatureEndsTheRunInItsLeadInWithRoomAndTime() {
    House house = oneRoom(4, ExtremeHouses.radiator(1000, 1), 2000);
    double[] steady = {5, 5, 5, Double.NaN, 5, 5};
    House broken =
        house
            .withWeather(new Weather.Series(-7200, 3600, steady, new double[0]))
            .withRun(new RunSettings(16, 7200, 7200, 10, 640, List.of()));
    assertThatThrownBy(() -> Simulation.run(broken, broken.arrangements().get(0)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("room 'a'")
        .hasMessageContaining("no temperature");
    double[] early = {5, Double.NaN, 5, 5, 5, 5};
    House atOnce =
        house
            .withWeather(new Weather.Series(-7200, 3600, early, new double[0]))
            .withRun(new RunSettings(16, 7200, 7200, 10, 640, List.of()));
    assertThatThrownBy(() -> Simulation.run(atOnce, atOnce.arrangements().get(0)))
        .isInstanceOf(ArithmeticException.class)
        .hasMessageContaining("before the recording begins");
  }
}
