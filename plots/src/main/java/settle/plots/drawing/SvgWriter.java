package settle.plots.drawing;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes a picture as SVG 1.1: paths and text, no scripts, no style sheets, no outside references.
 */
public final class SvgWriter implements Mark.Surface {

  private final StringBuilder out = new StringBuilder(1 << 15);
  private final Map<Box, String> clips = new LinkedHashMap<>();
  private final String id;

  /**
   * @param id prefix of the identifiers inside, unique in the page it will stand in
   */
  SvgWriter(String id) {
    this.id = id;
  }

  /** A document of its own, the title on top. */
  public static String document(Picture picture, Drawing drawing) {
    return new SvgWriter(picture.name()).write(picture, drawing, true);
  }

  String write(Picture picture, Drawing drawing, boolean titled) {
    Box paper =
        titled
            ? new Box(
                -Picture.MARGIN,
                -Picture.TITLE_HEIGHT,
                drawing.width() + 2 * Picture.MARGIN,
                drawing.height() + Picture.TITLE_HEIGHT + Picture.MARGIN)
            : new Box(0, 0, drawing.width(), drawing.height());
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"");
    numbers(paper.x(), paper.y(), paper.width(), paper.height());
    out.append("\" role=\"img\" font-family=\"")
        .append(Lettering.CSS_FAMILIES)
        .append("\">\n<title>")
        .append(escaped(picture.title()))
        .append("</title>\n");
    if (titled) {
      // A picture that stands alone brings its own paper: viewers may be dark.
      fill(new Mark.Fill(paper.path(), Theme.PAPER));
      words(picture.heading());
    }
    drawing.marks().forEach(mark -> mark.on(this));
    return out.append("</svg>\n").toString();
  }

  @Override
  public void fill(Mark.Fill fill) {
    out.append("<path");
    paint("fill", fill.colour());
    path(fill.path());
  }

  @Override
  public void line(Mark.Line line) {
    String clip = line.within() == null ? "" : clip(line.within());
    out.append("<path fill=\"none\"").append(clip);
    paint("stroke", line.colour());
    stroke(line.stroke());
    path(line.path());
  }

  /** The attribute that keeps a line within a box, which is defined at its first use. */
  private String clip(Box box) {
    String name = clips.get(box);
    if (name == null) {
      name = id + "-clip-" + clips.size();
      clips.put(box, name);
      out.append("<clipPath id=\"").append(name).append("\"><path");
      path(box.path());
      out.append("</clipPath>\n");
    }
    return " clip-path=\"url(#" + name + ")\"";
  }

  @Override
  public void words(Mark.Words words) {
    TextStyle style = words.style();
    out.append("<text");
    attribute("x", words.x());
    attribute("y", words.y());
    attribute("font-size", style.size());
    out.append(style.bold() ? " font-weight=\"bold\"" : "");
    switch (style.anchor()) {
      case START -> {}
      case MIDDLE -> out.append(" text-anchor=\"middle\"");
      case END -> out.append(" text-anchor=\"end\"");
    }
    paint("fill", style.colour());
    if (style.rimmed()) {
      paint("stroke", Theme.PAPER);
      attribute("stroke-width", TextStyle.RIM);
      out.append(" stroke-linejoin=\"round\" paint-order=\"stroke\"");
    }
    out.append('>').append(escaped(words.words())).append("</text>\n");
  }

  private void stroke(Stroke stroke) {
    attribute("stroke-width", stroke.width());
    out.append(" stroke-linejoin=\"round\"");
    out.append(stroke.round() ? " stroke-linecap=\"round\"" : "");
    if (stroke.dash() != Stroke.Dash.SOLID) {
      out.append(" stroke-dasharray=\"");
      numbers(stroke.dash().lengths());
      out.append('"');
    }
  }

  private void path(Path path) {
    out.append(" d=\"");
    double[] points = path.points();
    int at = 0;
    for (char step : path.steps().toCharArray()) {
      out.append(step);
      int end = at + Path.numbers(step);
      numbers(Arrays.copyOfRange(points, at, end));
      at = end;
    }
    out.append("\"/>\n");
  }

  private void numbers(double... values) {
    String gap = "";
    for (double value : values) {
      out.append(gap);
      number(value);
      gap = " ";
    }
  }

  private void paint(String attribute, int colour) {
    out.append(' ').append(attribute).append("=\"#");
    for (int shift = 20; shift >= 0; shift -= 4) {
      out.append(Character.forDigit(colour >> shift & 15, 16));
    }
    out.append('"');
  }

  private void attribute(String name, double value) {
    out.append(' ').append(name).append("=\"");
    number(value);
    out.append('"');
  }

  /** To a hundredth of a unit: finer than any screen or printer shows. */
  private void number(double value) {
    long hundredths = Math.round(value * 100);
    if (hundredths < 0) {
      out.append('-');
      hundredths = -hundredths;
    }
    out.append(hundredths / 100);
    long rest = hundredths % 100;
    if (rest != 0) {
      out.append('.').append(rest / 10);
      if (rest % 10 != 0) {
        out.append(rest % 10);
      }
    }
  }

  private static String escaped(String words) {
    return words
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
