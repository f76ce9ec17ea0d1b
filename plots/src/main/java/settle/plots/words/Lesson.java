package settle.plots.words;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.sim.demo.BeforeAndAfter;
import settle.sim.demo.Change;
import settle.sim.demo.Demonstration;
import settle.sim.demo.Figure;

/** A demonstration that has been run, in words: its two sentences and its figures. */
public final class Lesson {

  private static final Pattern PLACE = Pattern.compile("\\{([^.}]+)\\.(before|after|change)}");

  private final BeforeAndAfter runs;

  public Lesson(BeforeAndAfter runs) {
    this.runs = runs;
  }

  /** What was run. */
  public BeforeAndAfter runs() {
    return runs;
  }

  /** What is drawn. */
  public Demonstration demonstration() {
    return runs.demonstration();
  }

  /** What is said of it, its numbers yet to be filled in. */
  public Demonstration.Wording wording() {
    return demonstration().wording();
  }

  /** The first sentence: what was changed. */
  public String changed() {
    return filled(wording().changed());
  }

  /** The second: what happened. */
  public String happened() {
    return filled(wording().happened());
  }

  /** The first version in few words. */
  public String before() {
    return filled(wording().before());
  }

  /** The second version in few words. */
  public String after() {
    return filled(wording().after());
  }

  /** Words for a figure. */
  public ReadingWords words(Figure figure) {
    return new ReadingWords(figure.reading(), runs.house().water());
  }

  /** As it stands in a scenario, but with a true minus, and a dash between times. */
  private static String typeset(String value) {
    return value.replaceAll("(?<!\\d)-(?=\\d)", "\u2212").replaceAll("(?<=\\d)-(?=\\d)", "\u2013");
  }

  private String filled(String sentence) {
    Matcher places = PLACE.matcher(sentence);
    return places.replaceAll(
        place -> Matcher.quoteReplacement(value(place.group(1), place.group(2))));
  }

  private String value(String key, String side) {
    for (Change change : demonstration().changes()) {
      if (change.key().equals(key)) {
        return typeset(side.equals("before") ? change.before() : change.after());
      }
    }
    Figure figure = demonstration().figure(key);
    ReadingWords words = words(figure);
    return switch (side) {
      case "before" -> words.value(runs.before(figure));
      case "after" -> words.value(runs.after(figure));
      default -> words.difference(runs.before(figure), runs.after(figure));
    };
  }
}
