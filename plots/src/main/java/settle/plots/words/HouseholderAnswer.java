package settle.plots.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.house.House;
import settle.sim.study.Holding;
import settle.sim.study.Remedies;
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

  /** Yes or no, for who lives there. */
  public String plain() {
    if (verdict.sourceNeverRuns()) {
      return "No. The heat pump would not run at all: too little water flows through it.";
    }
    if (verdict.held() && !verdict.keepsUp()) {
      List<WarmUp> slow = verdict.slow();
      return "No. On a cold day ("
          + Quantities.setting(house.designOutdoor())
          + " outside) "
          + Listing.of(slow.stream().map(WarmUp::room).toList())
          + (slow.size() == 1 ? " gets" : " get")
          + " warm too late: "
          + Quantities.warmUp(WarmUpWords.slowest(slow).time())
          + " instead of "
          + Quantities.duration(house.aims().warmUp().orElseThrow())
          + ".";
    }
    if (!verdict.held()) {
      List<String> rooms = answer.notHeld().stream().map(Holding.RoomAnswer::room).toList();
      Holding.RoomAnswer worst = answer.worst();
      return "No. On a cold day ("
          + Quantities.setting(house.designOutdoor())
          + " outside) "
          + Listing.of(rooms)
          + (rooms.size() == 1 ? " does" : " do")
          + " not get as warm as you want"
          + (rooms.size() == 1 ? "" : ", " + worst.room() + " least of all")
          + ": "
          + Quantities.temperature(worst.settled())
          + " instead of "
          + Quantities.setting(worst.want())
          + ".";
    }
    return "Yes. On a cold day ("
        + Quantities.setting(house.designOutdoor())
        + " outside) "
        + (answer.one() ? "the room" : "every room")
        + " stays as warm as you want it.";
  }

  /** The three figures a householder may remember, in the order of {@link #FIGURES}. */
  public List<String> figures() {
    return List.of(
        verdict.holdingOutdoor().isEmpty()
            ? "not even on a mild day"
            : Answer.downTo(verdict.holdingOutdoor()),
        verdict.leastFlow().isEmpty()
            ? "hotter than " + Quantities.setting(Holding.HOTTEST_FLOW)
            : Quantities.temperature(verdict.leastFlow().getAsDouble()),
        new SeasonWords(house, verdict.season()).bill());
  }

  /** What the three figures are. */
  public static final List<String> FIGURES =
      List.of(
          "Warm enough outdoors",
          "Water temperature needed on the cold day",
          "A heating season takes, without help from sun and people");

  /** What to do, in a householder's words; the first that suffices for each room. */
  public List<String> toDo() {
    List<String> steps = new ArrayList<>();
    if (verdict.sourceNeverRuns()) {
      steps.add("Have a parallel buffer fitted, so that the heat pump has the water it needs.");
    }
    for (Holding.RoomAnswer room : answer.notHeld()) {
      Optional<Remedies.Remedy> first =
          verdict.remedies().stream()
              .filter(r -> r.room().equals(room.room()) && r.possible())
              .findFirst();
      steps.add(
          first
              .map(r -> room.room() + ": " + RemedyWords.change(r) + ".")
              .orElse(
                  room.room()
                      + ": no single change is enough; have the choices on the next page looked at together."));
    }
    if (verdict.held() && !verdict.keepsUp()) {
      steps.add(
          verdict.remedies().stream()
              .filter(Remedies.Remedy::possible)
              .findFirst()
              .map(r -> RemedyWords.change(r) + ".")
              .orElse("no earlier start is enough; have the next page looked at."));
    }
    if (steps.isEmpty()
        && verdict.leastFlow().isPresent()
        && verdict.flowAsked() > verdict.leastFlow().getAsDouble() + FlowWords.SAME_FLOW) {
      steps.add(
          "Nothing is needed. The water may be set cooler, "
              + Quantities.number(Math.ceil(verdict.leastFlow().getAsDouble()), 0)
              + " °C on the cold day instead of "
              + Quantities.setting(verdict.flowAsked())
              + ": cheaper to run, slower to warm up.");
    } else if (steps.isEmpty()) {
      steps.add("Nothing is needed.");
    }
    return steps;
  }
}
