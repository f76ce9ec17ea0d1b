package settle.sim.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import settle.sim.atrest.RestStatus;
import settle.sim.study.Judgement.Weather;

/**
 * What runs say of the weathers between them: how far the rest is off there, and what is open.
 *
 * @param judgement what is known
 */
record BetweenRuns(Judgement judgement) {

  /**
   * How near to failing a room may come without a run in a weather in which the rest holds [K]: as
   * exactly as it claims to.
   */
  private static final double NEAR = RestStatus.HOLDS_WITHIN;

  /** How far apart two runs may be that say how far off the rest is in between [K]. */
  private static final double BRACKET = 2 * Judge.SPACING;

  private List<Weather> weathers() {
    return judgement.weathers();
  }

  /** Whether a run that ended shows a room cold. */
  private boolean isShownCold(int room) {
    return weathers().stream().anyMatch(w -> w.isSure() && w.shortfall()[room] > 0);
  }

  /**
   * The weather not run that most is to be learnt from: the worst of the house, where it is worse
   * than those run; then one in which a room that no run shows cold is likely to be; then, of those
   * in which it may be, the furthest from what is known.
   */
  Optional<Weather> undecided() {
    Weather worst =
        weathers().stream().max(Comparator.comparingDouble(Weather::worst)).orElseThrow();
    if (worst.worst() > Math.max(worstRun(), 0) + NEAR && !worst.byRun()) {
      return Optional.of(worst);
    }
    List<Integer> open =
        IntStream.range(0, judgement.rooms().size()).filter(r -> !isShownCold(r)).boxed().toList();
    return weathers().stream()
        .filter(w -> !w.byRun() && open.stream().anyMatch(r -> mayFall(w, r) > 0))
        .max(
            Comparator.comparingDouble(
                    (Weather w) ->
                        open.stream().mapToDouble(r -> w.shortfall()[r]).reduce(-NEAR, Math::max))
                .thenComparingDouble(judgement::fromRuns));
  }

  /** Shortfall of the worst room in the worst weather run [K]. */
  private double worstRun() {
    return judgement.runs().stream()
        .mapToDouble(Weather::worst)
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /**
   * How far a room may fall short in a weather that was not run [K]: what the rest leaves open
   * there, and no less than it was found to be wrong by where it claimed to hold.
   *
   * <p>Runs on both sides know more. The house being restless in the same way at both, the rest is
   * off in between as it is there; else, if they are near each other and nothing jumps in between,
   * the room is about as it is there.
   */
  private double mayFall(Weather weather, int room) {
    double least = Math.max(NEAR, wrongBy(room));
    double open = weather.shortfall()[room] + Math.max(weather.rest().mayBeColder(room), least);
    Weather colder = nearestRun(weather, -1);
    Weather milder = nearestRun(weather, 1);
    if (weather.rest().claims() || colder == null || milder == null) {
      return open;
    }
    double apart = milder.outdoor() - colder.outdoor();
    if (apart <= BRACKET
        && weather.rest().isLike(colder.rest())
        && weather.rest().isLike(milder.rest())) {
      double moves = Math.abs(off(colder, weather, room) - off(milder, weather, room));
      return Math.min(open, weather.shortfall()[room] + Math.max(moves, least));
    }
    if (apart <= Judge.SPACING && !jumps(colder, milder, room)) {
      double one = colder.shortfall()[room];
      double other = milder.shortfall()[room];
      double moves = Math.abs(one - other);
      return Math.min(open, Math.max(one, other) + Math.max(moves, least));
    }
    return open;
  }

  /** Whether a room is otherwise at rest on the two sides of a jump between two weathers(). */
  private boolean jumps(Weather colder, Weather milder, int room) {
    int from = weathers().indexOf(colder);
    int to = weathers().indexOf(milder);
    return IntStream.range(from, to)
        .anyMatch(
            i -> {
              Weather one = weathers().get(i);
              Weather other = weathers().get(i + 1);
              return other.outdoor() - one.outdoor() < 2 * Judge.JUMP
                  && Math.abs(atRest(one, room) - atRest(other, room)) > NEAR;
            });
  }

  /** By how much the rest claimed too much warmth, or too even warmth, where it was run [K]. */
  private double wrongBy(int room) {
    return judgement.runs().stream()
        .filter(w -> w.rest().claims())
        .mapToDouble(
            w ->
                w.shortfall()[room]
                    - (judgement.rooms().get(room).need() - w.rest().lowest()[room]))
        .max()
        .orElse(0);
  }

  /** The nearest weather run to the colder, -1, or milder side, 1; null if there is none. */
  private Weather nearestRun(Weather weather, int side) {
    return judgement.runs().stream()
        .filter(w -> side * (w.outdoor() - weather.outdoor()) > 0)
        .min(Comparator.comparingDouble(w -> side * w.outdoor()))
        .orElse(null);
  }

  /** What was judged, the weathers that were not run moved as far as those that were say. */
  Judgement corrected() {
    return new Judgement(
        judgement.rooms(), weathers().stream().map(w -> w.byRun() ? w : corrected(w)).toList());
  }

  /**
   * What the rest says, moved as far as the runs on both sides say it is off, straight in between;
   * with a run on one side only, moved to the colder side alone. A rest that holds is not moved by
   * what is off where it does not.
   */
  private Weather corrected(Weather weather) {
    double[] shortfall = new double[judgement.rooms().size()];
    for (int r = 0; r < shortfall.length; r++) {
      Weather colder = nearestRun(weather, -1);
      Weather milder = nearestRun(weather, 1);
      double off;
      if (colder != null && milder != null) {
        double share =
            (weather.outdoor() - colder.outdoor()) / (milder.outdoor() - colder.outdoor());
        off = (1 - share) * off(colder, weather, r) + share * off(milder, weather, r);
      } else {
        off = Math.max(0, off(colder != null ? colder : milder, weather, r));
      }
      shortfall[r] = atRest(weather, r) + off;
    }
    return new Weather(weather.outdoor(), weather.rest(), weather.run(), shortfall);
  }

  /** How much shorter a room falls in a run than at rest, as far as it tells of a weather [K]. */
  private double off(Weather run, Weather weather, int room) {
    return weather.rest().claims() && !run.rest().claims()
        ? 0
        : run.shortfall()[room] - atRest(run, room);
  }

  private double atRest(Weather weather, int room) {
    return judgement.rooms().get(room).need() - weather.rest().operative()[room];
  }
}
