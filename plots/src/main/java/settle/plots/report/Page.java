package settle.plots.report;

import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import settle.plots.drawing.Picture;
import settle.plots.figures.Table;

/** Pages of one HTML file each that needs nothing else, for a screen and for A4 paper. */
final class Page {

  /** The space between a figure and its unit, or inside a compound unit. */
  private static final Pattern FIGURE_AND_UNIT =
      Pattern.compile(
          "(?<=\\d) (?=(?:°C|K|kWh|kW|kPa|W|l/h|h|min|m/s|s|m|l|%)(?![a-z]))|(?<=\\d K) (?=h\\b)");

  private Page() {}

  /**
   * A page.
   *
   * @param template its template
   * @param content what it shows, by name
   */
  static String html(String template, Object content) {
    return Isolation.compiler().withLoader(Page::part).compile(part(template)).execute(content);
  }

  private static Reader part(String name) {
    InputStream in = Page.class.getResourceAsStream(name + ".mustache");
    if (in == null) {
      throw new IllegalArgumentException("no part of a page is called '" + name + "'");
    }
    return new InputStreamReader(in, StandardCharsets.UTF_8);
  }

  /** Words in which no line ends between a figure and its unit. */
  static String unbroken(String words) {
    return FIGURE_AND_UNIT.matcher(words).replaceAll("\u00a0");
  }

  /** Several sentences, each figure kept on one line with its unit. */
  static List<String> unbroken(List<String> words) {
    return words.stream().map(Page::unbroken).toList();
  }

  /** A picture as a template shows it. */
  record Pictured(String name, String title, String meaning, String svg) {}

  static List<Pictured> pictured(List<Picture> charts) {
    return charts.stream()
        .map(c -> new Pictured(c.name(), c.title(), unbroken(c.meaning()), c.svg()))
        .toList();
  }

  /**
   * A table, with what its columns mean under it; rows that name nothing anew stay with the last.
   */
  static String table(Table table) {
    StringBuilder html = new StringBuilder("<table>\n");
    if (table.heads().stream().anyMatch(head -> !head.label().isEmpty())) {
      html.append("<thead><tr>");
      for (int c = 0; c < table.heads().size(); c++) {
        head(html, table.heads().get(c), c < table.words());
      }
      html.append("</tr></thead>\n");
    }
    html.append("<tbody>\n");
    for (int r = 0; r < table.rows().size(); r++) {
      List<Table.Cell> row = table.rows().get(r);
      if (r > 0 && table.words() > 0 && !row.get(0).text().isEmpty()) {
        html.append("</tbody>\n<tbody>\n");
      }
      html.append("<tr>");
      for (int c = 0; c < row.size(); c++) {
        cell(html, row.get(c), c < table.words());
      }
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n");
    String meanings = table.meanings();
    return meanings.isEmpty()
        ? html.toString()
        : html.append("<p class=\"small\">").append(escaped(meanings)).append("</p>\n").toString();
  }

  private static void head(StringBuilder html, Table.Head head, boolean words) {
    html.append(words ? "<th>" : "<th class=\"n\">").append(escaped(head.label()));
    if (!head.unit().isEmpty()) {
      html.append("<span class=\"unit\">").append(escaped(head.unit())).append("</span>");
    }
    html.append("</th>");
  }

  private static void cell(StringBuilder html, Table.Cell cell, boolean words) {
    String kind = (words ? "" : "n") + (cell.strong() ? " strong" : "");
    html.append(kind.isEmpty() ? "<td>" : "<td class=\"" + kind.trim() + "\">")
        .append(escaped(cell.text()))
        .append("</td>");
  }

  /** Tables one after the other. */
  static String tables(List<Table> tables) {
    return tables.stream().map(Page::table).collect(Collectors.joining());
  }

  private static String escaped(String words) {
    return Isolation.escaped(unbroken(words));
  }
}
