package settle.plots.gallery;

import java.util.List;
import settle.plots.drawing.Box;
import settle.plots.drawing.Illustration;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Path;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.drawing.Theme;
import settle.plots.words.FirstFixWords;
import settle.plots.words.Quantities;
import settle.sim.emitter.Emitter;
import settle.sim.firstfix.FirstFix.Panel;
import settle.sim.firstfix.Laying;
import settle.sim.firstfix.Laying.Foot;
import settle.sim.firstfix.Laying.Joint;
import settle.sim.firstfix.Laying.Obstacle;
import settle.sim.firstfix.Laying.Stretch;
import settle.sim.house.Tails;

/**
 * The foot of a room's walls unfolded, with a run along it, to scale. Walls are cut above what is
 * of interest.
 */
public final class Elevation {

  /** Width of the paper that pictures are meant for, between its margins [m]. */
  private static final double PAPER_WIDTH = 0.180;

  /** Scales that a rule has. */
  private static final int[] SCALES = {40, 50, 75, 100, 125, 150, 200, 250, 300, 500, 1000, 2000};

  /** Height up to which walls are shown [m], and what that takes at least [px]. */
  private static final double SHOWN = 0.6;

  private static final double LEAST_SHOWN = 46;
  private static final double EDGE = 8;
  private static final double BETWEEN_WALLS = 18;
  private static final double TOP = 24;
  private static final double TAIL = 16;
  private static final int SKIRTING = 0xd5d9d6;
  private static final TextStyle SMALL = new TextStyle(13, Theme.INK);

  private final Panel panel;
  private final Laying laying;
  private final Sketch g = new Sketch();
  private final int scale;

  /** Pixels of a metre. */
  private final double metre;

  private final double floor;
  private final double[] left;

  private Elevation(Panel panel) {
    this.panel = panel;
    laying = panel.laying().orElseThrow();
    scale = scale(laying.feet());
    metre = pixels(scale);
    floor = TOP + Math.max(SHOWN * metre, LEAST_SHOWN);
    left = new double[laying.feet().size()];
    double x = EDGE;
    for (int f = 0; f < left.length; f++) {
      x += f > 0 && !laying.feet().get(f).joined() ? BETWEEN_WALLS : 0;
      left[f] = x;
      x += laying.feet().get(f).wall().length() * metre;
    }
  }

  /**
   * Draws the walls of an emitter that runs along them.
   *
   * @param panel the emitter
   * @param number of the picture, for its name
   */
  public static Picture of(Panel panel, int number) {
    Elevation drawn = new Elevation(panel);
    drawn.walls();
    drawn.run();
    drawn.connection();
    return new Illustration(
        "run-" + number,
        panel.place(),
        FirstFixWords.scale(drawn.scale),
        drawn.g.drawing(Theme.WIDTH, drawn.floor + 3 * TAIL));
  }

  private static double pixels(int scale) {
    return Theme.WIDTH / (PAPER_WIDTH * scale);
  }

  /** The largest scale at which the walls fit on paper. */
  private static int scale(List<Foot> feet) {
    double length = feet.stream().mapToDouble(f -> f.wall().length()).sum();
    double gaps = BETWEEN_WALLS * feet.stream().skip(1).filter(f -> !f.joined()).count();
    for (int scale : SCALES) {
      if (length * pixels(scale) + gaps + 2 * EDGE <= Theme.WIDTH) {
        return scale;
      }
    }
    return SCALES[SCALES.length - 1];
  }

  private double x(int foot, double along) {
    return left[foot] + along * metre;
  }

  private double y(double height) {
    return floor - height * metre;
  }

  private void walls() {
    for (int f = 0; f < left.length; f++) {
      Foot foot = laying.feet().get(f);
      double right = x(f, foot.wall().length());
      g.line(Path.line(left[f], TOP, right, TOP), Theme.PALE_INK, Stroke.FINE_DASH);
      for (Obstacle obstacle : foot.standing()) {
        obstacle(f, obstacle);
      }
      g.line(Path.line(left[f], TOP, left[f], floor), Theme.INK, Stroke.THIN);
      g.line(Path.line(right, TOP, right, floor), Theme.INK, Stroke.THIN);
      g.line(Path.line(left[f], floor, right, floor), Theme.INK, Stroke.HEAVY);
      String named = foot.wall().name() + " " + Quantities.number(foot.wall().length(), 2) + " m";
      double room = right - left[f] - 4;
      String shown =
          Lettering.width(named, SMALL) <= room
              ? named
              : Lettering.cut(foot.wall().name(), room, SMALL);
      g.text(shown, left[f] + 2, TOP - 8, SMALL);
    }
  }

  private void obstacle(int foot, Obstacle obstacle) {
    double from = x(foot, obstacle.standing().from());
    double to = x(foot, obstacle.standing().to());
    Box box = new Box(from, TOP, to - from, floor - TOP);
    Stroke line = obstacle.known() ? Stroke.THIN : Stroke.FINE_DASH;
    for (double x = from - box.height(); x < to; x += 9) {
      g.line(Path.line(x, floor, x + box.height(), TOP), Theme.GRID, Stroke.HAIRLINE, box);
    }
    g.line(box.path(), Theme.PALE_INK, line);
    String letter =
        FirstFixWords.letter(obstacle.standing().what()) + (obstacle.known() ? "" : "?");
    g.text(letter, (from + to) / 2, (TOP + floor) / 2 - 2, Theme.NAME.at(Anchor.MIDDLE).onLines());
    if (to - from > Lettering.width("0.00", SMALL)) {
      g.text(
          Quantities.number(obstacle.standing().width(), 2),
          (from + to) / 2,
          floor - 8,
          SMALL.at(Anchor.MIDDLE).onLines());
    }
  }

