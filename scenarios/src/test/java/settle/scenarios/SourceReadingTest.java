package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.DefaultUsed;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.hydraulics.PumpPlace;
import settle.sim.source.BackupHeater;
import settle.sim.source.Boiler;
import settle.sim.source.Buffer;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.Exchanger;
import settle.sim.source.Flue;
import settle.sim.source.HeatPump;
import settle.sim.source.PerformanceMap;

/** Heat pumps of the catalogue and of the scenario, and the buffer beside them. */
class SourceReadingTest {

  private static final double EXACT = 1e-12;

  @TempDir Path folder;

  private Scenario read(String source) throws Exception {
    return ScenarioFiles.read(
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            rooms: {hall: {size: 6 x 4 x 2.5 m}}
            arrangements: {one: {rooms: {hall: {emitter: skirting 140, length: 3.5 m, pipe length: 10 m}}}}
            """
                + source));
  }

  private HeatPump heatPump(String keys) throws Exception {
    House house =
        read("source: {heat pump: mine}\nheat pumps:\n  mine:\n" + keys.indent(4)).house();
    return (HeatPump) house.source();
  }

  @Test
  void aHeatPumpOfTheCatalogue() throws Exception {
    Scenario scenario = read("source: {heat pump: heat pump 8 kW, flow temperature: 40 °C}");
    HeatPump source = (HeatPump) scenario.house().source();
    assertThat(source.flowSetPoint()).isEqualTo(40);
    assertThat(source.maximumPower(7, 35)).isEqualTo(8000);
    assertThat(source.minimumPower(7, 35)).isCloseTo(0.3 * 8000, within(1e-9));
    assertThat(source.highestFlow()).isEqualTo(55);
    assertThat(scenario.house().distribution().designDrop()).isEqualTo(5);
  }

  /** A small emitter at a small drop; a parallel buffer or a bypass gives the heat pump water. */
  @Test
  void tooLittleWaterIsDoubtful() throws Exception {
    String source = "source: {heat pump: heat pump 5 kW%s}\n";
    assertThat(read(source.formatted("")).warnings()).hasSize(1);
    assertThat(
            read(source.formatted(
                    ", buffer: {volume: 50 l, placement: parallel, source flow: 800 l/h}"))
                .warnings())
        .isEmpty();
    assertThat(
            read(source.formatted("") + "distribution: {bypass: {set pressure: 8 kPa}}").warnings())
        .isEmpty();
    assertThat(read(source.formatted("") + "distribution: {design drop: 0.1 K}").warnings())
        .extracting(w -> w.message())
        .containsExactly(
            "distribution / design drop: 0.1 K is unusual, rarely less than 3 K; is it meant?");
  }

  /** In any order; the map has it ascending. */
  @Test
  void ratingPoints() throws Exception {
    HeatPump source =
        heatPump(
            """
            performance:
              - {outdoor: 7 °C, flow: 55 °C, capacity: 5.4 kW, COP: 2.9}
              - {outdoor: 7 °C, flow: 35 °C, capacity: 6 kW, COP: 4.6}
              - {outdoor: -7 °C, flow: 55 °C, capacity: 4.2 kW, COP: 2}
              - {outdoor: -7 °C, flow: 35 °C, capacity: 4.8 kW, COP: 2.8}
            minimum modulation: 25 %
            minimum flow: 600 l/h
            minimum running time: 10 min
            minimum rest: 5 min
            switching band: 2 K
            highest flow temperature: 60 °C
            control time: 90 s
            heat capacity: 18 kJ/K
            pump over-run: 2 min
            standby power: 12 W
            defrost: {from: -10 °C, to: 6 °C, every: 45 min, for: 4 min, heat taken: 3 kW, electricity: 0.8 kW}
            backup heater: {power: 3 kW, below: -2 °C}
            """);
    PerformanceMap map = (PerformanceMap) source.performance();
    assertThat(map.outdoors()).containsExactly(-7, 7);
    assertThat(map.flows()).containsExactly(35, 55);
    assertThat(map.capacity()).isDeepEqualTo(new double[][] {{4800, 4200}, {6000, 5400}});
    assertThat(map.cop()).isDeepEqualTo(new double[][] {{2.8, 2}, {4.6, 2.9}});
    assertThat(source.minimumModulation()).isEqualTo(0.25);
    assertThat(source.minimumFlow()).isCloseTo(600 * 0.988 / 3600, within(EXACT));
    assertThat(source.minimumOnTime()).isEqualTo(600);
    assertThat(source.minimumOffTime()).isEqualTo(300);
    assertThat(source.switchingBand()).isEqualTo(2);
    assertThat(source.highestFlow()).isEqualTo(60);
    assertThat(source.controlTime()).isEqualTo(90);
    assertThat(source.thermalMass()).isEqualTo(18_000);
    assertThat(source.overRunTime()).isEqualTo(120);
    assertThat(source.standbyPower()).isEqualTo(12);
    assertThat(source.defrost()).contains(new Defrost(-10, 6, 2700, 240, 3000, 800));
    assertThat(source.backup()).contains(new BackupHeater(3000, -2));
    assertThat(source.flowSetPoint()).isEqualTo(45);
  }

  @Test
  void partLoadIsDeclaredInEveryPointOrInNone() throws Exception {
    String points =
        """
        performance:
          - {outdoor: 7 °C, flow: 35 °C, capacity: 6 kW, COP: 4.6, COP at least output: 5.1}
          - {outdoor: 7 °C, flow: 55 °C, capacity: 5.4 kW, COP: 2.9%s}
        """;
    PerformanceMap map =
        (PerformanceMap) heatPump(points.formatted(", COP at least output: 3")).performance();
    assertThat(map.hasPartLoad()).isTrue();
    assertThat(map.cop(7, 35, 0.5)).isCloseTo(4.85, within(EXACT));
    assertThat(map.cop(7, 55, 0)).isEqualTo(3);
    assertThatThrownBy(() -> heatPump(points.formatted("")))
        .hasMessageContaining("has 'COP at least output' in some points; write it in all");
  }

  /** Half of 6 kW over 5 K: 6000/(4180 x 5)/2 = 0.14354 kg/s, 523 l/h. */
  @Test
  void whatIsLeftOutIsWorkedOutAndListed() throws Exception {
    Scenario scenario =
        read(
            """
            source: {heat pump: mine}
            heat pumps: {mine: {share of Carnot: 42 %, capacity at 7 °C: 6 kW}}
            """);
    HeatPump source = (HeatPump) scenario.house().source();
    assertThat(source.performance()).isEqualTo(new CarnotPerformance(0.42, 6000, 90));
    assertThat(source.minimumFlow()).isCloseTo(0.14354, within(1e-5));
    assertThat(source.highestFlow()).isEqualTo(55);
    assertThat(source.defrost()).isEmpty();
    assertThat(source.backup()).isEmpty();
    assertThat(scenario.defaultsUsed())
        .filteredOn(d -> d.where().equals("heat pumps / mine"))
        .extracting(DefaultUsed::key)
        .contains("capacity slope", "minimum flow", "highest flow temperature", "minimum rest");
    assertThat(scenario.defaultsUsed())
        .contains(
            new DefaultUsed(
                "source",
                "flow temperature",
                "45 °C",
                "65 °C on a boiler, 45 °C on a heat pump: common practice, no source"));
  }

  @Test
  void aHeatPumpOfLowFlowIsSetNoHotterThanItGoes() throws Exception {
    assertThat(
            heatPump(
                    """
                    share of Carnot: 42 %
                    capacity at 7 °C: 6 kW
                    highest flow temperature: 40 °C
                    """)
                .flowSetPoint())
        .isEqualTo(40);
  }

  @Test
  void aBoilersExchangerAndFlue() throws Exception {
    Boiler usual = (Boiler) read("source: {boiler: condensing boiler 12 kW}").house().source();
    assertThat(usual.exchanger().leastFlow()).isCloseTo(300 * 0.988 / 3600, within(EXACT));
    assertThat(usual.exchanger().largestDrop()).isEqualTo(25);
    assertThat(usual.exchanger().startInput()).isEqualTo(60_000);
    assertThat(usual.efficiency().table()).isEmpty();
    assertThat(usual.efficiency().flue().dewPoint()).isCloseTo(55.7, within(0.05));
    Boiler own =
        (Boiler)
            read("source: {boiler: mine}\n"
                    + "boilers: {mine: {largest output: 20 kW, least output: 5 kW, least flow: 0 l/h,"
                    + " largest drop: 20 K, start loss: 80 kJ, excess air: 60 %, dew point: 50 °C,"
                    + " flue approach: 8 K, case loss: 2 %}}")
                .house()
                .source();
    assertThat(own.exchanger()).isEqualTo(new Exchanger(0, 20, 80_000));
    assertThat(own.efficiency().flue()).isEqualTo(new Flue(0.6, 50, 8, 0.02));
  }

  @Test
  void aPumpDrawsMoreOnAHeatPumpAndMayHaveTheSourceInSeries() throws Exception {
    assertThat(read("source: {boiler: condensing boiler 12 kW}").house().distribution().pumpPlace())
        .isEqualTo(new PumpPlace(4, Double.POSITIVE_INFINITY));
    assertThat(read("source: {heat pump: heat pump 8 kW}").house().distribution().pumpPlace())
        .isEqualTo(new PumpPlace(40, Double.POSITIVE_INFINITY));
    assertThat(
            read("source: {heat pump: heat pump 8 kW}\n"
                    + "distribution: {pump least power: 12 W, source Kv: 3}")
                .house()
                .distribution()
                .pumpPlace())
        .isEqualTo(new PumpPlace(12, 3));
  }

  /** 40 % of it covered, where it gives 60 %: 84 % is left; a tall window knows its height. */
  @Test
  void whatIsCoveredGivesLessAndAPaneHasAHeight() throws Exception {
    String house =
        """
        rooms:
          hall:
            size: 6 x 4 x 2.5 m
            surfaces:
              - {wall: outdoors, area: 6 x 2.5 m, U-value: 0.3 W/m²K, openings: {area: 1.2 x 1.8 m, U-value: 1.4 W/m²K}}
        source: {fixed flow: 50 °C}
        arrangements: {one: {rooms: {hall: {emitter: skirting 140, length: 3.5 m%s}}}}
        """;
    House open =
        ScenarioFiles.read(Files.writeString(folder.resolve("a.yaml"), house.formatted("")))
            .house();
    House covered =
        ScenarioFiles.read(
                Files.writeString(folder.resolve("b.yaml"), house.formatted(", covered: 40 %")))
            .house();
    assertThat(covered.arrangements().get(0).ratedOutput("hall"))
        .isCloseTo(0.84 * open.arrangements().get(0).ratedOutput("hall"), within(1e-9));
    assertThat(open.rooms().get(0).windows().get(0).height()).isEqualTo(1.8);
  }

  @Test
  void hotWaterTakesTheSourceAway() throws Exception {
    Timetable never = read("source: {fixed flow: 50 °C}").house().hotWater();
    assertThat(never.isConstant()).isTrue();
    Timetable twice =
        read("source: {fixed flow: 50 °C}\ncontrol: {hot water: [07:00-07:10, 23:30-00:15]}")
            .house()
            .hotWater();
    assertThat(twice.valueAt(7 * 3600)).isEqualTo(1);
    assertThat(twice.valueAt(7 * 3600 + 600)).isZero();
    assertThat(twice.valueAt(600)).isEqualTo(1);
    assertThat(twice.mean()).isCloseTo(55.0 / 1440, within(EXACT));
  }

  @Test
  void buffers() throws Exception {
    String boiler = "source: {boiler: condensing boiler 12 kW, buffer: ";
    assertThat(read(boiler + "{volume: 40 l}}").house().buffer())
        .contains(new Buffer(Buffer.Placement.RETURN, 0.04, 1, 20, 0));
    assertThat(
            read(boiler + "{volume: 60 l, placement: flow, loss: 0.8 W/K, surroundings: 10 °C}}")
                .house()
                .buffer())
        .contains(new Buffer(Buffer.Placement.FLOW, 0.06, 0.8, 10, 0));
    Buffer parallel =
        read(boiler + "{volume: 0.1 m³, placement: parallel, source flow: 15 l/min}}")
            .house()
            .buffer()
            .orElseThrow();
    assertThat(parallel.placement()).isEqualTo(Buffer.Placement.PARALLEL);
    assertThat(parallel.sourceFlow()).isCloseTo(0.015 / 60 * 988, within(EXACT));
    assertThat(read("source: {boiler: condensing boiler 12 kW}").house().buffer()).isEmpty();
  }
}
