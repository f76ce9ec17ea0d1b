package settle.plots.drawing;

/**
 * The look of every picture: dark ink on white, few colours, and nothing that depends on colour
 * alone. Colours are 0xRRGGBB. Sizes are for a picture 960 wide: shown 1600 wide the smallest
 * letters are 23 px high, on A4 between margins 7.5 pt.
 */
public final class Theme {

  /** Width of every picture [px]. */
  public static final int WIDTH = 960;

  /** Letters, axes, the want-temperature. */
  public static final int INK = 0x1d2329;

  /** Secondary text. */
  public static final int FAINT_INK = 0x565d63;

  /** The palest ink a line may have. */
  public static final int PALE_INK = 0x858d93;

  /** Grid. */
  public static final int GRID = 0xdfe2e0;

  /** Where one day ends and the next begins. */
  public static final int DAY = 0x9aa19f;

  /** What is allowed or wanted: the band round want, the range a head throttles in. */
  public static final int BAND = 0xefe6cf;

  public static final int PAPER = 0xffffff;

  /** Axis labels, captions. */
  public static final TextStyle FAINT = new TextStyle(14, FAINT_INK);

  /** Figures and remarks. */
  public static final TextStyle LABEL = FAINT.in(INK);

  /** Names inside a picture. */
  public static final TextStyle NAME = new TextStyle(15, INK).heavy();

  /** What a picture shows. */
  static final TextStyle TITLE = new TextStyle(21, INK).heavy();

  private Theme() {}
}
