package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntConsumer;
import settle.sim.engine.HeldRun;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.measure.Measure;

/**
 * Whether an arrangement keeps a house warm, why, and what would help.
 *
 * @param arrangement what was asked about
 * @param judgement whether every room is held all season, at rest and by runs
 * @param rooms answers for every room that has an emitter: warmth in design weather and whether it
 *     is held as it was judged, by the run; all else at rest
 * @param flow how hot the water is asked to be, and has to be
 * @param shortage the room furthest from being held, and why; empty if all are held
 * @param warmUps how soon rooms are warm in design weather
 * @param source whether the source fits, and what a season takes
 * @param comfort what it feels like in design weather, in the order of {@code rooms}
 * @param remedies what would let rooms be held that are not
 * @param demand the house's need and what the emitters can give over outdoor temperature
 * @param aims what warm-up and overshoot are held against
 * @param chances how many houses like it are held; empty if none were tried
 */
public record Verdict(
    Arrangement arrangement,
    Judgement judgement,
    List<RoomAnswer> rooms,
    Flow flow,
    Optional<Shortage> shortage,
    WarmUps warmUps,
    SourceAnswer source,
    List<ComfortAtRest> comfort,
    Remedies remedies,
    List<Demand> demand,
    Aims aims,
    Optional<Chances> chances) {

  public Verdict {
    rooms = List.copyOf(rooms);
    comfort = List.copyOf(comfort);
    demand = List.copyOf(demand);
  }

  /**
   * Flow temperature in design weather.
   *
   * @param asked what the controls ask for [°C]
   * @param held what controls and source bring about while heat is called for [°C]
   * @param least least that holds every room [°C]; empty if none does
   * @param leastCurve least weather compensation that holds every room; empty if none does
   */
  public record Flow(
      double asked, double held, OptionalDouble least, Optional<LeastCurve> leastCurve) {

    private static Flow of(Holding holding, double design) {
      return new Flow(
          holding.asked(design),
          holding.held(design),
          holding.leastFlow(design),
          LeastCurve.of(holding, design));
    }
  }

  /**
   * What there is to say of a source.
   *
   * @param season what a season takes
   * @param heatPump whether it fits, if the source is one
   * @param boiler the same of a boiler
   */
  public record SourceAnswer(
      Season season, Optional<HeatPumpAnswer> heatPump, Optional<BoilerAnswer> boiler) {

    private static SourceAnswer of(House house, Arrangement arrangement, Judgement judgement) {
      Season season = Season.of(house, arrangement);
      List<SourceDay> days = SourceDay.of(judgement);
      return new SourceAnswer(
          season,
          HeatPumpAnswer.of(house, arrangement, season, days),
          BoilerAnswer.of(house, arrangement, season, days));
    }
  }

  /**
   * How many houses like it are held.
   *
   * @param odds what was tried
   * @param lift where too few are, or the house as stated is not held, what lets enough be held;
   *     empty otherwise
   */
  public record Chances(Odds odds, Optional<Lift> lift) {}

  /** Whether it keeps the house warm. */
  public enum Outcome {
    /** It does. */
    YES,
    /**
     * As stated it does, but of the houses like it fewer than the aims ask for, once heads set too
     * low are turned up.
     */
    ONLY_JUST,
    /** A room is not held, or warm too late. */
    NO
  }

  /**
   * Judges an arrangement in the calling thread, without trying houses.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static Verdict of(House house, Arrangement arrangement) {
    return of(house, arrangement, Workers.ONE);
  }

  /**
   * As above, with the runs handed to workers; their number does not change the answer.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param workers who does the runs
   */
  public static Verdict of(House house, Arrangement arrangement, Workers workers) {
    Holding holding = new Holding(house, arrangement);
    return workers.both(
        () -> WarmUps.of(house, arrangement, holding.model()),
        () -> Judgement.of(holding, workers),
        (warmUps, judgement) -> of(new Case(house, arrangement, judgement, holding), warmUps));
  }

  private static Verdict of(Case as, WarmUps warmUps) {
    House house = as.house();
    Arrangement arrangement = as.arrangement();
    Judgement judgement = as.judged();
    return new Verdict(
        arrangement,
        judgement,
        judged(judgement, as.holding().rooms()),
        Flow.of(as.holding(), house.designOutdoor()),
        judgement.holds() ? Optional.empty() : Optional.of(Shortage.of(as)),
        warmUps,
        SourceAnswer.of(house, arrangement, judgement),
        ComfortAtRest.of(house, arrangement),
        Remedies.of(as, warmUps),
        Demand.over(house, as.holding()),
        house.aims(),
        Optional.empty());
  }

  /**
   * Adds how many houses like it are held, and where too few are, or the house as stated is not,
   * what would lift that.
   *
   * @param house the house
   * @param samples how many houses
   * @param seed of the draws
   * @param workers who settles the houses
   * @param progress given the number done
   */
  public Verdict tried(House house, int samples, long seed, Workers workers, IntConsumer progress) {
    Odds odds = Odds.of(house, arrangement, samples, seed, workers, progress);
    Verdict with = with(new Chances(odds, Optional.empty()));
    Optional<List<Measure>> least =
        switch (with.outcome()) {
          case YES -> Optional.empty();
          case ONLY_JUST -> Optional.of(List.of());
          case NO -> remedies.cure().map(Remedies.Cure::measures);
        };
    return least
        .map(set -> Lift.of(house, arrangement.name(), judgement, set, odds, seed, workers))
        .map(lift -> with(new Chances(odds, Optional.of(lift))))
        .orElse(with);
  }

  private Verdict with(Chances found) {
    return new Verdict(
        arrangement,
        judgement,
        rooms,
        flow,
        shortage,
        warmUps,
        source,
        comfort,
        remedies,
        demand,
        aims,
        Optional.of(found));
  }

  /** How many houses like it are held; empty if none were tried. */
  public Optional<Odds> odds() {
    return chances.map(Chances::odds);
  }

  /** What lets enough of them be held, where too few are or the house as stated is not. */
  public Optional<Lift> lift() {
    return chances.flatMap(Chances::lift);
  }

  /** What was found of rooms at rest, with the word of the judgement where it has one. */
  private static List<RoomAnswer> judged(Judgement judgement, List<RoomAnswer> atRest) {
    Judgement.Weather design = judgement.weathers().get(0);
    List<RoomAnswer> judged = new ArrayList<>();
    for (int r = 0; r < atRest.size(); r++) {
      int index = judgement.rooms().get(r).index();
      RoomAnswer rest = atRest.get(r);
      double operative =
          design.run().map((HeldRun.Day day) -> day.operative()[index]).orElse(rest.settled());
      OptionalDouble downTo =
          !judgement.heldAtDesign(r)
              ? judgement.heldFrom(r)
              : rest.holds() ? rest.holdingOutdoor() : OptionalDouble.of(design.outdoor());
      judged.add(rest.judged(operative, judgement.holds(r), downTo));
    }
    return judged;
  }

  /** The room that no flow temperature holds, or else the one that needs the hottest water. */
  public RoomAnswer governing() {
    RoomAnswer governing = rooms.get(0);
    for (RoomAnswer room : rooms) {
      governing = needed(room) > needed(governing) ? room : governing;
    }
    return governing;
  }

  private static double needed(RoomAnswer room) {
    return room.leastFlow().orElse(Double.POSITIVE_INFINITY);
  }

  /** Whether it keeps the house warm, as far as was tried. */
  public Outcome outcome() {
    if (!keepsUp()) {
      return Outcome.NO;
    }
    return odds().filter(o -> o.headsTurnedUp().keepUp() < aims.sure()).isPresent()
        ? Outcome.ONLY_JUST
        : Outcome.YES;
  }

  /** Whether runs say what is answered, of the house as it is stated. */
  public boolean confirmedByRun() {
    // Too late is by the run of a warm-up anyhow.
    return judgement.confirmedByRun() || (judgement.holds() && !slow().isEmpty());
  }

  /** Whether every room is held all season, and warm as soon as the aims allow. */
  public boolean keepsUp() {
    return held() && slow().isEmpty();
  }

  /** Whether a run shows that the source never runs in the weather that is worst. */
  public boolean sourceNeverRuns() {
    return shortage.filter(s -> s.cause() == Shortage.Cause.NEVER_RUNS).isPresent();
  }

  /** Whether every room is held all season. */
  public boolean held() {
    return judgement.holds();
  }

  /** Rooms whose usual warm-up takes longer than the aims allow. */
  public List<WarmUps.WarmUp> slow() {
    double allowed = aims.warmUp().orElse(Double.POSITIVE_INFINITY);
    return aims.warmUp().isEmpty()
        ? List.of()
        : warmUps.usual().stream()
            .filter(w -> w.time().orElse(Double.POSITIVE_INFINITY) > allowed)
            .toList();
  }

  /** Rooms that rise further above want after their usual warm-up than the aims allow. */
  public List<WarmUps.WarmUp> tooWarm() {
    double allowed = aims.overshoot().orElse(Double.POSITIVE_INFINITY);
    return warmUps.usual().stream().filter(w -> w.overshoot() > allowed).toList();
  }

  /**
   * Lowest outdoor temperature down to which every room is held [°C]; empty if some room is not
   * even in mild weather.
   */
  public OptionalDouble holdingOutdoor() {
    double highest = Double.NEGATIVE_INFINITY;
    for (RoomAnswer room : rooms) {
      if (room.holdingOutdoor().isEmpty()) {
        return OptionalDouble.empty();
      }
      highest = Math.max(highest, room.holdingOutdoor().getAsDouble());
    }
    return OptionalDouble.of(highest);
  }
}
