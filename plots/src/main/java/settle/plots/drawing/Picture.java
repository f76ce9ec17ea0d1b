package settle.plots.drawing;

import java.awt.Color;
import java.util.List;

/**
 * A finished drawing: what to show, ready to be written as vector graphics or as pixels, with its
 * title above or, for a page that has a heading of its own, without.
 */
public final class Picture {

  /** Room above the drawing for its title [px]. */
  static final int TITLE_HEIGHT = 56;

  /** Paper left, right and below of a picture that stands alone [px]. */
  static final int MARGIN = 18;

  /** Base line of the title [px]; the drawing begins at 0. */
  static final int TITLE_BASE = -22;

  static final TextStyle TITLE_STYLE = new TextStyle(21, new Color(0x1d2329)).heavy();

  private final String title;
  private final int width;
  private final int height;
  private final List<Mark> marks;

  Picture(String title, int width, int height, List<Mark> marks) {
    this.title = title;
    this.width = width;
    this.height = height;
    this.marks = List.copyOf(marks);
  }

  /** What it shows, for those who cannot see it. */
  public String title() {
    return title;
  }

  /** Width in its own coordinates [px]. */
  public int width() {
    return width;
  }

  /** Height in its own coordinates [px]. */
  public int height() {
    return height;
  }

  /** What is on it, back to front. */
  List<Mark> marks() {
    return marks;
  }

  /** Every piece of text on it, in drawing order. */
  public List<String> words() {
    return marks.stream()
        .filter(m -> m instanceof Mark.Text)
        .map(m -> ((Mark.Text) m).words())
        .toList();
  }

  /**
   * As an SVG element with real text, without the title.
   *
   * @param id prefix of the identifiers inside, unique in the page it will stand in
   */
  public String svg(String id) {
    return new SvgWriter(id).write(this, false);
  }

  /**
   * As an SVG document with real text, the title on top.
   *
   * @param id prefix of the identifiers inside
   */
  public String titledSvg(String id) {
    return new SvgWriter(id).write(this, true);
  }

  /**
   * As a PNG file, the title on top.
   *
   * @param pixels width of the image [px]
   */
  public byte[] png(int pixels) {
    return PngWriter.write(this, pixels);
  }
}
