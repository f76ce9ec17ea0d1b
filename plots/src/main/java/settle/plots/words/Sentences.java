package settle.plots.words;

/** How words begin. */
public final class Sentences {

  private Sentences() {}

  /** Words as a sentence begins with them. */
  public static String capitalised(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
