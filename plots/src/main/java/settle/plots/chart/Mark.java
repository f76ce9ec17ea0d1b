package settle.plots.chart;

import settle.plots.drawing.Box;
import settle.plots.drawing.Lettering;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.TextStyle.Anchor;
import settle.plots.drawing.Theme;

/** One thing on a panel, in the units of its axes. */
public sealed interface Mark {

  /** Draws it. */
  void draw(Plot plot);

  /** Whether the grid lies on top of it. */
  default boolean belowGrid() {
    return false;
  }

  /** Room it may need right of the plot [px]. */
  default double beyond() {
    return 0;
  }

  /** A line that has a name. */
  record Line(String name, Curve curve, Look look) implements Mark {

    @Override
    public void draw(Plot plot) {
      plot.line(curve, look);
    }
  }

  /** What is shaded between two curves, which have the same places. */
  record Band(Curve lower, Curve upper) implements Mark {

    @Override
    public boolean belowGrid() {
      return true;
    }

    @Override
    public void draw(Plot plot) {
      plot.band(lower, upper);
    }
  }

  /** A single point. */
  record Point(double x, double y, Look look) implements Mark {

    @Override
    public void draw(Plot plot) {
      look.marker().draw(plot.g(), plot.px(x), plot.py(y), Marker.SIZE, look.colour());
    }
  }

  /** A rule through all of the plot, at what happens at an instant. */
  record Instant(double x) implements Mark {

    @Override
    public boolean belowGrid() {
      return true;
    }

    @Override
    public void draw(Plot plot) {
      Box area = plot.area();
      double at = plot.px(x);
      plot.g().line(Path.line(at, area.y(), at, area.bottom()), Theme.PALE_INK, Stroke.HAIRLINE);
    }
  }

  /** Pattern of a bar, so that it differs without colour. */
  enum Pattern {
    FULL,
    HATCHED,
    RULED,
    EMPTY,
    DOTTED;

    /** That of the i-th arrangement. */
    public static Pattern arrangement(int i) {
      return values()[i % 4];
    }

    void draw(Sketch g, Box box, int colour) {
      if (this == FULL) {
        g.fill(box.path(), colour);
        return;
      }
      Path inside = Path.from(box.x(), box.y());
      if (this == DOTTED) {
        for (double x = box.x() + 4; x + 3 < box.right(); x += 6) {
          for (double y = box.y() + 3; y + 2 < box.bottom(); y += 5) {
            inside.move(x, y + 1).to(x + 2, y + 1);
          }
        }
        g.line(inside, colour, new Stroke(2));
      } else if (this != EMPTY) {
        double lean = this == HATCHED ? box.height() : 0;
        for (double x = box.x() - box.height(); x < box.right(); x += 6) {
          inside.move(x, box.bottom()).to(x + lean, box.y());
        }
        g.line(inside, colour, Stroke.THIN, box);
      }
      g.line(box.path(), colour, Stroke.THIN);
    }
  }

  /**
   * A bar from left to right.
   *
   * @param from its beginning
   * @param to its end
   * @param y its middle
   * @param width how wide it is [unit of the vertical axis]
   * @param words behind its end; empty for none
   */
  record Bar(
      double from, double to, double y, double width, int colour, Pattern pattern, String words)
      implements Mark {

    @Override
    public void draw(Plot plot) {
      double x = plot.px(from);
      double top = plot.py(y + width / 2);
      double end = plot.px(to);
      Box box = new Box(x, top, Math.max(end - x, 0.5), plot.py(y - width / 2) - top);
      pattern.draw(plot.g(), box, colour);
      plot.g().text(words, end + 8, plot.py(y) + 5, Theme.LABEL.onLines());
    }

    @Override
    public double beyond() {
      return Lettering.width(words, Theme.LABEL) + 16;
    }
  }

  /**
   * A line from the left to a marker.
   *
   * @param to its end; not a number for one that ends nowhere
   * @param y its height
   * @param words behind its end
   */
  record Stem(double to, double y, Look look, String words) implements Mark {

