package settle.scenarios.edit;

import java.util.List;
import java.util.Optional;
import settle.scenarios.document.PlainText;

/** A part of a document with the characters it takes up: from inclusive, to exclusive. */
sealed interface Part {

  /** Where it begins, its anchor included. */
  int from();

  /** Where what is written of it ends: no comment and no line end is counted. */
  int to();

  /** Its anchor; empty where it has none. */
  String anchor();

  /** A value. */
  record Scalar(int from, int to, String anchor, String text) implements Part {}

  /** A reference to what stands under an anchor. */
  record Alias(int from, int to, String name) implements Part {
    @Override
    public String anchor() {
      return "";
    }
  }

  /**
   * A list.
   *
   * @param flow whether in brackets
   */
  record Items(int from, int to, String anchor, boolean flow, List<Part> items) implements Part {}

  /**
   * Keys with values.
   *
   * @param flow whether in braces
   */
  record Keys(int from, int to, String anchor, boolean flow, List<Entry> entries) implements Part {

    /** The entry of a key; spaces inside a key count as one. */
    Optional<Entry> entry(String key) {
      return entries.stream().filter(e -> named(e.key().text()).equals(named(key))).findFirst();
    }

    private static String named(String key) {
      return PlainText.line(key);
    }
  }

  /** A key with its value. */
  record Entry(Scalar key, Part value) {}
}
