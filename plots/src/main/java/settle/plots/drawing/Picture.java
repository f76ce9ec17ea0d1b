package settle.plots.drawing;

/** Something to look at, with what it shows and what that means: a chart or a drawing. */
public interface Picture {

  /** Room above a drawing for its title [px]. */
  int TITLE_HEIGHT = 56;

  /** Paper left, right and below of a picture that stands alone [px]. */
  int MARGIN = 18;

  /** Short name, fit for a file name. */
  String name();

  /** What it shows. */
  String title();

  /** What it says, in a sentence or two, from the figures it was drawn from. */
  String meaning();

  /** What is drawn, its title left out. */
  Drawing drawing();

  /** Its title as it stands above the drawing, whose paper begins at 0. */
  default Mark.Words heading() {
    return new Mark.Words(title(), 0, -22, Theme.TITLE);
  }

  /** As an SVG element for a page that has a heading of its own, without the title. */
  default String svg() {
    return new SvgWriter(name()).write(this, drawing(), false);
  }
}
