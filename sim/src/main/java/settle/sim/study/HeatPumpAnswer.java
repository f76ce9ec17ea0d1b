package settle.sim.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether a heat pump fits a house as one arrangement heats it.
 *
 * @param unit the heat pump's name
 * @param load heat the water takes in design weather, at the flow temperature asked for [W]
 * @param capacity what the compressor gives there, icing included [W]
 * @param capacityWithBackup the same with the electric heater that is fitted [W]
 * @param flowAsked flow temperature that the controls ask for in design weather [°C]
 * @param flowNeeded least flow temperature that holds every room in design weather [°C]; empty if
 *     none does
 * @param highestFlow flow temperature the unit never passes [°C]
 * @param covered whether the map of its performance covers the whole season as controlled
 * @param season what it takes over a season
 * @param bivalence outdoor temperature below which the compressor does not carry the house alone
 *     [°C]; empty if it does down to design weather
 * @param cyclesAbove outdoor temperature above which its least output is more than the load, so
 *     that it starts and stops [°C]; empty if it never is
 * @param mild how it starts and stops in mild weather with the water as it is; empty if it runs
 *     through
 * @param mildCured the same with the water needed; empty likewise
 * @param water what it needs of water and has
 * @param doubts in words, each with its remedy; empty if nothing is doubtful
 */
public record HeatPumpAnswer(
    String unit,
    double load,
    double capacity,
    double capacityWithBackup,
    double flowAsked,
    OptionalDouble flowNeeded,
    double highestFlow,
    boolean covered,
    Season season,
    OptionalDouble bivalence,
    OptionalDouble cyclesAbove,
    Optional<Cycling> mild,
    Optional<Cycling> mildCured,
    Water water,
    List<String> doubts) {

  /** Outdoor temperature for which mild weather stands [°C]; common practice, no source. */
  public static final double MILD = 10;

  public HeatPumpAnswer {
    doubts = List.copyOf(doubts);
  }

  /**
   * Starting and stopping against a steady load.
   *
   * @param load [W]
   * @param least output while running [W]
   * @param onTime length of a run [s]
   * @param offTime length of a rest [s]
   */
  public record Cycling(double load, double least, double onTime, double offTime) {

    /** Starts an hour [1/h]. */
    public double startsPerHour() {
      return 3600 / (onTime + offTime);
    }
  }

  /**
   * Water.
   *
   * @param volume in circulation, source and vessel included [m³]
   * @param needed so that the shortest run in mild weather stays within the switching band though
   *     no heat is taken [m³]
   * @param least flow below which the unit does not run [kg/s]
   * @param flowLeft flow through the unit in mild weather, valves throttling [kg/s]
   */
  public record Water(double volume, double needed, double least, double flowLeft) {

    /** Volume of a vessel that makes up for what is lacking [m³]; 0 if nothing is. */
    public double lacking() {
      return Math.max(needed - volume, 0);
    }
  }
}
