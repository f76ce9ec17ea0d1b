package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Whether every room that has an emitter is held all season, from design weather to {@link
 * Holding#MILDEST}: by the house at rest at every outdoor temperature looked at, and by runs where
 * they decide. A run's word counts where there is one.
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
   * How near to failing a room may come without a run in that weather, once the rest is corrected
   * by the runs on both sides [K]: what rest and run may still differ by in between.
   */
  private static final double NEAR = 0.05;

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
   * @param atRest operative temperature at which each room settles by the house at rest [°C], in
   *     the order of {@link Judgement#rooms}; not modified
   * @param run a day of its run; empty if it was not run
   * @param shortfall how far below what counts as held each room is [K], below 0 where it is held:
   *     by the run; where there is none, at rest, as far out as the runs in colder and milder
   *     weather say the rest is; not modified
   */
  public record Weather(
      double outdoor, double[] atRest, Optional<HeldRun.Day> run, double[] shortfall) {

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
   * A room of which the rest says otherwise than the run: a defect of the rest.
   *
   * @param room its name
   * @param outdoor outdoor temperature [°C]
   * @param atRest operative temperature at which it settles by the house at rest [°C]
   * @param mean mean operative temperature of the day run [°C]
   * @param least lowest of that day [°C]
   * @param most highest [°C]
   */
  public record Disagreement(
      String room, double outdoor, double atRest, double mean, double least, double most) {

    /** How much warmer the run is [K]. */
    public double by() {
      return mean - atRest;
    }
  }

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
   * The same, then runs in design weather, in the worst milder weather, and on until the answer
   * stands or there were {@link #MOST_RUNS}.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Judgement of(House house, Arrangement arrangement) {
    return of(house, arrangement, Runnable::run);
  }

  /**
   * The same, with the runs done by an executor: the same answer whatever it does.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param executor what does the runs; must not wait for the calling thread
   * @throws ArithmeticException if a model could not be solved; the message names room and time
   */
  public static Judgement of(House house, Arrangement arrangement, Executor executor) {
    Judge judge = new Judge(house, arrangement);
    return judge.run(judge.sweep(), executor);
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
    return new Judgement(judge.rooms, judge.run(List.of(judge.rest(outdoor)), Runnable::run));
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
            && doubtful().isEmpty()
        : ended.stream().anyMatch(w -> w.worst() > 0);
  }

  /** Each room where it is worst, in the order of {@link #rooms}. */
  public List<RoomJudged> judged() {
    List<RoomJudged> judged = new ArrayList<>();
    for (int r = 0; r < rooms.size(); r++) {
      int room = r;
      Weather worst =
          weathers.stream().max(Comparator.comparingDouble(w -> w.shortfall()[room])).orElseThrow();
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

  /** The weather in which the worst room is furthest from being held. */
  public Weather worst() {
    return weathers.stream().max(Comparator.comparingDouble(Weather::worst)).orElseThrow();
  }

  /** Weathers that were run, coldest first. */
  public List<Weather> runs() {
    return weathers.stream().filter(Weather::byRun).toList();
  }

  /** Where rest and run are further apart than {@link #DISAGREEMENT}, by weather and room. */
  public List<Disagreement> disagreements() {
    List<Disagreement> all = new ArrayList<>();
    for (Weather weather : runs()) {
      HeldRun.Day day = weather.run().orElseThrow();
      for (int r = 0; r < rooms.size(); r++) {
        int i = rooms.get(r).index();
        double rest = weather.atRest()[r];
        if (Math.abs(day.operative()[i] - rest) > DISAGREEMENT) {
          all.add(
              new Disagreement(
                  rooms.get(r).name(),
                  weather.outdoor(),
                  rest,
                  day.operative()[i],
                  day.least()[i],
                  day.most()[i]));
        }
      }
    }
    return all;
  }

  /** Largest share of a day run in which too little flow kept the called source off [-]. */
  public double blocked() {
    return runs().stream().mapToDouble(w -> w.run().orElseThrow().blocked()).max().orElse(0);
  }

  /** Outdoor temperature of the coldest day run in which the called source made no heat [°C]. */
  public OptionalDouble neverRan() {
    return runs().stream()
        .filter(w -> w.run().orElseThrow().called() > 0 && w.run().orElseThrow().sourceHeat() <= 0)
        .mapToDouble(Weather::outdoor)
        .findFirst();
  }

  /** Weathers not run that come near to failing. */
  private List<Weather> doubtful() {
    return weathers.stream().filter(w -> !w.byRun() && w.worst() > -NEAR).toList();
  }

  /** The same with these in the place of what was known of their weather, and what follows. */
  private Judgement with(List<Weather> changed) {
    List<Weather> all = new ArrayList<>();
    for (Weather weather : weathers) {
      all.add(
          changed.stream()
              .filter(c -> c.outdoor() == weather.outdoor())
              .findFirst()
              .orElse(weather));
    }
    List<Weather> run = all.stream().filter(Weather::byRun).toList();
    all.replaceAll(w -> w.byRun() ? w : corrected(w, run));
    return new Judgement(rooms, all);
  }

  /**
   * What the rest says, moved as far as the runs on both sides say it is off, straight in between;
   * with a run on one side only, moved to the colder side alone.
   */
  private Weather corrected(Weather weather, List<Weather> run) {
    double[] shortfall = new double[rooms.size()];
    for (int r = 0; r < shortfall.length; r++) {
      Weather colder = null;
      Weather milder = null;
      for (Weather known : run) {
        if (known.outdoor() < weather.outdoor()) {
          colder = known;
        } else if (milder == null) {
          milder = known;
        }
      }
      double off;
      if (colder != null && milder != null) {
        double share =
            (weather.outdoor() - colder.outdoor()) / (milder.outdoor() - colder.outdoor());
        off = off(colder, r) + share * (off(milder, r) - off(colder, r));
      } else {
        off = Math.max(0, off(colder != null ? colder : milder, r));
      }
      shortfall[r] = atRest(weather, r) + off;
    }
    return new Weather(weather.outdoor(), weather.atRest(), weather.run(), shortfall);
  }

  /** How much shorter a room falls in the run than at rest [K]. */
  private double off(Weather run, int room) {
    return run.shortfall()[room] - atRest(run, room);
  }

  private double atRest(Weather weather, int room) {
    return rooms.get(room).need() - weather.atRest()[room];
  }

  /** What a stage came to, or the exception that ended it. */
  static <T> T joined(CompletableFuture<T> stage) {
    try {
      return stage.join();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw e;
    }
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
      List<Weather> weathers = new ArrayList<>();
      for (int i = 0; i <= parts; i++) {
        weathers.add(rest(parts > 0 ? design + range * i / parts : design));
      }
      int worst = weathers.indexOf(new Judgement(rooms, weathers).worst());
      // Between two looks a room may dip: where a curve bends, or a coil ices.
      for (int i = Math.max(worst - 1, 0); i < Math.min(worst + 1, parts); i++) {
        for (int k = 1; k < FINER; k++) {
          weathers.add(rest(design + range * (i + (double) k / FINER) / parts));
        }
      }
      weathers.sort(Comparator.comparingDouble(Weather::outdoor));
      return new Judgement(rooms, weathers);
    }

    private Weather rest(double outdoor) {
      SettledHouse settled = holding.settled(outdoor).asControlled();
      double[] operative = new double[rooms.size()];
      double[] shortfall = new double[rooms.size()];
      for (int r = 0; r < operative.length; r++) {
        operative[r] = settled.operative(rooms.get(r).index());
        shortfall[r] = rooms.get(r).need() - operative[r];
      }
      return new Weather(outdoor, operative, Optional.empty(), shortfall);
    }

    Judgement run(Judgement swept, Executor executor) {
      List<Weather> first = new ArrayList<>();
      first.add(swept.weathers().get(0));
      worstMild(swept).ifPresent(first::add);
      Judgement judged = swept.with(run(first, executor));
      for (int done = first.size(); done < MOST_RUNS && !judged.confirmedByRun(); done++) {
        Weather next =
            judged.weathers().stream()
                .filter(w -> !w.byRun())
                .max(Comparator.comparingDouble(Weather::worst))
                .orElse(null);
        if (next == null) {
          break;
        }
        judged = judged.with(run(List.of(next), executor));
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

    private List<Weather> run(List<Weather> weathers, Executor executor) {
      List<CompletableFuture<HeldRun.Day>> days =
          weathers.stream()
              .map(
                  w ->
                      CompletableFuture.supplyAsync(
                          () -> HeldRun.of(house, arrangement, w.outdoor()), executor))
              .toList();
      List<Weather> run = new ArrayList<>();
      for (int i = 0; i < days.size(); i++) {
        Weather weather = weathers.get(i);
        HeldRun.Day day = joined(days.get(i));
        run.add(
            new Weather(weather.outdoor(), weather.atRest(), Optional.of(day), shortfalls(day)));
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