    @Override
    public void draw(Plot plot) {
      boolean endless = Double.isNaN(to);
      double end = endless ? plot.area().right() : plot.px(to);
      double height = plot.py(y);
      plot.g().line(Path.line(plot.area().x(), height, end, height), look.colour(), look.stroke());
      if (!endless) {
        look.marker().draw(plot.g(), end, height, Marker.SIZE, look.colour());
      }
      plot.g().text(words, end + 10, height + 5, Theme.LABEL.onLines());
    }

    @Override
    public double beyond() {
      return Lettering.width(words, Theme.LABEL) + 18;
    }
  }

  /** On which side of a place words stand; they change sides where there is no room. */
  enum Side {
    RIGHT(5),
    LEFT(5),
    ABOVE_RIGHT(-9),
    ABOVE_LEFT(-9),
    BELOW_RIGHT(19),
    BELOW_LEFT(19);

    /** From the place down to the base line [px]. */
    final double down;

    Side(double down) {
      this.down = down;
    }

    boolean isLeft() {
      return this == LEFT || this == ABOVE_LEFT || this == BELOW_LEFT;
    }
  }

  /** Words at a place. */
  record Words(String words, double x, double y, Side side, int colour, boolean bold)
      implements Mark {

    private static final double GAP = 9;

    /** A remark. */
    public Words(String words, double x, double y, Side side) {
      this(words, x, y, side, Theme.INK, false);
    }

    @Override
    public void draw(Plot plot) {
      TextStyle style = (bold ? Theme.NAME : Theme.LABEL).in(colour).onLines();
      double reach = Lettering.width(words, style) + GAP;
      double at = plot.px(x);
      boolean fitsLeft = at - reach >= plot.area().x();
      boolean fitsRight = at + reach <= plot.area().right();
      boolean left = side.isLeft() ? fitsLeft || !fitsRight : fitsLeft && !fitsRight;
      plot.g()
          .text(
              words,
              left ? at - GAP : at + GAP,
              plot.py(y) + side.down,
              left ? style.at(Anchor.END) : style);
    }
  }

  /** A number in a circle. */
  record Numbered(int number, double x, double y) implements Mark {

    private static final double RADIUS = 13;

    @Override
    public void draw(Plot plot) {
      Path disc = Path.disc(plot.px(x), plot.py(y), RADIUS);
      plot.g().fill(disc, Theme.PAPER);
      plot.g().line(disc, Theme.INK, new Stroke(2));
      TextStyle style = Theme.NAME.at(Anchor.MIDDLE);
      plot.g().text(Integer.toString(number), plot.px(x), plot.py(y) + 5.5, style);
    }
  }

  /** An arrow head in the middle of the way from one place to another. */
  record Arrow(double x1, double y1, double x2, double y2, int colour) implements Mark {

    private static final double LENGTH = 13;

    @Override
    public void draw(Plot plot) {
      double wayX = plot.px(x2) - plot.px(x1);
      double wayY = plot.py(y2) - plot.py(y1);
      double way = Math.hypot(wayX, wayY);
      if (way < 3 * LENGTH) {
        return;
      }
      double dx = LENGTH * wayX / way;
      double dy = LENGTH * wayY / way;
      double tipX = plot.px(x1) + (wayX + dx) / 2;
      double tipY = plot.py(y1) + (wayY + dy) / 2;
      plot.g()
          .fill(
              Path.from(tipX, tipY)
                  .to(tipX - dx - dy / 2, tipY - dy + dx / 2)
                  .to(tipX - dx + dy / 2, tipY - dy - dx / 2)
                  .close(),
              colour);
    }
  }

  /** A span between two places at one height, with what it measures above its right end. */
  record Span(double x1, double x2, double y, String words) implements Mark {

    @Override
    public void draw(Plot plot) {
      double left = plot.px(x1);
      double right = plot.px(x2);
      double height = plot.py(y);
      Path span = Path.line(left, height, right, height);
      span.move(left, height - 6).to(left, height + 6);
      span.move(right, height - 6).to(right, height + 6);
      plot.g().line(span, Theme.INK, new Stroke(1.8));
      new Words(words, Math.max(x1, x2), y, Side.ABOVE_RIGHT).draw(plot);
    }
  }
}
