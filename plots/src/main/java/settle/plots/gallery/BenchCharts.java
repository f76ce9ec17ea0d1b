package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import settle.plots.chart.Chart;
import settle.plots.drawing.Picture;
import settle.plots.words.BenchWords;
import settle.plots.words.Quantities;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.HysteresisLoop;
import settle.sim.bench.LoadLine;
import settle.sim.bench.StepResponse;

/** The pictures of a valve on the bench, made to be shown to a class. */
public final class BenchCharts {

  private BenchCharts() {}

  /**
   * Loop, response, load line, room tests: those there is something to show of.
   *
   * @param findings what the bench found
   */
  public static List<Picture> of(BenchFindings findings) {
    List<Picture> charts = new ArrayList<>();
    findings.rig().loop().ifPresent(loop -> charts.add(loop(findings, loop)));
    findings.rig().onward().ifPresent(onward -> charts.add(response(findings, onward)));
    charts.add(loadLine(findings));
    if (!findings.courses().isEmpty()) {
      charts.add(roomTests(findings));
    }
    return charts;
  }

  private static Chart loop(BenchFindings findings, HysteresisLoop loop) {
    String title = "Shut and open again: the path of the valve";
    String meaning =
        "Temperature at the head changed so slowly that its lag does not count, 10 kPa across the valve. "
            + (loop.throttles()
                ? "The way back lies "
                    + Quantities.number(loop.hysteresis(), 2)
                    + " K lower: the play is taken up before the stem follows."
                : "It opens "
                    + Quantities.number(loop.hysteresis(), 2)
                    + " K below where it shuts, with nothing in between.");
    return new HysteresisPicture(loop, findings.house().water())
        .chart("hysteresis-loop", title, meaning);
  }

  private static Chart response(BenchFindings findings, StepResponse onward) {
    String title = "After a step of the temperature at the head";
    double minutes = onward.timeTo(StepResponse.READ_AT) / 60;
    String meaning =
        findings.thermostatic()
            ? "63 % of the change has happened after "
                + Quantities.number(minutes, 1)
                + " min: the head's time constant, dead time included."
                + (findings.rig().turnedBack().filter(r -> r.standsStill() > 60).isPresent()
                    ? " On turning back nothing moves until the play is taken up, and the change is smaller."
                    : "")
            : "It is 63 % open after " + Quantities.number(minutes, 1) + " min.";
    return new ResponsePicture(findings).chart("response", title, meaning);
  }

  private static Chart loadLine(BenchFindings findings) {
    String title =
        "Where the room is at rest: its load line against "
            + (findings.thermostatic() ? "the valve's band" : "what the valve lets through");
    String meaning =
        "Rising: the heat that keeps "
            + findings.branch().room()
            + " that warm. Falling: the heat that the valve lets its emitter give in a room that warm. They cross where the room is at rest, not run: "
            + findings.lines().stream().map(BenchCharts::crossing).collect(Collectors.joining(", "))
            + "; want is "
            + Quantities.setting(findings.want())
            + ".";
    return new LoadLinePicture(findings).chart("load-line", title, meaning);
  }

  private static String crossing(LoadLine line) {
    return Quantities.temperature(line.crossing())
        + " at "
        + Quantities.setting(line.outdoor())
        + " outdoors";
  }

  private static Chart roomTests(BenchFindings findings) {
    String title = "In its room: one thing changes at a time";
    String meaning =
        "Room temperature, with the change at 0 h: "
            + findings.courses().stream()
                .map(BenchCharts::outcome)
                .collect(Collectors.joining("; "))
            + ".";
    return new RoomTestsPicture(findings).chart("room-tests", title, meaning);
  }

  private static String outcome(Course course) {
    return BenchWords.change(course)
        + ", "
        + BenchWords.settled(course)
        + ", "
        + against(course.droop());
  }

  private static String against(double droop) {
    return Quantities.number(Math.abs(droop), 2)
        + " K "
        + (droop > 0 ? "below" : "above")
        + " want";
  }
}
