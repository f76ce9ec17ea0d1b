package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.House;
import settle.sim.study.Holding;
import settle.sim.study.Lift;
import settle.sim.study.Odds;
import settle.sim.study.RoomAnswer;
import settle.sim.study.Shortage;
import settle.sim.study.Verdict;
import settle.sim.study.WarmUps.WarmUp;

/** What is found about an arrangement, in the words of who lives in the house. */
public final class HouseholderAnswer {

  private final Answer answer;
  private final House house;
  private final Verdict verdict;

  /**
   * @param answer the same in a designer's words
   */
  public HouseholderAnswer(Answer answer) {
    this.answer = answer;
    house = answer.house();
    verdict = answer.verdict();
  }

  /** The answer in a designer's words. */
  public Answer answer() {
    return answer;
  }

  /** Yes, only just or no, for the householder. */
  public String plain() {
    return switch (verdict.outcome()) {
      case YES -> "Yes. " + asYouWant() + ".";
      case ONLY_JUST -> onlyJust();
      case NO -> "No. " + (verdict.sourceNeverRuns() ? neverRuns() : no());
    };
  }

  private static String neverRuns() {
    return "The heat pump would not run at all: too little water flows through it.";
  }

  private String asYouWant() {
    boolean season = verdict.judgement().weathers().size() > 1;
    return coldDay()
        + (season ? " and on any milder one " : " ")
        + (answer.one() ? "the room" : "every room")
        + " stays as warm as you want it"
        + (verdict.confirmedByRun() ? "" : ", by calculation, not by a run");
  }

  private String coldDay() {
    return "On a cold day (" + Quantities.setting(house.designOutdoor()) + " outside)";
  }

  private String onlyJust() {
    Odds odds = verdict.odds().orElseThrow();
    return say(
        "Only just. {}, if the house is just as described. No house is known so well: of 100 like yours {} stay warm enough{}.",
        asYouWant(),
        OddsWords.shortOf(verdict.aims().sure(), odds.headsTurnedUp().keepUp()),
        answer.one() ? "" : ", and " + odds.weakest().room() + " is the first that does not");
  }

  private String no() {
    if (verdict.shortage().isEmpty()) {
      List<WarmUp> slow = verdict.slow();
      return say(
          "{} {}{} warm too late: {} instead of {}.",
          coldDay(),
          Listing.of(slow.stream().map(WarmUp::room).toList()),
          slow.size() == 1 ? " gets" : " get",
          Quantities.warmUp(WarmUpWords.slowest(slow).time()),
          Quantities.duration(house.aims().warmUp().orElseThrow()));
    }
    Shortage worst = verdict.shortage().get();
    List<String> rooms = answer.notHeld().stream().map(RoomAnswer::room).toList();
    return say(
        "{} {} does not get as warm as you want: {} instead of {}.{}",
        worst.outdoor() > house.designOutdoor()
            ? "At " + Quantities.setting(worst.outdoor()) + " outside"
            : coldDay(),
        rooms.size() == 1 ? rooms.get(0) : worst.room(),
        Quantities.temperatureBelow(
            worst.warmth().operative(), worst.want() - house.wantTolerance()),
        Quantities.setting(worst.want()),
        rooms.size() == 1
            ? ""
            : say(
                " Nor {}{}, then or in other weather.",
                rooms.size() == 2 ? "does " : "do ",
                Listing.of(rooms.stream().filter(r -> !r.equals(worst.room())).toList())));
  }

  /** The hottest water needed on the cold day. */
  public String waterNeeded() {
    return verdict.flow().least().isEmpty()
        ? "hotter than " + Quantities.setting(Holding.HOTTEST_FLOW)
        : Quantities.temperature(verdict.flow().least().getAsDouble());
  }

  /** What a heating season uses. */
  public String bill() {
    return new SeasonWords(house, verdict.source().season()).bill();
  }

  /** What to do, in a householder's words: all of it together. */
  public List<String> toDo() {
    List<String> steps = new ArrayList<>();
    if (verdict.sourceNeverRuns() && verdict.remedies().cure().isEmpty()) {
      steps.add("Have a parallel buffer fitted, so that the heat pump has the water it needs.");
    }
    if (verdict.remedies().cure().isPresent()) {
      verdict
          .lift()
          .filter(Lift::enough)
          .map(Lift::measures)
          .orElseGet(() -> verdict.remedies().cure().get().measures())
          .stream()
          .map(m -> Sentences.capitalised(RemedyWords.placed(m)) + ".")
          .forEach(steps::add);
    } else if (!verdict.keepsUp()) {
      steps.add("Nothing that was tried is enough; show a heating engineer the next page.");
    }
    if (verdict.outcome() == Verdict.Outcome.ONLY_JUST) {
      steps.add(
          verdict
              .lift()
              .filter(Lift::enough)
              .map(
                  l ->
                      say(
                          "To be sure: {}; then {} of 100 houses like yours stay warm enough.",
                          OddsWords.changes(l),
                          Math.round(100 * l.share())))
              .orElse(
                  "To be sure takes more than one change; show a heating engineer the next page."));
    }
    if (steps.isEmpty()) {
      steps.add(asItIs());
    }
    return steps;
  }

  /** What to do where all is well: turn heads up, if too few houses are warm without that. */
  private String asItIs() {
    double left = 1 - verdict.odds().map(o -> o.estimate().keepUp()).orElse(1.0);
    return left > 1 - verdict.aims().sure()
        ? say(
            "Where a room stays too cool, turn its valve head up: {} of 100 houses like yours need that and nothing else.",
            Math.round(100 * left))
        : "Nothing is needed.";
  }
}
