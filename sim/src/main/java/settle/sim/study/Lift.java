package settle.sim.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * What lets as many of the houses like this be held as are asked for: the least set that holds the
 * house as stated, none where it is held anyway, and what is added to it. Tried in the same houses,
 * heads set too low turned up, and the house with all of it judged by runs.
 *
 * @param measures everything that is changed, in order of effort
 * @param added those of them that the house as stated can do without
 * @param share of the houses that are held then [-]
 * @param samples how many were tried
 * @param weakest the room that is too cold most often then
 * @param enough whether that are as many as are asked for
 */
public record Lift(
    List<Measure> measures,
    List<Measure> added,
    double share,
    int samples,
    String weakest,
    boolean enough) {

  /**
   * Kinds that are tried, in order of effort. What only lets the heat in later or elsewhere, and
   * what is bought for its comfort, is not.
   */
  public static final Set<Kind> KINDS =
      EnumSet.of(
          Kind.LOCKSHIELD,
          Kind.THROTTLE,
          Kind.BALANCE,
          Kind.CURVE,
          Kind.FLOW_TEMPERATURE,
          Kind.PROFILE,
          Kind.LENGTH,
          Kind.RADIATOR,
          Kind.SOURCE);

  /** Houses tried while a measure is looked for: enough to tell one from another. */
  private static final int FEW = 64;

  /** Houses in which what is found is tried at least: their error is some 4 of a hundred. */
  private static final int LEAST_SAMPLES = 128;

  /** Measures added before a search is given up. */
  private static final int MOST_ADDED = 4;

  /** Next rungs tried where the few houses said enough and all of them do not. */
  private static final int FURTHER = 3;

  /** Share of the houses below which nothing was gained [-]: one of the few. */
  private static final double NOTABLE = 1.5 / FEW;

  public Lift {
    measures = List.copyOf(measures);
    added = List.copyOf(added);
  }

  /**
   * Looks for it.
   *
   * @param house the house as stated
   * @param name its arrangement
   * @param judgement what runs say of it
   * @param least measures that hold it as stated; none where it is held
   * @param odds of the house as stated
   * @param seed of the draws
   * @param workers who settles the houses
   */
  static Lift of(
      House house,
      String name,
      Judgement judgement,
      List<Measure> least,
      Odds odds,
      long seed,
      Workers workers) {
    return new Search(house, name, judgement, new MeasureSet(least), odds, seed, workers).search();
  }

  /** The house with all of it carried out. */
  public House on(House house, String arrangement) {
    return Measure.all(measures, house, arrangement);
  }

  private record Search(
      House house,
      String name,
      Judgement judgement,
      MeasureSet least,
      Odds asStated,
      long seed,
      Workers workers) {

    private int samples() {
      return Math.max(asStated.estimate().samples(), LEAST_SAMPLES);
    }

    private double sure() {
      return house.aims().sure();
    }

    Lift search() {
      Odds odds = least.measures().isEmpty() ? asStated : odds(least, samples());
      Lift plain = lift(least, odds);
      MeasureSet set = least;
      for (int n = 0; n < MOST_ADDED && odds.headsTurnedUp().keepUp() < sure(); n++) {
        Optional<MeasureSet> next = next(set, odds.weakest().room());
        if (next.isEmpty()) {
          return plain;
        }
        set = next.get();
        odds = odds(set, samples());
      }
      Lift found = lift(set, odds);
      // The least set was judged when it was found; a longer one has yet to be.
      return found.added.isEmpty() || (found.enough && isHeld(set)) ? found : plain;
    }

    private Lift lift(MeasureSet set, Odds odds) {
      double share = odds.headsTurnedUp().keepUp();
      return new Lift(
          set.measures(),
          set.measures().stream().filter(m -> !least.measures().contains(m)).toList(),
          share,
          odds.estimate().samples(),
          odds.weakest().room(),
          share >= sure());
    }

    private Odds odds(MeasureSet set, int houses) {
      House with = set.on(house, name);
      return Odds.of(with, with.arrangement(name), houses, seed, workers, done -> {});
    }

    private double share(MeasureSet set, int houses) {
      return odds(set, houses).headsTurnedUp().keepUp();
    }

    private boolean isHeld(MeasureSet set) {
      House with = set.on(house, name);
      Judgement after = Judgement.of(with, with.arrangement(name), workers);
      return after.holds() && after.confirmedByRun();
    }

    /** The set with the measure of least effort that does it, or else with what brings most. */
    private Optional<MeasureSet> next(MeasureSet set, String room) {
      double most = share(set, FEW) + NOTABLE;
      MeasureSet partial = null;
      for (Kind kind : KINDS) {
        if (set.excludes(kind)) {
          continue;
        }
        MeasureSet others = set.without(kind, room);
        House with = others.on(house, name);
        for (Ladder ladder : Ladders.of(with, name, List.of(room), judgement, EnumSet.of(kind))) {
          MeasureSet furthest = others.with(ladder.furthest());
          double share = ladder.rises() ? share(furthest, FEW) : 0;
          if (share >= sure()) {
            return Optional.of(enough(others, ladder));
          }
          if (share > most) {
            most = share;
            partial = furthest;
          }
        }
      }
      return Optional.ofNullable(partial);
    }

    /** The set with the lowest rung with which enough houses are held. */
    private MeasureSet enough(MeasureSet others, Ladder ladder) {
      int low = ladder.lowest(0, rung -> share(others.with(rung), FEW) >= sure());
      MeasureSet found = others.with(ladder.rungs().get(low));
      int last = Math.min(low + FURTHER, ladder.rungs().size() - 1);
      for (int k = low + 1; k <= last && share(found, samples()) < sure(); k++) {
        found = others.with(ladder.rungs().get(k));
      }
      return found;
    }
  }
}
