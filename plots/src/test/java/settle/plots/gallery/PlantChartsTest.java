package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticPlant;
import settle.plots.SyntheticRuns;
import settle.plots.chart.Chart;
import settle.plots.chart.Mark;
import settle.plots.chart.Marker;
import settle.plots.chart.Panel;
import settle.plots.drawing.Picture;
import settle.plots.words.Comparison;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.result.RunResult;

/** Charts of source, flows, pressures and network. */
class PlantChartsTest {

  private static final double HOUR = 3600;

  private final House house = SyntheticPlant.house(8, 48);
  private final List<RunResult> results = SyntheticPlant.results(house);
  private final List<Picture> charts = Charts.forComparison(house, results);

  @Test
  void aPlantWithMainsIsShownFromSourceToBranch() {
    assertThat(charts)
        .extracting(Picture::name)
        .containsSubsequence("source", "branch-flows", "pressure", "network-1", "network-2");
  }

  @Test
  void oneLoopNeedsNeitherFlowsNorPressuresNorADrawing() {
    House single = SyntheticRuns.house(1, 24);
    assertThat(Charts.forComparison(single, SyntheticRuns.results(single, false)))
        .extracting(Picture::name)
        .contains("source")
        .doesNotContain("branch-flows", "pressure", "network-1", "network-2");
  }

  @Test
  void theBusiestHoursAreShownWhereADayHoldsTooManyStarts() {
    TimeWindow window = Starts.busiest(results);
    assertThat(window.length()).isEqualTo(6 * HOUR);
    assertThat(Starts.within(results.get(0), window)).hasSize(24);
    assertThat(chart("source").title()).endsWith("the busiest 6 h of the run (day 1)");
    assertThat(chart("source").meaning())
        .contains("starts 24 times in the stretch shown and 128 times over the whole run");
  }

  @Test
  void aDayOfFewStartsIsShownWhole() {
    assertThat(Starts.busiest(SyntheticPlant.results(house, 12)).length()).isEqualTo(24 * HOUR);
  }

  @Test
  void everyStartShownIsMarkedAtItsTime() {
    TimeWindow window = Starts.busiest(results);
    Panel panel = source(window).panels().get(0);
    double[] starts = Starts.within(results.get(0), window);
    assertThat(points(panel)).extracting(Mark.Point::x).containsExactlyElementsOf(hours(starts));
    assertThat(points(panel))
        .allMatch(p -> p.look().marker() == Marker.POINTER && p.y() == panel.y().max());
    assertThat(chart("source").drawing().words()).contains("start", "24 starts");
  }

  private Chart source(TimeWindow window) {
    return new SourceAtWork(new Comparison(house, results), window).chart("", "", "");
  }

  private static List<Mark.Point> points(Panel panel) {
    return panel.marks().stream()
        .filter(Mark.Point.class::isInstance)
        .map(Mark.Point.class::cast)
        .toList();
  }

  private static List<Double> hours(double[] seconds) {
    return Arrays.stream(seconds).mapToObj(s -> s / HOUR).toList();
  }

  @Test
  void defrostsAreShownAsHeatTakenFromTheWater() {
    TimeWindow window = Starts.busiest(results);
    List<Panel> panels = source(window).panels();
    assertThat(panels).hasSize(4);
    Panel power = panels.get(0);
    assertThat(power.y().min()).isLessThanOrEqualTo(-3);
    assertThat(values(power, "given")).contains(-3.0, 4.5);
    assertThat(values(power, "used")).contains(1.53);
    assertThat(values(panels.get(1), "set-point")).containsOnly(45.0);
  }

  @Test
  void backupHeatIsToldOnlyWhereThereIsSome() {
    assertThat(chart("source").drawing().words()).contains("backup heater’s share");
    House boiler = SyntheticRuns.house(3, 48);
    assertThat(
            Charts.forComparison(boiler, SyntheticRuns.results(boiler, false)).stream()
                .filter(c -> c.name().equals("source"))
                .findFirst()
                .orElseThrow()
                .drawing()
                .words())
        .doesNotContain("backup heater’s share");
  }

