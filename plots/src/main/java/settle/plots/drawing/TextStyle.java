package settle.plots.drawing;

import java.awt.Color;

/**
 * How words are set.
 *
 * @param size height of the letters' body [px of the picture]
 * @param bold whether heavy
 * @param colour of the letters
 * @param anchor which point of the words the given place is
 * @param halo colour of a rim that keeps the words legible on top of lines; null for none
 */
public record TextStyle(double size, boolean bold, Color colour, Anchor anchor, Color halo) {

  /** Which end of the words stands at the given place. */
  public enum Anchor {
    START,
    MIDDLE,
    END
  }

  /** Plain words that begin at their place. */
  public TextStyle(double size, Color colour) {
    this(size, false, colour, Anchor.START, null);
  }

  /** The same, heavy. */
  public TextStyle heavy() {
    return new TextStyle(size, true, colour, anchor, halo);
  }

  /** The same, anchored otherwise. */
  public TextStyle at(Anchor other) {
    return new TextStyle(size, bold, colour, other, halo);
  }

  /** The same in another colour. */
  public TextStyle in(Color other) {
    return new TextStyle(size, bold, other, anchor, halo);
  }

  /** The same with a rim. */
  public TextStyle rimmed(Color rim) {
    return new TextStyle(size, bold, colour, anchor, rim);
  }
}
