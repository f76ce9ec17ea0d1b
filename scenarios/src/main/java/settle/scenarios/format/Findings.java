package settle.scenarios.format;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import settle.scenarios.document.PlainText;
import settle.scenarios.document.Position;
import settle.scenarios.finding.DefaultUsed;
import settle.scenarios.finding.Finding;

/** Collects what is wrong, what is doubtful and what was left out, while one file is read. */
public final class Findings {

  private static final Comparator<Finding> BY_PLACE =
      Comparator.comparingInt(Finding::line).thenComparingInt(Finding::column);

  private final String file;

  /** More is not read by anyone, and a file of nothing but mistakes must not be kept whole. */
  private static final int MOST_LISTED = 100;

  private final Set<Finding> problems = new LinkedHashSet<>();
  private final Set<Finding> warnings = new LinkedHashSet<>();
  private final List<DefaultUsed> defaults = new ArrayList<>();

  /**
   * Nothing found yet.
   *
   * @param file the file's name for messages
   */
  public Findings(String file) {
    this.file = file;
  }

  /** Notes a mistake, once: what holds for every room is read for every room. */
  public void problem(Position at, String message) {
    note(problems, at, message);
  }

  private void note(Set<Finding> findings, Position at, String message) {
    if (findings.size() < MOST_LISTED) {
      findings.add(new Finding(file, at.line(), at.column(), PlainText.line(message)));
    }
  }

  /** Notes something legal but doubtful, once. */
  public void warn(Position at, String message) {
    note(warnings, at, message);
  }

  /** Notes a value that was left out. */
  public void defaultUsed(String where, String key, String value, String reason) {
    defaults.add(new DefaultUsed(where, key, value, reason));
  }

  /** How many mistakes are listed so far: a check that needs sound values asks before and after. */
  public int problemCount() {
    return problems.size();
  }

  /** The mistakes in the order of the file, the first hundred that were found. */
  public List<Finding> problems() {
    List<Finding> sorted = new ArrayList<>(problems);
    sorted.sort(BY_PLACE);
    return List.copyOf(sorted);
  }

  /** The doubts in the order of the file. */
  public List<Finding> warnings() {
    List<Finding> sorted = new ArrayList<>(warnings);
    sorted.sort(BY_PLACE);
    return List.copyOf(sorted);
  }

  /**
   * The defaults used. What many parts of a section left out alike is one entry that names them
   * all.
   *
   * @return in the order of the first use
   */
  public List<DefaultUsed> defaultsUsed() {
    Map<List<String>, List<String>> alike = new LinkedHashMap<>();
    for (DefaultUsed d : defaults) {
      int cut = d.where().lastIndexOf(Section.SEPARATOR);
      String section = cut < 0 ? "" : d.where().substring(0, cut + Section.SEPARATOR.length());
      String name = d.where().substring(section.length());
      List<String> names =
          alike.computeIfAbsent(
              List.of(section, d.key(), d.value(), d.reason()), k -> new ArrayList<>());
      if (!names.contains(name)) {
        names.add(name);
      }
    }
    List<DefaultUsed> result = new ArrayList<>();
    alike.forEach(
        (k, names) ->
            result.add(
                new DefaultUsed(
                    k.get(0) + String.join(", ", names), k.get(1), k.get(2), k.get(3))));
    return List.copyOf(result);
  }
}
