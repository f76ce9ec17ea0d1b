package settle.sim.study;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a boiler fits a house as one arrangement heats it.
 *
 * @param unit the boiler's name
 * @param load heat the water takes in design weather, at the flow temperature asked for [W]
 * @param capacity largest output [W]
 * @param flowAsked flow temperature that the controls ask for in design weather [°C]
 * @param flowNeeded least flow temperature that holds every room in design weather [°C]; empty if
 *     none does
 * @param season what it takes over a season
 * @param cyclesAbove outdoor temperature above which its least output is more than the load, so
 *     that it starts and stops [°C]; empty if it never is
 * @param doubts in words, each with its remedy; empty if nothing is doubtful
 */
public record BoilerAnswer(
    String unit,
    double load,
    double capacity,
    double flowAsked,
    OptionalDouble flowNeeded,
    Season season,
    OptionalDouble cyclesAbove,
    List<String> doubts) {

  public BoilerAnswer {
    doubts = List.copyOf(doubts);
  }

  /** Share of the season's heat made with the return below the dew point [-]. */
  public double condensingShare() {
    return season.asControlled().condensingShare().orElseThrow();
  }

  /** Seasonal gross efficiency as controlled [-]. */
  public double efficiency() {
    return season.asControlled().consumption().orElseThrow().factor();
  }
}
