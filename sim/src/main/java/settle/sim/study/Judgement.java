package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import settle.sim.atrest.RestStatus;
import settle.sim.atrest.SettledHouse;
import settle.sim.engine.HeldRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Whether every room that has an emitter is held all season, from design weather to {@link
 * Holding#MILDEST}: by the house at rest at every outdoor temperature looked at, and by runs where
 * they decide. A run's word counts where there is one; and where the rest says of itself that it
 * does not hold, nothing stands on it that its own uncertainty could turn round.
 *
 * <p>Held at rest: the room settles no lower than its want less the tolerance. Held in a run: the
 * mean of its day is no lower than that, and its lowest temperature no more than {@link #SWING}
 * below.
 *
 * @param rooms rooms that have an emitter, in the house's order
 * @param weathers what was looked at, coldest first; the first is design weather
 */
public record Judgement(List<Asked> rooms, List<Weather> weathers) {

  /**
   * How far a room that goes up and down may fall below what its mean must reach [K]. Up and down
   * by 1 K from lowest to highest it is as comfortable as if it stayed (ISO 7730:2005, 8.2, from
   * memory).
   */
  public static final double SWING = 0.5;

  /** Difference between rest and run that is a defect of the rest [K]. */
  public static final double DISAGREEMENT = 0.1;

  /** Spacing of the outdoor temperatures looked at, at most [K]. */
  private static final double SPACING = 3;

  /** Parts in which the spaces on both sides of the worst weather are looked at again. */
  private static final int FINER = 4;

  /**
   * How near to failing a room may come without a run in a weather in which the rest holds [K]: as
   * exactly as it claims to.
   */
  private static final double NEAR = RestStatus.HOLDS_WITHIN;

  /** How far apart two runs may be that say how far off the rest is in between [K]. */
  private static final double BRACKET = 2 * SPACING;

  /** How far apart two sides of a jump are looked at [K]. */
  private static final double JUMP = 0.01;

  private static final int MOST_RUNS = 8;

  /** For how many days more a run that still drifts may go on as it did [-]. */
  private static final double DAYS_OF_DRIFT = 10;

  public Judgement {
    rooms = List.copyOf(rooms);
    weathers = List.copyOf(weathers);
  }

  /**
   * A room that is to be held.
   *
   * @param name its name
   * @param index its position in the house
   * @param want day want-temperature [°C]
   * @param need lowest operative temperature that counts as held [°C]
   */
  public record Asked(String name, int index, double want, double need) {}

  /**
   * The house in weather that stays as it is.
   *
   * @param outdoor outdoor temperature [°C]
   * @param rest what the house at rest says of it
   * @param run a day of its run; empty if it was not run
   * @param shortfall how far below what counts as held each room is [K], below 0 where it is held:
   *     by the run; where there is none, at rest, as far out as the runs in colder and milder
   *     weather say the rest is; not modified
   */
  public record Weather(
      double outdoor, AtRest rest, Optional<HeldRun.Day> run, double[] shortfall) {

    /** Whether a run has the word. */
    public boolean byRun() {
      return run.isPresent();
    }

    /** Whether it was run until its means stayed, or as near to it as the answer needs. */
    boolean isSure() {
      return run.filter(
              day ->
                  day.ending() != HeldRun.Ending.DRIFTS
                      || Math.abs(worst()) > DAYS_OF_DRIFT * day.drift())
          .isPresent();
    }

    /** Shortfall of the room furthest from being held [K]. */
    public double worst() {
      return Arrays.stream(shortfall).max().orElseThrow();
    }
  }

  /**
   * What the house at rest says of one weather.
   *
   * @param operative operative temperature of each room [°C], in the order of {@link
   *     Judgement#rooms}; not modified
   * @param lowest lowest that it may be [°C]; likewise
   * @param highest highest that it may be [°C]; likewise
   * @param status whether the house rests there, and what keeps it from that
   */
  public record AtRest(double[] operative, double[] lowest, double[] highest, RestStatus status) {

    /** Whether it claims that a run comes to where it says, be it anywhere in heads' play. */
    public boolean claims() {
      return status.standsStill();
    }

    /** How far a room's mean is outside the range given for it [K]; below 0 if it is colder. */
    double missedBy(int room, double mean) {
      return mean > highest[room]
          ? mean - highest[room]
          : mean < lowest[room] ? mean - lowest[room] : 0;
    }

    /** What of it the rest leaves open to the colder side [K]. */
    private double mayBeColder(int room) {
      return claims() ? operative[room] - lowest[room] : status.uncertainty();
    }

    private boolean isFound() {
      return Double.isFinite(status.uncertainty());
    }

    /** Whether what keeps the house from standing still is of the same kinds. */
    private boolean isLike(AtRest other) {
      return isFound() && other.isFound() && kinds().equals(other.kinds());
    }

    private Set<RestStatus.Kind> kinds() {
      return status.reasons().stream().map(RestStatus.Reason::kind).collect(Collectors.toSet());
    }
  }

  /**
   * One room over the season.
   *
   * @param room its name
   * @param shortfall how far below what counts as held it is where it is worst [K]; below 0 where
   *     it is held all season
   * @param outdoor outdoor temperature at which that is so [°C]
   * @param byRun whether a run says so; otherwise the house at rest
   * @param notHeld outdoor temperatures looked at at which it is not held [°C], ascending
   */
  public record RoomJudged(
      String room, double shortfall, double outdoor, boolean byRun, List<Double> notHeld) {

    public RoomJudged {
      notHeld = List.copyOf(notHeld);
    }

    /** Whether it is held all season. */
    public boolean holds() {
      return shortfall <= 0;
    }
  }

  /**
   * A room of which the rest claims otherwise than the run shows: a defect of the rest.
   *
   * @param room its name
   * @param outdoor outdoor temperature [°C]
   * @param atRest operative temperature at which it settles by the house at rest [°C]
   * @param by how much warmer it is in the run than the rest's range allows [K]; below 0 if colder
   * @param mean mean operative temperature of the day run [°C]
   * @param least lowest of that day [°C]
   * @param most highest [°C]
   */
  public record Disagreement(
      String room,
      double outdoor,
      double atRest,
      double by,
      double mean,
      double least,
      double most) {}

  /**
   * The house at rest at every outdoor temperature looked at, and no run.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Judgement atRest(House house, Arrangement arrangement) {
    return new Judge(house, arrangement).sweep();
  }

  /**
   * The house at rest, then runs in design weather, in the worst milder weather, and on until the
   * answer stands or there were {@link #MOST_RUNS}.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Judgement of(House house, Arrangement arrangement) {
    return of(house, arrangement, Workers.ONE);
  }

  /**
   * As above, with the runs handed out: the answer is the same whoever works.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param workers who does the runs
   * @throws ArithmeticException if a model could not be solved; the message names room and time
   */
  public static Judgement of(House house, Arrangement arrangement, Workers workers) {
    Judge judge = new Judge(house, arrangement);
    return judge.run(judge.sweep(), workers);
  }

  /**
   * A run in one weather and nothing else: whoever is cold there need not be looked at in others.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param outdoor outdoor temperature [°C]
   */
  static Judgement inOneWeather(House house, Arrangement arrangement, double outdoor) {
    Judge judge = new Judge(house, arrangement);
    return new Judgement(judge.rooms, judge.run(List.of(judge.rest(outdoor)), Workers.ONE));
  }

  /** This judgement with one weather more, unless that was looked at. */
  Judgement and(Weather run) {
    List<Weather> all = new ArrayList<>(weathers);
    if (all.stream().noneMatch(w -> w.outdoor() == run.outdoor())) {
      all.add(run);
      all.sort(Comparator.comparingDouble(Weather::outdoor));
    }
    return new Judgement(rooms, all);
  }

  /** Whether every room is held all season. */
  public boolean holds() {
    return weathers.stream().allMatch(w -> w.worst() <= 0);
  }

  /**
   * Whether a room is held all season.
   *
   * @param room position among {@link #rooms}
   */
  public boolean holds(int room) {
    return weathers.stream().allMatch(w -> w.shortfall()[room] <= 0);
  }

  /**
   * Whether runs say what {@link #holds()} does. No: a run shows a room cold. Yes: runs in design
   * and in milder weather show all held, and leave no weather in doubt.
   */
  public boolean confirmedByRun() {
    List<Weather> ended = runs().stream().filter(Weather::isSure).toList();
    return holds()
        ? ended.size() == runs().size()
            && ended.size() >= Math.min(2, weathers.size())
            && undecided().isEmpty()
        : ended.stream().anyMatch(w -> w.worst() > 0);
  }

  /** Each room where it is worst, in the order of {@link #rooms}. */
  public List<RoomJudged> judged() {
    List<RoomJudged> judged = new ArrayList<>();
    for (int r = 0; r < rooms.size(); r++) {
      int room = r;
      Weather worst = worst(w -> w.shortfall()[room]);
      List<Double> notHeld =
          weathers.stream().filter(w -> w.shortfall()[room] > 0).map(Weather::outdoor).toList();
      judged.add(
          new RoomJudged(
              rooms.get(r).name(), worst.shortfall()[r], worst.outdoor(), worst.byRun(), notHeld));
    }
    return judged;
  }

  /** Whether a room is held in design weather. */
  public boolean heldAtDesign(int room) {
    return weathers.get(0).shortfall()[room] <= 0;
  }

  /**
   * Outdoor temperature from which on a room that is not held in design weather is held in every
   * milder one, straight between those looked at [°C]; empty if it is not in the mildest.
   *
   * @param room position among {@link #rooms}
   */
  public OptionalDouble heldFrom(int room) {
    int i = weathers.size() - 1;
    if (weathers.get(i).shortfall()[room] > 0) {
      return OptionalDouble.empty();
    }
    while (i > 0 && weathers.get(i - 1).shortfall()[room] <= 0) {
      i--;
    }
    return OptionalDouble.of(
        i == 0 ? weathers.get(0).outdoor() : between(weathers.get(i - 1), weathers.get(i), room));
  }

  /**
   * Lowest outdoor temperature from which on a room that is held in design weather is not held,
   * straight between those looked at [°C]; empty if it is held all season or not in design weather.
   *
   * @param room position among {@link #rooms}
   */
  public OptionalDouble lostFrom(int room) {
    for (int i = 1; i < weathers.size() && heldAtDesign(room); i++) {
      if (weathers.get(i).shortfall()[room] > 0) {
        return OptionalDouble.of(between(weathers.get(i - 1), weathers.get(i), room));
      }
    }
    return OptionalDouble.empty();
  }

  /** Where a room's shortfall vanishes between two weathers that differ in it [°C]. */
  private static double between(Weather colder, Weather milder, int room) {
    double a = colder.shortfall()[room];
    double b = milder.shortfall()[room];
    return colder.outdoor() + (milder.outdoor() - colder.outdoor()) * a / (a - b);
  }

  /**
   * The weather in which the worst room is furthest from being held: of those run, if a run shows
   * it cold.
   */
  public Weather worst() {
    return worst(Weather::worst);
  }

  private Weather worst(ToDoubleFunction<Weather> shortfall) {
    boolean shown = weathers.stream().anyMatch(w -> w.isSure() && shortfall.applyAsDouble(w) > 0);
    return weathers.stream()
        .filter(w -> !shown || w.byRun())
        .max(Comparator.comparingDouble(shortfall))
        .orElseThrow();
  }

  /** Weathers that were run, coldest first. */
  public List<Weather> runs() {
    return weathers.stream().filter(Weather::byRun).toList();
  }

  /**
   * Where the rest claims to hold and the run is further outside what it says than {@link
   * #DISAGREEMENT}, by weather and room.
   */
  public List<Disagreement> disagreements() {
    List<Disagreement> all = new ArrayList<>();
    for (Weather weather : runs()) {
      HeldRun.Day day = weather.run().orElseThrow();
      for (int r = 0; r < rooms.size() && weather.rest().claims(); r++) {
        int i = rooms.get(r).index();
        double by = weather.rest().missedBy(r, day.operative()[i]);
        if (Math.abs(by) > DISAGREEMENT) {
          all.add(
              new Disagreement(
                  rooms.get(r).name(),
                  weather.outdoor(),
                  weather.rest().operative()[r],
                  by,
                  day.operative()[i],
                  day.least()[i],
                  day.most()[i]));
        }
      }
    }
    return all;
  }

  /** Weathers looked at in which the rest says of itself that it does not hold, coldest first. */
  public List<Weather> restless() {
    return weathers.stream().filter(w -> !w.rest().claims()).toList();
  }

  /** Largest share of a day run in which too little flow kept the called source off [-]. */
  public double blocked() {
    return runs().stream()
        .mapToDouble(w -> w.run().orElseThrow().supply().blocked())
        .max()
        .orElse(0);
  }

  /** Outdoor temperature of the coldest day run in which the called source made no heat [°C]. */
  public OptionalDouble neverRan() {
    return runs().stream()
        .filter(w -> w.run().orElseThrow().supply().neverRan())
        .mapToDouble(Weather::outdoor)
        .findFirst();
  }

  /** Whether a run that ended shows a room cold. */
  private boolean isShownCold(int room) {
    return weathers.stream().anyMatch(w -> w.isSure() && w.shortfall()[room] > 0);
  }

  /**
   * The weather not run that most is to be learnt from: the worst of the house, where it is worse
   * than those run; then one in which a room that no run shows cold is likely to be; then, of those
   * in which it may be, the furthest from what is known.
   */
  private Optional<Weather> undecided() {
    Weather worst = weathers.stream().max(Comparator.comparingDouble(Weather::worst)).orElseThrow();
    if (worst.worst() > Math.max(worstRun(), 0) + NEAR && !worst.byRun()) {
      return Optional.of(worst);
    }
    List<Integer> open =
        IntStream.range(0, rooms.size()).filter(r -> !isShownCold(r)).boxed().toList();
    return weathers.stream()
        .filter(w -> !w.byRun() && open.stream().anyMatch(r -> mayFall(w, r) > 0))
        .max(
            Comparator.comparingDouble(
                    (Weather w) ->
                        open.stream().mapToDouble(r -> w.shortfall()[r]).reduce(-NEAR, Math::max))
                .thenComparingDouble(this::fromRuns));
  }

  /** Shortfall of the worst room in the worst weather run [K]. */
  private double worstRun() {
    return runs().stream().mapToDouble(Weather::worst).max().orElse(Double.NEGATIVE_INFINITY);
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
    if (apart <= SPACING && !jumps(colder, milder, room)) {
      double one = colder.shortfall()[room];
      double other = milder.shortfall()[room];
      double moves = Math.abs(one - other);
      return Math.min(open, Math.max(one, other) + Math.max(moves, least));
    }
    return open;
  }

  /** Whether a room is otherwise at rest on the two sides of a jump between two weathers. */
  private boolean jumps(Weather colder, Weather milder, int room) {
    int from = weathers.indexOf(colder);
    int to = weathers.indexOf(milder);
    return IntStream.range(from, to)
        .anyMatch(
            i -> {
              Weather one = weathers.get(i);
              Weather other = weathers.get(i + 1);
              return other.outdoor() - one.outdoor() < 2 * JUMP
                  && Math.abs(atRest(one, room) - atRest(other, room)) > NEAR;
            });
  }

  /** By how much the rest claimed too much warmth, or too even warmth, where it was run [K]. */
  private double wrongBy(int room) {
    return runs().stream()
        .filter(w -> w.rest().claims())
        .mapToDouble(w -> w.shortfall()[room] - (rooms.get(room).need() - w.rest().lowest()[room]))
        .max()
        .orElse(0);
  }

  /** The nearest weather run to the colder, -1, or milder side, 1; null if there is none. */
  private Weather nearestRun(Weather weather, int side) {
    return runs().stream()
        .filter(w -> side * (w.outdoor() - weather.outdoor()) > 0)
        .min(Comparator.comparingDouble(w -> side * w.outdoor()))
        .orElse(null);
  }

  /** How far a weather is from the nearest that was run [K]. */
  private double fromRuns(Weather weather) {
    return runs().stream()
        .mapToDouble(w -> Math.abs(w.outdoor() - weather.outdoor()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * This judgement with these in the place of what was known of their weather, and what follows.
   */
  private Judgement with(List<Weather> changed) {
    List<Weather> all = new ArrayList<>();
    for (Weather weather : weathers) {
      all.add(
          changed.stream()
              .filter(c -> c.outdoor() == weather.outdoor())
              .findFirst()
              .orElse(weather));
    }
    Judgement known = new Judgement(rooms, all);
    return new Judgement(rooms, all.stream().map(w -> w.byRun() ? w : known.corrected(w)).toList());
  }

  /**
   * What the rest says, moved as far as the runs on both sides say it is off, straight in between;
   * with a run on one side only, moved to the colder side alone. A rest that holds is not moved by
   * what is off where it does not.
   */
  private Weather corrected(Weather weather) {
    double[] shortfall = new double[rooms.size()];
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
    return rooms.get(room).need() - weather.rest().operative()[room];
  }

  /** Looks and runs. */
  private static final class Judge {
    private final House house;
    private final Arrangement arrangement;
    private final Holding holding;
    private final List<Asked> rooms = new ArrayList<>();

    Judge(House house, Arrangement arrangement) {
      this.house = house;
      this.arrangement = arrangement;
      holding = new Holding(house, arrangement);
      for (int r : holding.model().heatedRooms()) {
        double want = house.rooms().get(r).want().maximum();
        rooms.add(new Asked(house.rooms().get(r).name(), r, want, want - house.wantTolerance()));
      }
    }

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

    Judgement run(Judgement swept, Workers workers) {
      List<Weather> first = new ArrayList<>();
      first.add(swept.weathers().get(0));
      worstMild(swept).ifPresent(first::add);
      Judgement judged = swept.with(run(first, workers));
      for (int done = first.size(); done < MOST_RUNS; done++) {
        Optional<Weather> next = judged.undecided();
        if (next.isEmpty()) {
          break;
        }
        judged = judged.with(run(List.of(next.get()), workers));
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
            here >= all.get(i - 1).worst()
                && (i == all.size() - 1 || here >= all.get(i + 1).worst());
        if (peak && (worst == null || here >= worst.worst())) {
          worst = all.get(i);
        }
      }
      return all.size() == 1
          ? Optional.empty()
          : Optional.of(worst != null ? worst : all.get(all.size() - 1));
    }

    private List<Weather> run(List<Weather> weathers, Workers workers) {
      List<HeldRun.Day> days =
          workers.all(
              weathers.stream()
                  .<Supplier<HeldRun.Day>>map(
                      w -> () -> HeldRun.of(house, arrangement, w.outdoor()))
                  .toList());
      List<Weather> run = new ArrayList<>();
      for (int i = 0; i < days.size(); i++) {
        Weather weather = weathers.get(i);
        HeldRun.Day day = days.get(i);
        run.add(new Weather(weather.outdoor(), weather.rest(), Optional.of(day), shortfalls(day)));
      }
      return run;
    }

    private double[] shortfalls(HeldRun.Day day) {
      return rooms.stream()
          .mapToDouble(
              r -> r.need() - Math.min(day.operative()[r.index()], day.least()[r.index()] + SWING))
          .toArray();
    }
  }
}
