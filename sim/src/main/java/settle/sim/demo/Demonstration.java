package settle.sim.demo;

import java.util.List;

/**
 * What a demonstration changes, shows and says. In its sentences {@code {key.before}}, {@code
 * {key.after}} and {@code {key.change}} stand for what comes out: key is that of a figure or the
 * name of the scenario's key that is changed.
 *
 * @param name short name, fit for a command line
 * @param title what it is called
 * @param about what it teaches, in a line
 * @param wording what is said of its two runs
 * @param changes what differs between the two scenarios, at least one
 * @param shown how much of the end of the run is drawn [s]
 * @param read over how much of the end of the run figures are read [s]
 * @param figures what is read, at least one of them drawn
 */
public record Demonstration(
    String name,
    String title,
    String about,
    Wording wording,
    List<Change> changes,
    double shown,
    double read,
    List<Figure> figures) {

  /**
   * What is said of two runs.
   *
   * @param question the question they answer, the picture's title
   * @param before the first version in few words, for a legend
   * @param after the second likewise
   * @param changed the first sentence: what was changed
   * @param happened the second: what happened
   * @param lookAt what to look at in the picture
   * @param beware what could hurt somebody who does the same; empty if nothing could
   */
  public record Wording(
      String question,
      String before,
      String after,
      String changed,
      String happened,
      String lookAt,
      String beware) {}

  public Demonstration {
    changes = List.copyOf(changes);
    figures = List.copyOf(figures);
    if (changes.isEmpty()) {
      throw new IllegalArgumentException("demonstration '" + name + "' changes nothing");
    }
    if (figures.stream().noneMatch(Figure::drawn)) {
      throw new IllegalArgumentException("demonstration '" + name + "' draws nothing");
    }
  }

  /**
   * The figure of a key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Figure figure(String key) {
    return figures.stream()
        .filter(f -> f.key().equals(key))
        .findFirst()
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "demonstration '" + name + "' has no figure '" + key + "'"));
  }
}
