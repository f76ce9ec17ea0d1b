package settle.plots.gallery;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import settle.plots.chart.Axis;
import settle.plots.chart.Chart;
import settle.plots.chart.Curve;
import settle.plots.chart.Key;
import settle.plots.chart.Look;
import settle.plots.chart.Mark;
import settle.plots.chart.Mark.Side;
import settle.plots.chart.Marker;
import settle.plots.chart.Panel;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Stroke.Dash;
import settle.plots.drawing.Theme;
import settle.plots.words.Comparison;
import settle.plots.words.Focus;
import settle.plots.words.Quantities;
import settle.sim.emitter.Emitter;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.result.Profile;
import settle.sim.result.RunResult;

/**
 * Temperature of the water along the emitters of one room at chosen times after the first call for
 * heat: along skirting the hot front can be seen to travel. One panel per arrangement.
 *
 * @param room which, by position in the house
 */
record EmitterProfiles(Comparison comparison, int room) {

  private static final int HEIGHT = 290;

  /** About how wide a plot is if it stands alone, and if it has a neighbour [px]. */
  private static final double[] WIDTHS = {840, 370};

  /** A fall from inlet to outlet that may be a front [K]. */
  private static final double LEAST_FRONT = 8;

  /** Half of a front's fall happens within this share of the way [-]. */
  private static final double STEEP = 0.3;

  Chart chart(String name, String title, String meaning) {
    List<RunResult> shown = shown();
    List<Profile> all = shown.stream().flatMap(r -> profiles(r).stream()).toList();
    List<Curve> curves = all.stream().map(p -> new Curve(p.position(), p.temperature())).toList();
    Axis temperature = Axis.exact(Overlaid.least(curves) - 2, Overlaid.most(curves) + 2, 7, "°C");
    int columns = shown.size() == 1 ? 1 : 2;
    return new Chart(
        name,
        title,
        meaning,
        shown.stream().anyMatch(this::comesBack)
            ? List.of(
                Key.line("on the way out", look(0, 1)),
                Key.line("on the way back, in the same face", look(0, 1).with(Stroke.THIN)))
            : List.of(),
        columns,
        shown.stream().map(r -> panel(r, temperature, WIDTHS[columns - 1])).toList());
  }

  /** Arrangements that have profiles of an emitter in the room. */
  List<RunResult> shown() {
    return comparison.results().stream().filter(r -> !profiles(r).isEmpty()).toList();
  }

  /** Whether the water comes back in the face in which it went out. */
  private boolean comesBack(RunResult result) {
    int b = new Focus(comparison).emitter(result, room).orElseThrow();
    return tubes(result.arrangement().branches().get(b)) > 1;
  }

  private static int tubes(Branch branch) {
    return branch.emitter().run().map(Emitter.Run::tubes).orElse(1);
  }

  private Panel panel(RunResult result, Axis temperature, double plotWidth) {
    int b = new Focus(comparison).emitter(result, room).orElseThrow();
    Arrangement arrangement = result.arrangement();
    Branch branch = arrangement.branches().get(b);
    boolean run = branch.emitter().run().isPresent();
    int tubes = tubes(branch);
    Axis way =
        branch
            .emitter()
            .run()
            .map(
                r ->
                    Axis.exact(
                        0,
                        r.longest(),
                        6,
                        r.tubes() == 1
                            ? "along the skirting from the inlet, m"
                            : "along the skirting from its connections, m"))
            .orElseGet(
                () -> Axis.exact(0, 100, 5, "way through the " + branch.emitter().noun() + ", %"));
    List<Profile> profiles = profiles(result);
    Panel panel =
        Panel.of(arrangement.name() + ": " + arrangement.label(b), HEIGHT, way, temperature);
    List<Mark.Words> fronts = new ArrayList<>();
    for (int k = 0; k < profiles.size(); k++) {
      Profile p = profiles.get(k);
      String words = Quantities.duration(p.sinceCall());
      Profile out = p.out(tubes);
      Curve curve = curve(out, run ? 1 : 100);
      Look look = look(k, profiles.size());
      panel = panel.line(words, curve, look);
      if (tubes > 1) {
        panel = panel.line(words + ", back", curve(p.back(), 1), look.with(Stroke.THIN));
      }
      int front = run ? front(out) : -1;
      if (front < 0) {
        panel = panel.ended(curve.last(), words);
      } else {
        fronts.add(atFront(words, curve, front, temperature, k));
      }
    }
    return panel.with(apart(fronts, way, plotWidth));
  }

