package settle.sim.study;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * One ladder climbed to the rung that suffices by itself, or else helps most.
 *
 * <p>A rung is looked for at rest, where it costs little, corrected by what the last run says the
 * rest is off; it is carried out on a copy and judged by runs, and where those say that it is not
 * enough, or ample, the correction is brought up to date and another rung taken.
 */
final class Climb {

  /** Warmer than needed by more than this, a measure that does less is looked for [K]. */
  private static final double AMPLE = 0.3;

  /** Changed houses judged for each kind and room. */
  static final int TRIES = 3;

  private final ChangedHouses changed;
  private final Ladder ladder;
  private final List<String> targets;
  private CorrectedRest rest;
  private Remedy best;

  /** The lowest rung found to suffice, and the highest found not to. */
  private int enough;

  private int tooLittle = -1;

  /**
   * @param changed judges changed houses
   * @param rest the house at rest, corrected
   * @param ladder what to climb
   */
  Climb(ChangedHouses changed, CorrectedRest rest, Ladder ladder) {
    this.changed = changed;
    this.rest = rest;
    this.ladder = ladder;
    targets = ladder.room().isEmpty() ? changed.standard().cold() : List.of(ladder.room());
    enough = ladder.rungs().size();
  }

  /** What came of the best rung tried. */
  Remedy best() {
    if (ladder.rises()) {
      climb();
    } else {
      tryLikeliest();
    }
    return best;
  }

  private void climb() {
    int last = ladder.rungs().size() - 1;
    int first = first(0);
    boolean seen = first >= 0;
    int rung = seen ? first : last;
    for (int n = 0; n < TRIES && rung >= 0; n++) {
      House with = changed.with(ladder.rungs().get(rung));
      Optional<Judgement> after = changed.judge(with, targets);
      Remedy remedy = tried(ladder.rungs().get(rung), after);
      enough = remedy.suffices() ? rung : enough;
      tooLittle = remedy.suffices() ? tooLittle : rung;
      boolean ample = remedy.suffices() && worst(remedy) < -AMPLE;
      if (after.isEmpty()
          || remedy.status() == Remedy.Status.MAKES_OTHERS_COLD
          || (remedy.suffices() && seen && !ample)
          || enough - tooLittle <= 1
          || tooLittle == last) {
        return;
      }
      if (seen || !remedy.suffices()) {
        rest = new CorrectedRest(changed.as().holding(), with, changed.as().name(), after.get());
        rung = next(remedy);
      } else {
        // The rest did not see it, so the least that suffices is looked for by runs.
        rung = (tooLittle + enough) / 2;
      }
    }
  }

  /** The rung to try after one was judged; -1 if a lower one would not do. */
  private int next(Remedy judged) {
    int next = first(tooLittle + 1);
    if (judged.suffices() && next >= enough) {
      return -1;
    }
    return next >= 0 ? Math.min(next, enough - 1) : Math.min(ladder.rungs().size(), enough) - 1;
  }

  /** The first rung from one on that, corrected, holds the targets at rest; -1 if none. */
  private int first(int from) {
    return from < ladder.rungs().size() && holds(ladder.furthest())
        ? ladder.lowest(from, this::holds)
        : -1;
  }

  private boolean holds(Measure measure) {
    return rest.worst(changed.with(measure), targets) <= -Remedy.MARGIN;
  }

  /** Rungs of which none is more than another, the likeliest first. */
  private void tryLikeliest() {
    Map<Measure, Double> worst = new LinkedHashMap<>();
    List<String> all = changed.as().judged().rooms().stream().map(Judgement.Asked::name).toList();
    for (Measure rung : ladder.rungs()) {
      worst.put(rung, rest.worst(changed.with(rung), all));
    }
    List<Measure> likeliest =
        worst.entrySet().stream()
            .sorted(Map.Entry.comparingByValue())
            .limit(TRIES)
            .map(Map.Entry::getKey)
            .toList();
    for (Measure rung : likeliest) {
      if (tried(rung, changed.judge(changed.with(rung), targets)).suffices()) {
        return;
      }
    }
  }

  private Remedy tried(Measure measure, Optional<Judgement> after) {
    Remedy remedy = remedy(measure, after);
    if (best == null || remedy.suffices() || isBetter(remedy, best)) {
      best = remedy;
    }
    return remedy;
  }

  /** What came of a measure, its house judged or not to be solved. */
  private Remedy remedy(Measure measure, Optional<Judgement> after) {
    List<Remedy.Effect> effects =
        after.map(a -> changed.standard().effects(targets, a)).orElse(List.of());
    List<String> lost = after.map(changed.standard()::lost).orElse(List.of());
    Remedy.Status status = after.isEmpty() ? Remedy.Status.NOT_SOLVED : status(effects, lost);
    return new Remedy(
        ladder.room(),
        measure,
        status,
        ladder.limit(),
        effects,
        lost,
        status == Remedy.Status.SUFFICES && changed.standard().isMetBy(after.get()));
  }

  private static Remedy.Status status(List<Remedy.Effect> effects, List<String> lost) {
    if (effects.stream().allMatch(e -> e.shortAfter() <= -Remedy.MARGIN)) {
      return lost.isEmpty() ? Remedy.Status.SUFFICES : Remedy.Status.MAKES_OTHERS_COLD;
    }
    return effects.stream().anyMatch(e -> e.shortBefore() - e.shortAfter() > Remedy.NOTABLE)
        ? Remedy.Status.HELPS_NOT_ENOUGH
        : Remedy.Status.NO_HELP;
  }

  /** Whether one does better than another: of two that suffice, with cooler water. */
  boolean isBetter(Remedy one, Remedy other) {
    if (one.suffices() && other.suffices()) {
      return one.kind() == Kind.CURVE && meanFlow(one.measure()) < meanFlow(other.measure());
    }
    return one.status() != other.status()
        ? one.status().compareTo(other.status()) < 0
        : worst(one) < worst(other);
  }

  private static double worst(Remedy remedy) {
    return remedy.effects().stream()
        .mapToDouble(Remedy.Effect::shortAfter)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Flow temperature over the weathers looked at, with another weather compensation [°C]. */
  private double meanFlow(Measure curve) {
    House with = changed.with(curve);
    return changed.as().judged().weathers().stream()
        .mapToDouble(w -> with.control().flowCurve().orElseThrow().setPoint(w.outdoor(), 0))
        .average()
        .orElseThrow();
  }
}
