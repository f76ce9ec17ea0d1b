package settle.plots.gallery;

import settle.plots.drawing.Box;
import settle.plots.drawing.Illustration;
import settle.plots.drawing.Path;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.drawing.Theme;
import settle.sim.emitter.Emitter;

/** The end of a profile with its two connections, seen along the wall: heights above the floor. */
public final class ProfileEnd {

  /** Pixels of a metre. */
  private static final double METRE = 900;

  private static final double WALL = 26;
  private static final double BELOW = 30;
  private static final double RIGHT = 150;
  private static final TextStyle FIGURE = new TextStyle(15, Theme.INK);

  private ProfileEnd() {}

  /**
   * Draws it.
   *
   * @param emitter a run of the profile
   * @param number of the picture, for its name
   */
  public static Picture of(Emitter emitter, int number) {
    Emitter.Joints joints = emitter.joints().orElseThrow();
    double height = emitter.run().orElseThrow().faceHeight();
    Sketch g = new Sketch();
    double floor = 24 + Math.max(height, joints.upperConnection()) * METRE;
    double face = WALL + joints.depth() * METRE;
    Box wall = new Box(WALL - 14, 4, 14, floor - 4);
    for (double y = 0; y < floor + 14; y += 8) {
      g.line(Path.line(WALL - 14, y, WALL, y - 14), Theme.PALE_INK, Stroke.HAIRLINE, wall);
    }
    g.line(Path.line(WALL, 4, WALL, floor), Theme.INK, Stroke.THIN);
    g.line(Path.line(WALL - 14, floor, face + RIGHT, floor), Theme.INK, Stroke.HEAVY);
    Box profile = new Box(WALL, floor - height * METRE, joints.depth() * METRE, height * METRE);
    g.fill(profile.path(), 0xe4e7e5);
    g.line(profile.path(), Theme.INK, Stroke.THIN);
    height(g, face, floor, height, "top", 0);
    height(g, face, floor, joints.upperConnection(), "upper", 1);
    height(g, face, floor, joints.lowerConnection(), "lower", 1);
    g.text(millimetres(joints.depth()) + " deep", WALL, floor + 20, FIGURE);
    return new Illustration(
        "end-" + number, emitter.name(), "", g.drawing(face + RIGHT, floor + BELOW));
  }

  private static void height(
      Sketch g, double face, double floor, double height, String name, int tube) {
    double y = floor - height * METRE;
    double middle = (WALL + face) / 2;
    if (tube > 0) {
      g.fill(Path.disc(middle, y, 8), Theme.INK);
      g.fill(Path.disc(middle, y, 4), Theme.PAPER);
    }
    g.line(Path.line(tube > 0 ? middle + 8 : face, y, face + 16, y), Theme.INK, Stroke.HAIRLINE);
    g.text(name + " " + millimetres(height), face + 20, y + 5, FIGURE.at(Anchor.START));
  }

  private static String millimetres(double metres) {
    return Math.round(1000 * metres) + " mm";
  }
}
