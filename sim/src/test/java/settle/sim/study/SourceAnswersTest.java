package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.source.Boiler;
import settle.sim.source.Buffer;
import settle.sim.source.HeatPump;

/** Whether a source fits: figures, and what is said about them. */
class SourceAnswersTest {

  private static final double WATER_HEAT = 988 * 4180;

  private static final HeatPumpAnswer WET = heatPump(SampleHouses.wetSystem(1)).orElseThrow();

  @Test
  void onlyTheSourceThatIsThereAnswers() {
    House boiler = SampleHouses.eightRooms(1, SampleHouses.boiler());
    House pump = SampleHouses.wetSystem(1);
    House ideal = SampleHouses.eightRooms(1, SampleHouses.ideal());
    assertThat(heatPump(boiler)).isEmpty();
    assertThat(boiler(boiler)).isPresent();
    assertThat(boiler(pump)).isEmpty();
    assertThat(heatPump(ideal)).isEmpty();
    assertThat(boiler(ideal)).isEmpty();
  }

  @Test
  void heatPumpTooSmallForDesignWeather() {
    HeatPumpAnswer answer = WET;
    // -3 °C, between the points at -7 and 2 °C; 3600 s of running, then 5 kW back for 240 s
    HeatPump pump = SampleHouses.heatPump();
    double dry = pump.performance().capacity(-3, answer.flow().asked());
    double iced = (dry * 3600 - 5000 * 240) / 3840;
    assertThat(answer.capacity()).isCloseTo(iced, within(1e-6 * iced));
    assertThat(answer.load()).isGreaterThan(answer.capacityWithBackup());
    assertThat(answer.flow().needed().orElseThrow()).isGreaterThan(60);
    assertThat(answer.flow().covered()).isFalse();
    assertThat(answer.doubts())
        .extracting(Notice::code)
        .containsExactly(
            Code.TOO_SMALL_WITH_HEATER, Code.FLOW_OUT_OF_REACH, Code.DESIGN_NOT_DECLARED);
    assertThat(answer.doubts().get(0).numbers().get(1)).isCloseTo(11_000, within(50.0));
    assertThat(answer.doubts().get(1).numbers().get(1)).isEqualTo(60);
    assertThat(answer.doubts().get(2).numbers().get(0)).isEqualTo(-3);
  }

  @Test
  void limitsLieWhereTheBinsCross() {
    HeatPumpAnswer answer = WET;
    double bivalence = answer.bivalence().orElseThrow();
    double cycles = answer.cyclesAbove().orElseThrow();
    for (Season.Bin bin : answer.season().asControlled().bins()) {
      assertThat(bin.load() > bin.capacity()).isEqualTo(bin.outdoor() < bivalence);
      assertThat(bin.belowMinimum()).isEqualTo(bin.outdoor() > cycles);
    }
  }

  @Test
  void runsAndRestsAreInBalanceAndKeepTheLeastTimes() {
    HeatPump pump = SampleHouses.heatPump(); // band 4 K, 300 s on, 300 s off
    double capacity = 0.06 * WATER_HEAT;
    HeatPumpAnswer.Cycling free =
        HeatPumpAnswer.Cycling.of(pump, 2000, 4000, capacity).orElseThrow();
    assertThat(free.onTime()).isCloseTo(8 * capacity / 2000, within(1e-6));
    assertThat(free.offTime()).isCloseTo(8 * capacity / 2000, within(1e-6));
    assertThat(free.startsPerHour()).isCloseTo(3600 * 2000 / (16 * capacity), within(1e-9));
    HeatPumpAnswer.Cycling little =
        HeatPumpAnswer.Cycling.of(pump, 1000, 4000, capacity / 10).orElseThrow();
    assertThat(little.onTime()).isEqualTo(300);
    assertThat(little.offTime()).isCloseTo(900, within(1e-9));
    HeatPumpAnswer.Cycling resting =
        HeatPumpAnswer.Cycling.of(pump, 3000, 4000, capacity / 100).orElseThrow();
    assertThat(resting.offTime()).isCloseTo(300, within(1e-9));
    assertThat(resting.onTime()).isCloseTo(900, within(1e-9));
    assertThat(HeatPumpAnswer.Cycling.of(pump, 4000, 4000, capacity)).isEmpty();
    assertThat(HeatPumpAnswer.Cycling.of(pump, 0, 4000, capacity)).isEmpty();
  }

