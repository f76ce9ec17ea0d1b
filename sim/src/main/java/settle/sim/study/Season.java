package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * What an arrangement takes over a heating season, by the bin method of EN 14825: the house at rest
 * in each bin, without sun and other gains, every room wanted at its day value.
 *
 * <p>Heat is what the water takes from the source, pipe losses included; a vessel's loss is not.
 * Without gains it is more heat than a house that is lived in needs; the factors hardly depend on
 * that.
 *
 * @param climate the season
 * @param asControlled with the flow temperature that the controls ask for
 * @param leastFlow with the least flow temperature that holds every room in each bin; empty if in
 *     the coldest none does
 */
public record Season(ClimateBins climate, Year asControlled, Optional<Year> leastFlow) {

  /**
   * Works it out.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param climate the season
   */
  public static Season of(House house, Arrangement arrangement, ClimateBins climate) {
    SeasonAtRest rest = new SeasonAtRest(house, arrangement, climate);
    return new Season(climate, rest.asControlled(), rest.leastFlow());
  }

  /** Works it out for the average season of EN 14825, fitted to the house's design temperature. */
  public static Season of(House house, Arrangement arrangement) {
    return of(house, arrangement, EuropeanSeason.AVERAGE.fittedTo(house.designOutdoor()));
  }

  /**
   * A season's sums.
   *
   * @param heat taken by the water [J]
   * @param backupHeat of it, what a heat pump's compressor cannot give: by electric heaters, as EN
   *     14825 reckons it, whether they are fitted or not [J]
   * @param unmetHeat of it, what a boiler or an ideal source cannot give [J]
   * @param consumption what that takes; empty for an ideal source
   * @param pumpElectricity taken by the pump of the mains, which runs while heat is called for [J]
   * @param flue what a boiler's flue carries away; empty for other sources
   * @param hoursBelowMinimum hours in which the load is below the least output, so that the source
   *     starts and stops [h]
   * @param bins what it is made of, coldest first
   */
  public record Year(
      double heat,
      double backupHeat,
      double unmetHeat,
      Optional<Consumption> consumption,
      double pumpElectricity,
      Optional<Flue> flue,
      double hoursBelowMinimum,
      List<Bin> bins) {

    public Year {
      bins = List.copyOf(bins);
    }

    /** Share of the flue's vapour that condenses [-]; empty if the source burns nothing. */
    public OptionalDouble condensingShare() {
      return flue.isPresent() ? OptionalDouble.of(flue.get().condensed()) : OptionalDouble.empty();
    }

    /** Share of the firing time with what enters below the dew point [-]; empty likewise. */
    public OptionalDouble belowDewPoint() {
      return flue.isPresent()
          ? OptionalDouble.of(flue.get().belowDewPoint())
          : OptionalDouble.empty();
    }

    /**
     * Outdoor temperature above which the source starts and stops all the time: straight between
     * bins [°C]; the coldest bin's if it always does, empty if not even in the mildest.
     */
    public OptionalDouble cyclesAbove() {
      return lowestFrom(bin -> bin.least() - bin.load());
    }

    /**
     * Outdoor temperature below which the source does not carry the house alone: straight between
     * bins [°C]; the mildest bin's if it never does, empty if it does in every one.
     */
    public OptionalDouble bivalence() {
      OptionalDouble carriedAbove = lowestFrom(bin -> bin.capacity() - bin.load());
      if (carriedAbove.isEmpty()) {
        return OptionalDouble.of(bins.get(bins.size() - 1).outdoor());
      }
      return carriedAbove.getAsDouble() > bins.get(0).outdoor()
          ? carriedAbove
          : OptionalDouble.empty();
    }

    /** Lowest outdoor temperature from which on an excess is above 0 in every milder bin. */
    private OptionalDouble lowestFrom(ToDoubleFunction<Bin> excess) {
      int i = bins.size() - 1;
      if (!(excess.applyAsDouble(bins.get(i)) > 0)) {
        return OptionalDouble.empty();
      }
      while (i > 0 && excess.applyAsDouble(bins.get(i - 1)) > 0) {
        i--;
      }
      Bin above = bins.get(i);
      if (i == 0) {
        return OptionalDouble.of(above.outdoor());
      }
      Bin below = bins.get(i - 1);
      double a = excess.applyAsDouble(below);
      double b = excess.applyAsDouble(above);
      return OptionalDouble.of(
          below.outdoor() + (above.outdoor() - below.outdoor()) * -a / (b - a));
    }
  }

  /**
   * What a boiler's flue carries away over a season.
   *
   * @param condensed share of its vapour that condenses, over the gas burnt [-]
   * @param belowDewPoint share of the firing time in which the water that enters the boiler is
   *     below the dew point of the flue [-]
   */
  public record Flue(double condensed, double belowDewPoint) {}

  /**
   * What a season's heat takes.
   *
   * @param input electricity, that of the pump of the mains included, or gas (gross) [J]
   * @param factor heat per input [-]: a heat pump's seasonal factor SCOP_on, a boiler's seasonal
   *     gross efficiency
   * @param cost by the house's tariffs, in their currency; the pump's electricity included
   * @param carbon by the house's tariffs, likewise [kg CO2]
   */
  public record Consumption(double input, double factor, double cost, double carbon) {}

  /**
   * The house at one outdoor temperature.
   *
   * @param outdoor [°C]
   * @param hours how long it lasts [h]
   * @param load heat taken by the water [W]
   * @param flow flow temperature [°C]
   * @param returning temperature of the water that enters the source while it runs [°C]
   * @param capacity most the source can give without electric heaters [W]; may be infinite
   * @param least least it gives while running [W]; 0 for an ideal source
   * @param input electricity or gas it takes [W]; empty for an ideal source
   */
  public record Bin(
      double outdoor,
      double hours,
      double load,
      double flow,
      double returning,
      double capacity,
      double least,
      OptionalDouble input) {

    /** Heat per input [-]; empty for an ideal source and where nothing is taken. */
    public OptionalDouble factor() {
      return input.isPresent() && input.getAsDouble() > 0
          ? OptionalDouble.of(load / input.getAsDouble())
          : OptionalDouble.empty();
    }

    /** Whether the load is below the least output, so that the source starts and stops. */
    public boolean belowMinimum() {
      return load < least;
    }
  }
}
