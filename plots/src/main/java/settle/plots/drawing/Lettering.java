package settle.plots.drawing;

import java.awt.Font;
import java.awt.font.FontRenderContext;

/** The one family of letters, for measuring and for both ways of writing. */
public final class Lettering {

  /**
   * Families of much the same widths first, so that text set elsewhere fits where it was measured
   * here.
   */
  static final String CSS_FAMILIES = "'DejaVu Sans', Verdana, 'Bitstream Vera Sans', sans-serif";

  /** Width of the rim round words that stand on lines [px]; half of it shows. */
  static final double HALO_WIDTH = 5;

  private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 1);
  private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 1);

  private Lettering() {}

  /** How wide words are [px]. */
  public static double width(String words, TextStyle style) {
    return font(style).getStringBounds(words, MEASURE).getWidth();
  }

  static Font font(TextStyle style) {
    return (style.bold() ? BOLD : PLAIN).deriveFont((float) style.size());
  }
}
