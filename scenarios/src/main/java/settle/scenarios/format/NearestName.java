package settle.scenarios.format;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds what was probably meant. */
public final class NearestName {

  private NearestName() {}

  /**
   * The valid name nearest to what was typed. Case, hyphens and underscores count for nothing; two
   * words that begin alike are near.
   *
   * @param typed what was found
   * @param valid the names there are
   * @return the nearest, empty where none is near enough to be worth suggesting
   */
  public static Optional<String> of(String typed, Collection<String> valid) {
    String a = normal(typed);
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String name : valid) {
      String b = normal(name);
      int distance = distance(a, b);
      boolean oneContainsTheOther =
          (a.length() >= 4 && b.contains(a)) || (b.length() >= 4 && a.contains(b));
      if (oneContainsTheOther) {
        distance = Math.min(distance, 2);
      }
      if (distance < least) {
        least = distance;
        best = name;
      }
    }
    // Up to two slips in a short word, a third of the letters in a long one.
    boolean near =
        best != null && least <= Math.max(2, a.length() / 3) && least < Math.max(a.length(), 2);
    return near ? Optional.of(best) : Optional.empty();
  }

  /**
   * "; the nearest is 'x'", or the list of valid names where none is near, for the end of a
   * message.
   *
   * @param typed what was found
   * @param valid the names there are
   * @return the end of a sentence
   */
  public static String hint(String typed, Collection<String> valid) {
    Optional<String> nearest = of(typed, valid);
    if (nearest.isPresent()) {
      return "; the nearest is '" + nearest.get() + "'";
    }
    if (valid.isEmpty()) {
      return "; none is defined";
    }
    return "; there are " + String.join(", ", valid);
  }

  private static String normal(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[-_ ]+", " ").strip();
  }

  /**
   * Least number of insertions, deletions, replacements and swaps of neighbours (Damerau 1964,
   * restricted).
   */
  private static int distance(String a, String b) {
    int[] beforeLast = new int[b.length() + 1];
    int[] last = new int[b.length() + 1];
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      last[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        row[j] = Math.min(last[j - 1] + same, Math.min(last[j], row[j - 1]) + 1);
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
        }
      }
      int[] free = beforeLast;
      beforeLast = last;
      last = row;
      row = free;
    }
    return last[b.length()];
  }
}
