package settle.scenarios.format;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.scenarios.quantity.Dimension;

/** The form a value takes. */
public sealed interface Form {

  /**
   * A number with a unit, within limits that nothing physical passes: what lies outside is a slip
   * of the pen, and would only lead to answers without meaning.
   *
   * @param dimension what it measures
   * @param least smallest value allowed, SI
   * @param most largest value allowed, SI
   * @param limits why no more and no less, such as "rooms of a house"; empty where that is plain
   * @param doubtBelow smaller values are legal but doubtful, SI
   * @param doubtAbove larger values are legal but doubtful, SI
   */
  record Quantity(
      Dimension dimension,
      double least,
      double most,
      String limits,
      double doubtBelow,
      double doubtAbove)
      implements Form {

    public Quantity {
      if (!Double.isFinite(least) || !Double.isFinite(most) || least >= most) {
        throw new IllegalArgumentException(dimension + " from " + least + " to " + most);
      }
    }

    /** Any value of a dimension between two limits in SI that are both allowed. */
    public static Quantity of(Dimension dimension, double least, double most, String limits) {
      return new Quantity(dimension, least, most, limits, least, most);
    }

    /** This range, doubtful outside two values in SI. */
    public Quantity usually(double from, double to) {
      return new Quantity(dimension, least, most, limits, from, to);
    }
  }

  /**
   * A number whose unit says which of two things it measures.
   *
   * @param usual the usual one
   * @param other the other, with units of its own
   */
  record EitherQuantity(Quantity usual, Quantity other) implements Form {}

  /** Yes or no; true and false are understood. */
  record YesNo() implements Form {

    public static final List<String> YES = List.of("yes", "true");
    public static final List<String> NO = List.of("no", "false");
  }

  /** Free text on one line. */
  record Words() implements Form {}

  /**
   * One of a few words.
   *
   * @param words the words
   */
  record Choice(List<String> words) implements Form {}

  /**
   * The name of something defined elsewhere.
   *
   * @param kind what is named, such as "construction"
   */
  record Reference(String kind) implements Form {}

  /** Length x width x height, {@code 4.2 x 3.6 x 2.4 m}. */
  record Size() implements Form {}

  /** An area, {@code 18 m²} or {@code 4.2 x 2.4 m}. */
  record Area() implements Form {}

  /**
   * What lies behind a surface: outdoors, ground, a neighbour, nothing, a temperature, or a room's
   * name.
   */
  record Beyond() implements Form {

    public static final String OUTDOORS = "outdoors";
    public static final String GROUND = "ground";
    public static final String NEIGHBOUR = "neighbour";
    public static final String ADIABATIC = "adiabatic";

    /** All words that are no room's name. */
    public static final List<String> WORDS = List.of(OUTDOORS, GROUND, NEIGHBOUR, ADIABATIC);

    /** A space that is held at a temperature. */
    public static final Quantity TEMPERATURE =
        Quantity.of(Dimension.TEMPERATURE, -60, 60, "the coldest and the hottest places on earth");

    /**
     * Whether a text is meant as a temperature rather than a name: a number with what may be a
     * unit, not "2nd bedroom".
     */
    public static boolean isTemperature(String text) {
      boolean number = !text.isEmpty() && "+-\u22120123456789.".indexOf(text.charAt(0)) >= 0;
      return number && !text.matches("[-+\\u2212.\\d]\\S*\\s+.*\\p{L}{3,}.*|\\d+\\p{L}{2,}\\s+.*");
    }
  }

  /** A time of day, {@code 06:30}. */
  record TimeOfDay() implements Form {}

  /** A period of the day, {@code 06:30-09:00}; it may pass midnight. */
  record Span() implements Form {}

  /** A calendar day, {@code 2026-01-15}. */
  record Day() implements Form {}

  /**
   * Keys with values.
   *
   * @param table which keys
   */
  record Keys(Table table) implements Form {}

  /**
   * Keys with values, which keys depending on one of them.
   *
   * @param discriminator name of the key that decides
   * @param tables its values with their tables
   */
  record Variants(String discriminator, Map<String, Table> tables) implements Form {

    /** Values of the deciding key, each followed by its table. */
    public static Variants of(String discriminator, Object... valuesAndTables) {
      Map<String, Table> tables = new LinkedHashMap<>();
      for (int i = 0; i < valuesAndTables.length; i += 2) {
        tables.put((String) valuesAndTables[i], (Table) valuesAndTables[i + 1]);
      }
      return new Variants(discriminator, tables);
    }
  }

  /**
   * Names the user chose, each with a value of one form.
   *
   * @param kind what is named, such as "room"
   * @param each the form of every value
   */
  record Named(String kind, Form each) implements Form {}

  /**
   * A list; a single value may stand alone.
   *
   * @param each the form of every item
   */
  record Several(Form each) implements Form {}

  /**
   * A value of one form, or keys.
   *
   * @param plain the form without these keys
   * @param keys the form with keys
   */
  record Either(Form plain, Keys keys) implements Form {}
}
