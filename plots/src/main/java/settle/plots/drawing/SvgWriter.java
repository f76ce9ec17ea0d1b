package settle.plots.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Writes a picture as SVG 1.1: paths and text, no scripts, no style sheets, no outside references.
 */
final class SvgWriter {

  private final StringBuilder out = new StringBuilder(1 << 15);
  private final Map<Rectangle2D, String> clips = new LinkedHashMap<>();
  private final String id;

  SvgWriter(String id) {
    this.id = id;
  }

  String write(Picture picture, boolean titled) {
    Rectangle2D paper =
        titled
            ? new Rectangle2D.Double(
                -Picture.MARGIN,
                -Picture.TITLE_HEIGHT,
                picture.width() + 2 * Picture.MARGIN,
                picture.height() + Picture.TITLE_HEIGHT + Picture.MARGIN)
            : new Rectangle2D.Double(0, 0, picture.width(), picture.height());
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"");
    numbers(paper.getX(), paper.getY(), paper.getWidth(), paper.getHeight());
    out.append("\" role=\"img\" font-family=\"")
        .append(Lettering.CSS_FAMILIES)
        .append("\">\n<title>")
        .append(escaped(picture.title()))
        .append("</title>\n");
    if (titled) {
      background(paper);
      text(new Mark.Text(picture.title(), 0, Picture.TITLE_BASE, Picture.TITLE_STYLE, null));
    }
    defineClips(picture);
    Rectangle2D clip = null;
    for (Mark mark : picture.marks()) {
      if (mark.clip() == null ? clip != null : !mark.clip().equals(clip)) {
        out.append(clip == null ? "" : "</g>\n");
        clip = mark.clip();
        out.append(clip == null ? "" : "<g clip-path=\"url(#" + clips.get(clip) + ")\">\n");
      }
      write(mark);
    }
    out.append(clip == null ? "" : "</g>\n");
    return out.append("</svg>\n").toString();
  }

  /** A picture that stands alone brings its own paper: viewers may be dark. */
  private void background(Rectangle2D paper) {
    out.append("<rect");
    box(paper);
    out.append(" fill=\"#ffffff\"/>\n");
  }

  private void defineClips(Picture picture) {
    for (Mark mark : picture.marks()) {
      Rectangle2D clip = mark.clip();
      if (clip != null && !clips.containsKey(clip)) {
        String name = id + "-clip-" + clips.size();
        clips.put(clip, name);
        out.append("<clipPath id=\"").append(name).append("\"><rect");
        box(clip);
        out.append("/></clipPath>\n");
      }
    }
  }

  private void box(Rectangle2D box) {
    attribute("x", box.getX());
    attribute("y", box.getY());
    attribute("width", box.getWidth());
    attribute("height", box.getHeight());
  }

  private void write(Mark mark) {
    if (mark instanceof Mark.Fill fill) {
      out.append("<path");
      paint("fill", fill.colour());
      path(fill.shape());
      out.append("/>\n");
    } else if (mark instanceof Mark.Line line) {
      out.append("<path fill=\"none\"");
      paint("stroke", line.colour());
      stroke(line.stroke());
      path(line.path());
      out.append("/>\n");
    } else if (mark instanceof Mark.Text text) {
      text(text);
    }
  }

  private void text(Mark.Text text) {
    TextStyle style = text.style();
    out.append("<text");
    attribute("x", text.x());
    attribute("y", text.y());
    attribute("font-size", style.size());
    out.append(style.bold() ? " font-weight=\"bold\"" : "");
    switch (style.anchor()) {
      case START -> {}
      case MIDDLE -> out.append(" text-anchor=\"middle\"");
      case END -> out.append(" text-anchor=\"end\"");
    }
    paint("fill", style.colour());
    if (style.halo() != null) {
      paint("stroke", style.halo());
      attribute("stroke-width", Lettering.HALO_WIDTH);
      out.append(" stroke-linejoin=\"round\" paint-order=\"stroke\"");
    }
    out.append('>').append(escaped(text.words())).append("</text>\n");
  }

  private void stroke(BasicStroke stroke) {
    attribute("stroke-width", stroke.getLineWidth());
    if (stroke.getLineJoin() == BasicStroke.JOIN_ROUND) {
      out.append(" stroke-linejoin=\"round\"");
    }
    if (stroke.getEndCap() == BasicStroke.CAP_ROUND) {
      out.append(" stroke-linecap=\"round\"");
    }
    if (stroke.getDashArray() != null) {
      out.append(" stroke-dasharray=\"");
      String gap = "";
      for (float dash : stroke.getDashArray()) {
        out.append(gap);
        number(dash);
        gap = " ";
      }
      out.append('"');
    }
  }

  private void path(Path2D path) {
    out.append(" d=\"");
    double[] c = new double[6];
    for (PathIterator i = path.getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> points('M', c, 1);
        case PathIterator.SEG_LINETO -> points('L', c, 1);
        case PathIterator.SEG_QUADTO -> points('Q', c, 2);
        case PathIterator.SEG_CUBICTO -> points('C', c, 3);
        default -> out.append('Z');
      }
    }
    out.append('"');
  }

  private void points(char command, double[] coordinates, int count) {
    out.append(command);
    for (int i = 0; i < 2 * count; i++) {
      if (i > 0) {
        out.append(' ');
      }
      number(coordinates[i]);
    }
  }

  private void numbers(double... values) {
    String gap = "";
    for (double value : values) {
      out.append(gap);
      number(value);
      gap = " ";
    }
  }

  private void paint(String attribute, Color colour) {
    out.append(' ').append(attribute).append("=\"#");
    hex(colour.getRed());
    hex(colour.getGreen());
    hex(colour.getBlue());
    out.append('"');
    if (colour.getAlpha() < 255) {
      out.append(' ').append(attribute).append("-opacity=\"");
      number(colour.getAlpha() / 255.0);
      out.append('"');
    }
  }

  private void hex(int value) {
    out.append(Character.forDigit(value >> 4, 16)).append(Character.forDigit(value & 15, 16));
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