  @Test
  void everyEmitterHasItsFlowAndItsDesignFlow() {
    List<Panel> panels =
        new BranchFlows(new Comparison(house, results), TimeWindow.oneDay(results.get(0)))
            .chart("", "", "")
            .panels();
    assertThat(panels).hasSize(8);
    double design = 0.012 / 988 * 3.6e6;
    for (int i = 0; i < 8; i++) {
      assertThat(Arrays.stream(values(panels.get(i), "skirting, design")).boxed().toList())
          .allSatisfy(v -> assertThat(v).isCloseTo(design, within(1e-9)));
    }
    double[] most = results.get(1).trace().column(BranchColumn.MASS_FLOW, 0);
    assertThat(Arrays.stream(flowing(panels.get(0), "radiators")).max().orElseThrow())
        .isCloseTo(Arrays.stream(most).max().orElseThrow() / 988 * 3.6e6, within(1e-6));
    assertThat(chart("branch-flows").drawing().words())
        .contains("living & dining", "box room", "design flow", "design 44 l/h");
    assertThat(chart("branch-flows").meaning())
        .contains("“skirting”, balanced, every valve open gives every emitter its design flow")
        .contains("box room 40 % of its design flow and living & dining 160 %");
  }

  @Test
  void pressureIsShownAtThePumpAndWhereItIsNeededMost() {
    List<Panel> panels =
        new Pressures(new Comparison(house, results), TimeWindow.oneDay(results.get(0)))
            .chart("", "", "")
            .panels();
    assertThat(panels).hasSize(3);
    assertThat(flowing(panels.get(0), "skirting")).containsOnly(25.0);
    assertThat(flowing(panels.get(1), "skirting")).containsOnly(17.0);
    assertThat(chart("pressure").drawing().words())
        .contains("kPa", "left at the branch that needs most: box room")
        .anyMatch(w -> w.startsWith("flow through the bypass, means over"));
    assertThat(chart("pressure").meaning())
        .contains("box room needs most: 17.0 kPa", "makes 25.0 kPa");
  }

  @Test
  void pressuresThatNeverMoveAreNotDrawn() {
    House manifold = SyntheticPlant.manifoldHouse(6, 24);
    assertThat(Charts.forComparison(manifold, SyntheticPlant.results(manifold)))
        .extracting(Picture::name)
        .contains("branch-flows", "network-1")
        .doesNotContain("pressure");
  }

  @Test
  void flowsThatComeAndGoAreShownByTheirMeansAndSaySo() {
    List<RunResult> restless = SyntheticPlant.results(house);
    for (RunResult result : restless) {
      double[] total = result.trace().column(HouseColumn.MASS_FLOW);
      for (int i = 0; i < total.length; i++) {
        total[i] = i % 6 < 3 ? 0 : total[i];
      }
    }
    BranchFlows flows =
        new BranchFlows(new Comparison(house, restless), TimeWindow.oneDay(restless.get(0)));
    assertThat(flows.chart("", "", "").drawing().words())
        .contains("means over 15 min; time of day, h:min");
    assertThat(chart("branch-flows").drawing().words()).contains("time of day, h:min");
  }

  @Test
  void aSetPointThatFollowsTheWeatherIsDrawnAsItMoves() {
    House compensated = compensated();
    Chart chart =
        new FlowAndReturn(new Comparison(compensated, results), TimeWindow.oneDay(results.get(0)))
            .chart("", "", "");
    assertThat(values(chart.panels().get(0), "set-point")).containsOnly(45.0);
    assertThat(chart.drawing().words())
        .contains("set-point, by the weather")
        .doesNotContain("set-point 45 °C");
  }

  private House compensated() {
    return new House(
        house.title(),
        house.designOutdoor(),
        house.weather(),
        new Building(house.rooms(), house.partitions(), house.airExchanges()),
        house.arrangements(),
        new Heating(
            house.water(),
            house.distribution(),
            house.source(),
            house.buffer(),
            new Control(
                Control.Setback.HEADS,
                "",
                0.5,
                new Thermostat.None(),
                Optional.of(new FlowCurve(1, 0, 25, 45, 0)),
                new OptimumStart.None(),
                false)),
        house.aims(),
        house.run());
  }

