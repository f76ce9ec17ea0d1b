package settle.scenarios.format;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.QuantityException;
import settle.scenarios.quantity.Unit;

/** Keys with values as they are typed, in braces: the way back from what was read. */
public final class Typed {

  private static final MathContext DIGITS = new MathContext(12);

  private final List<String> entries = new ArrayList<>();

  /** Adds a quantity [SI]. */
  public Typed put(Key key, double si) {
    return put(key, text(key, si));
  }

  /** Adds a share or number for each of some values. */
  public Typed put(Key key, double[] values) {
    Form each = ((Form.Several) key.form()).each();
    Dimension dimension = ((Form.Quantity) each).dimension();
    return put(key, list(Arrays.stream(values).mapToObj(v -> text(dimension, v)).toList()));
  }

  /** Adds keys of their own. */
  public Typed put(Key key, Typed below) {
    return put(key, below.toString());
  }

  /** Adds a list of keys. */
  public Typed put(Key key, List<Typed> items) {
    return put(key, list(items));
  }

  /** Adds a word. */
  public Typed put(Key key, String text) {
    return put(key.name(), text);
  }

  /** Adds a word. */
  public Typed put(String key, String text) {
    entries.add(key + ": " + text);
    return this;
  }

  /** Adds what others have. */
  public Typed putAll(Typed others) {
    entries.addAll(others.entries);
    return this;
  }

  @Override
  public String toString() {
    return "{" + String.join(", ", entries) + "}";
  }

  private static String list(List<?> items) {
    return items.stream().map(Object::toString).collect(Collectors.joining(", ", "[", "]"));
  }

  /** A key's quantity [SI]. */
  public static String text(Key key, double si) {
    return text(((Form.Quantity) key.form()).dimension(), si);
  }

  /** A quantity [SI]: exactly where a unit says so; else to twelve digits in the first unit. */
  public static String text(Dimension dimension, double si) {
    String shown = dimension.show(si);
    if (reads(dimension, shown, si)) {
      return shown;
    }
    for (Unit unit : dimension.units()) {
      String text = in(unit, si / unit.inSi());
      if (reads(dimension, text, si)) {
        return text;
      }
    }
    Unit first = dimension.units().get(0);
    return in(first, rounded(si / first.inSi()));
  }

  private static String in(Unit unit, double value) {
    return (number(value) + " " + unit.symbol()).strip();
  }

  private static boolean reads(Dimension dimension, String text, double si) {
    try {
      return dimension.parse(text) == si;
    } catch (QuantityException e) {
      return false;
    }
  }

  /** A number in as few digits as say it exactly. */
  public static String number(double value) {
    BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
    return exact.signum() == 0 ? "0" : exact.toPlainString();
  }

  /** A number to twelve digits. */
  public static double rounded(double value) {
    return new BigDecimal(value).round(DIGITS).doubleValue();
  }

  /** Words that are no text to other readers of YAML. */
  private static final Set<String> NO_TEXT =
      Set.of("yes", "no", "true", "false", "on", "off", "null", "y", "n");

  /** A name as it may stand in a list in braces: quoted where it holds more than plain words. */
  public static String word(String name) {
    return name.matches("[\\p{L}][\\p{L}\\p{N} ./²³()-]*")
            && !NO_TEXT.contains(name.toLowerCase(Locale.ROOT))
        ? name
        : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }
}
