package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.notice.Notice;
import settle.sim.source.Source;

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
 * @param days how it worked in the weathers that were run
 * @param doubts empty if nothing is doubtful
 */
public record BoilerAnswer(
    String unit,
    double load,
    double capacity,
    double flowAsked,
    OptionalDouble flowNeeded,
    Season season,
    List<SourceDay> days,
    List<Notice> doubts) {

  public BoilerAnswer {
    days = List.copyOf(days);
    doubts = List.copyOf(doubts);
  }

  /**
   * Works it out.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param season what that takes over a season
   * @param days how the source worked in the weathers that were run
   * @return empty if the house has no source that can condense, or one that makes no heat all
   *     season
   */
  public static Optional<BoilerAnswer> of(
      House house, Arrangement arrangement, Season season, List<SourceDay> days) {
    Source boiler = house.source();
    if (season.asControlled().flue().isEmpty()) {
      return Optional.empty();
    }
    SeasonAtRest rest = new SeasonAtRest(house, arrangement, season.climate());
    double outdoor = house.designOutdoor();
    BoilerAnswer answer =
        new BoilerAnswer(
            boiler.name(),
            rest.controlled(outdoor).load(),
            boiler.maximumPower(outdoor, boiler.flowSetPoint()),
            rest.holding().asked(outdoor),
            rest.holding().leastFlow(outdoor),
            season,
            days,
            List.of());
    return Optional.of(answer.with(SourceDoubts.about(answer, house)));
  }

  private BoilerAnswer with(List<Notice> said) {
    return new BoilerAnswer(unit, load, capacity, flowAsked, flowNeeded, season, days, said);
  }

  /**
   * Outdoor temperature above which its least output is more than the load, so that it starts and
   * stops [°C]; empty if it never is.
   */
  public OptionalDouble cyclesAbove() {
    return season.asControlled().cyclesAbove();
  }

  /** Share of the flue's vapour that condenses over the season [-]. */
  public double condensingShare() {
    return season.asControlled().condensingShare().orElseThrow();
  }

  /** Share of the season's firing time with what enters below the dew point [-]. */
  public double belowDewPoint() {
    return season.asControlled().belowDewPoint().orElseThrow();
  }

  /** Seasonal gross efficiency as controlled [-]. */
  public double efficiency() {
    return season.asControlled().consumption().orElseThrow().factor();
  }
}
