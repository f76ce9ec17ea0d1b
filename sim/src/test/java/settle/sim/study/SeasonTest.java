package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.Tariffs;
import settle.sim.result.RunResult;
import settle.sim.source.Boiler;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;
import settle.sim.valve.WaxValve;

/** A season reckoned at rest, against runs that have come to rest and against its own sums. */
class SeasonTest {

  private static final double LEAD_IN = 12 * 86_400;

  private static final double RECORDED = 3 * 86_400;

  @Test
  void modulatingBoilerTakesInEveryBinWhatALongRunTakes() {
    House house = withoutPlay(SampleHouses.onMains(SampleHouses.eightRooms(1, small())));
    Season.Year year = year(house);
    for (int i : new int[] {1, 12, 20}) {
      assertAgrees(year.bins().get(i), house, 0.01);
    }
  }

  @Test
  void modulatingHeatPumpTakesWhatALongRunTakes() {
    House house = withoutPlay(SampleHouses.wetSystem(1));
    Season.Bin bin = year(house).bins().get(15);
    assertThat(bin.belowMinimum()).isFalse();
    assertAgrees(bin, house, 0.01);
  }

  @Test
  void heatPumpThatIcesGivesInColdWeatherWhatALongRunAtItsLimitGives() {
    House house = withoutPlay(SampleHouses.wetSystem(1));
    Season.Bin bin = year(house).bins().get(0);
    assertThat(bin.load()).isGreaterThan(bin.capacity());
    RunResult run = run(house, bin.outdoor());
    // Colder water than is asked for, which it makes more of.
    double reached = run.plant().flowMean();
    assertThat(reached).isLessThan(bin.flow() - 1);
    double capacity =
        house.source().deliver(bin.outdoor(), bin.load(), reached, reached).capacity();
    assertThat(run.plant().sourceHeat() / RECORDED).isCloseTo(capacity, within(0.01 * capacity));
  }

  @Test
  void whatTheCompressorLacksIsMadeByElectricHeaters() {
    Season.Year year = year(SampleHouses.wetSystem(1));
    double lacking = 0;
    for (Season.Bin bin : year.bins()) {
      lacking += bin.hours() * 3600 * Math.max(bin.load() - bin.capacity(), 0);
    }
    assertThat(lacking).isPositive();
    assertThat(year.backupHeat()).isCloseTo(lacking, within(1e-6 * lacking));
    assertThat(year.unmetHeat()).isZero();
  }

  @Test
  void leastFlowHoldsEveryRoomInEveryBin() {
    House house = SampleHouses.eightRooms(1, new IdealSource("ideal", 75, 1e9));
    Season season = Season.of(house, house.arrangements().get(0));
    Season.Year least = season.leastFlow().orElseThrow();
    Holding holding = new Holding(house, house.arrangements().get(0));
    for (Season.Bin bin : least.bins()) {
      SettledHouse settled = holding.settled(bin.outdoor()).at(bin.flow());
      double worst = Double.POSITIVE_INFINITY;
      for (int r = 0; r < house.rooms().size(); r++) {
        double held = house.rooms().get(r).want().maximum() - house.wantTolerance();
        worst = Math.min(worst, settled.operative(r) - held);
      }
      // Straight between eight temperatures: a little off in between, either way.
      assertThat(worst).as("at " + bin.outdoor()).isCloseTo(0, within(0.05));
    }
    assertThat(least.heat()).isLessThan(season.asControlled().heat());
  }

  @Test
  void leastFlowIsNoneWhereEmittersAreTooSmall() {
    House house = SampleHouses.eightRooms(1, SampleHouses.ideal());
    Arrangement whole = house.arrangements().get(0);
    List<Branch> small = new ArrayList<>(whole.branches());
    small.set(0, small.get(0).withEmitter(SampleHouses.skirting(3)));
    assertThat(Season.of(house, whole.withBranches(small)).leastFlow()).isEmpty();
  }

  @Test
  void underARoomThermostatTheHeatIsTheMeanAndTheFlowWhatIsAskedFor() {
    House house = SampleHouses.eightRooms(1, SampleHouses.boiler());
    Control control =
        new Control(
            Control.Setback.HEADS,
            "room 1",
            0.5,
            new Thermostat.OnOff(0.3, 0),
            Optional.empty(),
            new OptimumStart.None(),
            false);
    Season.Year free = year(house);
    Season.Year stopped = year(house.withControl(control));
    for (Season.Bin bin : stopped.bins()) {
      assertThat(bin.flow()).isEqualTo(60);
    }
    Season.Bin mild = stopped.bins().get(20);
    assertThat(mild.load()).isLessThan(0.98 * free.bins().get(20).load());
    RunResult run = run(house.withControl(control), mild.outdoor());
    // A source at its mean: rooms with heads of their own take otherwise from water that is hot for
    // part of the time.
    assertThat(taken(run)).isCloseTo(mild.load(), within(0.05 * mild.load()));
    double factor = taken(run) / (run.plant().input() / RECORDED);
    assertThat(factor).isCloseTo(mild.factor().orElseThrow(), within(0.02));
  }

