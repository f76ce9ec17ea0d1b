package settle.plots.drawing;

/** One thing on a drawing, in the drawing's own coordinates [px]. */
public sealed interface Mark {

  /** Whatever shows marks: a file of vector graphics, an image. */
  interface Surface {

    void fill(Fill fill);

    void line(Line line);

    void words(Words words);
  }

  /** Draws itself. */
  void on(Surface surface);

  /** A filled shape. */
  record Fill(Path path, int colour) implements Mark {

    @Override
    public void on(Surface surface) {
      surface.fill(this);
    }
  }

  /**
   * A line along a path.
   *
   * @param within where it shows; null for anywhere
   */
  record Line(Path path, int colour, Stroke stroke, Box within) implements Mark {

    @Override
    public void on(Surface surface) {
      surface.line(this);
    }
  }

  /** Words, anchored on their base line. */
  record Words(String words, double x, double y, TextStyle style) implements Mark {

    @Override
    public void on(Surface surface) {
      surface.words(this);
    }
  }
}
