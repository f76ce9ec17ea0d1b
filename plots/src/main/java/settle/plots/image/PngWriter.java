package settle.plots.image;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.GlyphVector;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import settle.plots.drawing.Drawing;
import settle.plots.drawing.Mark;
import settle.plots.drawing.Path;
import settle.plots.drawing.Picture;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.TextStyle;
import settle.plots.drawing.Theme;

/** Paints a picture as pixels, the title on top. */
final class PngWriter implements Mark.Surface {

  /** Width of an image [px]: crisp on a projector. */
  private static final int PIXELS = 1800;

  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 1);
  private static final Font BOLD = new Font(Font.SANS_SERIF, Font.BOLD, 1);

  private final Graphics2D g;

  private PngWriter(Graphics2D g) {
    this.g = g;
  }

  static byte[] write(Picture picture, Drawing drawing) {
    double scale = PIXELS / (drawing.width() + 2.0 * Picture.MARGIN);
    int height =
        (int) Math.round((drawing.height() + Picture.TITLE_HEIGHT + Picture.MARGIN) * scale);
    BufferedImage image = new BufferedImage(PIXELS, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, PIXELS, height);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.scale(scale, scale);
    g.translate(Picture.MARGIN, Picture.TITLE_HEIGHT);
    PngWriter writer = new PngWriter(g);
    writer.words(picture.heading());
    drawing.marks().forEach(mark -> mark.on(writer));
    g.dispose();
    return PngFile.of(image);
  }

  /** Loads the letters, which takes as long as drawing several pictures. */
  static void loadLetters() {
    BufferedImage image = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB);
    new PngWriter(image.createGraphics()).words(new Mark.Words("0", 0, 0, Theme.LABEL));
  }

  @Override
  public void fill(Mark.Fill fill) {
    g.setColor(new Color(fill.colour()));
    g.fill(outline(fill.path()));
  }

  @Override
  public void line(Mark.Line line) {
    if (line.within() != null) {
      g.setClip(outline(line.within().path()).getBounds2D());
    }
    Stroke stroke = line.stroke();
    double[] lengths = stroke.dash().lengths();
    float[] dashes = new float[lengths.length];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = (float) lengths[i];
    }
    g.setColor(new Color(line.colour()));
    g.setStroke(
        new BasicStroke(
            (float) stroke.width(),
            stroke.round() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_ROUND,
            1,
            dashes.length == 0 ? null : dashes,
            0));
    g.draw(outline(line.path()));
    g.setClip(null);
  }

  @Override
  public void words(Mark.Words words) {
    TextStyle style = words.style();
    Font font = (style.bold() ? BOLD : PLAIN).deriveFont((float) style.size());
    GlyphVector glyphs = font.createGlyphVector(g.getFontRenderContext(), words.words());
    Rectangle2D bounds = glyphs.getLogicalBounds();
    float x =
        (float)
            switch (style.anchor()) {
              case START -> words.x();
              case MIDDLE -> words.x() - bounds.getWidth() / 2;
              case END -> words.x() - bounds.getWidth();
            };
    float y = (float) words.y();
    if (style.rimmed()) {
      g.setColor(new Color(Theme.PAPER));
      g.setStroke(
          new BasicStroke((float) TextStyle.RIM, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
      g.draw(glyphs.getOutline(x, y));
    }
    g.setColor(new Color(style.colour()));
    g.drawGlyphVector(glyphs, x, y);
  }

  private static Path2D outline(Path path) {
    Path2D outline = new Path2D.Double();
    double[] p = path.points();
    int i = 0;
    for (char step : path.steps().toCharArray()) {
      switch (step) {
        case 'M' -> outline.moveTo(p[i], p[i + 1]);
        case 'L' -> outline.lineTo(p[i], p[i + 1]);
        case 'C' -> outline.curveTo(p[i], p[i + 1], p[i + 2], p[i + 3], p[i + 4], p[i + 5]);
        default -> outline.closePath();
      }
      i += Path.numbers(step);
    }
    return outline;
  }
}
