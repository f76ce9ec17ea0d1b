package settle.sim.study;

import java.util.OptionalDouble;
import settle.sim.atrest.Balancing;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;

/**
 * The room that is furthest from being held, in the weather in which it is, and why.
 *
 * @param room its name
 * @param want day want-temperature [°C]
 * @param outdoor outdoor temperature [°C]
 * @param operative operative temperature it has: by the run the mean of its day, else at rest [°C]
 * @param least lowest in the run, else lowest that it may be at rest [°C]
 * @param most highest in the run [°C]; likewise
 * @param byRun whether a run says so
 * @param settles whether the house stands still there, and by the run where the rest says
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
    double operative,
    double least,
    double most,
    boolean byRun,
    boolean settles,
    Cause cause,
    double flowAsked,
    OptionalDouble flowNeeded,
    double output,
    double load,
    double blocked) {

  /** Why a room is not held. The first that is so is given. */
  public enum Cause {
    /** The source is called and never runs. */
    NEVER_RUNS,
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

  /** How much more than the source has the house must take for the source to be the reason [-]. */
  private static final double WEAK = 1.005;

  /**
   * Looks for the room and the reason.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param holding its answers at rest
   * @param judgement what was found of it, some room not being held
   */
  static Shortage of(House house, Arrangement arrangement, Holding holding, Judgement judgement) {
    Judgement.Weather weather = judgement.worst();
    int at = 0;
    for (int r = 1; r < weather.shortfall().length; r++) {
      at = weather.shortfall()[r] > weather.shortfall()[at] ? r : at;
    }
    Judgement.Asked room = judgement.rooms().get(at);
    int index = room.index();
    double outdoor = weather.outdoor();
    double asked = holding.asked(outdoor);
    OptionalDouble needed = holding.leastFlow(index, outdoor);
    double output = holding.output(index, outdoor, asked);
    double load = holding.load(index, outdoor);
    double rest = weather.rest().operative()[at];
    double blocked = weather.run().map(day -> day.supply().blocked()).orElse(0.0);
    Cause cause;
    if (weather.run().filter(day -> day.supply().neverRan()).isPresent()) {
      cause = Cause.NEVER_RUNS;
    } else if (blocked > NOTABLE) {
      cause = Cause.BLOCKED;
    } else if (weak(house, holding, outdoor, asked)) {
      cause = Cause.SOURCE;
    } else if (unbalanced(house, arrangement, holding, index, outdoor)) {
      cause = Cause.UNBALANCED;
    } else if (thermostatElsewhere(house, room.name())
        && needed.orElse(Double.POSITIVE_INFINITY) <= asked) {
      cause = Cause.THERMOSTAT;
    } else if (needed.isPresent()
        && needed.getAsDouble() > asked
        && needed.getAsDouble() <= house.source().highestFlow()) {
      cause = Cause.COOL_WATER;
    } else {
      cause = output < load ? Cause.EMITTER : Cause.VALVE;
    }
    double mean = weather.run().map(day -> day.operative()[index]).orElse(rest);
    return new Shortage(
        room.name(),
        room.want(),
        outdoor,
        mean,
        weather.run().map(day -> day.least()[index]).orElse(weather.rest().lowest()[at]),
        weather.run().map(day -> day.most()[index]).orElse(weather.rest().highest()[at]),
        weather.byRun(),
        settles(weather, at, index),
        cause,
        asked,
        needed,
        output,
        load,
        blocked);
  }

  private static boolean settles(Judgement.Weather weather, int room, int index) {
    return weather.rest().claims()
        && weather
            .run()
            .map(
                day ->
                    day.least()[index] >= weather.rest().lowest()[room] - Judgement.DISAGREEMENT
                        && day.most()[index]
                            <= weather.rest().highest()[room] + Judgement.DISAGREEMENT)
            .orElse(true);
  }

  private static boolean weak(House house, Holding holding, double outdoor, double asked) {
    double taken = holding.settled(outdoor).at(asked).sourceHeat();
    return taken > house.source().maximumPower(outdoor, asked) * WEAK;
  }

  private static boolean thermostatElsewhere(House house, String room) {
    return house.control().thermostat().isFitted() && !house.control().referenceRoom().equals(room);
  }

  private static boolean unbalanced(
      House house, Arrangement arrangement, Holding holding, int room, double outdoor) {
    if (arrangement.balanced()) {
      return false;
    }
    String name = house.rooms().get(room).name();
    double share = Double.POSITIVE_INFINITY;
    for (Balance.BranchBalance b : Balancing.balance(holding.model()).branches()) {
      int branch = Balancing.balance(holding.model()).branches().indexOf(b);
      if (arrangement.branches().get(branch).room().equals(name)) {
        share = Math.min(share, b.flow() / b.designFlow());
      }
    }
    Arrangement balanced = new Arrangement(arrangement.name(), arrangement.branches(), true);
    return share < 1 && new Holding(house, balanced).shortfall(outdoor, room) <= 0;
  }
}
