package settle.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import settle.plots.figures.Table;
import settle.plots.words.Quantities;
import settle.sim.commissioning.CommissioningDay;

/** Tables and forms as files that a spreadsheet opens. */
public final class SheetCsv {

  /** First column of a form of readings. */
  public static final String ROOM = "room";

  private static final List<String> READ = List.of("return °C", "far end °C", "air °C", "minutes");

  /** First cell of the line whose first figure is what leaves the source. */
  public static final String SOURCE_FLOW = "source flow";

  private static final String OUTDOOR = "outdoor";
  private static final String START = "start";

  private SheetCsv() {}

  /** A table with a line for each row, units in the headings. */
  public static String of(Table table) {
    List<List<String>> lines = new ArrayList<>();
    lines.add(
        table.heads().stream()
            .map(h -> h.unit().isEmpty() ? h.label() : h.label() + " [" + h.unit() + "]")
            .toList());
    for (List<Table.Cell> row : table.rows()) {
      lines.add(row.stream().map(Table.Cell::text).toList());
    }
    return written(lines);
  }

  /**
   * A form to be filled with what was read.
   *
   * @param places what is read at
   * @param day what is expected of the day; a form is filled with it until something else is seen
   */
  public static String readings(List<String> places, CommissioningDay day) {
    List<List<String>> lines = new ArrayList<>();
    List<String> heads = new ArrayList<>(List.of(ROOM));
    heads.addAll(READ);
    lines.add(heads);
    String minutes = Quantities.number(day.readAfter() / 60, 0);
    lines.add(List.of(OUTDOOR, number(day.outdoor()), "", "", ""));
    lines.add(List.of(START, number(day.start()), "", "", ""));
    lines.add(List.of(SOURCE_FLOW, "", "", "", minutes));
    places.forEach(place -> lines.add(List.of(place, "", "", "", minutes)));
    return written(lines);
  }

  /** A temperature that a program reads: with a plain minus sign. */
  private static String number(double celsius) {
    return Quantities.number(celsius, 1).replace('\u2212', '-');
  }

  private static String written(List<List<String>> lines) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter csv = new CSVPrinter(out, CSVFormat.RFC4180)) {
      for (List<String> line : lines) {
        csv.printRecord(line.stream().map(SheetCsv::noFormula).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toString();
  }

  /** A cell that a spreadsheet shows and does not carry out. */
  private static String noFormula(String cell) {
    boolean formula =
        !cell.isEmpty() && "=+-@".indexOf(cell.charAt(0)) >= 0 && !cell.matches("-[0-9.]+");
    return formula ? "'" + cell : cell;
  }
}
