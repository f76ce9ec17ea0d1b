package settle.cli.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.Scenario;
import settle.scenarios.document.PlainText;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/** What is doubtful with a scenario, and then what was assumed for it, each kind of value once. */
public final class CheckText {

  private CheckText() {}

  /**
   * To read.
   *
   * @param file the scenario as it was named
   * @param scenario what was read of it
   * @param layout how it is set; what was assumed is left out unless all is to be said
   */
  public static String write(String file, Scenario scenario, Layout layout) {
    StringBuilder text = new StringBuilder();
    int width = layout.textWidth();
    String doubts = scenario.warnings().isEmpty() ? "." : ", but doubtful:";
    String name = PlainText.line(file) + ":";
    String found = "nothing wrong" + doubts;
    if (name.length() + 1 + found.length() <= width) {
      text.append(name).append(' ').append(found).append('\n');
    } else {
      // A long path must not break the answer in two.
      WrappedText.append(text, width, "", name);
      WrappedText.append(text, width, "", found);
    }
    for (Finding warning : scenario.warnings()) {
      WrappedText.append(text, width, "- ", PlainText.line(warning.toString()));
    }
    if (layout.full() && !scenario.defaultsUsed().isEmpty()) {
      text.append("\nAssumed where the file says nothing:\n");
      String section = "";
      for (List<Assumed> kind : kinds(scenario.defaultsUsed())) {
        if (!kind.get(0).section.equals(section)) {
          section = kind.get(0).section;
          text.append('\n');
          WrappedText.append(text, width, "", PlainText.line(section));
        }
        WrappedText.append(text, width, "  ", PlainText.line(words(kind)));
      }
    }
    return text.toString();
  }

  /**
   * One value assumed.
   *
   * @param section of the scenario
   * @param place in it; empty for the section itself
   */
  private record Assumed(String section, String place, DefaultUsed used) {

    static Assumed of(DefaultUsed used) {
      String[] steps = used.where().split(" / ");
      int depth = steps[0].equals("arrangements") && steps.length > 2 ? 2 : 1;
      int from = depth == 2 && steps[2].equals("rooms") ? 3 : depth;
      return new Assumed(
          String.join(" / ", List.of(steps).subList(0, depth)),
          String.join(" / ", List.of(steps).subList(Math.min(from, steps.length), steps.length)),
          used);
    }
  }

  /** Values of one kind with one reason together, sections in the order of the scenario. */
  private static Iterable<List<Assumed>> kinds(List<DefaultUsed> all) {
    Map<String, Map<String, List<Assumed>>> sections = new LinkedHashMap<>();
    for (DefaultUsed used : all) {
      Assumed assumed = Assumed.of(used);
      sections
          .computeIfAbsent(assumed.section, s -> new LinkedHashMap<>())
          .computeIfAbsent(used.key() + "|" + used.reason(), k -> new ArrayList<>())
          .add(assumed);
    }
    return sections.values().stream().flatMap(s -> s.values().stream()).toList();
  }

  private static String words(List<Assumed> kind) {
    Map<String, List<String>> places = new LinkedHashMap<>();
    for (Assumed assumed : kind) {
      String value = assumed.used.value();
      places
          .computeIfAbsent(
              value.equals(assumed.place) ? "that room" : value, v -> new ArrayList<>())
          .add(assumed.place);
    }
    List<String> values = new ArrayList<>();
    places.forEach(
        (value, where) -> {
          String all = String.join(", ", where);
          // The words before a list separate it from the next.
          boolean list = value.contains(", ");
          values.add(all.isEmpty() ? value : list ? all + ": " + value : value + " in " + all);
        });
    DefaultUsed first = kind.get(0).used;
    return first.key() + ": " + String.join("; ", values) + " (" + first.reason() + ")";
  }
}
