package settle.scenarios.survey;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.format.NearestName;
import settle.scenarios.quantity.QuantityException;

/** What a column of a survey measures, with the units that surveys bring, SI and imperial. */
enum Measure {
  /** A length, inside [m]. */
  LENGTH("a length such as 4.2 m or 13'9\"", lengths()),
  /** An area, inside [m²]. */
  AREA("an area such as 18 m² or 194 sq ft", areas()),
  /** A heat loss, inside [W] or [W/K]. */
  HEAT_LOSS("a heat loss such as 1450 W, 4950 BTU/h or 58 W/K", losses()),
  /** A temperature, inside [°C]. */
  TEMPERATURE("a temperature such as 21 °C or 70 °F", temperatures());

  /** One British thermal unit (international table) per hour [W]. */
  private static final double BTU_PER_HOUR = 1055.05585262 / 3600;

  /** One foot [m]. */
  private static final double FOOT = 0.3048;

  private static final double INCH = 0.0254;

  /** One kelvin in degrees Fahrenheit. */
  private static final double FAHRENHEIT = 1.8;

  private static final Pattern NUMBER =
      Pattern.compile(
          "([-+\\u2212]?[\\d.,]*\\d[\\d.,]*(?:[ \\u00A0\\u2009\\u202F]\\d{3}(?!\\d))*)\\s*(.*)",
          Pattern.DOTALL);

  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(\\d+)\\s*(?:'|ft|foot|feet)\\.?\\s*-?\\s*"
              + "(\\d+(?:[.,]\\d+)?)?(?:\\s*(\\d+)/(\\d+))?\\s*(?:\"|''|ins?|inch|inches)?\\.?",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern INCHES =
      Pattern.compile(
          "(\\d+)?\\s*(\\d+)/(\\d+)\\s*(?:\"|''|ins?|inch|inches)\\.?", Pattern.CASE_INSENSITIVE);

  /**
   * A unit.
   *
   * @param symbol as it is printed
   * @param factor one of it in SI [-]
   * @param zero its nought in SI
   * @param perKelvin whether it is of a loss per kelvin
   * @param si whether it is one of those that settle prints
   */
  record Unit(String symbol, double factor, double zero, boolean perKelvin, boolean si) {}

  private final String expected;
  private final Map<String, Unit> units;

  Measure(String expected, Map<String, Unit> units) {
    this.expected = expected;
    this.units = units;
  }

  private static void add(
      Map<String, Unit> units, double factor, boolean si, String symbol, String... spellings) {
    Unit unit = new Unit(symbol, factor, 0, symbol.endsWith("/K"), si);
    units.put(plain(symbol), unit);
    for (String spelling : spellings) {
      units.put(plain(spelling), unit);
    }
  }

  private static Map<String, Unit> lengths() {
    Map<String, Unit> units = new LinkedHashMap<>();
    add(units, 1, true, "m", "metre", "metres", "meter", "meters");
    add(units, 1e-3, true, "mm", "millimetres", "millimeters");
    add(units, 1e-2, true, "cm", "centimetres", "centimeters");
    add(units, FOOT, false, "ft", "'", "foot", "feet", "ft in", "feet and inches", "feet inches");
    add(units, INCH, false, "in", "\"", "''", "inch", "inches", "ins");
    return units;
  }

  private static Map<String, Unit> areas() {
    Map<String, Unit> units = new LinkedHashMap<>();
    add(units, 1, true, "m²", "sqm", "sq m", "square metres", "square meters");
    add(units, FOOT * FOOT, false, "sq ft", "ft²", "sqft", "square feet", "square foot");
    return units;
  }

  private static Map<String, Unit> losses() {
    Map<String, Unit> units = new LinkedHashMap<>();
    add(units, 1, true, "W", "watt", "watts");
    add(units, 1000, true, "kW", "kilowatts");
    add(units, 1, true, "W/K", "W/°C", "W/degC");
    add(units, BTU_PER_HOUR, false, "BTU/h", "BTU/hr", "BTUH", "BTU", "BTUs", "BTU per hour");
    add(units, 1000 * BTU_PER_HOUR, false, "kBTU/h", "kBTU/hr", "kBTU", "MBH");
    Unit perFahrenheit = new Unit("BTU/h°F", BTU_PER_HOUR * FAHRENHEIT, 0, true, false);
    for (String spelling : List.of("BTU/h°F", "BTU/hr°F", "BTU/hF", "BTUH/°F", "BTU/h/°F")) {
      units.put(plain(spelling), perFahrenheit);
    }
    return units;
  }

  private static Map<String, Unit> temperatures() {
    Map<String, Unit> units = new LinkedHashMap<>();
    add(units, 1, true, "°C", "C", "Celsius", "deg C", "degrees C");
    Unit fahrenheit = new Unit("°F", 1 / FAHRENHEIT, -32 / FAHRENHEIT, false, false);
    for (String spelling : List.of("°F", "F", "Fahrenheit", "deg F", "degrees F")) {
      units.put(plain(spelling), fahrenheit);
    }
    return units;
  }

  /** A spelling without what does not matter in it. */
  private static String plain(String spelling) {
    return marks(spelling)
        .toLowerCase(Locale.ROOT)
        .replace("²", "2")
        .replace("℃", "degc")
        .replace("℉", "degf")
        .replaceAll("[°º]", "deg")
        .replaceAll("[\\s.·*()^\\u00A0]", "");
  }

  /** Primes and typographic quotation marks as they are typed, fractions in figures. */
  private static String marks(String text) {
    return text.replaceAll("[′’‘´`]", "'")
        .replaceAll("[″”“]", "\"")
        .replace("½", " 1/2")
        .replace("¼", " 1/4")
        .replace("¾", " 3/4");
  }

  /** Its usual unit. */
  String usual() {
    return units.values().iterator().next().symbol();
  }

  /** The unit of a spelling. */
  Optional<Unit> unit(String spelling) {
    return Optional.ofNullable(units.get(plain(spelling)));
  }

  /** What a value should look like: "a length such as 4.2 m". */
  String expected() {
    return expected;
  }

  /** The units there are, for messages. */
  private String symbols() {
    return String.join(", ", units.values().stream().map(Unit::symbol).distinct().toList());
  }

  /**
   * A value of a cell.
   *
   * @param si value in SI
   * @param unit it was written in
   */
  record Value(double si, Unit unit) {}

  /**
   * Reads a cell.
   *
   * @param typed what stands in it
   * @param usual the unit of its column, null where the column has none
   * @param decimals how its numbers are written
   */
  Value read(String typed, Unit usual, Decimals decimals) throws QuantityException {
    String text = marks(typed).strip();
    if (this == LENGTH) {
      Optional<Value> imperial = feetAndInches(text, decimals);
      if (imperial.isPresent()) {
        return imperial.get();
      }
    }
    Matcher number = NUMBER.matcher(text);
    if (!number.matches()) {
      throw new QuantityException("found " + shown(typed) + ", expected " + expected);
    }
    double value = decimals.read(number.group(1));
    String symbol = number.group(2).strip();
    Unit unit = symbol.isEmpty() ? usual : units.get(plain(symbol));
    if (unit == null) {
      throw new QuantityException(
          symbol.isEmpty()
              ? "found " + shown(typed) + " without a unit, expected " + expected
              : "found " + shown(typed) + ", expected " + expected + nearest(symbol));
    }
    return new Value(value * unit.factor() + unit.zero(), unit);
  }

  private String nearest(String symbol) {
    return NearestName.of(symbol, units.values().stream().map(Unit::symbol).distinct().toList())
        .map(n -> "; the nearest unit is '" + n + "'")
        .orElse("; units are " + symbols());
  }

  private static Optional<Value> feetAndInches(String text, Decimals decimals)
      throws QuantityException {
    Matcher both = FEET_AND_INCHES.matcher(text);
    if (both.matches()) {
      double inches = both.group(2) == null ? 0 : decimals.read(both.group(2));
      inches += fraction(both.group(3), both.group(4));
      if (inches >= 12) {
        throw new QuantityException("found " + text + ", expected fewer than 12 inches");
      }
      double metres = Double.parseDouble(both.group(1)) * FOOT + inches * INCH;
      return Optional.of(new Value(metres, LENGTH.units.get("ft")));
    }
    Matcher inches = INCHES.matcher(text);
    if (inches.matches()) {
      double whole = inches.group(1) == null ? 0 : Double.parseDouble(inches.group(1));
      double metres = (whole + fraction(inches.group(2), inches.group(3))) * INCH;
      return Optional.of(new Value(metres, LENGTH.units.get("in")));
    }
    return Optional.empty();
  }

  private static double fraction(String over, String under) {
    return over == null || Double.parseDouble(under) == 0
        ? 0
        : Double.parseDouble(over) / Double.parseDouble(under);
  }

  static String shown(String typed) {
    return typed.length() <= 60 ? typed : typed.substring(0, 60) + "…";
  }
}
