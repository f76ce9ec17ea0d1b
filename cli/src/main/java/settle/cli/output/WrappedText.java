package settle.cli.output;

/** Sentences set in lines that fit a terminal. */
final class WrappedText {

  private WrappedText() {}

  /**
   * Appends lines broken at spaces, but never between a figure and its unit or hours and minutes;
   * what follows on is indented. A word longer than a line is broken where the line ends.
   *
   * @param text takes the lines
   * @param width longest line [characters]
   * @param lead what the first line begins with
   * @param words what to say
   */
  static void append(StringBuilder text, int width, String lead, String words) {
    String indent = " ".repeat(lead.isEmpty() ? 0 : lead.length() + 2);
    StringBuilder line = new StringBuilder(lead);
    int empty = lead.length();
    for (String word : words.split("(?<!\\d|\\d K|±) (?!(?<=\\d h )\\d)")) {
      if (line.length() + 1 + word.length() > width && line.length() > empty) {
        text.append(line).append('\n');
        line = new StringBuilder(indent);
        empty = line.length();
      }
      line.append(line.length() > empty ? " " : "");
      int from = 0;
      while (from < word.length() && line.length() + word.length() - from > width) {
        // One word longer than a line: a name can be.
        int to = from + Math.max(1, width - line.length());
        if (Character.isHighSurrogate(word.charAt(to - 1))) {
          to++;
        }
        text.append(line).append(word, from, to).append('\n');
        line = new StringBuilder(indent);
        empty = line.length();
        from = to;
      }
      line.append(word, from, word.length());
    }
    text.append(line).append('\n');
  }
}
