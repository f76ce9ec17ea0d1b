package settle.scenarios.survey;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import settle.scenarios.survey.Measure.Unit;

/**
 * What a heading says: its column, which of several it is, and the unit of its cells.
 *
 * @param column what it stands over
 * @param number of several of the kind, 0 for one
 * @param unit of its cells; null where the heading names none
 */
record Heading(Column column, int number, Unit unit) {

  private static final Pattern IN_BRACKETS = Pattern.compile("(.*?)[(\\[{]([^)\\]}]*)[)\\]}]\\s*");
  private static final Pattern BEHIND_COMMA = Pattern.compile("(.*?)[,/:]\\s*(\\S[^,:]*)");
  private static final Pattern LAST_WORD = Pattern.compile("(.*?)\\s+(?:in\\s+)?(\\S+)");
  private static final Pattern NUMBERED = Pattern.compile("(.*\\D)\\s*([1-9]\\d?)");

  /** Reads it; empty where it means no column. */
  static Optional<Heading> of(String typed) {
    Optional<Heading> whole = column(typed, "");
    if (whole.isPresent()) {
      return whole;
    }
    for (Pattern pattern : new Pattern[] {IN_BRACKETS, BEHIND_COMMA, LAST_WORD}) {
      Matcher matcher = pattern.matcher(typed);
      if (matcher.matches()) {
        Optional<Heading> found = column(matcher.group(1), matcher.group(2));
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  /** A heading whose words and unit are apart. A bracket that holds no unit is a remark. */
  private static Optional<Heading> column(String words, String unit) {
    Matcher numbered = NUMBERED.matcher(words.strip());
    if (numbered.matches()) {
      Optional<Column> walls = Column.of(numbered.group(1)).filter(c -> c == Column.WALLS);
      if (walls.isPresent()) {
        return Optional.of(
            new Heading(
                Column.WALLS, Integer.parseInt(numbered.group(2)), unit(Column.WALLS, unit)));
      }
    }
    return Column.of(words).map(c -> new Heading(c, 0, unit(c, unit)));
  }

  private static Unit unit(Column column, String typed) {
    return column.measure().flatMap(m -> m.unit(typed)).orElse(null);
  }
}
