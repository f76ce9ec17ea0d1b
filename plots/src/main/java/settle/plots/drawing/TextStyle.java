package settle.plots.drawing;

/**
 * How words are set.
 *
 * @param size height of the letters' body [px of the picture]
 * @param bold whether heavy
 * @param colour of the letters
 * @param anchor which point of the words the given place is
 * @param rimmed whether a rim of paper keeps them legible on top of lines
 */
public record TextStyle(double size, boolean bold, int colour, Anchor anchor, boolean rimmed) {

  /** Which end of the words stands at the given place. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Width of the rim [px]; half of it shows. */
  public static final double RIM = 5;

  /** Plain words that begin at their place. */
  public TextStyle(double size, int colour) {
    this(size, false, colour, Anchor.START, false);
  }

  /** These words, heavy. */
  public TextStyle heavy() {
    return new TextStyle(size, true, colour, anchor, rimmed);
  }

  /** These words, anchored otherwise. */
  public TextStyle at(Anchor other) {
    return new TextStyle(size, bold, colour, other, rimmed);
  }

  /** These words in another colour. */
  public TextStyle in(int other) {
    return new TextStyle(size, bold, other, anchor, rimmed);
  }

  /** These words with a rim. */
  public TextStyle onLines() {
    return new TextStyle(size, bold, colour, anchor, true);
  }
}
