package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import settle.sim.house.Spreads;
import settle.sim.house.Uncertainty;
import settle.sim.study.Lift;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;

/**
 * What is found by trying many houses, in words.
 *
 * @param odds what was found
 * @param spreads how far the uncertain things were drawn from what is stated
 */
public record OddsWords(Odds odds, Spreads spreads) {

  /** Heading of the share of houses. */
  public static final String KEEPS_UP = "Odds";

  /** Heading of the ranking. */
  public static final String MATTERS = "What matters most";

  /** What is said where no houses were tried. */
  public static final String NONE_TRIED =
      "no houses like it were tried, so a yes may be an only just.";

  /** Standard errors of a correlation that is none, below which nothing is said of it [-]. */
  private static final double NOTABLE = 2;

  /** How many houses keep up, how sure that is, what turning heads up adds, who fails. */
  public String keepUp() {
    Odds.Estimate all = odds.estimate();
    String words =
        say(
            "{} houses drawn at random over the scenario’s spreads keep every room warm in design weather (at rest, not run; {})",
            ofHundred(all.keepUp()),
            convergence());
    if (odds.headsTurnedUp().keepUp() > all.keepUp()) {
      words +=
          say(
              "; {} once valve heads that are set too low are turned up",
              odds.headsTurnedUp().ofHundred());
    }
    Odds.RoomOdds first = odds.rooms().get(0);
    if (first.fails() > 0 && odds.rooms().size() > 1) {
      words += "; " + first.room() + " is too cold most often, in " + ofHundred(first.fails());
    }
    return words + ".";
  }

  /**
   * What lets as many houses be held as are asked for, where too few are: for a sentence's end.
   *
   * @param verdict an answer that is only just
   */
  static String lift(Verdict verdict) {
    return verdict
        .lift()
        .filter(Lift::enough)
        .map(
            lift ->
                say(
                    "With {}, {}: {}.",
                    lift.added().size() == 1 ? "one change" : lift.added().size() + " changes",
                    held(lift),
                    changes(lift)))
        .orElse(
            say(
                "Nothing that was tried gets there: {}.",
                Listing.of(
                    Lift.KINDS.stream()
                        .map(kind -> RemedyWords.named(kind, nouns(verdict)))
                        .toList())));
  }

  /** What the trade calls those of its emitters that stand in one place. */
  private static List<String> nouns(Verdict verdict) {
    List<String> nouns =
        verdict.arrangement().branches().stream()
            .filter(b -> b.emitter().run().isEmpty())
            .map(b -> b.emitter().noun())
            .distinct()
            .toList();
    return nouns.isEmpty() ? List.of("radiator") : nouns;
  }

  /**
   * How sure a house is that is not held as stated, once what holds it is carried out; empty if no
   * houses were tried.
   */
  static Optional<String> sureOnceHeld(Verdict verdict) {
    return verdict
        .lift()
        .map(
            lift -> {
              if (!lift.enough()) {
                return say(
                    "with that, only just: {}, short of the {} asked for",
                    held(lift),
                    ofHundred(verdict.aims().sure()));
              }
              return lift.added().isEmpty()
                  ? "with that, " + held(lift)
                  : "to be sure: " + changes(lift) + "; then " + held(lift);
            });
  }

  private static String held(Lift lift) {
    return ofHundred(lift.share()) + " houses like it are held (at rest, not run)";
  }

  /** Everything that is changed. */
  static String changes(Lift lift) {
    return lift.measures().stream().map(RemedyWords::placed).collect(Collectors.joining("; "));
  }

  /** What matters, ranked. */
  public String ranking() {
    List<Odds.Influence> notable =
        odds.influences().stream().filter(i -> Math.abs(i.correlation()) >= least()).toList();
    if (notable.isEmpty()) {
      return "nothing uncertain moves the coldest room by more than chance would.";
    }
    return notable.stream()
            .map(
                i ->
                    say(
                        "{} ({}) {}",
                        name(i.what()),
                        spread(i.what()),
                        Quantities.number(Math.abs(i.correlation()), 2)))
            .collect(Collectors.joining(", "))
        + ": rank correlation with how cold the coldest room gets, 1 where nothing else matters.";
  }

  /** The share for the householder, in a table's cell. */
  public String brief() {
    String brief = odds.estimate().ofHundred() + " (" + error() + ")";
    return odds.headsTurnedUp().keepUp() > odds.estimate().keepUp()
        ? brief + "; " + odds.headsTurnedUp().ofHundred() + " once low valve heads are turned up"
        : brief;
  }

  /** What {@link #brief} is about. */
  public static final String BRIEF = "Houses like this that stay warm on the cold day";

  /** How sure the share is: by how much it may be off, of how many, what half of them said. */
  private String convergence() {
    List<Odds.Estimate> seen = odds.convergence();
    String half =
        seen.size() < 2 ? "" : ", half of them gave " + seen.get(seen.size() - 2).ofHundred();
    return say(
        "{}; {} tried{}{}",
        error(),
        odds.estimate().samples(),
        half,
        odds.converged() ? ": enough" : ": try more to be sure");
  }

  /** By how many of a hundred the share may be off. */
  private String error() {
    return "± " + Math.max(1, Math.round(100 * odds.estimate().error()));
  }

  /** Rank correlation below which chance is as good an explanation [-]. */
  public double least() {
    return NOTABLE / Math.sqrt(odds.estimate().samples() - 1.0);
  }

  /** What is uncertain, by its name. */
  public static String name(Uncertainty what) {
    return switch (what) {
      case U_VALUES -> "U-values";
      case AIR_CHANGE -> "air change";
      case EMITTER_OUTPUT -> "emitter output";
      case WANT -> "the warmth people want";
      case COLDEST_OUTDOOR -> "how cold it gets";
      case VALVE_SETTING -> "where each valve is set";
    };
  }

  /** How far it spreads: a standard deviation with its unit. */
  public String spread(Uncertainty what) {
    double spread = what.of(spreads);
    return "± " + (what.isShare() ? Quantities.share(spread) : Quantities.difference(spread));
  }

  /** Houses of a hundred that are held, fewer than are asked for [-]: rounding must not fill up. */
  static long shortOf(double sure, double held) {
    return Math.min(Math.round(100 * held), (long) Math.ceil(100 * sure) - 1);
  }

  private static String ofHundred(double share) {
    return Math.round(100 * share) + " of 100";
  }
}
