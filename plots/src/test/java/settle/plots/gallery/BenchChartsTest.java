package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Panel;
import settle.plots.drawing.Picture;
import settle.plots.figures.BenchFigures;
import settle.plots.figures.Table;
import settle.plots.words.BenchWords;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.Disturbance;
import settle.sim.bench.InBranch;
import settle.sim.bench.LoadLine;
import settle.sim.bench.RigFindings;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/** Pictures and words of a bench whose findings are made up, but for the rig's. */
class BenchChartsTest {

  private static final double HOUR = 3600;

  private final House house = SyntheticRuns.house(3, 24);

  private static WaxValve head(double play, double lag) {
    return new WaxValve(
        "head",
        20,
        2,
        play,
        new WaxValve.Lags(lag, 0, 0),
        0.0233,
        0,
        0.5,
        0.3,
        0.6,
        RoomSensing.OPERATIVE);
  }

  private BenchFindings findings(Valve valve, double swing) {
    Branch branch = house.arrangements().get(0).branches().get(0).withValve(valve);
    return new BenchFindings(
        house,
        "skirting",
        branch.room(),
        branch.emitter().name(),
        branch,
        RigFindings.of(valve, house.water().density()),
        new InBranch(0.02, 0.018, 0.021, 1000, 5000, 0.2, Double.NaN),
        List.of(line(-3, 1000), line(9, 600)),
        List.of(course(swing)));
  }

  /** A load line through the origin of heat at 10 °C and a valve line that falls straight. */
  private static LoadLine line(double outdoor, double atWant) {
    double[] room = new double[61];
    double[] load = new double[61];
    double[] offered = new double[61];
    for (int i = 0; i < room.length; i++) {
      room[i] = 18 + 0.1 * i;
      load[i] = atWant * (room[i] - 10) / 11;
      offered[i] = Math.max(atWant + 1000 * (21 - room[i]), 0);
    }
    return new LoadLine(outdoor, 60, room, load, offered, 21, atWant, 21, 0.01, 0.2);
  }

  private static Course course(double swing) {
    double[] time = new double[72 * 12 + 1];
    double[] operative = new double[time.length];
    for (int i = 0; i < time.length; i++) {
      time[i] = -24 * HOUR + i * 300;
      operative[i] = 21.3 + swing / 2 * Math.sin(2 * Math.PI * time[i] / HOUR);
    }
    return new Course(Disturbance.SUN, "", time, operative, new double[time.length], 21, 21.2);
  }

  @Test
  void theLoopIsNumberedAndItsHysteresisMarked() {
    Picture loop = chart(findings(head(0.4, 1200), 0), "hysteresis-loop");
    assertThat(loop.drawing().words())
        .contains("1", "2", "3", "4", "hysteresis C = 0.40 K", "S − 1 K", "S − 2 K", "l/h");
    assertThat(loop.drawing().words())
        .anyMatch(w -> w.contains("21.80 °C, the temperature point S"));
    assertThat(loop.meaning()).contains("0.40 K lower");
  }

  @Test
  void withoutPlayThereIsOneWayOnly() {
    Picture loop = chart(findings(head(0, 1200), 0), "hysteresis-loop");
    assertThat(loop.drawing().words()).contains("1", "3").doesNotContain("2", "4");
  }

  @Test
  void theTimeConstantIsReadOffTheResponse() {
    Picture response = chart(findings(head(0.4, 1200), 0), "response");
    assertThat(response.drawing().words())
        .contains(
            "time constant 20.0 min",
            "63 % of the change",
            "play taken up: nothing moves for 10.2 min");
  }

  @Test
  void theLinesOfThePictureCrossWhereTheMarkStands() {
    BenchFindings findings = findings(head(0.4, 1200), 0);
    LoadLine cold = findings.lines().get(0);
    Curve load = new Curve(cold.room(), cold.load());
    Curve offered = new Curve(cold.room(), cold.offered());
    assertThat(load.at(cold.crossing())).isCloseTo(offered.at(cold.crossing()), within(1e-6));
    assertThat(chart(findings, "load-line").drawing().words())
        .contains("21.00 °C, 1.00 kW", "21.00 °C, 600 W", "room at −3 °C", "valve and emitter")
        .anyMatch(w -> w.startsWith("want "));
  }

  @Test
  void everyRoomTestIsOnTheSameScalesAndKeepsWithinItsPanel() {
    Chart chart = new RoomTestsPicture(findings(head(0.4, 1200), 1)).chart("", "", "");
    for (Panel panel : chart.panels()) {
      assertThat(panel.y()).isEqualTo(chart.panels().get(0).y());
      assertThat(panel.y().min()).isLessThan(20.9);
      assertThat(panel.y().max()).isGreaterThan(21.7);
    }
  }

  @Test
  void huntingAndAMissedLimitAreSaid() {
    BenchFindings loose = findings(head(1.3, 3000), 1);
    assertThat(String.join(" ", new BenchWords(loose).answer()))
        .contains(
            "outside a limit of EN 215: hysteresis C, at nominal flow (1.30 K, limit 1.00 K) and response time Z",
            "20 % authority: lockshield and pipe set the flow",
            "swings by up to 1.0 K");
    Table limits =
        new BenchFigures(loose).study(List.of(), List.of()).sections().get(2).tables().get(1);
    assertThat(limits.rows())
        .extracting(row -> row.get(3).text())
        .containsExactly("no", "yes", "yes", "no", "–");
  }

  @Test
  void aValveThatNothingMovesHasNoLoopAndNoLimits() {
    BenchFindings open = findings(new FixedOpening("open valve", 0.8), 0);
    assertThat(BenchCharts.of(open))
        .extracting(Picture::name)
        .containsExactly("load-line", "room-tests");
    assertThat(new BenchFigures(open).study(List.of(), List.of()).sections().get(2).tables())
        .hasSize(1);
    assertThat(new BenchWords(open).answer().get(0)).contains("does not apply");
  }

  private static Picture chart(BenchFindings findings, String name) {
    return BenchCharts.of(findings).stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    name + " of " + Arrays.toString(BenchCharts.of(findings).toArray())));
  }
}
