package settle.plots.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** One thing on a picture, in the picture's own coordinates. */
sealed interface Mark {

  /** Where it may show; null for anywhere. */
  Rectangle2D clip();

  /** A filled shape. */
  record Fill(Path2D shape, Color colour, Rectangle2D clip) implements Mark {}

  /** A line along a path. */
  record Line(Path2D path, BasicStroke stroke, Color colour, Rectangle2D clip) implements Mark {

    /** Whether a line drawn like this from here would only carry this one on. */
    boolean continues(
        BasicStroke otherStroke, Color otherColour, Rectangle2D otherClip, double x, double y) {
      return path.getCurrentPoint().getX() == x
          && path.getCurrentPoint().getY() == y
          && stroke.equals(otherStroke)
          && colour.equals(otherColour)
          && (clip == null ? otherClip == null : clip.equals(otherClip));
    }
  }

  /** Words. */
  record Text(String words, double x, double y, TextStyle style, Rectangle2D clip)
      implements Mark {}
}
