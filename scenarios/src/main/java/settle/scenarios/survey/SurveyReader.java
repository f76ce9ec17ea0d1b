package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import settle.scenarios.ScenarioException;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Form;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.scenarios.survey.SurveyTable.Row;

/**
 * Reads a survey: a table with a row of headings and then a row a room. All that is wrong in it is
 * found in one pass.
 */
public final class SurveyReader {

  /** Most rooms that a house may have. */
  private static final int MOST_ROOMS = 200;

  /** What the row is called that adds up the others. */
  private static final Set<String> TOTALS = Set.of("total", "totals", "sum", "whole house");

  private static final Survey.Loss STAND_IN = new Survey.Loss(1000, false, "");

  private final Findings findings;
  private final SurveyTable table;
  private final Headings headings;
  private final RoomNames names = new RoomNames();
  private OptionalDouble outdoor = OptionalDouble.empty();

  private SurveyReader(Findings findings, SurveyTable table, Headings headings) {
    this.findings = findings;
    this.table = table;
    this.headings = headings;
  }

  /**
   * Reads a survey.
   *
   * @param text of the table
   * @param file where it stands, for messages
   * @throws ScenarioException where anything is wrong: all mistakes that one pass can find
   */
  public static Survey read(String text, String file) throws ScenarioException {
    Findings findings = new Findings(file);
    Survey survey = null;
    try {
      SurveyTable table = new SurveyTable(text);
      int first = Headings.row(table.rows());
      Headings headings = Headings.read(table.rows().get(first), findings);
      List<Row> below = table.rows().subList(first + 1, table.rows().size());
      survey = new SurveyReader(findings, table, headings).survey(below);
    } catch (SurveyTable.NoTable e) {
      findings.problem(e.position(), e.getMessage());
    }
    if (findings.problemCount() > 0) {
      throw ScenarioException.of(findings.problems());
    }
    return survey;
  }

  private Survey survey(List<Row> below) {
    Decimals decimals = decimals(below);
    List<Survey.Room> rooms = new ArrayList<>();
    List<Cells> read = new ArrayList<>();
    if (headings.has(Column.ROOM)) {
      for (Row row : below) {
        Cells cells = new Cells(row, headings, decimals, findings);
        if (!isTotal(cells)) {
          rooms.add(room(cells));
          read.add(cells);
        }
      }
      requireColderOutdoors(rooms, read);
      if (rooms.isEmpty()) {
        headings.problem("has no row with a room under its headings");
      } else if (rooms.size() > MOST_ROOMS) {
        headings.problem("found " + rooms.size() + " rooms, expected at most " + MOST_ROOMS);
      }
    }
    return new Survey(rooms, outdoor, headings.passedOver());
  }

  /** A loss in watts is that between two temperatures, of which a survey may say only one. */
  private void requireColderOutdoors(List<Survey.Room> rooms, List<Cells> rows) {
    for (int r = 0; r < rooms.size(); r++) {
      if (!rooms.get(r).loss().perKelvin()
          && outdoor.isPresent()
          && rooms.get(r).want() <= outdoor.getAsDouble()) {
        rows.get(r)
            .problem(
                Column.WANT,
                "found "
                    + Dimension.TEMPERATURE.show(rooms.get(r).want())
                    + ", expected more than the design outdoor temperature of "
                    + Dimension.TEMPERATURE.show(outdoor.getAsDouble()));
      }
    }
  }

  /** How numbers are written: those of the columns that hold any. */
  private Decimals decimals(List<Row> rows) {
    List<String> cells = new ArrayList<>();
    for (Row row : rows) {
      headings.quantities().forEach(c -> cells.add(row.cell(c)));
    }
    return Decimals.of(cells, table.separator());
  }

  /** The row that adds up the others is no room. */
  private static boolean isTotal(Cells cells) {
    return TOTALS.contains(cells.words(Column.ROOM).toLowerCase(Locale.ROOT))
        && !cells.has(Column.SIZE)
        && !cells.has(Column.LENGTH)
        && !cells.has(Column.WANT);
  }

  private Survey.Room room(Cells cells) {
    for (int c = headings.width(); c < cells.width(); c++) {
      if (cells.has(c)) {
        cells.problem(
            c, "found " + Measure.shown(cells.typed(c)) + " in a column without a heading");
        break;
      }
    }
    String typed = cells.words(Column.ROOM);
    String floor = cells.words(Column.FLOOR);
    if (typed.isEmpty()) {
      cells.problem(Column.ROOM, "found no name, expected that of the room");
    } else if (RoomNames.isTooLong(typed)) {
      cells.problem(
          Column.ROOM,
          "found a name of "
              + typed.length()
              + " characters, expected at most "
              + RoomNames.longest());
    }
    String name = names.unique(typed, floor);
    Survey.Sides sides = new SizeCells(cells).read();
    double want = want(cells);
    Survey.Loss loss = loss(cells);
    readOutdoor(cells);
    return new Survey.Room(
        cells.line(),
        name,
        name.equals(typed) ? Optional.empty() : Optional.of(typed),
        floor,
        sides,
        want,
        loss,
        new WallCells(cells).read(sides),
        new RadiatorCells(cells).read());
  }

  private double want(Cells cells) {
    if (headings.has(Column.WANT) && !cells.has(Column.WANT)) {
      cells.lacks(Column.WANT, Measure.TEMPERATURE.expected());
    }
    return tenths(cells.within(Column.WANT, Limits.WANT).orElse(20));
  }

  private static double tenths(double value) {
    return NumberText.rounded(value, 1);
  }

  private static Survey.Loss loss(Cells cells) {
    Optional<Measure.Value> value = cells.value(Column.LOSS);
    if (value.isEmpty()) {
      return STAND_IN;
    }
    double si = value.get().si();
    Measure.Unit unit = value.get().unit();
    Form.Quantity limits = unit.perKelvin() ? Limits.LOSS_PER_KELVIN : Limits.LOSS;
    if (!cells.isWithin(cells.headings().at(Column.LOSS), limits, si)) {
      return STAND_IN;
    }
    String typed = cells.words(Column.LOSS);
    boolean bare = typed.matches("[\\d.,\\s]+");
    return new Survey.Loss(
        NumberText.rounded(si, unit.perKelvin() ? 2 : 0),
        unit.perKelvin(),
        unit.si() ? "" : bare ? typed + " " + unit.symbol() : typed);
  }

  private void readOutdoor(Cells cells) {
    OptionalDouble here = cells.within(Column.OUTDOOR, Limits.OUTDOOR);
    if (here.isEmpty()) {
      return;
    }
    double rounded = tenths(here.getAsDouble());
    if (outdoor.isPresent() && rounded != outdoor.getAsDouble()) {
      cells.problem(
          Column.OUTDOOR,
          "found "
              + Dimension.TEMPERATURE.show(rounded)
              + ", expected one design outdoor temperature, and another row has "
              + Dimension.TEMPERATURE.show(outdoor.getAsDouble()));
    }
    outdoor = OptionalDouble.of(rounded);
  }
}
