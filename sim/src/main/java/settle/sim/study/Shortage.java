package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.atrest.Balancing;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;

/**
 * The room that is furthest from being held, in the weather in which it is, and why.
 *
 * @param room its name
 * @param want day want-temperature [°C]
 * @param outdoor outdoor temperature [°C]
 * @param warmth how warm it is there
 * @param cause why
 * @param flowAsked flow temperature asked for in that weather [°C]
 * @param flowNeeded lowest flow temperature that holds the room there [°C]; empty if none does
 * @param output most its emitters and pipes give at the flow temperature asked for [W]
 * @param load heat it needs there [W]
 * @param blocked share of the day run in which too little flow kept the source off [-]
 */
public record Shortage(
    String room,
    double want,
    double outdoor,
    Warmth warmth,
    Cause cause,
    double flowAsked,
    OptionalDouble flowNeeded,
    double output,
    double load,
    double blocked) {

  /**
   * How warm a room is.
   *
   * @param operative operative temperature it has: by the run the mean of its day, else at rest
   *     [°C]
   * @param least lowest in the run, else lowest that it may be at rest [°C]
   * @param most highest in the run [°C]; likewise
   * @param byRun whether a run says so
   * @param settles whether the house stands still there, and by the run where the rest says
   */
  public record Warmth(
      double operative, double least, double most, boolean byRun, boolean settles) {

    static Warmth of(Judgement.Weather weather, int room, int index) {
      Judgement.AtRest rest = weather.rest();
      double mean = weather.run().map(day -> day.operative()[index]).orElse(rest.operative()[room]);
      double least = weather.run().map(day -> day.least()[index]).orElse(rest.lowest()[room]);
      double most = weather.run().map(day -> day.most()[index]).orElse(rest.highest()[room]);
      boolean settles =
          rest.claims()
              && least >= rest.lowest()[room] - Judgement.DISAGREEMENT
              && most <= rest.highest()[room] + Judgement.DISAGREEMENT;
      return new Warmth(mean, least, most, weather.byRun(), settles);
    }
  }

  /** Why a room is not held. The first that is so is given. */
  public enum Cause {
    /** The source is called and never runs. */
    NEVER_RUNS,
    /** Hot water takes the source away; without it the room would be held. */
    HOT_WATER,
    /** Too little flow keeps the called source off for part of the time. */
    BLOCKED,
    /** The house takes more than the source has. */
    SOURCE,
    /** The room gets less than its share of the water; balanced it would be held. */
    UNBALANCED,
    /** A room thermostat elsewhere stops the source; water as asked for would hold the room. */
    THERMOSTAT,
    /** The water asked for is too cool; the source could make what holds the room. */
    COOL_WATER,
    /** Emitters and pipes give less than the room needs. */
    EMITTER,
    /** They could give enough, but the valve does not let them. */
    VALVE
  }

  /** Share of a day with the source kept off that matters [-]. */
  private static final double NOTABLE = 0.02;

  /**
   * Looks for the room and the reason.
   *
   * @param as the house and what was found of it, some room not being held
   */
  static Shortage of(Case as) {
    Judgement.Weather weather = as.judged().worst();
    int at = 0;
    for (int r = 1; r < weather.shortfall().length; r++) {
      at = weather.shortfall()[r] > weather.shortfall()[at] ? r : at;
    }
    Judgement.Asked room = as.judged().rooms().get(at);
    double outdoor = weather.outdoor();
    double asked = as.holding().asked(outdoor);
    OptionalDouble needed = as.holding().leastFlow(room.index(), outdoor);
    double output = as.holding().output(room.index(), outdoor, asked);
    double load = as.holding().load(room.index(), outdoor);
    return new Shortage(
        room.name(),
        room.want(),
        outdoor,
        Warmth.of(weather, at, room.index()),
        cause(as, weather, room)
            .orElseGet(() -> ofRoom(as.house(), room.name(), asked, needed, output < load)),
        asked,
        needed,
        output,
        load,
        blocked(weather));
  }

  private static double blocked(Judgement.Weather weather) {
    return weather.run().map(day -> day.supply().blocked()).orElse(0.0);
  }

  /** The reason, if it lies in source or water. */
  private static Optional<Cause> cause(Case as, Judgement.Weather weather, Judgement.Asked room) {
    if (weather.run().filter(day -> day.supply().neverRan()).isPresent()) {
      return Optional.of(Cause.NEVER_RUNS);
    }
    if (heldWithoutHotWater(as, room, weather.outdoor())) {
      return Optional.of(Cause.HOT_WATER);
    }
    if (blocked(weather) > NOTABLE) {
      return Optional.of(Cause.BLOCKED);
    }
    if (as.holding().overloadsSource(weather.outdoor())) {
      return Optional.of(Cause.SOURCE);
    }
    return unbalanced(as, room, weather.outdoor())
        ? Optional.of(Cause.UNBALANCED)
        : Optional.empty();
  }

  /** The reason, if it lies in flow temperature or room. */
  private static Cause ofRoom(
      House house, String room, double asked, OptionalDouble needed, boolean weak) {
    boolean hotEnough = needed.isPresent() && needed.getAsDouble() <= asked;
    if (hotEnough && thermostatElsewhere(house, room)) {
      return Cause.THERMOSTAT;
    }
    if (needed.isPresent() && !hotEnough && needed.getAsDouble() <= house.source().highestFlow()) {
      return Cause.COOL_WATER;
    }
    return weak ? Cause.EMITTER : Cause.VALVE;
  }

  private static boolean thermostatElsewhere(House house, String room) {
    return house.control().thermostat().isFitted() && !house.control().referenceRoom().equals(room);
  }

  private static boolean heldWithoutHotWater(Case as, Judgement.Asked room, double outdoor) {
    House alone = as.house().withHotWater(Timetable.constant(0));
    return !as.house().hotWater().isConstant()
        && as.holding().like(alone, as.arrangement()).shortfall(outdoor, room.index()) <= 0;
  }

  private static boolean unbalanced(Case as, Judgement.Asked room, double outdoor) {
    if (as.arrangement().balanced()) {
      return false;
    }
    List<Balance.BranchBalance> water = Balancing.balance(as.holding().model()).branches();
    double share =
        as.branchesOf(room.name())
            .mapToDouble(b -> water.get(b).flow() / water.get(b).designFlow())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    return share < 1
        && new Holding(as.house(), as.arrangement().asBalanced()).shortfall(outdoor, room.index())
            <= 0;
  }
}
