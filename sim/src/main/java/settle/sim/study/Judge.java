package settle.sim.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import settle.sim.atrest.RestStatus;
import settle.sim.atrest.SettledHouse;
import settle.sim.engine.HeldRun;
import settle.sim.engine.HeldRun.Asker;
import settle.sim.house.House;
import settle.sim.study.Judgement.Asked;
import settle.sim.study.Judgement.AtRest;
import settle.sim.study.Judgement.Weather;

/** Looks at the house at rest in every weather of a season, and runs it where that decides. */
final class Judge {

  /** Spacing of the outdoor temperatures looked at, at most [K]. */
  static final double SPACING = 3;

  /** How far apart two sides of a jump are looked at [K]. */
  static final double JUMP = 0.01;

  /** Parts in which the spaces on both sides of the worst weather are looked at again. */
  private static final int FINER = 4;

  private static final int MOST_RUNS = 8;

  private final House house;
  private final Holding holding;
  private final List<Asked> rooms = new ArrayList<>();

  /**
   * @param holding the house at rest
   */
  Judge(Holding holding) {
    this.holding = holding;
    house = holding.model().house();
    for (int r : holding.model().heatedRooms()) {
      double want = house.dayWant(r);
      rooms.add(new Asked(house.rooms().get(r).name(), r, want, want - house.wantTolerance()));
    }
  }

  /**
   * A run in one weather and nothing else: whoever is cold there need not be looked at in others.
   *
   * @param holding the house at rest
   * @param outdoor outdoor temperature [°C]
   */
  static Judgement inOneWeather(Holding holding, double outdoor) {
    Judge judge = new Judge(holding);
    return new Judgement(judge.rooms, List.of(judge.run(judge.rest(outdoor), Asker.EXACT)));
  }

  /** The house at rest at every outdoor temperature looked at, and no run. */
  Judgement sweep() {
    double design = house.designOutdoor();
    double range = Math.max(Holding.MILDEST - design, 0);
    int parts = (int) Math.ceil(range / SPACING);
    TreeSet<Double> looked = new TreeSet<>(bends(design, design + range));
    looked.add(design);
    for (int i = 1; i <= parts; i++) {
      looked.add(design + range * i / parts);
    }
    List<Weather> weathers = new ArrayList<>();
    for (double outdoor : looked) {
      weathers.add(rest(outdoor));
    }
    double worst = worstOf(weathers).outdoor();
    // Between two looks a room may dip all the same.
    finer(weathers, looked.lower(worst), worst);
    finer(weathers, worst, looked.higher(worst));
    weathers.sort(Comparator.comparingDouble(Weather::outdoor));
    return new Judgement(rooms, weathers);
  }

  private void finer(List<Weather> weathers, Double colder, Double milder) {
    if (colder == null || milder == null) {
      return;
    }
    int parts = (int) Math.ceil((milder - colder) / SPACING * FINER - 1e-9);
    for (int k = 1; k < parts; k++) {
      weathers.add(rest(colder + (milder - colder) * k / parts));
    }
  }

  /** Where what is asked for, or what the source can, changes its course or jumps [°C]. */
  private List<Double> bends(double coldest, double mildest) {
    List<Double> bends = new ArrayList<>();
    house.control().flowCurve().ifPresent(curve -> bends.addAll(curve.bends()));
    bends.addAll(house.source().bends(JUMP));
    bends.removeIf(t -> !(t > coldest && t < mildest));
    return bends;
  }

  private static Weather worstOf(List<Weather> weathers) {
    return weathers.stream().max(Comparator.comparingDouble(Weather::worst)).orElseThrow();
  }

  private Weather rest(double outdoor) {
    SettledHouse settled = holding.settled(outdoor).asControlled();
    RestStatus status = settled.status();
    int n = rooms.size();
    double[] operative = new double[n];
    double[] lowest = new double[n];
    double[] highest = new double[n];
    double[] shortfall = new double[n];
    for (int r = 0; r < n; r++) {
      int index = rooms.get(r).index();
      operative[r] = settled.operative(index);
      lowest[r] = settled.lowest(index);
      highest[r] = settled.highest(index);
      shortfall[r] = rooms.get(r).need() - operative[r];
    }
    AtRest rest = new AtRest(operative, lowest, highest, status);
    return new Weather(outdoor, rest, Optional.empty(), shortfall);
  }

  /**
   * The house at rest, then runs in design weather, in the worst milder weather, and on until the
   * answer stands or there were {@link #MOST_RUNS}.
   */
  Judgement judge(Workers workers) {
    Judgement swept = sweep();
    List<Weather> next = new ArrayList<>();
    next.add(swept.weathers().get(0));
    worstMild(swept).ifPresent(next::add);
    Judgement judged = swept;
    int done = 0;
    while (!next.isEmpty() && done < MOST_RUNS) {
      done += next.size();
      judged = new BetweenRuns(judged.replacing(run(next, workers))).corrected();
      next = new BetweenRuns(judged).undecided().map(List::of).orElse(List.of());
    }
    return judged;
  }

  /**
   * Of the weathers milder than design weather the worst of those that are worse than both their
   * neighbours, of equals the mildest; the mildest of all where the milder the better.
   */
  private static Optional<Weather> worstMild(Judgement swept) {
    List<Weather> all = swept.weathers();
    Weather worst = null;
    for (int i = 1; i < all.size(); i++) {
      double here = all.get(i).worst();
      boolean peak =
          here >= all.get(i - 1).worst() && (i == all.size() - 1 || here >= all.get(i + 1).worst());
      if (peak && (worst == null || here >= worst.worst())) {
        worst = all.get(i);
      }
    }
    return all.size() == 1
        ? Optional.empty()
        : Optional.of(worst != null ? worst : all.get(all.size() - 1));
  }

  /** In design weather means are shown; in milder weather they only have to answer. */
  private List<Weather> run(List<Weather> weathers, Workers workers) {
    return workers.all(
        weathers,
        w -> run(w, w.outdoor() == house.designOutdoor() ? Asker.EXACT : this::isAnswered));
  }

  private Weather run(Weather weather, Asker asker) {
    HeldRun.Day day = HeldRun.of(holding.model(), weather.outdoor(), asker);
    double[] shortfall =
        rooms.stream().mapToDouble(r -> shortfall(r, day.operative(), day.least())).toArray();
    return new Weather(weather.outdoor(), weather.rest(), Optional.of(day), shortfall);
  }

  /** Whether no room is so near to being held or lost that moving on could turn that round. */
  private boolean isAnswered(double[] mean, double[] least, double[] moved) {
    return rooms.stream()
        .allMatch(
            r -> Math.abs(shortfall(r, mean, least)) > Judgement.DAYS_OF_DRIFT * moved[r.index()]);
  }

  private static double shortfall(Asked room, double[] mean, double[] least) {
    return room.need() - Math.min(mean[room.index()], least[room.index()] + Judgement.SWING);
  }
}