  @Test
  void theDrawingNamesMainsAndRoomsWithFlowsTemperaturesAndOpenings() {
    List<String> words = chart("network-1").drawing().words();
    RunResult result = results.get(0);
    int at = Moment.of(new Comparison(house, results), result).index();
    assertThat(result.trace().time()[at]).isEqualTo(7 * HOUR);
    assertThat(words)
        .contains("trunk", "ground", "upstairs", "loft", "living & dining", "box room")
        .contains("invented heat", "pump", "pump 25.0 kPa", "50 l", "46.5 °C", "in 39.0 °C");
    for (int b = 0; b < 7; b++) {
      double flow = result.trace().column(BranchColumn.MASS_FLOW, b)[at] / 988 * 3.6e6;
      assertThat(words).anyMatch(w -> w.startsWith(Math.round(flow) + " l/h, "));
      assertThat(words)
          .contains(Math.round(100 * result.trace().column(BranchColumn.OPENING, b)[at]) + " %");
    }
    double total = result.trace().column(HouseColumn.MASS_FLOW)[at] / 988 * 3.6e6;
    assertThat(words).contains(Math.round(total) + " l/h");
    assertThat(chart("network-1").title())
        .isEqualTo("Water in “skirting”, an hour after the first call for heat");
  }

  @Test
  void aShutBranchIsShutToTheEye() {
    assertThat(chart("network-1").drawing().words()).contains("shut", "no flow", "bypass, shut");
    assertThat(chart("network-1").meaning()).endsWith("shut: box room.");
  }

  @Test
  void theMoreWaterTheWiderTheLine() {
    Element svg = Jsoup.parse(chart("network-2").svg(), Parser.xmlParser());
    List<Double> flowPipes =
        svg.select("path[stroke=#8f2f1e]").eachAttr("stroke-width").stream()
            .map(Double::valueOf)
            .distinct()
            .sorted()
            .toList();
    assertThat(flowPipes).hasSizeGreaterThan(6).contains(8.0);
    double first = results.get(1).trace().column(BranchColumn.MASS_FLOW, 0)[atNetwork()];
    double total = results.get(1).trace().column(HouseColumn.MASS_FLOW)[atNetwork()];
    assertThat(flowPipes)
        .anySatisfy(w -> assertThat(w).isCloseTo(8 * Math.sqrt(first / total), within(0.01)));
  }

  private int atNetwork() {
    return Moment.of(new Comparison(house, results), results.get(1)).index();
  }

  @Test
  void noTwoRowsOfTheDrawingShareTheirPlace() {
    for (House drawn : List.of(SyntheticPlant.house(10, 24), SyntheticPlant.manifoldHouse(8, 24))) {
      for (Picture chart : Charts.forComparison(drawn, SyntheticPlant.results(drawn))) {
        if (chart.name().startsWith("network")) {
          List<Element> words = Jsoup.parse(chart.svg(), Parser.xmlParser()).select("text");
          for (int i = 0; i < words.size(); i++) {
            Element a = words.get(i);
            for (Element b : words.subList(0, i)) {
              boolean samePlace =
                  a.attr("x").equals(b.attr("x")) && Math.abs(number(a, "y") - number(b, "y")) < 14;
              assertThat(samePlace).as(a.text() + " on " + b.text()).isFalse();
            }
            assertThat(number(a, "x")).isLessThan(chart.drawing().width());
            assertThat(number(a, "y")).isLessThan(chart.drawing().height());
          }
        }
      }
    }
  }

  @Test
  void theDrawingIsOfWhenMostFlowsIfNothingDoesAnHourAfterTheCall() {
    RunResult result = results.get(0);
    double[] flow = result.trace().column(HouseColumn.MASS_FLOW);
    double[] time = result.trace().time();
    for (int i = 0; i < flow.length; i++) {
      flow[i] = time[i] == 7 * HOUR ? 0 : time[i] == 9 * HOUR ? 0.5 : flow[i];
    }
    Moment moment = Moment.of(new Comparison(house, results), result);
    assertThat(time[moment.index()]).isEqualTo(9 * HOUR);
    assertThat(moment.words()).isEqualTo("9 h into the run, when most water flows");
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.attr(attribute));
  }

  /** Values but for the gaps while the pump rests. */
  private static double[] flowing(Panel panel, String series) {
    return Arrays.stream(values(panel, series)).filter(v -> !Double.isNaN(v)).toArray();
  }

  private static double[] values(Panel panel, String series) {
    return panel.marks().stream()
        .filter(Mark.Line.class::isInstance)
        .map(Mark.Line.class::cast)
        .filter(line -> line.name().equals(series))
        .findFirst()
        .orElseThrow()
        .curve()
        .y();
  }

  private Picture chart(String name) {
    return charts.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }
}
