package settle.plots.words;

import java.util.List;

/**
 * A list under its heading.
 *
 * @param heading without a colon
 * @param points a sentence or two each
 */
public record Points(String heading, List<String> points) {

  public Points {
    points = List.copyOf(points);
  }
}
