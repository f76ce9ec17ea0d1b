package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import settle.scenarios.quantity.NumberText;

/** Reads how large a room is, whichever way the survey has it. */
final class SizeCells {

  private static final Pattern TIMES =
      Pattern.compile("\\s*(?:[x×✕*]|\\bby\\b)\\s*", Pattern.CASE_INSENSITIVE);

  private static final String EXPECTED =
      "length x width x height such as 4.2 x 3.6 x 2.4 m or 13'9\" x 11'10\" x 7'10\"";

  private static final Survey.Sides STAND_IN = new Survey.Sides(4, 4, 2.4, 16);

  private final Cells cells;

  SizeCells(Cells cells) {
    this.cells = cells;
  }

  Survey.Sides read() {
    if (cells.has(Column.SIZE)) {
      return inOneCell();
    }
    Headings headings = cells.headings();
    boolean sides = cells.has(Column.LENGTH) || cells.has(Column.WIDTH);
    if (!sides && !cells.has(Column.AREA)) {
      if (headings.has(Column.SIZE)) {
        cells.lacks(Column.SIZE, EXPECTED);
      } else {
        cells.lacks(
            headings.has(Column.LENGTH) ? Column.LENGTH : Column.AREA,
            headings.has(Column.LENGTH) ? "a length" : "an area");
      }
      return STAND_IN;
    }
    OptionalDouble height = needed(Column.HEIGHT);
    if (!sides) {
      OptionalDouble area = cells.within(Column.AREA, Limits.AREA);
      return area.isEmpty() || height.isEmpty()
          ? STAND_IN
          : new Survey.Sides(Double.NaN, Double.NaN, height.getAsDouble(), area.getAsDouble());
    }
    OptionalDouble length = needed(Column.LENGTH);
    OptionalDouble width = needed(Column.WIDTH);
    return length.isEmpty() || width.isEmpty() || height.isEmpty()
        ? STAND_IN
        : sides(length.getAsDouble(), width.getAsDouble(), height.getAsDouble());
  }

  private OptionalDouble needed(Column column) {
    if (!cells.has(column)) {
      cells.lacks(column, "a length such as 4.2 m or 13'9\"");
    }
    return cells.within(column, Limits.SIDE);
  }

  private static Survey.Sides sides(double length, double width, double height) {
    return new Survey.Sides(
        rounded(length), rounded(width), rounded(height), rounded(length) * rounded(width));
  }

  /** To millimetres: nobody measures a room closer. */
  static double rounded(double metres) {
    return NumberText.rounded(metres, 3);
  }

  private Survey.Sides inOneCell() {
    int at = cells.headings().at(Column.SIZE);
    String typed = cells.typed(at);
    String[] parts = TIMES.split(typed, -1);
    if (parts.length != 3) {
      cells.problem(at, "found " + Measure.shown(typed) + ", expected " + EXPECTED);
      return STAND_IN;
    }
    List<Double> lengths = new ArrayList<>();
    for (String part : withLastUnit(parts)) {
      Optional<Measure.Value> value = cells.value(at, part, Measure.LENGTH);
      if (value.isEmpty() || !cells.isWithin(at, Limits.SIDE, value.get().si())) {
        return STAND_IN;
      }
      lengths.add(value.get().si());
    }
    return sides(lengths.get(0), lengths.get(1), lengths.get(2));
  }

  /** The last unit is that of all before it that have none. */
  static List<String> withLastUnit(String[] parts) {
    String last = parts[parts.length - 1].strip();
    String unit = last.replaceFirst("^[-+\\u2212]?[\\d.,]+\\s*", "");
    boolean plain = !unit.isEmpty() && unit.chars().noneMatch(Character::isDigit);
    List<String> all = new ArrayList<>();
    for (String part : parts) {
      boolean bare = part.strip().matches("[-+\\u2212]?[\\d.,]+");
      all.add(bare && plain ? part.strip() + " " + unit : part.strip());
    }
    return all;
  }
}
