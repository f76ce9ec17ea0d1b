package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.words.Lesson;
import settle.plots.words.Quantities;
import settle.plots.words.ReadingWords;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Figure;
import settle.sim.demo.Reading;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * A demonstration as one picture for a projector: before and after in the same panels, one panel
 * per figure drawn, the figure written beside its curve.
 */
public final class LessonChart {

  private static final List<String> SIDES = List.of("before", "after");
  private static final Look WANT = Look.line(HouseTheme.INK, HouseTheme.FINE_DASH);
  private static final TextStyle BESIDE = HouseTheme.NAME;
  private static final TextStyle WANT_WORDS = HouseTheme.LABEL.in(HouseTheme.INK);

  /** From the plot's right edge to the words beside it, and from those to the paper's edge [px]. */
  private static final int WORDS_AWAY = 15;

  private static final int MARGIN = 12;
  private static final int MARKER = 10;

  /** A mean farther than this from where its curve ends is called one [-]. */
  private static final double FAR_FROM_MEAN = 0.05;

  /** Room for words above and below a moment, as a share of what is shown [-]. */
  private static final double ROOM_FOR_WORDS = 0.15;

  private static final double HOUR = 3600;

  /** Heights of the first panel and of the others, which leave the sentences room on A4 [px]. */
  private static final int FIRST_HEIGHT = 240;

