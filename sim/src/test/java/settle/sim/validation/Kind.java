package settle.sim.validation;

/** How an expected value came about. */
enum Kind {
  PUBLISHED("read", "read in print or in a public transcription of the source", true),
  MEASURED("measured", "measured by others, data in the open", true),
  INDEPENDENT("other code", "given by a library or solver that is not ours, run beside it", true),
  MEMORY("remembered", "from memory of the source, page not seen: a band, never a value", true),
  TAKEN_OVER(
      "taken over",
      "the source's value, which the code uses: shows that it was copied rightly",
      false),
  ANALYTIC("closed form", "closed-form solution of the equations that are stepped", false),
  COMPUTED("formula", "worked out from the source's formula by separate code", false);

  private final String word;
  private final String meaning;
  private final boolean outside;

  Kind(String word, String meaning, boolean outside) {
    this.word = word;
    this.meaning = meaning;
    this.outside = outside;
  }

  String word() {
    return word;
  }

  String meaning() {
    return meaning;
  }

  /** Whether somebody else arrived at the figure, and not only at the formula. */
  boolean isOutside() {
    return outside;
  }
}
