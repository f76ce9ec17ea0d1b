package settle.plots.drawing;

import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing surface that remembers what is drawn on it, so that one drawing serves both as vector
 * graphics and as pixels.
 *
 * <p>It mends two habits of the chart library that would spoil print. A curve comes as single
 * segments, each of which would start its dashes anew: segments that carry one another on are
 * joined. And its words come as outlines: so the library is asked for none, and words are put here
 * with {@link #text}, as words.
 */
public final class Sketch extends VectorGraphics2D {

  private final List<Mark> marks = new ArrayList<>();

  /** What was drawn, as a picture. */
  public Picture picture(String title, int width, int height) {
    return new Picture(title, width, height, marks);
  }

  /**
   * Puts words; none if they are empty.
   *
   * @param words what to say
   * @param x where they are anchored [px]
   * @param y their base line [px]
   * @param style how they look
   */
  public void text(String words, double x, double y, TextStyle style) {
    if (words.isEmpty()) {
      return;
    }
    double[] place = {x, y};
    getTransform().transform(place, 0, place, 0, 1);
    marks.add(new Mark.Text(words, place[0], place[1], style, null));
  }

  @Override
  public void draw(Shape shape) {
    BasicStroke stroke = (BasicStroke) getStroke();
    Color colour = getColor();
    if (colour.getAlpha() == 0) {
      return;
    }
    Path2D path = placed(shape);
    Rectangle2D clip = placedClip();
    if (shape instanceof Line2D line
        && !marks.isEmpty()
        && marks.get(marks.size() - 1) instanceof Mark.Line last) {
      double[] ends = ends(line);
      if (last.continues(stroke, colour, clip, ends[0], ends[1])) {
        last.path().lineTo(ends[2], ends[3]);
        return;
      }
    }
    marks.add(new Mark.Line(path, stroke, colour, clip));
  }

  @Override
  public void fill(Shape shape) {
    if (getColor().getAlpha() > 0) {
      marks.add(new Mark.Fill(placed(shape), getColor(), placedClip()));
    }
  }

  private Path2D placed(Shape shape) {
    return new Path2D.Double(shape, getTransform());
  }

  private double[] ends(Line2D line) {
    double[] ends = {line.getX1(), line.getY1(), line.getX2(), line.getY2()};
    getTransform().transform(ends, 0, ends, 0, 2);
    return ends;
  }

  /** Clips are rectangles here, and stay so: nothing is drawn rotated. */
  private Rectangle2D placedClip() {
    Shape clip = getClip();
    return clip == null ? null : getTransform().createTransformedShape(clip).getBounds2D();
  }
}
