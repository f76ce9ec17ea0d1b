package settle.plots.drawing;

/**
 * The one family of letters and how wide they run, so that words find their place where nothing can
 * be measured. Widths are those of DejaVu Sans, which Verdana and Bitstream Vera share.
 */
public final class Lettering {

  /** Families of much the same widths first, so that words set elsewhere fit where they stand. */
  static final String CSS_FAMILIES = "'DejaVu Sans', Verdana, 'Bitstream Vera Sans', sans-serif";

  /** Advance of the printable characters of ASCII, from the space on [thousandths of the size]. */
  private static final int[] PLAIN = {
    318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636, 636,
    636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698, 770, 632,
    575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732, 684, 989, 685,
    611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579,
    278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838
  };

  private static final int[] BOLD = {
    348, 456, 521, 838, 696, 1002, 872, 306, 457, 457, 523, 838, 380, 415, 380, 365, 696, 696, 696,
    696, 696, 696, 696, 696, 696, 696, 400, 400, 838, 838, 838, 580, 1000, 774, 762, 734, 830, 683,
    683, 821, 837, 372, 372, 775, 637, 995, 837, 850, 733, 850, 770, 720, 682, 812, 774, 1103, 771,
    724, 725, 457, 365, 457, 838, 500, 500, 675, 716, 593, 716, 678, 435, 716, 712, 343, 343, 665,
    343, 1042, 712, 687, 716, 716, 493, 595, 478, 712, 652, 924, 645, 652, 582, 712, 365, 712, 838
  };

  /** What any other character takes at most, as far as it is a letter of Europe. */
  private static final int OTHER = 840;

  private static final int SQUARE = 1000;
  private static final int FIRST_SQUARE = 0x2e80;

  private Lettering() {}

  /** How wide words are [px]; a little less if they hold letters that are not of ASCII. */
  public static double width(String words, TextStyle style) {
    int[] widths = style.bold() ? BOLD : PLAIN;
    int sum = 0;
    for (int i = 0; i < words.length(); i++) {
      int letter = words.charAt(i) - ' ';
      sum +=
          letter >= 0 && letter < widths.length
              ? widths[letter]
              : words.charAt(i) < FIRST_SQUARE ? OTHER : SQUARE;
    }
    return sum * style.size() / 1000;
  }

  /** Words as far as they fit, the end replaced by an ellipsis where they do not. */
  public static String cut(String words, double width, TextStyle style) {
    if (width(words, style) <= width) {
      return words;
    }
    int end = words.length();
    while (end > 1 && width(words.substring(0, end) + "…", style) > width) {
      end--;
    }
    return words.substring(0, end).stripTrailing() + "…";
  }
}
