package settle.scenarios.document;

/**
 * Text without what steers a display instead of being read: control characters of both sets, marks
 * that override or embed the direction of writing, line and paragraph separators, and what is no
 * character at all. A name that held them could recolour a terminal, hide what stands beside it, or
 * make a drawing that no viewer opens.
 */
public final class PlainText {

  private PlainText() {}

  /**
   * The text as a person would read it.
   *
   * @param text as typed
   * @return the same, line ends and tabs kept, other characters that steer left out; words stay
   *     apart
   */
  public static String of(String text) {
    int clean = 0;
    while (clean < text.length() && keeps(text, clean)) {
      clean++;
    }
    if (clean == text.length()) {
      return text;
    }
    StringBuilder plain = new StringBuilder(text.length()).append(text, 0, clean);
    for (int i = clean; i < text.length(); i++) {
      char c = text.charAt(i);
      if (keeps(text, i)) {
        plain.append(c);
      } else if (separates(c)) {
        plain.append(' ');
      }
    }
    return plain.toString();
  }

  /**
   * The text as a person would read it, on one line.
   *
   * @param text as typed
   */
  public static String line(String text) {
    return of(text).replaceAll("\\s+", " ").strip();
  }

  private static boolean keeps(String text, int at) {
    char c = text.charAt(at);
    if (c >= ' ' && c < 0x7F) {
      return true;
    }
    if (Character.isHighSurrogate(c)) {
      return at + 1 < text.length()
          && Character.isLowSurrogate(text.charAt(at + 1))
          && !isNoCharacter(text.codePointAt(at));
    }
    if (Character.isLowSurrogate(c)) {
      return at > 0
          && Character.isHighSurrogate(text.charAt(at - 1))
          && !isNoCharacter(text.codePointAt(at - 1));
    }
    return c == '\n' || c == '\r' || c == '\t' || !(steers(c) || isNoCharacter(c));
  }

  /** Controls C0 and C1, and what Unicode Standard Annex 9 lets turn the direction of writing. */
  private static boolean steers(char c) {
    return Character.isISOControl(c)
        || c == '\u2028'
        || c == '\u2029'
        || c == '\u061C'
        || c == '\u200E'
        || c == '\u200F'
        || (c >= '\u202A' && c <= '\u202E')
        || (c >= '\u2066' && c <= '\u2069')
        || c == '\uFEFF'
        || (c >= '\uFFF9' && c <= '\uFFFB');
  }

  private static boolean separates(char c) {
    return c == '\u0085' || c == '\u2028' || c == '\u2029' || c == '\u000B' || c == '\f';
  }

  private static boolean isNoCharacter(int c) {
    return (c & 0xFFFE) == 0xFFFE || (c >= 0xFDD0 && c <= 0xFDEF) || (c >= 0xE0000 && c <= 0xE007F);
  }
}
