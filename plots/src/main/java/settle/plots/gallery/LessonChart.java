package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Panel;
import settle.plots.drawing.Stroke;
import settle.plots.words.Lesson;
import settle.plots.words.Quantities;
import settle.plots.words.ReadingWords;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Figure;
import settle.sim.demo.Reading;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/**
 * A demonstration as one picture for a projector: before and after in the same panels, one panel
 * per figure drawn, the figure written beside its curve.
 */
public final class LessonChart {

  private static final List<String> SIDES = List.of("before", "after");

  /** A mean farther than this from where its curve ends is called one [-]. */
  private static final double FAR_FROM_MEAN = 0.05;

  /** Room for words above and below a moment, as a share of what is shown [-]. */
  private static final double ROOM_FOR_WORDS = 0.15;

  /** Heights of the first panel and of the others, which leave the sentences room on A4 [px]. */
  private static final int FIRST_HEIGHT = 240;

  private static final int OTHER_HEIGHT = 150;
  private static final double SHORTER_IF_MANY = 0.8;

  /** Moments closer in height than this share of the panel stand at one height [-]. */
  private static final double SAME_HEIGHT = 0.05;

  /**
   * So that a room that hardly moves does not look as if it did [K, and as much in other units].
   */
  private static final double LEAST_SPAN = 2;

  private final Lesson lesson;
  private final BeforeAndAfter runs;
  private final List<RunResult> sides;
  private final TimeWindow window;

  private LessonChart(Lesson lesson) {
    this.lesson = lesson;
    runs = lesson.runs();
    sides = List.of(runs.before(), runs.after());
    TimeWindow whole = TimeWindow.whole(runs.before());
    window =
        new TimeWindow(
            Math.max(whole.from(), whole.to() - lesson.demonstration().shown()), whole.to());
  }

  /** The picture of a demonstration; its title is the question. */
  public static Chart of(Lesson lesson) {
    List<Figure> drawn = lesson.demonstration().figures().stream().filter(Figure::drawn).toList();
    LessonChart chart = new LessonChart(lesson);
    List<Panel> panels = new ArrayList<>();
    for (Figure figure : drawn) {
      int full = panels.isEmpty() ? FIRST_HEIGHT : OTHER_HEIGHT;
      panels.add(chart.panel(figure, drawn.size() > 2 ? (int) (SHORTER_IF_MANY * full) : full));
    }
    return new Chart(
        lesson.demonstration().name(),
        lesson.wording().question(),
        lesson.wording().lookAt(),
        Overlaid.keys(List.of("before: " + lesson.before(), "after: " + lesson.after())),
        1,
        panels);
  }

  private static String name(Figure figure) {
    String course = ReadingWords.course(figure.reading());
    String named = figure.room().isEmpty() ? course : course + ", " + figure.room();
    return figure.reading().ofTime() ? named + " (marked: warm)" : named;
  }

  private Panel panel(Figure figure, int height) {
    List<Curve> curves = sides.stream().map(side -> curve(figure, side)).toList();
    Curve want = want(figure);
    double least = Math.min(want.least(), Overlaid.least(curves));
    double most = Math.max(want.most(), Overlaid.most(curves));
    if (figure.reading().ofMoment()) {
      double room = ROOM_FOR_WORDS * (most - least);
      least -= room;
      most += room;
    }
    ReadingWords words = lesson.words(figure);
    Axis vertical =
        figure.reading().stepMean()
            ? Axis.round(0, most, height / 40, words.axisUnit())
            : Axis.padded(least - 0.3, most + 0.3, LEAST_SPAN, height / 35, words.axisUnit());
    Panel panel =
        Panel.of(name(figure), height, window.axis(), vertical)
            .line("want", want, Look.ink(Stroke.FINE_DASH));
    for (int side = 0; side < SIDES.size(); side++) {
      Curve curve = curves.get(side);
      Look look = Look.arrangement(side);
      String end = words(figure, side, curve);
      panel =
          panel
              .line(SIDES.get(side), curve, look)
              .ended(new Panel.End(curve.last(), end, look.colour(), true));
    }
    if (!want.isEmpty()) {
      panel = panel.ended(want.last(), "want " + Quantities.setting(want.last()));
    }
    return panel.with(moments(figure, curves, vertical));
  }

