package settle.plots.words;

import java.util.List;

/** Joins things as a sentence lists them. */
final class Listing {

  private Listing() {}

  /** "a", "a and b", "a, b and c". */
  static String of(List<String> items) {
    if (items.size() < 2) {
      return String.join("", items);
    }
    int last = items.size() - 1;
    return String.join(", ", items.subList(0, last)) + " and " + items.get(last);
  }
}
