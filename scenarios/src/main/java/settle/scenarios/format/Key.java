package settle.scenarios.format;

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
 */
public record Key(
    String name, Form form, boolean required, String about, String fallback, String reason) {

  /** A key that must be there. */
  public static Key required(String name, Form form, String about) {
    return new Key(name, form, true, about, "", "");
  }

  /** A key that may be left out. */
  public static Key optional(String name, Form form, String about) {
    return new Key(name, form, false, about, "", "");
  }

  /** The same with a fixed fallback and its source. */
  public Key orElse(String value, String source) {
    return new Key(name, form, required, about, value, source);
  }

  /** The same with a fallback that is worked out, said in words. */
  public Key orElse(String how) {
    return new Key(name, form, required, about, "", how);
  }
}