  private static final int OTHER_HEIGHT = 150;
  private static final double SHORTER_IF_MANY = 0.8;

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
    return new Chart(
        lesson.demonstration().name(),
        lesson.demonstration().question(),
        lesson.demonstration().lookAt(),
        new LessonChart(lesson).draw());
  }

  private Picture draw() {
    List<Figure> drawn = lesson.demonstration().figures().stream().filter(Figure::drawn).toList();
    int width = plotWidth(drawn);
    Sketch g = new Sketch();
    new Legend(g, Panel.LEFT)
        .line("before: " + lesson.before(), HouseTheme.arrangement(0))
        .line("after: " + lesson.after(), HouseTheme.arrangement(1));
    int y = Legend.HEIGHT;
    for (int i = 0; i < drawn.size(); i++) {
      int full = i == 0 ? FIRST_HEIGHT : OTHER_HEIGHT;
      int height = drawn.size() > 2 ? (int) (SHORTER_IF_MANY * full) : full;
      Panel panel = panel(drawn.get(i), y + Panel.ABOVE, width, height);
      panel.paint(g);
      moments(drawn.get(i), panel, g);
      panel.name(g, name(drawn.get(i)));
      beside(drawn.get(i), panel).paint(g, panel.area());
      if (i == drawn.size() - 1) {
        panel.caption(g);
      }
      y += Panel.ABOVE + height + Panel.BELOW + 6;
    }
    return g.picture(lesson.demonstration().question(), HouseTheme.WIDTH, y + Panel.CAPTION);
  }

  private static String name(Figure figure) {
    String course = ReadingWords.course(figure.reading());
    String named = figure.room().isEmpty() ? course : course + ", " + figure.room();
    return figure.reading().ofTime() ? named + " (marked: warm)" : named;
  }

  /** As wide as the words beside the curves leave. */
  private int plotWidth(List<Figure> drawn) {
    double widest = 0;
    for (Figure figure : drawn) {
      for (int side = 0; side < SIDES.size(); side++) {
        widest = Math.max(widest, Lettering.width(words(figure, side), BESIDE));
      }
      Curve want = want(figure);
      if (!want.isEmpty()) {
        widest = Math.max(widest, Lettering.width(wantWords(want), WANT_WORDS));
      }
    }
    return HouseTheme.WIDTH - Panel.LEFT - WORDS_AWAY - MARGIN - (int) Math.ceil(widest);
  }

  private Panel panel(Figure figure, int y, int width, int height) {
    List<Curve> curves = new ArrayList<>();
    for (RunResult side : sides) {
      curves.add(curve(figure, side));
    }
    Curve want = want(figure);
    double least = want.least();
    double most = want.most();
    for (Curve curve : curves) {
      least = Math.min(least, curve.least());
      most = Math.max(most, curve.most());
    }
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
    Panel panel = new Panel(Panel.LEFT, y, width, height, TimeAxis.clock(window, width), vertical);
    panel.line("want", want, WANT);
    for (int side = 0; side < SIDES.size(); side++) {
      panel.line(SIDES.get(side), curves.get(side), HouseTheme.arrangement(side));
    }
    return panel;
  }

  private EndLabels beside(Figure figure, Panel panel) {
    EndLabels labels = new EndLabels();
    for (int side = 0; side < SIDES.size(); side++) {
      Curve curve = curve(figure, sides.get(side));
      TextStyle style = BESIDE.in(HouseTheme.arrangement(side).colour());
      labels.add(panel.py(last(curve)), words(figure, side), style);
    }
    Curve want = want(figure);
    if (!want.isEmpty()) {
      labels.add(panel.py(last(want)), wantWords(want), WANT_WORDS);
    }
    return labels;
  }

  /** What stands at the end of a curve: its side and, unless it is marked elsewhere, the figure. */
  private String words(Figure figure, int side) {
    if (figure.reading().ofMoment()) {
      return SIDES.get(side);
    }
    double value = value(figure, side);
    ReadingWords words = lesson.words(figure);
    double off = words.scaled(value) - last(curve(figure, sides.get(side)));
    boolean elsewhere = Math.abs(off) > FAR_FROM_MEAN * Math.abs(words.scaled(value));
    return SIDES.get(side)
        + (figure.reading().ofMean() && elsewhere ? " mean " : " ")
        + words.beside(value);
  }

  private double value(Figure figure, int side) {
    return side == 0 ? runs.before(figure) : runs.after(figure);
  }

  /** Marks the moments that a figure speaks of, the higher or earlier one on the upper left. */
  private void moments(Figure figure, Panel panel, Sketch g) {
    if (!figure.reading().ofMoment()) {
      return;
    }
    double[] x = new double[SIDES.size()];
    double[] y = new double[SIDES.size()];
    for (int side = 0; side < SIDES.size(); side++) {
      Curve curve = curve(figure, sides.get(side));
      double at = moment(figure, side, curve);
      x[side] = panel.px(at);
      y[side] = panel.py(curve.at(at));
    }
    boolean sameHeight = Math.abs(y[1] - y[0]) < MARKER;
    boolean firstIsUpper = sameHeight ? x[0] <= x[1] : y[0] <= y[1];
    for (int side = 0; side < SIDES.size(); side++) {
      if (!Double.isNaN(y[side])) {
        mark(g, panel, figure, side, x[side], y[side], (side == 0) == firstIsUpper);
      }
    }
  }

  private void mark(
      Sketch g, Panel panel, Figure figure, int side, double x, double y, boolean upper) {
    Look look = HouseTheme.arrangement(side);
    g.setColor(look.colour());
    look.marker().paint(g, x, y, MARKER);
    String words = lesson.words(figure).beside(value(figure, side));
    double reach = Lettering.width(words, BESIDE) + 2 * MARKER;
    boolean fitsLeft = x - reach > panel.area().getX();
    boolean fitsRight = x + reach < panel.area().getMaxX();
    boolean left = fitsLeft && (upper || !fitsRight);
    boolean above = upper && figure.reading() != Reading.LOWEST_TEMPERATURE;
    g.text(
        words,
        left ? x - MARKER : x + MARKER,
        above ? y - MARKER : y + 2 * MARKER,
        BESIDE.in(look.colour()).rimmed(HouseTheme.PAPER).at(left ? Anchor.END : Anchor.START));
  }

  /** When that moment is [h from midnight of the first day]. */
  private double moment(Figure figure, int side, Curve curve) {
    double value = value(figure, side);
    if (figure.reading().ofTime()) {
      return (sides.get(side).firstCall() + value) / HOUR;
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

  private static String wantWords(Curve want) {
    return "want " + Quantities.setting(last(want));
  }

  private static double last(Curve curve) {
    for (int i = curve.y().length - 1; i >= 0; i--) {
      if (!Double.isNaN(curve.y()[i])) {
        return curve.y()[i];
      }
    }
    return Double.NaN;
  }

  private Curve curve(Figure figure, RunResult side) {
    Trace trace = side.trace();
    double[] values =
        figure.reading().values(trace, runs.room(figure), BeforeAndAfter.branch(side, figure));
    double scale = lesson.words(figure).scaled(1);
    return figure.reading().stepMean()
        ? Curve.ofMeans(trace, values, window, 0, scale)
        : Curve.ofState(trace, values, window, 0, 1);
  }

  /** Want of the figure's room, which is the same before and after or is drawn as it was before. */
  private Curve want(Figure figure) {
    if (!figure.reading().ofRoom()) {
      return new Curve(new double[] {0}, new double[] {Double.NaN});
    }
    Trace trace = runs.before().trace();
    return Curve.ofMeans(trace, trace.column(RoomColumn.WANT, runs.room(figure)), window, 0, 1);
  }
}