  @Test
  void sumsAreThoseOfTheBinsAndCostIsByTheTariffs() {
    House house = SampleHouses.eightRooms(1, SampleHouses.boiler());
    Season.Year year = year(house);
    double heat = 0;
    double input = 0;
    double condensed = 0;
    double burnt = 0;
    for (Season.Bin bin : year.bins()) {
      heat += bin.hours() * 3600 * bin.load();
      input += bin.hours() * 3600 * bin.input().orElseThrow();
      double gas = bin.hours() * 3600 * bin.input().orElseThrow();
      burnt += gas;
      condensed += gas * house.source().condensed(bin.returning()).orElseThrow();
    }
    Season.Consumption consumption = year.consumption().orElseThrow();
    double pump = year.pumpElectricity() / 3.6e6;
    assertThat(pump).isPositive();
    assertThat(year.heat()).isCloseTo(heat, within(1e-6 * heat));
    assertThat(consumption.input()).isCloseTo(input, within(1e-6 * input));
    assertThat(consumption.factor()).isCloseTo(heat / input, within(1e-9));
    assertThat(consumption.cost())
        .isCloseTo(
            input / 3.6e6 * Tariffs.USUAL.gasPrice() + pump * Tariffs.USUAL.electricityPrice(),
            within(1e-6 * input / 3.6e6));
    assertThat(consumption.carbon())
        .isCloseTo(
            input / 3.6e6 * Tariffs.USUAL.gasCarbon() + pump * Tariffs.USUAL.electricityCarbon(),
            within(1e-6 * input / 3.6e6));
    assertThat(year.condensingShare().orElseThrow()).isCloseTo(condensed / burnt, within(1e-9));
    assertThat(year.belowDewPoint().orElseThrow()).isEqualTo(1);
  }

  @Test
  void idealSourceTakesNothingAndWhatItLacksIsUnmet() {
    Season.Year year = year(SampleHouses.eightRooms(1, SampleHouses.weak()));
    assertThat(year.consumption()).isEmpty();
    assertThat(year.condensingShare()).isEmpty();
    assertThat(year.backupHeat()).isZero();
    assertThat(year.unmetHeat()).isPositive().isLessThan(year.heat());
  }

  @Test
  void fittedSeasonKeepsHoursAndPartLoads() {
    ClimateBins own = EuropeanSeason.AVERAGE.bins();
    ClimateBins fitted = EuropeanSeason.AVERAGE.fittedTo(-3);
    assertThat(own.outdoor()[0]).isEqualTo(-10);
    assertThat(own.outdoor()[25]).isCloseTo(15, within(1e-12));
    assertThat(fitted.outdoor()[0]).isCloseTo(-3, within(1e-12));
    for (int i = 0; i < own.hours().length; i++) {
      assertThat(fitted.hours()[i]).isEqualTo(own.hours()[i]);
      assertThat((16 - fitted.outdoor()[i]) / 19)
          .isCloseTo(EuropeanSeason.AVERAGE.partLoad(own.outdoor()[i]), within(1e-12));
    }
  }

  private static Season.Year year(House house) {
    return Season.of(house, house.arrangements().get(0)).asControlled();
  }

  /** Heat taken and input of a bin are those of a run, as shares of them. */
  private static void assertAgrees(Season.Bin bin, House house, double share) {
    RunResult run = run(house, bin.outdoor());
    assertThat(bin.load()).isCloseTo(taken(run), within(share * bin.load()));
    double input = bin.input().orElseThrow();
    assertThat(input).isCloseTo(run.plant().input() / RECORDED, within(share * input));
  }

  /**
   * Mean heat taken by the water [W]: what the source made less what its casing lost, which is
   * booked from the beginning on.
   */
  private static double taken(RunResult run) {
    return run.plant().sourceHeat() / RECORDED - run.ledger().sourceLoss() / (LEAD_IN + RECORDED);
  }

  /** A boiler that modulates low enough for all but the mildest weather. */
  private static Source small() {
    Boiler whole = (Boiler) SampleHouses.boiler();
    return new Boiler(
        "small boiler", 18_000, 2000, 60, 5, 30_000, 60, 180, 180, 1.5, whole.efficiency());
  }

  /** Three days of constant weather without gains, when all has come to rest. */
  private static RunResult run(House house, double outdoor) {
    House steady = SampleHouses.steady(house, outdoor);
    Timetable none = Timetable.constant(0);
    House still =
        steady
            .withRooms(steady.rooms().stream().map(room -> room.withGains(none, none)).toList())
            .withRun(new RunSettings(20, LEAD_IN, RECORDED, 10, 640, List.of()));
    return Simulation.run(still, still.arrangements().get(0));
  }

  /** The same house with heads that have no play: a run settles where the house at rest does. */
  private static House withoutPlay(House house) {
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement a : house.arrangements()) {
      arrangements.add(
          a.withBranches(
              a.branches().stream().map(b -> b.withValve(free((WaxValve) b.valve()))).toList()));
    }
    return house.withArrangements(arrangements);
  }

  private static WaxValve free(WaxValve head) {
    return new WaxValve(
        head.name(),
        head.setPoint(),
        head.proportionalBand(),
        0,
        head.lags(),
        head.waterInfluence(),
        head.bias(),
        head.pressureInfluence(),
        head.kvNominal(),
        head.kvMaximum(),
        head.sensing());
  }
}