  private void run() {
    double height = panel.branch().emitter().run().orElseThrow().faceHeight();
    List<Stretch> stretches = laying.stretches();
    for (int s = 0; s < stretches.size(); s++) {
      Stretch stretch = stretches.get(s);
      double from = x(stretch.foot(), stretch.from());
      double to = x(stretch.foot(), stretch.to());
      Box face = new Box(from, y(height), to - from, height * metre);
      g.fill(face.path(), SKIRTING);
      g.line(face.path(), Theme.INK, Stroke.THIN);
      dimension(from, to, stretch.length());
      if (s + 1 < stretches.size()) {
        joint(s, to, x(stretches.get(s + 1).foot(), stretches.get(s + 1).from()));
      }
    }
    farEnds(height);
  }

  private void dimension(double from, double to, double length) {
    double y = floor + 2 * TAIL;
    g.line(Path.line(from, y, to, y), Theme.INK, Stroke.HAIRLINE);
    for (double x : new double[] {from, to}) {
      g.line(Path.line(x - 3, y + 4, x + 3, y - 4), Theme.INK, Stroke.THIN);
    }
    String words = Quantities.number(length, 2);
    if (Lettering.width(words, SMALL) < to - from + 8) {
      g.text(words, (from + to) / 2, y + 14, SMALL.at(Anchor.MIDDLE).onLines());
    }
  }

  /** A pipe under what is crossed; a question where it is not known whether walls meet. */
  private void joint(int stretch, double from, double to) {
    if (laying.after(stretch) == Joint.CORNER) {
      return;
    }
    Path under =
        Path.from(from - 4, floor)
            .to(from - 4, floor + TAIL / 2)
            .to(to + 4, floor + TAIL / 2)
            .to(to + 4, floor);
    g.line(under, Theme.INK, Stroke.FINE_DASH);
  }

  private void farEnds(double height) {
    List<Stretch> stretches = laying.stretches();
    Stretch first = stretches.get(0);
    Stretch last = stretches.get(stretches.size() - 1);
    boolean both = panel.farEnds() == 2;
    if (both || !laying.rightwards()) {
      farEnd(x(first.foot(), first.from()), 1, height);
    }
    if (both || laying.rightwards()) {
      farEnd(x(last.foot(), last.to()), -1, height);
    }
  }

  private void farEnd(double x, int inwards, double height) {
    double size = Math.min(height * metre, 10);
    g.fill(new Box(inwards > 0 ? x : x - size, y(height), size, height * metre).path(), Theme.INK);
    g.text(
        "far end",
        x,
        floor + TAIL + 10,
        SMALL.at(inwards > 0 ? Anchor.START : Anchor.END).onLines());
  }

  private void connection() {
    Emitter.Joints joints = panel.branch().emitter().joints().orElseThrow();
    Stretch stretch = laying.at(laying.connection());
    double end = x(stretch.foot(), laying.onWall(laying.connection()));
    double inwards = laying.rightwards() ? 1 : -1;
    boolean above = panel.branch().tails().flowAbove();
    double flow = above ? joints.upperConnection() : joints.lowerConnection();
    double back = above ? joints.lowerConnection() : joints.upperConnection();
    boolean apart = panel.branch().emitter().run().orElseThrow().tubes() == 1;
    tail("F", end + inwards * 6, flow, inwards);
    if (apart) {
      Stretch far = laying.stretches().get(laying.rightwards() ? laying.stretches().size() - 1 : 0);
      double other = x(far.foot(), laying.rightwards() ? far.to() : far.from());
      tail("R", other - inwards * 16, back, -inwards);
    } else {
      tail("R", end + inwards * 22, back, inwards);
    }
  }

  private void tail(String letter, double x, double height, double inwards) {
    double y = y(height);
    Tails.From from = panel.branch().tails().from();
    double to =
        switch (from) {
          case BELOW -> floor + TAIL;
          case ABOVE -> TOP + 2;
          case WALL -> y;
        };
    if (from != Tails.From.WALL) {
      g.line(Path.line(x, y, x, to), Theme.INK, new Stroke(3.2));
    }
    g.fill(Path.disc(x, y, 5), Theme.INK);
    if (from == Tails.From.WALL) {
      g.fill(Path.disc(x, y, 2.4), Theme.PAPER);
    }
    g.text(
        letter,
        x,
        from == Tails.From.ABOVE ? TOP + 16 : floor + TAIL + 13,
        Theme.NAME.at(Anchor.MIDDLE).onLines());
    if (from == Tails.From.ABOVE) {
      return;
    }
    g.line(Path.line(x, floor + TAIL, x + inwards, floor + TAIL), Theme.INK, Stroke.HAIRLINE);
  }
}
