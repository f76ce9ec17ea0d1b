package settle.plots.drawing;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;

/** Paints a picture as pixels. */
final class PngWriter {

  private PngWriter() {}

  static byte[] write(Picture picture, int pixels) {
    double scale = pixels / (picture.width() + 2.0 * Picture.MARGIN);
    int height =
        (int) Math.round((picture.height() + Picture.TITLE_HEIGHT + Picture.MARGIN) * scale);
    BufferedImage image = new BufferedImage(pixels, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, pixels, height);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.scale(scale, scale);
    g.translate(Picture.MARGIN, Picture.TITLE_HEIGHT);
    paint(g, new Mark.Text(picture.title(), 0, Picture.TITLE_BASE, Picture.TITLE_STYLE, null));
    for (Mark mark : picture.marks()) {
      g.setClip(mark.clip());
      paint(g, mark);
    }
    g.dispose();
    return PngFile.of(image);
  }

  private static void paint(Graphics2D g, Mark mark) {
    if (mark instanceof Mark.Fill fill) {
      g.setColor(fill.colour());
      g.fill(fill.shape());
    } else if (mark instanceof Mark.Line line) {
      g.setColor(line.colour());
      g.setStroke(line.stroke());
      g.draw(line.path());
    } else if (mark instanceof Mark.Text text) {
      paint(g, text);
    }
  }

  private static void paint(Graphics2D g, Mark.Text text) {
    TextStyle style = text.style();
    GlyphVector glyphs =
        Lettering.font(style).createGlyphVector(g.getFontRenderContext(), text.words());
    Rectangle2D bounds = glyphs.getLogicalBounds();
    double x =
        switch (style.anchor()) {
          case START -> text.x();
          case MIDDLE -> text.x() - bounds.getWidth() / 2;
          case END -> text.x() - bounds.getWidth();
        };
    if (style.halo() != null) {
      Shape outline = glyphs.getOutline((float) x, (float) text.y());
      g.setColor(style.halo());
      g.setStroke(
          new BasicStroke(
              (float) Lettering.HALO_WIDTH, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      g.draw(outline);
    }
    g.setColor(style.colour());
    g.drawGlyphVector(glyphs, (float) x, (float) text.y());
  }
}
