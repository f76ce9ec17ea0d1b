package settle.scenarios.format;

import java.util.List;
import java.util.Map;
import settle.scenarios.quantity.ClockText;
import settle.scenarios.quantity.QuantityException;

/**
 * A key of the format.
 *
 * @param name as it is written
 * @param form what its value looks like
 * @param required whether it must be there
 * @param about what it means, a phrase for the schema and for help
 * @param fallback the value taken where it is left out, as it would be written; empty where there
 *     is none or it is worked out
 * @param reason the source of the fallback; where it is worked out, how
 * @param fallbackNumber the fallback of a quantity in SI units, of a time of day in seconds since
 *     midnight; not a number where there is none
 */
public record Key(
    String name,
    Form form,
    boolean required,
    String about,
    String fallback,
    String reason,
    double fallbackNumber) {

  /** A key whose fallback is read once, here. */
  public Key(
      String name, Form form, boolean required, String about, String fallback, String reason) {
    this(name, form, required, about, fallback, reason, parsed(name, form, fallback));
  }

  private static double parsed(String name, Form form, String fallback) {
    try {
      if (form instanceof Form.Quantity quantity && !fallback.isEmpty()) {
        return quantity.dimension().parse(fallback);
      }
      boolean isTime = form instanceof Form.TimeOfDay && !fallback.isEmpty();
      return isTime ? ClockText.timeOfDay(fallback) : Double.NaN;
    } catch (QuantityException e) {
      throw new IllegalStateException("default of '" + name + "': " + e.getMessage(), e);
    }
  }

  /** The key that names the kind. */
  public static final String KIND = "kind";

  /** A key that must be there. */
  public static Key required(String name, Form form, String about) {
    return new Key(name, form, true, about, "", "");
  }

  /** A key that may be left out. */
  public static Key optional(String name, Form form, String about) {
    return new Key(name, form, false, about, "", "");
  }

  /**
   * The key that decides which others there are.
   *
   * @param meanings its words with what each means
   */
  public static Key variant(String name, Map<String, String> meanings) {
    String all = String.join(", ", meanings.values());
    int last = all.lastIndexOf(", ");
    String about = last < 0 ? all : all.substring(0, last) + " or" + all.substring(last + 1);
    return required(name, new Form.Choice(List.copyOf(meanings.keySet())), about);
  }

  /** This key as an optional one. */
  public Key mayBeLeftOut() {
    return new Key(name, form, false, about, fallback, reason);
  }

  /** This key with a fixed fallback and its source. */
  public Key orElse(String value, String source) {
    return new Key(name, form, required, about, value, source);
  }

  /** This key with a fallback that is worked out, said in words. */
  public Key orElse(String how) {
    return new Key(name, form, required, about, "", how);
  }
}
