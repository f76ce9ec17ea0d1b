package settle.sim.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import settle.sim.house.House;
import settle.sim.measure.Measure;

/** A house that is not held, changed: judged by runs against what it has to come up to. */
final class ChangedHouses {

  /**
   * How near to being cold a room may come at rest without a run in that weather [K], how far apart
   * such runs are at least [K], and how many there are at most.
   */
  private static final double CLOSE = 0.3;

  private static final double APART = 2;
  private static final int CLOSER = 4;

  private final Case as;
  private final Standard standard;
  private int judged;

  /**
   * @param as the house as it is
   */
  ChangedHouses(Case as) {
    this.as = as;
    standard = new Standard(as.judged());
  }

  /** The house as it is. */
  Case as() {
    return as;
  }

  /** What a changed house has to come up to. */
  Standard standard() {
    return standard;
  }

  /** How many were judged. */
  int judged() {
    return judged;
  }

  /** The house with a measure carried out. */
  House with(Measure measure) {
    return measure.on(as.house(), as.name());
  }

  /** The house with several carried out. */
  House with(MeasureSet set) {
    return set.on(as.house(), as.name());
  }

  /**
   * Judges one over the season, unless the weather that was worst for some rooms shows one of them
   * cold: then that is all that is known of it.
   *
   * @param with the changed house
   * @param targets rooms that are to be held
   * @return empty if it could not be solved
   */
  Optional<Judgement> judge(House with, List<String> targets) {
    judged++;
    try {
      Holding changed = as.holding().like(with, with.arrangement(as.name()));
      Judgement first = Judge.inOneWeather(changed, standard.worstOutdoor(targets));
      boolean cold =
          first.judged().stream()
              .anyMatch(r -> targets.contains(r.room()) && r.shortfall() > -Remedy.MARGIN);
      return Optional.of(cold ? first : confirmed(changed, targets).and(first.weathers().get(0)));
    } catch (ArithmeticException | MathIllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * Judged over the season, with runs besides where a room comes near to being cold: a room
   * thermostat, a source that starts and stops, do not go by what runs on both sides show.
   */
  private Judgement confirmed(Holding changed, List<String> targets) {
    Judgement judgement = Judgement.of(changed, Workers.ONE);
    for (int n = 0; n < CLOSER && judgement.holds(); n++) {
      Judgement known = judgement;
      Optional<Judgement.Weather> near =
          known.weathers().stream()
              .filter(w -> !w.byRun() && worst(w, targets) > -CLOSE && known.fromRuns(w) > APART)
              .max(Comparator.comparingDouble(w -> worst(w, targets)));
      if (near.isEmpty()) {
        break;
      }
      judgement = known.replacing(Judge.inOneWeather(changed, near.get().outdoor()).weathers());
    }
    return judgement;
  }

  /** Of the rooms that are to be held, and of those that were held all season before [K]. */
  private double worst(Judgement.Weather weather, List<String> targets) {
    return IntStream.range(0, weather.shortfall().length)
        .filter(r -> targets.contains(standard.room(r)) || standard.held(r))
        .mapToDouble(r -> weather.shortfall()[r])
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }
}
