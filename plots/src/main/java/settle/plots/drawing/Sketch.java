package settle.plots.drawing;

import java.util.ArrayList;
import java.util.List;

/** A drawing that comes about, back to front. */
public final class Sketch {

  private final List<Mark> marks = new ArrayList<>();

  /** What has been drawn. */
  public Drawing drawing(double width, double height) {
    return new Drawing((int) Math.ceil(width), (int) Math.ceil(height), marks);
  }

  public void fill(Path path, int colour) {
    marks.add(new Mark.Fill(path, colour));
  }

  public void line(Path path, int colour, Stroke stroke) {
    marks.add(new Mark.Line(path, colour, stroke, null));
  }

  public void line(Path path, int colour, Stroke stroke, Box within) {
    marks.add(new Mark.Line(path, colour, stroke, within));
  }

  /** Puts words; none if they are empty. */
  public void text(String words, double x, double y, TextStyle style) {
    if (!words.isEmpty()) {
      marks.add(new Mark.Words(words, x, y, style));
    }
  }
}
