package settle.cli.output;

import java.util.List;
import settle.plots.figures.Table;

/** Text for a terminal or a file: paragraphs and lists, tables as they are. */
final class Paragraphs {

  private final StringBuilder text = new StringBuilder();
  private final Layout layout;

  Paragraphs(Layout layout) {
    this.layout = layout;
  }

  /** An empty line. */
  void gap() {
    text.append('\n');
  }

  /** Lines as they are. */
  void lines(String lines) {
    text.append(lines);
  }

  /** An empty line and a table. */
  void table(Table table) {
    gap();
    lines(TextTable.text(table, layout.width()));
  }

  /** A paragraph from the left edge. */
  void paragraph(String words) {
    WrappedText.append(text, layout.textWidth(), "", words);
  }

  /** An empty line and a paragraph. */
  void apart(String words) {
    gap();
    paragraph(words);
  }

  /** An indented paragraph, its further lines indented further. */
  void indented(String words) {
    WrappedText.append(text, layout.textWidth(), "  ", words);
  }

  /** An empty line, a heading and its points; nothing where there are none. */
  void points(String heading, List<String> points) {
    if (!points.isEmpty()) {
      gap();
      paragraph(heading);
      points.forEach(p -> WrappedText.append(text, layout.textWidth(), "- ", p));
    }
  }

  /** Everything said, the last line ending with a newline. */
  String text() {
    return text.toString();
  }
}
