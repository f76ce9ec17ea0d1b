package settle.cli.output;

/** Sentences set in lines that fit a terminal. */
final class WrappedText {

  private static final int WIDTH = 96;

  private WrappedText() {}

  /**
   * Appends lines broken at spaces, but never between a figure and its unit or hours and minutes;
   * what follows on is indented. A word longer than a line is broken where the line ends.
   *
   * @param text takes the lines
   * @param lead what the first line begins with
   * @param words what to say
   */
  static void append(StringBuilder text, String lead, String words) {
    StringBuilder line = new StringBuilder(lead);
    int empty = lead.length();
    for (String word : words.split("(?<!\\d|\\d K|±) (?!(?<=\\d h )\\d)")) {
      if (line.length() + 1 + word.length() > WIDTH && line.length() > empty) {
        text.append(line).append('\n');
        line = new StringBuilder(" ".repeat(lead.isEmpty() ? 0 : lead.length() + 2));
        empty = line.length();
      }
      line.append(line.length() > empty ? " " : "");
      int from = 0;
      while (from < word.length() && line.length() + word.length() - from > WIDTH) {
        // One word longer than a line: a name can be.
        int to = from + Math.max(1, WIDTH - line.length());
        if (Character.isHighSurrogate(word.charAt(to - 1))) {
          to++;
        }
        text.append(line).append(word, from, to).append('\n');
        line = new StringBuilder(" ".repeat(lead.isEmpty() ? 0 : lead.length() + 2));
        empty = line.length();
        from = to;
      }
      line.append(word, from, word.length());
    }
    text.append(line).append('\n');
  }
}
