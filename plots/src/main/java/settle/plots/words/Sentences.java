package settle.plots.words;

/** How sentences are put together. */
public final class Sentences {

  private static final String PLACE = "{}";

  private Sentences() {}

  /**
   * A sentence with its places filled, as in {@code say("{} gets {}", room, heat)}.
   *
   * @param form the sentence, a pair of braces for each part
   * @param parts in order
   */
  public static String say(String form, Object... parts) {
    StringBuilder words = new StringBuilder();
    int from = 0;
    for (Object part : parts) {
      int place = form.indexOf(PLACE, from);
      words.append(form, from, place).append(part);
      from = place + PLACE.length();
    }
    if (form.indexOf(PLACE, from) >= 0) {
      throw new IllegalArgumentException("too few parts for '" + form + "'");
    }
    return words.append(form, from, form.length()).toString();
  }

  /** A noun with its article: "a radiator", "an air heater". */
  static String one(String noun) {
    return ("aeiou".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
  }

  /** The words with a capital first letter. */
  public static String capitalised(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
