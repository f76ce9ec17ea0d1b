package settle.plots.chart;

import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.words.Comparison;
import settle.plots.words.Quantities;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

/**
 * Heat given to each room, one bar per arrangement, figures at the bars; what pipes in the room
 * give stands apart behind what its emitters do.
 */
final class HeatByRoom {

  private static final int BAR = 19;
  private static final int GROUP_GAP = 15;
  private static final int RIGHT = 116;

  private final Comparison comparison;

  HeatByRoom(Comparison comparison) {
    this.comparison = comparison;
  }

  Picture draw(String title) {
    Sketch g = new Sketch();
    List<RunResult> results = comparison.results();
    List<String> rooms = comparison.house().rooms().stream().map(r -> r.name()).toList();
    int group = results.size() * BAR + GROUP_GAP;
    double left =
        rooms.stream().mapToDouble(r -> Lettering.width(r, HouseTheme.NAME)).max().orElse(0) + 14;
    int x = (int) Math.ceil(Math.max(left, Panel.LEFT));
    int height = rooms.size() * group;
    Panel panel =
        new Panel(
            x,
            Legend.HEIGHT + 8,
            HouseTheme.WIDTH - x - RIGHT,
            height,
            axis(),
            new Axis(0, rooms.size(), List.of(), ""));
    legend(g, x);
    panel.paint(g);
    for (int r = 0; r < rooms.size(); r++) {
      double top = panel.area().getY() + r * group + GROUP_GAP / 2.0;
      g.text(
          rooms.get(r),
          x - 10,
          top + results.size() * BAR / 2.0 + 5,
          HouseTheme.NAME.at(Anchor.END));
      for (int i = 0; i < results.size(); i++) {
        RoomFigures figures = results.get(i).rooms().get(r);
        double ofEmitters = panel.px(figures.heat() / 3.6e6);
        double end = panel.px((figures.heat() + figures.pipeHeat()) / 3.6e6);
        Rectangle2D bar =
            new Rectangle2D.Double(x, top + i * BAR + 1, Math.max(ofEmitters - x, 0.5), BAR - 2);
        bar(g, bar, i);
        if (figures.pipeHeat() > 0) {
          pipes(g, new Rectangle2D.Double(bar.getMaxX(), bar.getY(), end - ofEmitters, BAR - 2), i);
        }
        TextStyle style = HouseTheme.LABEL.in(HouseTheme.INK);
        g.text(
            Quantities.kilowattHours(figures.heat())
                + (figures.pipeHeat() > 0
                    ? " + " + Quantities.kilowattHours(figures.pipeHeat())
                    : "")
                + " kWh",
            end + 7,
            bar.getMaxY() - 4,
            style.rimmed(HouseTheme.PAPER));
      }
    }
    panel.caption(g);
    return g.picture(
        title, HouseTheme.WIDTH, (int) panel.area().getMaxY() + Panel.BELOW + Panel.CAPTION + 4);
  }

  private Axis axis() {
    double most =
        comparison.results().stream()
            .flatMap(r -> r.rooms().stream())
            .mapToDouble(r -> r.heat() + r.pipeHeat())
            .max()
            .orElse(0);
    return Axis.round(0, most / 3.6e6, 6, "heat given to the room, kWh");
  }

  private void legend(Sketch g, double left) {
    double x = left;
    for (int i = 0; i < comparison.results().size(); i++) {
      String name = comparison.results().get(i).arrangement().name();
      bar(g, new Rectangle2D.Double(x, 7, 46, 14), i);
      g.text(name, x + 54, 19, HouseTheme.LABEL.in(HouseTheme.INK));
      x += 54 + Lettering.width(name, HouseTheme.LABEL) + 28;
    }
    if (hasPipes()) {
      pipes(g, new Rectangle2D.Double(x, 7, 46, 14), 0);
      g.text("dotted: from pipes in the room", x + 54, 19, HouseTheme.LABEL.in(HouseTheme.INK));
    }
  }

  private boolean hasPipes() {
    return comparison.results().stream()
        .flatMap(r -> r.rooms().stream())
        .anyMatch(r -> r.pipeHeat() > 0);
  }

  /** Dots in an outline: no arrangement's bar looks like it. */
  private static void pipes(Sketch g, Rectangle2D part, int arrangement) {
    g.setColor(HouseTheme.arrangement(arrangement).colour());
    g.setStroke(HouseTheme.THIN);
    for (double x = part.getX() + 4; x + 3 < part.getMaxX(); x += 6) {
      for (double y = part.getY() + 3; y + 2 < part.getMaxY(); y += 5) {
        g.fill(new Rectangle2D.Double(x, y, 2, 2));
      }
    }
    g.draw(part);
  }

  /** Full, hatched, cross-ruled or empty: told apart without colour. */
  private static void bar(Sketch g, Rectangle2D bar, int arrangement) {
    Look look = HouseTheme.arrangement(arrangement);
    g.setColor(look.colour());
    int pattern = arrangement % 4;
    if (pattern == 0) {
      g.fill(bar);
      return;
    }
    g.setStroke(HouseTheme.THIN);
    if (pattern < 3) {
      g.setClip(bar);
      double lean = pattern == 1 ? bar.getHeight() : 0;
      Path2D hatch = new Path2D.Double();
      for (double x = bar.getX() - bar.getHeight(); x < bar.getMaxX(); x += 6) {
        hatch.moveTo(x, bar.getMaxY());
        hatch.lineTo(x + lean, bar.getY());
      }
      g.draw(hatch);
      g.setClip(null);
    }
    g.draw(bar);
  }
}
