package settle.plots.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Warnings that say the same of several things, gathered into one: "'a': 3 % too few" and "'b': 5 %
 * too few" become "'a' and 'b': 3 to 5 % too few".
 */
public final class Gathered {

  private static final Pattern SUBJECT = Pattern.compile("('[^']*'): (.*)", Pattern.DOTALL);
  private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

  /** More things than this are counted instead of named. */
  private static final int MOST_NAMED = 3;

  private Gathered() {}

  /**
   * The same warnings, fewer.
   *
   * @param warnings each either of one thing, as in "'name': what is wrong", or of none
   * @return in the order of the first of each kind
   */
  public static List<String> of(List<String> warnings) {
    Map<String, List<Matcher>> kinds = new LinkedHashMap<>();
    for (String warning : warnings) {
      Matcher matcher = SUBJECT.matcher(warning);
      String kind = matcher.matches() ? NUMBER.matcher(matcher.group(2)).replaceAll("#") : warning;
      kinds.computeIfAbsent(kind, k -> new ArrayList<>()).add(matcher);
    }
    List<String> gathered = new ArrayList<>();
    kinds.forEach((kind, found) -> gathered.add(found.get(0).matches() ? gathered(found) : kind));
    return gathered;
  }

  private static String gathered(List<Matcher> found) {
    List<String> subjects = found.stream().map(m -> m.group(1)).distinct().toList();
    List<String> named =
        subjects.size() <= MOST_NAMED
            ? subjects
            : List.of(subjects.get(0), (subjects.size() - 1) + " others");
    return Listing.of(named) + ": " + withRanges(found);
  }

  /** The words of the first, each number as a range over all. */
  private static String withRanges(List<Matcher> found) {
    List<List<String>> numbers = found.stream().map(m -> numbers(m.group(2))).toList();
    String first = found.get(0).group(2);
    Matcher number = NUMBER.matcher(first);
    StringBuilder words = new StringBuilder();
    int done = 0;
    for (int k = 0; number.find(); k++) {
      words.append(first, done, number.start()).append(range(numbers, k));
      done = number.end();
    }
    return words.append(first.substring(done)).toString();
  }

  private static List<String> numbers(String words) {
    List<String> numbers = new ArrayList<>();
    Matcher number = NUMBER.matcher(words);
    while (number.find()) {
      numbers.add(number.group());
    }
    return numbers;
  }

  /** From the least to the most of the numbers at a place. */
  private static String range(List<List<String>> numbers, int place) {
    List<String> values =
        numbers.stream()
            .map(n -> n.get(place))
            .sorted((a, b) -> Double.compare(Double.parseDouble(a), Double.parseDouble(b)))
            .toList();
    String least = values.get(0);
    String most = values.get(values.size() - 1);
    return least.equals(most) ? least : least + " to " + most;
  }
}
