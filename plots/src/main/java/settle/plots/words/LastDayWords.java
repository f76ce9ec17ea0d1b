package settle.plots.words;

import static settle.plots.words.Sentences.say;

import settle.sim.result.LastDay;
import settle.sim.result.RoomFigures;

/**
 * Where a room has come to at the end of a run, in words: it settles only where run and rest agree.
 *
 * @param room its figures
 */
public record LastDayWords(RoomFigures room) {

  /** As a verb: "settles at …", "averages …, between … and …". */
  public String verb() {
    if (last().settles()) {
      return "settles at " + Quantities.temperature(last().operative());
    }
    return isStill()
        ? "stays at " + Quantities.temperature(last().operative())
        : "averages " + Quantities.temperature(last().operative()) + range(", ") + onItsWay();
  }

  /** "settles" or "averages", to go before how far it is from want. */
  String ofDifference() {
    if (last().settles()) {
      return "settles";
    }
    return isStill() ? "stays" : "averages";
  }

  /** The range after such a difference; nothing where there is none to tell. */
  String rangeAside() {
    return last().settles() || isStill() ? "" : range(" (") + onItsWay() + ")";
  }

  private String range(String before) {
    return say(
        "{}between {} and {}",
        before,
        Quantities.number(last().least(), 1),
        Quantities.temperature(last().most()));
  }

  private String onItsWay() {
    if (!last().drifts()) {
      return "";
    }
    return last().drift() > 0 ? ", still rising at the end" : ", still falling at the end";
  }

  /** Whether the room hardly moves, though not at its temperature at rest. */
  private boolean isStill() {
    return last().most() - last().least() <= LastDay.AGREEMENT;
  }

  private LastDay last() {
    return room.lastDay();
  }
}
