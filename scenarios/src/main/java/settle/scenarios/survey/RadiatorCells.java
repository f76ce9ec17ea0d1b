package settle.scenarios.survey;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.emitter.TradeRadiators;
import settle.scenarios.format.Form;
import settle.scenarios.format.NearestName;

/**
 * Reads the existing radiator of a room: its type, and its height and length beside it or in it.
 */
final class RadiatorCells {

  /** What types are called besides their figures; common practice, no source. */
  private static final Map<String, String> CALLED =
      Map.ofEntries(
          Map.entry("p1", "10"),
          Map.entry("single panel", "10"),
          Map.entry("k1", "11"),
          Map.entry("single convector", "11"),
          Map.entry("single panel single convector", "11"),
          Map.entry("p+", "21"),
          Map.entry("double panel plus", "21"),
          Map.entry("double panel single convector", "21"),
          Map.entry("k2", "22"),
          Map.entry("double convector", "22"),
          Map.entry("double panel double convector", "22"),
          Map.entry("towel radiator", "towel rail"),
          Map.entry("towel", "towel rail"),
          Map.entry("ladder rail", "towel rail"));

  /** A type with height and length behind it, in millimetres where it says no unit. */
  private static final Pattern WITH_SIZE =
      Pattern.compile(
          "(.*?)[\\s,]+(\\d[\\d.,]*)\\s*(mm|cm|m)?\\s*[x×]\\s*(\\d[\\d.,]*)\\s*(mm|cm|m)?",
          Pattern.CASE_INSENSITIVE);

  /** A type with its height behind it, as the catalogue has it. */
  private static final Pattern WITH_HEIGHT =
      Pattern.compile("(.*?)[\\s,]+(\\d{3,4})\\s*mm", Pattern.CASE_INSENSITIVE);

  private final Cells cells;

  RadiatorCells(Cells cells) {
    this.cells = cells;
  }

  /** The radiator; empty where there is none, or it cannot be read. */
  Optional<Survey.Radiator> read() {
    if (!cells.has(Column.RADIATOR)) {
      for (Column column : List.of(Column.RADIATOR_HEIGHT, Column.RADIATOR_LENGTH)) {
        if (cells.has(column)) {
          cells.lacks(Column.RADIATOR, "its type, " + types());
          break;
        }
      }
      return Optional.empty();
    }
    String typed = cells.words(Column.RADIATOR);
    String height = "";
    String length = "";
    Matcher size = WITH_SIZE.matcher(typed);
    Matcher withHeight = WITH_HEIGHT.matcher(typed);
    if (size.matches()) {
      typed = size.group(1);
      String last = size.group(5) == null ? "mm" : size.group(5);
      height = size.group(2) + " " + (size.group(3) == null ? last : size.group(3));
      length = size.group(4) + " " + last;
    } else if (withHeight.matches()) {
      typed = withHeight.group(1);
      height = withHeight.group(2) + " mm";
    }
    return read(typed, height, length);
  }

  private Optional<Survey.Radiator> read(String typed, String height, String length) {
    Optional<String> type = type(typed);
    if (type.isEmpty()) {
      cells.problem(
          Column.RADIATOR,
          "found "
              + Measure.shown(typed)
              + ", which is no type known here"
              + NearestName.hint(typed, TradeRadiators.types()));
    }
    boolean rail = type.map(TradeRadiators::isOfOneSize).orElse(false);
    Form.Quantity heights = rail || type.isEmpty() ? Limits.RAIL_HEIGHT : Limits.PANEL_HEIGHT;
    OptionalDouble high = side(Column.RADIATOR_HEIGHT, height, heights);
    OptionalDouble longest = side(Column.RADIATOR_LENGTH, length, Limits.RADIATOR_LENGTH);
    return type.isEmpty() || high.isEmpty() || longest.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Survey.Radiator(
                type.get(),
                SizeCells.rounded(high.getAsDouble()),
                SizeCells.rounded(longest.getAsDouble())));
  }

  /** One of its sides, from its own column or from behind the type. */
  private OptionalDouble side(Column column, String behindType, Form.Quantity limits) {
    if (cells.has(column)) {
      return cells.within(column, limits);
    }
    if (behindType.isEmpty()) {
      cells.lacks(column, "a length such as 600 mm or 24\"");
      return OptionalDouble.empty();
    }
    int at = cells.headings().at(Column.RADIATOR);
    Optional<Measure.Value> value = cells.value(at, behindType, Measure.LENGTH);
    return value.isPresent() && cells.isWithin(at, limits, value.get().si())
        ? OptionalDouble.of(value.get().si())
        : OptionalDouble.empty();
  }

  private static Optional<String> type(String typed) {
    String plain = typed.toLowerCase(Locale.ROOT).replaceFirst("^(type|t)\\s*(?=\\d)", "").strip();
    String type = CALLED.getOrDefault(plain, plain);
    return TradeRadiators.types().contains(type) ? Optional.of(type) : Optional.empty();
  }

  private static String types() {
    return String.join(", ", TradeRadiators.types());
  }
}
