package settle.plots.drawing;

/** Something to look at, with what it shows and what that means: a chart or a drawing. */
public interface Picture {

  /** Room above a drawing for its title [px]. */
  int TITLE_HEIGHT = 56;

  /** Paper left, right and below of a picture that stands alone [px]. */
  int MARGIN = 18;

  /** Short name, fit for a file name. */
  String name();

  /** What is drawn. */
  String title();

  /** What it says, in a sentence or two, from the figures it was drawn from. */
  String meaning();

  /** What is drawn, its title left out. */
  Drawing drawing();

  /** Its title as it stands above the drawing, whose paper begins at 0; smaller if it is long. */
  default Mark.Words heading() {
    double fit = Math.min(1, Theme.WIDTH / Lettering.width(title(), Theme.TITLE));
    double size = Math.max(Theme.TITLE.size() * fit, Theme.LABEL.size());
    return new Mark.Words(title(), 0, -22, new TextStyle(size, Theme.INK).heavy());
  }

  /** As an SVG element for a page that has a heading of its own, without the title. */
  default String svg() {
    return new SvgWriter(name()).write(this, drawing(), false);
  }
}
