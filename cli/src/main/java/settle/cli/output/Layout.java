package settle.cli.output;

/**
 * How text is set.
 *
 * @param width longest line [characters]
 * @param full whether everything is printed, or only the answer and what it rests on
 */
public record Layout(int width, boolean full) {

  /** Width where none is known [characters]. */
  public static final int USUAL_WIDTH = 80;

  /** All of it, for a file. */
  public static final Layout FILE = new Layout(USUAL_WIDTH, true);

  /** Below this no table can be read [characters]. */
  private static final int NARROWEST = 40;

  /** Longest line that an eye follows back [characters]; tables may be wider. */
  private static final int WIDEST_TEXT = 100;

  public Layout {
    width = Math.max(width, NARROWEST);
  }

  /** Longest line of running text [characters]. */
  int textWidth() {
    return Math.min(width, WIDEST_TEXT);
  }
}
