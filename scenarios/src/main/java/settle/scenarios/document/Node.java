package settle.scenarios.document;

import java.util.List;
import java.util.Optional;

/**
 * A part of a scenario document as it was typed: text, a list, or keys with values. It knows where
 * it stands.
 */
public sealed interface Node {

  /**
   * Where the part begins.
   *
   * @return line and column
   */
  Position position();

  /**
   * What the part is, for a message: the text as typed where it is short, otherwise its kind.
   *
   * @return a few words
   */
  String found();

  /**
   * A single value as typed.
   *
   * @param text the characters, unquoted
   * @param quoted whether they stood in quotes
   * @param position where it begins
   */
  record Text(String text, boolean quoted, Position position) implements Node {

    private static final int LONGEST_SHOWN = 60;

    /**
     * Whether nothing was written.
     *
     * @return true for a key without a value
     */
    public boolean isEmpty() {
      return text.isEmpty() && !quoted;
    }

    @Override
    public String found() {
      if (text.isBlank()) {
        return "nothing";
      }
      String oneLine = PlainText.of(text).replaceAll("\\s", " ");
      return oneLine.codePointCount(0, oneLine.length()) <= LONGEST_SHOWN
          ? oneLine
          : oneLine.substring(0, oneLine.offsetByCodePoints(0, LONGEST_SHOWN)) + "…";
    }
  }

  /**
   * A list.
   *
   * @param items its items in order
   * @param position where it begins
   */
  record Items(List<Node> items, Position position) implements Node {

    @Override
    public String found() {
      return "a list";
    }
  }

  /**
   * Keys with values, in the order of the file; no key stands twice.
   *
   * @param entries the pairs
   * @param position where the first begins
   */
  record Mapping(List<Entry> entries, Position position) implements Node {

    /**
     * The entry of a key.
     *
     * @param key the key
     * @return the entry, empty where the key is not written
     */
    public Optional<Entry> entry(String key) {
      for (Entry entry : entries) {
        if (entry.key().equals(key)) {
          return Optional.of(entry);
        }
      }
      return Optional.empty();
    }

    @Override
    public String found() {
      return "keys with values";
    }
  }

  /**
   * A key with its value.
   *
   * @param key the key as typed
   * @param keyPosition where the key begins
   * @param value the value
   */
  record Entry(String key, Position keyPosition, Node value) {}
}