  @Test
  void startsAreNearThoseOfARun() {
    for (Optional<Buffer> vessel :
        List.of(
            Optional.<Buffer>empty(),
            Optional.of(new Buffer(Buffer.Placement.RETURN, 0.15, 0, 15, 0)))) {
      House plain = SampleHouses.wetSystem(1).withSource(withModulation(0.5));
      House house = vessel.map(plain::withBuffer).orElse(plain);
      double starts = heatPump(house).orElseThrow().mild().now().orElseThrow().startsPerHour();
      House steady = SampleHouses.steady(house, HeatPumpAnswer.MILD);
      Timetable none = Timetable.constant(0);
      House still =
          steady
              .withRooms(steady.rooms().stream().map(r -> r.withGains(none, none)).toList())
              .withRun(new RunSettings(20, 5 * 86_400, 86_400, 10, 640, List.of()));
      double run =
          Simulation.run(still, still.arrangements().get(0)).plant().cycling().startsPerHour();
      // Mixed water against water that goes round, with a jump of the flow at each start.
      assertThat(run / starts).as("run %s, closed form %s", run, starts).isBetween(0.7, 1.6);
    }
  }

  @Test
  void moreWaterInSeriesIsNoCureWhereTooLittlePasses() {
    House house = SampleHouses.wetSystem(1).withSource(withModulation(1));
    HeatPumpAnswer answer = heatPump(house).orElseThrow();
    assertThat(answer.water().rise()).isGreaterThan(answer.water().swing());
    assertThat(answer.doubts())
        .extracting(Notice::code)
        .contains(Code.PASSES_TOO_LITTLE)
        .doesNotContain(Code.VOLUME_LACKING, Code.STARTS_OFTEN);
  }

  /** A head that is shut leaves its circuit's water standing; it takes no part in a start. */
  @Test
  void onlyWaterThatMovesCounts() {
    House house = SampleHouses.wetSystem(1);
    Branch first = house.arrangements().get(0).branches().get(0);
    List<Branch> branches = new ArrayList<>(house.arrangements().get(0).branches());
    branches.set(0, first.withValve(SampleHouses.head(1)));
    House shut =
        house.withArrangements(List.of(house.arrangements().get(0).withBranches(branches)));
    HeatPumpAnswer.Water water = heatPump(shut).orElseThrow().water();
    double standing = first.emitter().waterVolume() + first.pipe().waterVolume();
    assertThat(water.volume()).isLessThanOrEqualTo(water.total() - standing + 1e-12);
    assertThat(water.volume()).isPositive();
  }

  @Test
  void volumiserCuresWhatIsLacking() {
    House house = SampleHouses.wetSystem(1).withSource(withModulation(0.6));
    HeatPumpAnswer answer = heatPump(house).orElseThrow();
    double lacking = answer.water().lacking();
    assertThat(lacking).isPositive();
    double litres = Math.ceil(1000 * lacking);
    assertThat(answer.doubts())
        .filteredOn(d -> d.code() == Code.VOLUME_LACKING)
        .singleElement()
        .satisfies(d -> assertThat(d.numbers().get(4)).isEqualTo(lacking));
    assertThat(answer.mild().cured().orElseThrow().startsPerHour())
        .isLessThan(answer.mild().now().orElseThrow().startsPerHour());
    HeatPumpAnswer cured =
        heatPump(house.withBuffer(new Buffer(Buffer.Placement.RETURN, litres / 1000, 0, 15, 0)))
            .orElseThrow();
    assertThat(cured.water().lacking()).isZero();
    assertThat(cured.doubts())
        .extracting(Notice::code)
        .doesNotContain(Code.VOLUME_LACKING, Code.STARTS_OFTEN);
  }

  @Test
  void heatPumpThatIsLeftTooLittleWaterNeedsABypassOrAVessel() {
    HeatPump thirsty = with(SampleHouses.heatPump(), 0.35, 0.5);
    House house = SampleHouses.wetSystem(1).withSource(thirsty);
    HeatPumpAnswer answer = heatPump(house).orElseThrow();
    assertThat(answer.water().flowLeft()).isLessThan(0.5);
    assertThat(answer.doubts()).extracting(Notice::code).contains(Code.NEVER_RUNS);
    Buffer parallel = new Buffer(Buffer.Placement.PARALLEL, 0.1, 0, 15, 0.5);
    assertThat(heatPump(house.withBuffer(parallel)).orElseThrow().doubts())
        .extracting(Notice::code)
        .doesNotContain(Code.THROTTLED, Code.STANDS_STILL, Code.NEVER_RUNS);
  }