  private List<Profile> profiles(RunResult result) {
    int b = new Focus(comparison).emitter(result, room).orElse(-1);
    return result.profiles().stream()
        .filter(p -> p.branch() == b)
        .sorted(Comparator.comparingDouble(Profile::sinceCall))
        .toList();
  }

  private static Curve curve(Profile profile, double scale) {
    double[] x = profile.position().clone();
    for (int i = 0; i < x.length; i++) {
      x[i] *= scale;
    }
    return new Curve(x, profile.temperature());
  }

  /** The later, the darker and heavier; dashes change too. */
  private static Look look(int k, int count) {
    Dash[] dashes = {Dash.DOTTED, Dash.SHORT, Dash.LONG};
    double late = count == 1 ? 1 : (double) k / (count - 1);
    int grey = (int) Math.round(110 * (1 - late));
    int red = 0x17 + grey * (0x9a - 0x17) / 150;
    int colour = (red << 16) | ((0x37 + grey / 2) << 8) | (0x5e + grey / 3);
    Stroke stroke =
        k == count - 1
            ? new Stroke(3.2)
            : k < dashes.length ? new Stroke(2.2, dashes[k]) : Stroke.HEAVY;
    return new Look(colour, stroke, Marker.NONE);
  }

  /** A front is named where it stands, each at a height of its own. */
  private static Mark.Words atFront(String words, Curve curve, int front, Axis temperature, int k) {
    double height = temperature.max() - temperature.min();
    double y = temperature.max() - height * (0.3 + 0.13 * (k % 5));
    int at = front;
    while (at + 1 < curve.y().length && curve.y()[at] > y) {
      at++;
    }
    return new Mark.Words(words, curve.x()[at], y, Side.RIGHT);
  }

  /** Right of its front, or left of it where the next front is too near. */
  private static List<Mark.Words> apart(List<Mark.Words> fronts, Axis way, double plotWidth) {
    List<Mark.Words> apart = new ArrayList<>();
    for (int i = 0; i < fronts.size(); i++) {
      Mark.Words f = fronts.get(i);
      double needed =
          (Lettering.width(f.words(), Theme.LABEL) + 10) * (way.max() - way.min()) / plotWidth;
      double right = i + 1 < fronts.size() ? fronts.get(i + 1).x() : way.max();
      double left = i > 0 ? fronts.get(i - 1).x() : way.min();
      boolean before = right - f.x() < needed && f.x() - left >= needed;
      apart.add(new Mark.Words(f.words(), f.x(), f.y(), before ? Side.LEFT : Side.RIGHT));
    }
    return apart;
  }

  /**
   * Last point of the hot water before a front, or -1 where the temperature falls gently all the
   * way.
   */
  private static int front(Profile profile) {
    double[] t = profile.temperature();
    double[] x = profile.position();
    double fall = t[0] - t[t.length - 1];
    if (fall < LEAST_FRONT) {
      return -1;
    }
    double middle = (t[0] + t[t.length - 1]) / 2;
    int i = 0;
    while (i + 1 < t.length && t[i + 1] >= middle) {
      i++;
    }
    int before = i;
    while (before > 0 && t[before] < t[0] - 0.25 * fall) {
      before--;
    }
    int after = i;
    while (after + 1 < t.length && t[after] > t[t.length - 1] + 0.25 * fall) {
      after++;
    }
    return x[after] - x[before] < STEEP * (x[x.length - 1] - x[0]) ? before : -1;
  }
}
