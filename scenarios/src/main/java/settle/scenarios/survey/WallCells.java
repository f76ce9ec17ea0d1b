package settle.scenarios.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import settle.scenarios.quantity.Dimension;

/** Reads the free lengths of a room's walls, in one cell or a cell each. */
final class WallCells {

  private static final Pattern BETWEEN = Pattern.compile("\\s*[+;|]\\s*|,\\s+");

  /** Several numbers with nothing but space between. */
  private static final Pattern SPACED =
      Pattern.compile("\\d+(?:[.,]\\d+)?(?:\\s+\\d+(?:[.,]\\d+)?)+(?:\\s*[a-zA-Z]+)?");

  /** By how much walls may be longer than the room's size says [-]: skirting boards, plaster. */
  private static final double ROUNDING = 1.05;

  /** Most walls that a scenario may list. */
  private static final int MOST = 60;

  private final Cells cells;

  WallCells(Cells cells) {
    this.cells = cells;
  }

  /** The lengths in order [m]; none where the survey has none. */
  List<Double> read(Survey.Sides sides) {
    List<Double> free = new ArrayList<>();
    if (cells.has(Column.WALLS)) {
      int at = cells.headings().at(Column.WALLS);
      String typed = cells.typed(at);
      String[] parts =
          SPACED.matcher(typed).matches()
              ? typed.split("(?<=[\\d])\\s+(?=\\d)")
              : BETWEEN.split(typed, -1);
      SizeCells.withLastUnit(parts).forEach(part -> add(free, at, part));
    }
    for (int at : cells.headings().walls()) {
      if (cells.has(at)) {
        add(free, at, cells.typed(at));
      }
    }
    check(free, sides);
    return free;
  }

  private void add(List<Double> free, int at, String typed) {
    Optional<Measure.Value> value = cells.value(at, typed, Measure.LENGTH);
    if (value.isPresent() && cells.isWithin(at, Limits.WALL, value.get().si())) {
      free.add(SizeCells.rounded(value.get().si()));
    }
  }

  private void check(List<Double> free, Survey.Sides sides) {
    double all = free.stream().mapToDouble(Double::doubleValue).sum();
    int at =
        cells.has(Column.WALLS) || cells.headings().walls().isEmpty()
            ? cells.headings().at(Column.WALLS)
            : cells.headings().walls().get(0);
    if (free.size() > MOST) {
      cells.problem(at, "found " + free.size() + " walls, expected at most " + MOST);
    } else if (sides.isRectangle() && all > sides.perimeter() * ROUNDING) {
      cells.problem(
          at,
          "found "
              + Dimension.LENGTH.show(all)
              + " of free wall, expected at most "
              + Dimension.LENGTH.show(sides.perimeter())
              + ", which is all that its size has");
    }
  }
}
