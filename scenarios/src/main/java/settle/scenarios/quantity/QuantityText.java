package settle.scenarios.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The grammar: a number with a decimal point, then a unit. Powers may be typed as figures ({@code
 * m2}), the degree sign as {@code deg}, and spaces, dots and brackets inside a compound unit do not
 * matter: {@code W/(m² K)} is {@code W/m2K}.
 */
final class QuantityText {

  private static final Pattern NUMBER =
      Pattern.compile(
          "([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)", Pattern.DOTALL);
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.*", Pattern.DOTALL);
  private static final Pattern NOT_A_NUMBER =
      Pattern.compile(
          "[+-]?\\.?(nan|inf|infinity)\\b.*", Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

  private QuantityText() {}

  static double read(String text, Dimension dimension) throws QuantityException {
    Matcher matcher = NUMBER.matcher(text);
    if (matcher.matches()) {
      // The usual spelling, which the catalogue is full of, needs no second look.
      String symbol = matcher.group(2);
      for (Unit unit : dimension.units()) {
        if (unit.symbol().equals(symbol)) {
          return finite(Double.parseDouble(matcher.group(1)), text) * unit.inSi();
        }
      }
    }
    return readOtherSpelling(clean(text), dimension);
  }

  private static double readOtherSpelling(String typed, Dimension dimension)
      throws QuantityException {
    if (NOT_A_NUMBER.matcher(typed).matches()) {
      throw wrong(typed, dimension);
    }
    if (DECIMAL_COMMA.matcher(typed).matches()) {
      throw new QuantityException(
          "found "
              + shown(typed)
              + ", expected a decimal point, not a comma: "
              + typed.replaceFirst(",", "."));
    }
    Matcher matcher = NUMBER.matcher(typed);
    if (!matcher.matches()) {
      throw wrong(typed, dimension);
    }
    double number = finite(Double.parseDouble(matcher.group(1)), typed);
    String symbol = matcher.group(2);
    String plain = plain(symbol);
    for (Unit unit : dimension.units()) {
      if (isSpelling(plain, unit)) {
        return number * unit.inSi();
      }
    }
    if (symbol.isEmpty()) {
      throw new QuantityException(
          "found " + shown(typed) + " without a unit, expected " + dimension.expected());
    }
    if (dimension.units().size() == 1 && dimension.allowsBareNumber()) {
      throw new QuantityException("found " + shown(typed) + ", expected a number without a unit");
    }
    List<Dimension> others = measuredIn(symbol);
    if (others.isEmpty()) {
      throw new QuantityException(
          "found "
              + shown(typed)
              + ", expected "
              + dimension.expected()
              + "; the unit '"
              + shown(symbol)
              + "' is not known here, use "
              + symbols(dimension));
    }
    throw new QuantityException(
        "found "
            + shown(typed)
            + ", which is "
            + others.get(0).article()
            + "; expected "
            + dimension.expected());
  }

  private static double finite(double number, String typed) throws QuantityException {
    if (Double.isInfinite(number)) {
      throw new QuantityException("found " + shown(typed) + ", expected a finite number");
    }
    return number;
  }

  private static QuantityException wrong(String typed, Dimension dimension) {
    return new QuantityException(
        "found "
            + (typed.isEmpty() ? "nothing" : shown(typed))
            + ", expected "
            + dimension.expected());
  }

  private static String symbols(Dimension dimension) {
    return dimension.units().stream()
        .map(Unit::symbol)
        .filter(s -> !s.isEmpty())
        .collect(Collectors.joining(" or "));
  }

  /** What else is measured in this unit. */
  private static List<Dimension> measuredIn(String symbol) {
    String plain = plain(symbol);
    List<Dimension> dimensions = new ArrayList<>();
    for (Dimension dimension : Dimension.values()) {
      for (Unit unit : dimension.units()) {
        if (isSpelling(plain, unit)) {
          dimensions.add(dimension);
        }
      }
    }
    return dimensions;
  }

  private static boolean isSpelling(String plain, Unit unit) {
    if (plain(unit.symbol()).equals(plain)) {
      return true;
    }
    for (String other : unit.otherSpellings()) {
      if (plain(other).equals(plain)) {
        return true;
      }
    }
    return false;
  }

  /** Spaces of every kind become one kind, a typographic minus a minus. */
  private static String clean(String text) {
    return text.replaceAll("[\\s\\u00A0\\u2009\\u202F]+", " ").replace('\u2212', '-').strip();
  }

  /** A unit without what does not matter in its spelling. */
  private static String plain(String symbol) {
    String plain =
        symbol
            .replace("²", "2")
            .replace("³", "3")
            .replace("º", "°")
            .replace("°", "deg")
            .replaceAll("[ ·.*()^]", "");
    return plain.equalsIgnoreCase("degC") ? "degC" : plain;
  }

  private static String shown(String typed) {
    return typed.length() <= 60 ? typed : typed.substring(0, 60) + "…";
  }
}
