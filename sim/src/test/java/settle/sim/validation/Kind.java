package settle.sim.validation;

/** How an expected value came about. */
enum Kind {
  PUBLISHED("published", "the figure was read in print or in a public transcription of the source"),
  COMPUTED(
      "computed",
      "the formula is the source's, the figure was worked out from it by separate code"),
  ANALYTIC("analytic", "closed-form solution of the same equations"),
  INDEPENDENT("independent", "another implementation, run beside ours"),
  MEMORY("memory", "from memory of the source, page not seen: a plausibility band only");

  private final String word;
  private final String meaning;

  Kind(String word, String meaning) {
    this.word = word;
    this.meaning = meaning;
  }

  String word() {
    return word;
  }

  String meaning() {
    return meaning;
  }
}
