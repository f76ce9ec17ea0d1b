package settle.sim.study;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import settle.sim.house.House;

/** A house at rest in the weathers that matter, moved as far as a judgement says it is off. */
final class CorrectedRest {

  /** Weathers in which rooms are looked at, the worst. */
  private static final int WEATHERS = 3;

  private final Holding as;
  private final String arrangement;
  private final Judgement judgement;
  private final double[] outdoor;
  private final double[][] off;

  /**
   * @param as the house as it is
   * @param house a house that may be that one changed
   * @param arrangement name of the arrangement that is looked at
   * @param judgement what was found of it
   */
  CorrectedRest(Holding as, House house, String arrangement, Judgement judgement) {
    this.as = as;
    this.arrangement = arrangement;
    this.judgement = judgement;
    outdoor = weathers(judgement);
    off = atRest(house);
    for (int i = 0; i < off.length; i++) {
      double[] found = judgement.nearest(outdoor[i]).shortfall();
      for (int r = 0; r < off[i].length; r++) {
        off[i][r] = found[r] - off[i][r];
      }
    }
  }

  private static double[] weathers(Judgement judgement) {
    Set<Double> chosen = new TreeSet<>();
    chosen.add(judgement.weathers().get(0).outdoor());
    judgement.judged().stream()
        .sorted(Judgement.RoomJudged.BY_SHORTFALL.reversed())
        .map(Judgement.RoomJudged::outdoor)
        .distinct()
        .limit(WEATHERS - 1)
        .forEach(chosen::add);
    return chosen.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private double[][] atRest(House of) {
    Holding holding = as.like(of, of.arrangement(arrangement));
    double[][] shortfall = new double[outdoor.length][];
    for (int i = 0; i < shortfall.length; i++) {
      shortfall[i] = holding.shortfallsOfHeated(outdoor[i]);
    }
    return shortfall;
  }

  /** How far below what counts as held each room is in its worst weather [K]. */
  double[] shortfalls(House changed) {
    double[][] rest = atRest(changed);
    double[] worst = new double[rest[0].length];
    for (int r = 0; r < worst.length; r++) {
      worst[r] = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < rest.length; i++) {
        worst[r] = Math.max(worst[r], rest[i][r] + off[i][r]);
      }
    }
    return worst;
  }

  /** How far below what counts as held the worst of some rooms is [K]. */
  double worst(House changed, List<String> rooms) {
    double[] shortfall = shortfalls(changed);
    double worst = Double.NEGATIVE_INFINITY;
    for (int r = 0; r < shortfall.length; r++) {
      if (rooms.contains(judgement.rooms().get(r).name())) {
        worst = Math.max(worst, shortfall[r]);
      }
    }
    return worst;
  }
}
