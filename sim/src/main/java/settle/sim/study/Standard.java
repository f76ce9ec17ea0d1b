package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What a changed house has to come up to: every room that was cold is held with a margin, and none
 * is lost that was held.
 */
final class Standard {

  private final Judgement before;
  private final List<Judgement.RoomJudged> was;
  private final List<String> cold;

  /**
   * @param before what runs say of the house as it is
   */
  Standard(Judgement before) {
    this.before = before;
    was = before.judged();
    cold = was.stream().filter(r -> !r.holds()).map(Judgement.RoomJudged::room).toList();
  }

  /** Rooms that are not held as the house is. */
  List<String> cold() {
    return cold;
  }

  String room(int room) {
    return was.get(room).room();
  }

  /** Whether a room was held. */
  boolean held(int room) {
    return was.get(room).holds();
  }

  /** What a room may fall short by at most: below 0, what it must be warmer by than needed [K]. */
  double needed(int room) {
    return held(room) ? allowed(room) : -Remedy.MARGIN;
  }

  /** What a room that was held may fall short by: nothing, with a margin if it had one before. */
  private double allowed(int room) {
    double close = was.get(room).shortfall() + Remedy.MARGIN / 5;
    return Math.min(Math.max(close, -Remedy.MARGIN), 0);
  }

  /** Each room before, in the weather that was worst for it, and after. */
  List<Remedy.Effect> effects(List<String> rooms, Judgement after) {
    List<Remedy.Effect> effects = new ArrayList<>();
    for (int r = 0; r < was.size(); r++) {
      if (rooms.contains(room(r))) {
        double need = before.rooms().get(r).need();
        Judgement.Weather then = after.nearest(was.get(r).outdoor());
        double shortBefore = before.nearest(then.outdoor()).shortfall()[r];
        effects.add(
            new Remedy.Effect(
                room(r),
                then.outdoor(),
                need - shortBefore,
                need - then.shortfall()[r],
                shortBefore,
                after.judged().get(r).shortfall()));
      }
    }
    return effects;
  }

  /** Rooms held before that are no longer, or only by less than the margin. */
  List<String> lost(Judgement after) {
    return IntStream.range(0, was.size())
        .filter(r -> held(r) && after.judged().get(r).shortfall() > allowed(r))
        .mapToObj(this::room)
        .toList();
  }

  /** Whether every room is held, the cold ones with a margin, and runs say so. */
  boolean isMetBy(Judgement after) {
    return after.holds()
        && after.confirmedByRun()
        && lost(after).isEmpty()
        && effects(cold, after).stream().allMatch(e -> e.shortAfter() <= -Remedy.MARGIN);
  }

  /** The room furthest from what it needs; -1 if every room has it. */
  int worst(double[] shortfall) {
    int worst = -1;
    double most = 0;
    for (int r = 0; r < shortfall.length; r++) {
      double excess = shortfall[r] - needed(r);
      if (excess > Math.max(most, 1e-9)) {
        most = excess;
        worst = r;
      }
    }
    return worst;
  }

  /** Whether a room has what it needs. */
  boolean has(double[] shortfall, int room) {
    return shortfall[room] <= needed(room);
  }

  /** Whether no room that has what it needs loses it. */
  boolean losesNone(double[] with, double[] without) {
    for (int r = 0; r < with.length; r++) {
      if (with[r] > needed(r) && with[r] > without[r] + Remedy.MARGIN / 5) {
        return false;
      }
    }
    return true;
  }

  /** Outdoor temperature in which the worst of some rooms was furthest from being held [°C]. */
  double worstOutdoor(List<String> rooms) {
    return was.stream()
        .filter(r -> rooms.contains(r.room()))
        .max(Judgement.RoomJudged.BY_SHORTFALL)
        .orElseThrow()
        .outdoor();
  }
}
