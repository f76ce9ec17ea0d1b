package settle.plots.words;

import settle.sim.result.LastDay;
import settle.sim.result.RoomFigures;

/**
 * Where a room has come to at the end of a run, in words: it settles only where run and rest agree.
 *
 * @param room its figures
 */
public record LastDayWords(RoomFigures room) {

  /** What the two ways mean, for the foot of a table. */
  public static final String DEFINITIONS =
      "Settled: to the end of the run the room stays within "
          + Quantities.tolerance(LastDay.AGREEMENT)
          + " of where the house at rest would have it. Where weather, set-back or switching do not"
          + " let it: its mean and range of the last day, while its day value is wanted, from its"
          + " first warmth on.";

  /** Droop in one line, its sign included. */
  public static final String DROOP =
      "Droop: want less where it settles, or less that mean; below zero the room is warmer than"
          + " wanted.";

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

  /** Settled temperature for a table [°C]. */
  public String settled() {
    return last().settles()
        ? Quantities.number(last().operative(), 1)
        : Quantities.number(Double.NaN, 1);
  }

  /** Mean of the last day for a table [°C]. */
  public String mean() {
    return last().settles()
        ? Quantities.number(Double.NaN, 1)
        : Quantities.number(last().operative(), 1);
  }

  /** Its range for a table [°C]. */
  public String range() {
    return last().settles()
        ? Quantities.number(Double.NaN, 1)
        : Quantities.number(last().least(), 1) + " to " + Quantities.number(last().most(), 1);
  }

  private String range(String before) {
    return before
        + "between "
        + Quantities.number(last().least(), 1)
        + " and "
        + Quantities.temperature(last().most());
  }

  private String onItsWay() {
    if (!last().drifts()) {
      return "";
    }
    return last().drift() > 0 ? ", still rising in the end" : ", still falling in the end";
  }

  /** Whether it hardly moves, though not where it would rest. */
  private boolean isStill() {
    return last().most() - last().least() <= LastDay.AGREEMENT;
  }

  private LastDay last() {
    return room.lastDay();
  }
}
