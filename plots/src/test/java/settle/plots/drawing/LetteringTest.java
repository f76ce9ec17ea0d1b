package settle.plots.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import org.junit.jupiter.api.Test;

class LetteringTest {

  private static final FontRenderContext EXACT = new FontRenderContext(null, true, true);

  /** Where pictures are painted with that very family, letters take the room they are given. */
  @Test
  void everyLetterIsAsWideAsItIsPainted() {
    for (boolean bold : new boolean[] {false, true}) {
      TextStyle style = new TextStyle(1000, bold, 0, TextStyle.Anchor.START, false);
      Font font = new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, 1000);
      assumeTrue(Math.abs(painted("0", font) - Lettering.width("0", style)) < 1);
      for (char letter = ' '; letter <= '~'; letter++) {
        String word = String.valueOf(letter);
        assertThat(Lettering.width(word, style))
            .as(word)
            .isCloseTo(painted(word, font), within(1.0));
      }
      for (String word : new String[] {"°C", "−3", "½", "“étage”", "Küche ±"}) {
        assertThat(Lettering.width(word, style)).as(word).isGreaterThan(0.8 * painted(word, font));
      }
    }
  }

  @Test
  void longWordsAreCutWhereTheyNoLongerFit() {
    String cut = Lettering.cut("a very long name of a room", 80, Theme.NAME);
    assertThat(cut).startsWith("a very").endsWith("…");
    assertThat(Lettering.width(cut, Theme.NAME)).isLessThanOrEqualTo(80);
    assertThat(Lettering.cut("hall", 80, Theme.NAME)).isEqualTo("hall");
  }

  private static double painted(String words, Font font) {
    return font.getStringBounds(words, EXACT).getWidth();
  }
}
