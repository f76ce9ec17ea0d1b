package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.Season;

/** What a pump draws at least, and what the source takes of its head. */
class PumpPlaceTest {

  /** 20 kPa at 0.1 kg/s of 1000 kg/m³ are 2 W of water, 8 W at a quarter. */
  @Test
  void aPumpDrawsWhatItMovesButNotLessThanItsLeast() {
    ConstantPump pump = new ConstantPump(20_000, 0.25);
    assertThat(PumpPlace.FREE.power(pump, 20_000, 0.1, 1000)).isCloseTo(8, within(1e-9));
    assertThat(new PumpPlace(4, Double.POSITIVE_INFINITY).power(pump, 20_000, 0.1, 1000))
        .isCloseTo(8, within(1e-9));
    assertThat(new PumpPlace(40, Double.POSITIVE_INFINITY).power(pump, 20_000, 0.1, 1000))
        .isEqualTo(40);
    // 0.36 m³/h through Kv 1.8 take 4 kPa more.
    assertThat(new PumpPlace(0, 1.8).power(pump, 16_000, 0.1, 1000)).isCloseTo(8, within(1e-9));
  }

  private static House with(PumpPlace place) {
    House house = SampleHouses.eightRooms(1, SampleHouses.heatPump());
    return house.withDistribution(house.distribution().withPumpPlace(place));
  }

  /** A pump of 40 W lowers the factor of a run and of a season by its share of the electricity. */
  @Test
  void theFactorCountsThePump() {
    House free = with(PumpPlace.FREE);
    House own = with(new PumpPlace(40, Double.POSITIVE_INFINITY));
    RunResult run = Simulation.run(own, own.arrangements().get(0));
    double pumped = run.plant().pumpElectricity();
    assertThat(run.plant().seasonalFactor().orElseThrow())
        .isCloseTo(run.plant().sourceHeat() / (run.plant().input() + pumped), within(1e-12));
    assertThat(pumped).isCloseTo(40 * own.run().length(), within(0.02 * 40 * own.run().length()));
    Season.Year before = Season.of(free, free.arrangements().get(0)).asControlled();
    Season.Year after = Season.of(own, own.arrangements().get(0)).asControlled();
    double hours = after.bins().stream().mapToDouble(Season.Bin::hours).sum();
    assertThat(after.pumpElectricity()).isCloseTo(40 * hours * 3600, within(1.0));
    double electricity = before.consumption().orElseThrow().input() - before.pumpElectricity();
    assertThat(after.consumption().orElseThrow().factor())
        .isCloseTo(after.heat() / (electricity + after.pumpElectricity()), within(1e-9));
  }

  /** Half the head in the source leaves less for the branches, in a run as when balancing. */
  @Test
  void theSourceTakesPartOfTheHead() {
    House free = with(PumpPlace.FREE);
    Balance whole = Simulation.run(free, free.arrangements().get(0)).balance();
    House narrow = with(new PumpPlace(0, 1.5));
    Balance less = Simulation.run(narrow, narrow.arrangements().get(0)).balance();
    assertThat(less.branches().get(0).flow()).isLessThan(0.95 * whole.branches().get(0).flow());
    assertThat(less.headNeeded()).isGreaterThan(whole.headNeeded());
  }
}