  /** What stands at the end of a curve: its side and, unless it is marked elsewhere, the figure. */
  private String words(Figure figure, int side, Curve curve) {
    if (figure.reading().ofMoment()) {
      return SIDES.get(side);
    }
    double value = value(figure, side);
    ReadingWords words = lesson.words(figure);
    double off = words.scaled(value) - curve.last();
    boolean elsewhere = Math.abs(off) > FAR_FROM_MEAN * Math.abs(words.scaled(value));
    return SIDES.get(side)
        + (figure.reading().ofMean() && elsewhere ? " mean " : " ")
        + words.beside(value);
  }

  private double value(Figure figure, int side) {
    return side == 0 ? runs.before(figure) : runs.after(figure);
  }

  /** Marks the moments that a figure speaks of, the higher or earlier one on the upper left. */
  private List<Mark> moments(Figure figure, List<Curve> curves, Axis vertical) {
    List<Mark> marks = new ArrayList<>();
    if (!figure.reading().ofMoment()) {
      return marks;
    }
    double[] x = new double[SIDES.size()];
    double[] y = new double[SIDES.size()];
    for (int side = 0; side < SIDES.size(); side++) {
      x[side] = moment(figure, side, curves.get(side));
      y[side] = curves.get(side).at(x[side]);
    }
    double same = SAME_HEIGHT * (vertical.max() - vertical.min());
    boolean firstIsUpper = Math.abs(y[1] - y[0]) < same ? x[0] <= x[1] : y[0] >= y[1];
    for (int side = 0; side < SIDES.size(); side++) {
      if (!Double.isNaN(y[side])) {
        boolean upper = (side == 0) == firstIsUpper;
        Look look = Look.arrangement(side);
        marks.add(new Mark.Point(x[side], y[side], look));
        marks.add(
            new Mark.Words(
                lesson.words(figure).beside(value(figure, side)),
                x[side],
                y[side],
                side(upper, figure.reading() == Reading.LOWEST_TEMPERATURE),
                look.colour(),
                true));
      }
    }
    return marks;
  }

  /** Below what is lowest there is room. */
  private static Side side(boolean upper, boolean lowest) {
    return !upper ? Side.BELOW_RIGHT : lowest ? Side.BELOW_LEFT : Side.ABOVE_LEFT;
  }

  /** When that moment is [h from midnight of the first day]. */
  private double moment(Figure figure, int side, Curve curve) {
    double value = value(figure, side);
    if (figure.reading().ofTime()) {
      return (sides.get(side).firstCall() + value) / Times.HOUR;
    }
    double wanted = lesson.words(figure).scaled(value);
    double nearest = Double.POSITIVE_INFINITY;
    double at = Double.NaN;
    for (int i = 0; i < curve.x().length; i++) {
      double off = Math.abs(curve.y()[i] - wanted);
      if (off < nearest) {
        nearest = off;
        at = curve.x()[i];
      }
    }
    return at;
  }

  private Curve curve(Figure figure, RunResult side) {
    Trace trace = side.trace();
    double[] values =
        figure.reading().values(trace, runs.room(figure), BeforeAndAfter.branch(side, figure));
    double scale = lesson.words(figure).scaled(1);
    return figure.reading().stepMean()
        ? Courses.ofMeans(trace, values, window, scale)
        : Courses.ofState(trace, values, window);
  }

  /** Want of the figure's room, which is the same before and after or is drawn as it was before. */
  private Curve want(Figure figure) {
    if (!figure.reading().ofRoom()) {
      return Curve.NONE;
    }
    Trace trace = runs.before().trace();
    return Courses.ofMeans(trace, trace.column(RoomColumn.WANT, runs.room(figure)), window, 1);
  }
}
