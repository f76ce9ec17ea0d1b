package settle.scenarios.demo;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Node;
import settle.scenarios.document.YamlDocument;
import settle.sim.demo.Change;

/**
 * A scenario text that holds two versions of one passage, one after the other, each below a line
 * that says which it is:
 *
 * <pre>
 *   #= before
 *   fixed flow: 55 °C
 *   #= after
 *   fixed flow: 75 °C
 *   #= both
 * </pre>
 *
 * <p>So nothing else can differ between the two.
 *
 * @param text the text with its marks
 */
record TwoVersions(String text) {

  private static final String MARK = "#= ";
  private static final String BOTH = "both";
  private static final String BEFORE = "before";
  private static final String AFTER = "after";

  String before() {
    return version(BEFORE);
  }

  String after() {
    return version(AFTER);
  }

  private String version(String wanted) {
    StringBuilder version = new StringBuilder();
    String present = BOTH;
    for (String line : text.lines().toList()) {
      if (line.strip().startsWith(MARK)) {
        present = line.strip().substring(MARK.length());
        if (!List.of(BOTH, BEFORE, AFTER).contains(present)) {
          throw new IllegalStateException("a demonstration has a passage for '" + present + "'");
        }
      } else if (present.equals(BOTH) || present.equals(wanted)) {
        version.append(line).append('\n');
      }
    }
    return version.toString();
  }

  /** Every value that differs, in the order of the text. */
  List<Change> changes() {
    try {
      List<Change> changes = new ArrayList<>();
      compare("", "", YamlDocument.parse(before()), YamlDocument.parse(after()), changes);
      return changes;
    } catch (DocumentException e) {
      throw new IllegalStateException("a demonstration's scenario: " + e.getMessage(), e);
    }
  }

  private static void compare(String where, String key, Node a, Node b, List<Change> changes) {
    if (a instanceof Node.Mapping before && b instanceof Node.Mapping after) {
      String below = where.isEmpty() ? key : where + " / " + key;
      for (Node.Entry entry : before.entries()) {
        Node other = after.entry(entry.key()).map(Node.Entry::value).orElse(null);
        compare(below, entry.key(), entry.value(), other, changes);
      }
      for (Node.Entry entry : after.entries()) {
        if (before.entry(entry.key()).isEmpty()) {
          compare(below, entry.key(), null, entry.value(), changes);
        }
      }
    } else if (a instanceof Node.Items before
        && b instanceof Node.Items after
        && before.items().size() == after.items().size()) {
      for (int i = 0; i < before.items().size(); i++) {
        compare(where, key, before.items().get(i), after.items().get(i), changes);
      }
    } else if (!written(a).equals(written(b))) {
      changes.add(new Change(key, where, written(a), written(b)));
    }
  }

  private static String written(Node node) {
    return node == null ? "" : node.found();
  }
}
