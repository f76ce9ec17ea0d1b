package settle.plots.report;

import com.samskivert.mustache.Escapers;
import com.samskivert.mustache.Mustache;
import java.util.regex.Pattern;

/**
 * How names stand on a page: markup escaped, and what is written from right to left isolated, so
 * that it does not turn round the figures and units beside it (Unicode Standard Annex 9, first
 * strong isolate). Characters serve where a tag would not: the page's title knows no tags.
 */
final class Isolation {

  private static final String SCRIPT =
      "[\\p{IsHebrew}\\p{IsArabic}\\p{IsSyriac}\\p{IsThaana}\\p{IsNko}\\p{IsAdlam}]";

  private static final Pattern RIGHT_TO_LEFT =
      Pattern.compile(SCRIPT + "(?:[ \\p{M}]*" + SCRIPT + ")*\\p{M}*");

  private Isolation() {}

  /** A compiler of page templates that writes names so. */
  static Mustache.Compiler compiler() {
    return Mustache.compiler().withEscaper(Isolation::escaped);
  }

  /** Names as they stand on a page. */
  static String escaped(String raw) {
    return isolated(Escapers.HTML.escape(raw));
  }

  static String isolated(String text) {
    return RIGHT_TO_LEFT.matcher(text).replaceAll("\u2068$0\u2069");
  }
}
