package settle.sim.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * Looks for the least set of measures with which every room is held: takes measures in order of
 * effort until the rest, corrected, says so, judges that by runs, and leaves out what it can.
 */
final class LeastSet {

  /** Sets judged before the search is given up, and measures in a set. */
  static final int SETS = 8;

  static final int SIZE = 10;

  /**
   * How much of what a room lacks a measure has to bring for it to be taken into a set though
   * another brings more [-].
   */
  private static final double WORTHWHILE = 0.25;

  /** How short at rest a set may fall and still be judged by a run [K]. */
  private static final double DOUBT = 0.3;

  private final ChangedHouses changed;
  private final Standard standard;
  private CorrectedRest rest;
  private Judgement known;

  /**
   * @param changed judges changed houses
   * @param rest the house at rest, corrected
   */
  LeastSet(ChangedHouses changed, CorrectedRest rest) {
    this.changed = changed;
    this.rest = rest;
    standard = changed.standard();
    known = changed.as().judged();
  }

  Optional<Remedies.Cure> search() {
    MeasureSet set = new MeasureSet(List.of());
    for (int n = 0; n < SETS; n++) {
      Optional<MeasureSet> gathered = gathered(set);
      if (gathered.isEmpty()) {
        return Optional.empty();
      }
      set = gathered.get();
      Optional<Judgement> after = changed.judge(changed.with(set), standard.cold());
      if (after.isEmpty()) {
        return Optional.empty();
      }
      known = after.get();
      if (standard.isMetBy(known)) {
        return Optional.of(leastOf(set));
      }
      rest =
          new CorrectedRest(changed.as().holding(), changed.with(set), changed.as().name(), known);
    }
    return Optional.empty();
  }

  /** A set with measures added until, corrected, every room is held at rest. */
  private Optional<MeasureSet> gathered(MeasureSet from) {
    MeasureSet set = from;
    for (int n = 0; n < SIZE; n++) {
      double[] shortfall = rest.shortfalls(changed.with(set));
      int worst = standard.worst(shortfall);
      if (worst < 0) {
        return Optional.of(set);
      }
      Optional<Measure> next = next(set, worst, shortfall);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      set = set.with(next.get());
    }
    return Optional.of(set).filter(s -> standard.worst(rest.shortfalls(changed.with(s))) < 0);
  }

  /**
   * The measure of least effort that lets a room be held and no other be lost, or else brings much
   * of what it lacks.
   */
  private Optional<Measure> next(MeasureSet set, int room, double[] shortfall) {
    String cold = standard.room(room);
    double much = WORTHWHILE * (shortfall[room] - standard.needed(room));
    Measure partial = null;
    double brought = 0;
    for (Kind kind : Kind.values()) {
      if (set.excludes(kind)) {
        continue;
      }
      House without = changed.with(set.without(kind, cold));
      for (Ladder ladder :
          Ladders.of(without, changed.as().name(), List.of(cold), known, EnumSet.of(kind))) {
        double[] furthest = shortfalls(ladder.furthest(), without);
        Optional<Measure> enough = enough(ladder, without, furthest, room, shortfall);
        if (enough.isPresent()) {
          return enough;
        }
        double gain = shortfall[room] - furthest[room];
        if (ladder.rises()
            && gain > Math.max(brought, Remedy.NOTABLE)
            && brought < much
            && standard.losesNone(furthest, shortfall)
            && !set.of(kind, cold).equals(Optional.of(ladder.furthest()))) {
          partial = ladder.furthest();
          brought = gain;
        }
      }
    }
    return Optional.ofNullable(partial);
  }

  private double[] shortfalls(Measure measure, House without) {
    return rest.shortfalls(measure.on(without, changed.as().name()));
  }

  private boolean fits(double[] with, double[] without, int room) {
    return standard.has(with, room) && standard.losesNone(with, without);
  }

  /** The rung that lets a room be held and no other be lost. */
  private Optional<Measure> enough(
      Ladder ladder, House without, double[] furthest, int room, double[] shortfall) {
    if (!ladder.rises()) {
      return ladder.rungs().stream()
          .filter(rung -> fits(shortfalls(rung, without), shortfall, room))
          .findFirst();
    }
    if (!fits(furthest, shortfall, room)) {
      return Optional.empty();
    }
    int low = ladder.lowest(0, rung -> standard.has(shortfalls(rung, without), room));
    return Optional.of(allColdOr(ladder, low, without, shortfall));
  }

  /** A rung that holds all cold rooms, if there is one from a rung on; else that rung. */
  private Measure allColdOr(Ladder ladder, int from, House without, double[] shortfall) {
    for (int k = from; ladder.room().isEmpty() && k < ladder.rungs().size(); k++) {
      double[] with = shortfalls(ladder.rungs().get(k), without);
      if (standard.worst(with) < 0) {
        return ladder.rungs().get(k);
      }
      if (!standard.losesNone(with, shortfall)) {
        break;
      }
    }
    return ladder.rungs().get(from);
  }

  /** Leaves out, the most effort first, whatever is not needed. */
  private Remedies.Cure leastOf(MeasureSet found) {
    MeasureSet least = found;
    for (int k = found.measures().size() - 1; k >= 0 && least.measures().size() > 1; k--) {
      MeasureSet fewer = least.without(found.measures().get(k));
      House with = changed.with(fewer);
      double[] shortfall =
          new CorrectedRest(changed.as().holding(), changed.with(least), changed.as().name(), known)
              .shortfalls(with);
      int worst = standard.worst(shortfall);
      if (worst >= 0 && shortfall[worst] - standard.needed(worst) > DOUBT) {
        continue;
      }
      Optional<Judgement> judgement = changed.judge(with, standard.cold());
      if (judgement.filter(standard::isMetBy).isPresent()) {
        least = fewer;
        known = judgement.get();
      }
    }
    return new Remedies.Cure(least.measures(), standard.effects(standard.cold(), known));
  }
}