  @Test
  void heatPumpThatNeverGetsItsWaterKeepsNoHouseWarm() {
    House house = SampleHouses.wetSystem(1).withSource(with(SampleHouses.heatPump(), 0.35, 5));
    HeatPumpAnswer answer = heatPump(house).orElseThrow();
    assertThat(answer.water().neverRuns()).isTrue();
    assertThat(answer.water().flowAtMost()).isGreaterThan(answer.water().flowLeft());
    assertThat(answer.doubts()).extracting(Notice::code).contains(Code.NEVER_RUNS);
    House still = house.withRun(new RunSettings(20, 86_400, 3600, 10, 640, List.of()));
    assertThat(Simulation.run(still, still.arrangements().get(0)).plant().sourceHeat()).isZero();
    Buffer parallel = new Buffer(Buffer.Placement.PARALLEL, 0.1, 0, 15, 5);
    assertThat(heatPump(house.withBuffer(parallel)).orElseThrow().water().neverRuns()).isFalse();
  }

  @Test
  void boilerAskedForTooLittleOrTooMuch() {
    BoilerAnswer cool = boiler(SampleHouses.eightRooms(1, SampleHouses.boiler())).orElseThrow();
    assertThat(cool.doubts())
        .singleElement()
        .satisfies(
            d -> {
              assertThat(d.code()).isEqualTo(Code.FLOW_TOO_LOW);
              assertThat(d.numbers().get(0)).isCloseTo(60, within(0.5));
              assertThat(d.numbers().get(1)).isCloseTo(69, within(0.5));
            });
    BoilerAnswer hot = boiler(SampleHouses.eightRooms(1, boilerAt(80, 5000))).orElseThrow();
    double least = hot.season().leastFlow().orElseThrow().consumption().orElseThrow().factor();
    // Heads throttle hotter water, it comes back colder: nothing to gain, nothing to say.
    assertThat(hot.efficiency()).isGreaterThan(least);
    assertThat(hot.doubts()).extracting(Notice::code).doesNotContain(Code.FLOW_LOWERS_EFFICIENCY);
  }

  @Test
  void heatPumpAskedForMoreThanNeeded() {
    House house = SampleHouses.wetSystem(1);
    Arrangement large = house.arrangements().get(0);
    large =
        large.withBranches(
            large.branches().stream().map(b -> b.withEmitter(SampleHouses.skirting(40))).toList());
    Season season = Season.of(house, large);
    HeatPumpAnswer answer = HeatPumpAnswer.of(house, large, season, List.of()).orElseThrow();
    assertThat(season.leastFlow().orElseThrow().consumption().orElseThrow().factor())
        .isGreaterThan(season.asControlled().consumption().orElseThrow().factor());
    assertThat(answer.doubts()).extracting(Notice::code).contains(Code.FLOW_LOWERS_FACTOR);
  }

  @Test
  void boilerThatFitsIsNotDoubted() {
    BoilerAnswer fits = boiler(SampleHouses.eightRooms(1, boilerAt(70, 4000))).orElseThrow();
    assertThat(fits.doubts()).isEmpty();
    assertThat(fits.belowDewPoint()).isBetween(0.9, 1.0);
    // Returns of 35 to 45 °C: 59 to 28 % of the vapour.
    assertThat(fits.condensingShare()).isBetween(0.28, 0.59);
  }

  @Test
  void boilerThatCannotModulateStartsAndStops() {
    BoilerAnswer coarse = boiler(SampleHouses.eightRooms(1, boilerAt(70, 9000))).orElseThrow();
    assertThat(coarse.cyclesAbove().orElseThrow()).isLessThan(6);
    assertThat(coarse.doubts()).extracting(Notice::code).contains(Code.MODULATES_TOO_LITTLE);
  }

  private static Optional<HeatPumpAnswer> heatPump(House house) {
    Season season = Season.of(house, house.arrangements().get(0));
    return HeatPumpAnswer.of(house, house.arrangements().get(0), season, List.of());
  }

  private static Optional<BoilerAnswer> boiler(House house) {
    Season season = Season.of(house, house.arrangements().get(0));
    return BoilerAnswer.of(house, house.arrangements().get(0), season, List.of());
  }

  private static HeatPump withModulation(double least) {
    return with(SampleHouses.heatPump(), least, 0.1);
  }

  private static HeatPump with(HeatPump pump, double modulation, double minimumFlow) {
    return new HeatPump(
        pump.name(),
        pump.performance(),
        modulation,
        pump.flowSetPoint(),
        new HeatPump.Limits(
            pump.switchingBand(),
            pump.highestFlow(),
            minimumFlow,
            pump.minimumOnTime(),
            pump.minimumOffTime()),
        pump.controlTime(),
        pump.thermalMass(),
        pump.overRunTime(),
        pump.standbyPower(),
        pump.defrost(),
        pump.backup());
  }

  private static Boiler boilerAt(double flow, double least) {
    Boiler boiler = (Boiler) SampleHouses.boiler();
    return new Boiler(
        "boiler", 18_000, least, flow, 5, 30_000, 60, 180, 180, 1.5, boiler.efficiency());
  }
}
