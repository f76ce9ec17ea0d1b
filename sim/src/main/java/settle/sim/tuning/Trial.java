package settle.sim.tuning;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import settle.sim.engine.DailySwing;
import settle.sim.engine.HeldRun;
import settle.sim.house.Aims;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.source.Carrier;
import settle.sim.study.Holding;
import settle.sim.study.Workers;
import settle.sim.units.Times;

/**
 * What settings are worth: what a usual day costs, how far the rooms are from want, and how far
 * they miss the aims.
 *
 * <pre>
 *   J = E + E_0 (c D + sum over aims of p (miss + miss²) + q n)
 * </pre>
 *
 * <p>E is what source and pump cost on a usual day, E_0 what they cost as found, D the mean square
 * distance from want on that day, n the number of settings changed. Aims are asked of the house as
 * stated on a usual, a mild and the coldest day by runs, besides of the coldest weather at rest
 * with a {@link Reserve}, so that settings do not stand on the edge.
 */
final class Trial implements Tried.Judge {

  /**
   * What a mean square distance from want of 1 K² is worth, as a share of the energy [1/K²]: so
   * much that energy only decides between settings about equally comfortable. Common practice, no
   * source.
   */
  static final double DISCOMFORT = 0.25;

  /**
   * What missing an aim by 1 K, 1 h or five starts an hour is worth, as a share of the energy [-].
   */
  private static final double MISS = 1;

  /**
   * What it is worth not to touch a setting, as a share of the energy [-]: a change that gains less
   * is not worth a visit. Common practice, no source.
   */
  static final double EFFORT = 0.003;

  /** How much of a limit a search uses: its longer steps see lateness and starts so exactly [-]. */
  private static final double STRICT = 0.95;

  /**
   * Of what the needed heat costs, what a plant is taken to cost at least [-]: one that heats next
   * to nothing as found must not make comfort cheap.
   */
  private static final double LEAST = 0.5;

  /** Indoor temperature and heat pumps' factor for that rough figure [°C], [-]. */
  private static final double INDOORS = 20;

  private static final double PUMPED = 3;

  private final Aims aims;
  private final Climate climate;
  private final Reserve reserve;
  private final Workers workers;
  private final double costAsFound;

  /** What no setting changes, prepared. */
  private final HouseModel like;

  /** By outdoor temperature; empty as long as none is known. */
  private final Map<Double, DailySwing> swings;

  /**
   * Prepares.
   *
   * @param found the plant as found: energy is measured against what it takes
   * @param start the plant with the settings worked out
   * @param climate its weather
   * @param sure share of houses in which each room is to be held [-]
   * @param workers who does the runs
   */
  Trial(Plant found, Plant start, Climate climate, double sure, Workers workers) {
    aims = found.house().aims();
    this.climate = climate;
    this.workers = workers;
    reserve = new Reserve(start, sure);
    like = new HouseModel(found.house(), found.arrangement(), 1);
    swings = Map.of();
    double asFound = Spell.searched(found, climate.usual(), like).costPerDay(found.house());
    costAsFound = Math.max(asFound, LEAST * needed(found, climate.usual()));
  }

  private Trial(Trial given, Map<Double, DailySwing> swings) {
    aims = given.aims;
    climate = given.climate;
    reserve = given.reserve;
    workers = given.workers;
    costAsFound = given.costAsFound;
    like = given.like;
    this.swings = swings;
  }

  /**
   * This trial, living through days from where many days like them bring a plant near those that
   * are looked for: a programme's swing is known then. Where there is none, heads may rest on
   * either side of their play, and each plant has to find its own.
   */
  Trial after(Plant near) {
    if (!near.hasProgramme()) {
      return this;
    }
    List<Double> outdoors =
        Stream.of(climate.usual(), climate.mild(), near.house().designOutdoor())
            .distinct()
            .toList();
    List<DailySwing> found = workers.all(outdoors, t -> Spell.swing(near, t, like));
    Map<Double, DailySwing> known = new HashMap<>();
    for (int i = 0; i < outdoors.size(); i++) {
      known.put(outdoors.get(i), found.get(i));
    }
    return new Trial(this, known);
  }

  private Spell lived(Plant plant, double outdoor) {
    DailySwing swing = swings.get(outdoor);
    return swing == null
        ? Spell.searched(plant, outdoor, like)
        : Spell.searched(plant, outdoor, like, swing);
  }

  /** What the heat costs that a usual day needs, roughly [currency/d]. */
  private static double needed(Plant plant, double usual) {
    House house = plant.house();
    Holding holding = new Holding(house, plant.arrangement());
    double mild = (INDOORS - usual) / Math.max(INDOORS - house.designOutdoor(), 1);
    Carrier carrier = house.source().carrier();
    double price =
        house.aims().tariffs().price(carrier) / (carrier == Carrier.ELECTRICITY ? PUMPED : 1);
    return holding.load() * mild * Times.DAY * price / Times.KILOWATT_HOUR;
  }

  /** What 1 K from want all day in every room weighs [currency/d]. */
  double priceOfKelvin() {
    return DISCOMFORT * costAsFound;
  }

  /** What a setting that is changed weighs [currency/d]. */
  double priceOfChange() {
    return EFFORT * costAsFound;
  }

  /**
   * What a choice of settings comes to as far as a usual day by a run and the coldest weather at
   * rest say: never more than {@link #confirmed}.
   *
   * @param changed how many settings differ from what was found
   */
  @Override
  public Worth quick(Plant plant, int changed) {
    return quick(plant, changed, Double.POSITIVE_INFINITY);
  }

  /** First at rest, which costs next to nothing; a day is run where that alone is not too dear. */
  @Override
  public Worth quick(Plant plant, int changed, double enough) {
    Worth effort = new Worth(0, 0, 0, changed * priceOfChange(), Set.of());
    Worth atRest = with(effort, reserve.aims(plant));
    if (atRest.total() > enough) {
      return atRest;
    }
    Spell usual = lived(plant, climate.usual());
    return with(
        new Worth(
            usual.costPerDay(plant.house()),
            priceOfKelvin() * usual.deviation(),
            atRest.misses(),
            atRest.effort(),
            atRest.missed()),
        Aim.ofDay(Aim.When.USUAL, usual, aims));
  }

  /** Adds runs of a mild day and of the coldest weather. */
  @Override
  public Worth confirmed(Plant plant, Worth quick) {
    double coldest = plant.house().designOutdoor();
    HouseModel model =
        new Plant(plant.house().withRun(Spell.coarser(plant)), plant.arrangement()).model(like);
    List<Supplier<List<Aim>>> runs =
        List.of(
            () -> Aim.ofDay(Aim.When.MILD, lived(plant, climate.mild()), aims),
            () -> Aim.held(plant, HeldRun.of(model, coldest, HeldRun.Asker.EXACT)),
            () -> Aim.ofColdest(lived(plant, coldest), aims));
    return with(quick, workers.all(runs).stream().flatMap(List::stream).toList());
  }

  private Worth with(Worth worth, List<Aim> asked) {
    double sum = 0;
    Set<String> missed = new HashSet<>(worth.missed());
    for (Aim aim : asked) {
      Aim strict = aim.strictly(STRICT);
      if (!strict.met()) {
        sum += strict.beyond() + strict.beyond() * strict.beyond();
        missed.add(aim.room());
      }
    }
    return new Worth(
        worth.energy(),
        worth.discomfort(),
        worth.misses() + MISS * costAsFound * sum,
        worth.effort(),
        missed);
  }
}
