package settle.plots.chart;

import java.util.List;
import settle.plots.drawing.Box;
import settle.plots.drawing.Path;
import settle.plots.drawing.Sketch;
import settle.plots.drawing.Stroke;
import settle.plots.drawing.Theme;

/**
 * What stands above a chart to say which line is which.
 *
 * @param words what it is called
 * @param samples what it looks like; none for words that go for all of the chart
 */
public record Key(String words, List<Sample> samples) {

  /** Something small that looks like what a chart shows. */
  public interface Sample {

    /** Room it takes [px]. */
    double width();

    /** Draws it from {@code x} on, about the middle of a line of letters. */
    void draw(Sketch g, double x, double middle);
  }

  /** A piece of a line. */
  public record LineSample(Look look, double width) implements Sample {

    @Override
    public void draw(Sketch g, double x, double middle) {
      g.line(Path.line(x, middle, x + width, middle), look.colour(), look.stroke());
    }
  }

  /** A marker. */
  public record MarkerSample(Look look) implements Sample {

    @Override
    public double width() {
      return 10;
    }

    @Override
    public void draw(Sketch g, double x, double middle) {
      look.marker().draw(g, x + 5, middle, Marker.SIZE, look.colour());
    }
  }

  /** A piece of a bar, or of a band. */
  public record BarSample(int colour, Mark.Pattern pattern) implements Sample {

    @Override
    public double width() {
      return LENGTH;
    }

    @Override
    public void draw(Sketch g, double x, double middle) {
      pattern.draw(g, new Box(x, middle - 7, LENGTH, 14), colour);
    }
  }

  /** Length of a sample of a line [px]. */
  private static final double LENGTH = 46;

  public Key {
    samples = List.copyOf(samples);
  }

  /** A line. */
  public static Key line(String words, Look look) {
    return new Key(words, List.of(new LineSample(look, LENGTH)));
  }

  /** A line as it is drawn in ink. */
  public static Key line(String words, Stroke stroke) {
    return line(words, Look.ink(stroke));
  }

  /** A shaded range. */
  public static Key band(String words) {
    return bar(words, Theme.BAND, Mark.Pattern.FULL);
  }

  /** A bar. */
  public static Key bar(String words, int colour, Mark.Pattern pattern) {
    return new Key(words, List.of(new BarSample(colour, pattern)));
  }

  /** Markers. */
  public static Key markers(String words, List<Look> looks) {
    return new Key(words, looks.stream().<Sample>map(MarkerSample::new).toList());
  }

  /** A note on the whole chart. */
  public static Key note(String words) {
    return new Key(words, List.of());
  }
}
