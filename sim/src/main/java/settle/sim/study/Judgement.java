package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import settle.sim.atrest.RestStatus;
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

  /** For how many days more a run that still drifts may go on as it did [-]. */
  static final double DAYS_OF_DRIFT = 10;

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
    double mayBeColder(int room) {
      return claims() ? operative[room] - lowest[room] : status.uncertainty();
    }

    private boolean isFound() {
      return Double.isFinite(status.uncertainty());
    }

    /** Whether what keeps the house from standing still is of the same kinds. */
    boolean isLike(AtRest other) {
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

    static final Comparator<RoomJudged> BY_SHORTFALL =
        Comparator.comparingDouble(RoomJudged::shortfall);

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
    return new Judge(new Holding(house, arrangement)).sweep();
  }

  /**
   * The house at rest, then runs in design weather, in the worst milder weather, and on until the
   * answer stands or there were enough of them.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Judgement of(House house, Arrangement arrangement) {
    return of(house, arrangement, Workers.ONE);
  }

  /**
   * As above, with the runs handed to workers; their number does not change the answer.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param workers who does the runs
   * @throws ArithmeticException if a model could not be solved; the message names room and time
   */
  public static Judgement of(House house, Arrangement arrangement, Workers workers) {
    return of(new Holding(house, arrangement), workers);
  }

  /** As above, of a house whose rest is known. */
  static Judgement of(Holding holding, Workers workers) {
    return new Judge(holding).judge(workers);
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

  /** This judgement with others in the place of what was known of their weather. */
  Judgement replacing(List<Weather> others) {
    List<Weather> all = new ArrayList<>();
    for (Weather weather : weathers) {
      all.add(
          others.stream()
              .filter(w -> w.outdoor() == weather.outdoor())
              .findFirst()
              .orElse(weather));
    }
    return new Judgement(rooms, all);
  }

  /** The weather looked at that is nearest to an outdoor temperature [°C]. */
  Weather nearest(double outdoor) {
    return weathers.stream()
        .min(Comparator.comparingDouble(w -> Math.abs(w.outdoor() - outdoor)))
        .orElseThrow();
  }

  /** How far a weather is from the nearest that was run [K]. */
  double fromRuns(Weather weather) {
    return runs().stream()
        .mapToDouble(w -> Math.abs(w.outdoor() - weather.outdoor()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
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
            && new BetweenRuns(this).undecided().isEmpty()
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
}
