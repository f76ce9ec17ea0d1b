package settle.plots.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.words.Comparison;
import settle.plots.words.Focus;
import settle.plots.words.Quantities;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.result.Profile;
import settle.sim.result.RunResult;

/**
 * Temperature of the water along the emitters of one room at chosen times after the first call for
 * heat: along skirting the hot front can be seen to travel. One panel per arrangement.
 */
final class EmitterProfiles {

  private static final int HEIGHT = 290;
  private static final int LABEL_ROOM = 66;
  private static final double LABEL_GAP = 8;

  /** A fall from inlet to outlet that may be a front [K]. */
  private static final double LEAST_FRONT = 8;

  /** Half of a front's fall happens within this share of the way [-]. */
  private static final double STEEP = 0.3;

  private final Comparison comparison;
  private final int room;

  /**
   * @param room which, by position in the house
   */
  EmitterProfiles(Comparison comparison, int room) {
    this.comparison = comparison;
    this.room = room;
  }

  Picture draw(String title) {
    Sketch g = new Sketch();
    List<RunResult> shown = shown();
    List<Panel> panels = panels(shown);
    for (int i = 0; i < panels.size(); i++) {
      Panel panel = panels.get(i);
      Branch branch = branch(shown.get(i));
      panel.paint(g);
      Arrangement arrangement = shown.get(i).arrangement();
      panel.name(g, arrangement.name() + ": " + arrangement.label(emitter(shown.get(i))));
      panel.caption(g);
      label(g, panel, profiles(shown.get(i)), branch);
    }
    Panel last = panels.get(panels.size() - 1);
    return g.picture(
        title, HouseTheme.WIDTH, (int) last.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  /** Arrangements that have profiles of an emitter in the room. */
  List<RunResult> shown() {
    return comparison.results().stream().filter(r -> !profiles(r).isEmpty()).toList();
  }

  List<Panel> panels(List<RunResult> shown) {
    int columns = shown.size() == 1 ? 1 : 2;
    int width = (HouseTheme.WIDTH - columns * (Panel.LEFT + LABEL_ROOM)) / columns;
    Axis vertical = temperatureAxis(shown);
    List<Panel> panels = new ArrayList<>();
    for (int i = 0; i < shown.size(); i++) {
      int x = Panel.LEFT + i % columns * (width + Panel.LEFT + LABEL_ROOM);
      int y =
          Panel.ABOVE + 4 + i / columns * (HEIGHT + Panel.ABOVE + Panel.BELOW + Panel.CAPTION + 12);
      Panel panel = new Panel(x, y, width, HEIGHT, wayAxis(branch(shown.get(i))), vertical);
      List<Profile> profiles = profiles(shown.get(i));
      for (int k = 0; k < profiles.size(); k++) {
        Profile p = profiles.get(k);
        panel.line(
            Quantities.duration(p.sinceCall()),
            curve(p, branch(shown.get(i))),
            look(k, profiles.size()));
      }
      panels.add(panel);
    }
    return panels;
  }

  private Branch branch(RunResult result) {
    return result.arrangement().branches().get(emitter(result));
  }

  private int emitter(RunResult result) {
    return new Focus(comparison).emitter(result, room).orElseThrow();
  }

  private List<Profile> profiles(RunResult result) {
    int b = new Focus(comparison).emitter(result, room).orElse(-1);
    return result.profiles().stream()
        .filter(p -> p.branch() == b)
        .sorted(Comparator.comparingDouble(Profile::sinceCall))
        .toList();
  }

  private static Curve curve(Profile profile, Branch branch) {
    double scale = branch.emitter().run().isPresent() ? 1 : 100;
    double[] x = profile.position().clone();
    for (int i = 0; i < x.length; i++) {
      x[i] *= scale;
    }
    return new Curve(x, profile.temperature());
  }

  private static Axis wayAxis(Branch branch) {
    return branch
        .emitter()
        .run()
        .map(run -> Axis.exact(0, run.length(), 6, "along the skirting from the inlet, m"))
        .orElseGet(() -> Axis.exact(0, 100, 5, "water’s way through the radiator, %"));
  }

  private Axis temperatureAxis(List<RunResult> shown) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (RunResult result : shown) {
      for (Profile p : profiles(result)) {
        for (double t : p.temperature()) {
          least = Math.min(least, t);
          most = Math.max(most, t);
        }
      }
    }
    return Axis.exact(least - 2, most + 2, 7, "°C");
  }

  /** The later, the darker and heavier; dashes change too. */
  private static Look look(int k, int count) {
    BasicStroke[] dashes = {
      HouseTheme.stroke(2.2f, 2.5f, 4),
      HouseTheme.stroke(2.2f, 7, 4),
      HouseTheme.stroke(2.2f, 14, 4),
      HouseTheme.SOLID
    };
    double late = count == 1 ? 1 : (double) k / (count - 1);
    int grey = (int) Math.round(110 * (1 - late));
    Color colour = new Color(0x17 + grey * (0x9a - 0x17) / 150, 0x37 + grey / 2, 0x5e + grey / 3);
    return Look.line(
        colour,
        count - 1 - k == 0 ? HouseTheme.stroke(3.2f) : dashes[Math.min(k, dashes.length - 1)]);
  }

  /** A front is named where it stands, any other line at its end. */
  private void label(Sketch g, Panel panel, List<Profile> profiles, Branch branch) {
    EndLabels ends = new EndLabels();
    List<FrontLabel> fronts = new ArrayList<>();
    for (int k = 0; k < profiles.size(); k++) {
      Profile p = profiles.get(k);
      String words = Quantities.duration(p.sinceCall());
      double[] t = p.temperature();
      int front = branch.emitter().run().isPresent() ? front(p) : -1;
      if (front < 0) {
        ends.add(panel.py(t[t.length - 1]), words);
      } else {
        double y = panel.area().getY() + panel.area().getHeight() * (0.3 + 0.13 * (k % 5));
        int at = front;
        while (at + 1 < t.length && panel.py(t[at]) < y) {
          at++;
        }
        fronts.add(new FrontLabel(words, panel.px(p.position()[at]), y + 5));
      }
    }
    ends.paint(g, panel.area());
    paint(g, panel, fronts);
  }

  private record FrontLabel(String words, double x, double y) {}

  /** Right of its front, or left of it where the next front is too near. */
  private static void paint(Sketch g, Panel panel, List<FrontLabel> fronts) {
    TextStyle style = HouseTheme.LABEL.in(HouseTheme.INK).rimmed(HouseTheme.PAPER);
    for (int i = 0; i < fronts.size(); i++) {
      FrontLabel f = fronts.get(i);
      double needed = Lettering.width(f.words(), style) + 1.2 * LABEL_GAP;
      double right = i + 1 < fronts.size() ? fronts.get(i + 1).x() : panel.area().getMaxX();
      double left = i > 0 ? fronts.get(i - 1).x() : panel.area().getX();
      if (right - f.x() < needed && f.x() - left >= needed) {
        g.text(f.words(), f.x() - LABEL_GAP, f.y(), style.at(Anchor.END));
      } else {
        g.text(f.words(), f.x() + LABEL_GAP, f.y(), style);
      }
    }
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
