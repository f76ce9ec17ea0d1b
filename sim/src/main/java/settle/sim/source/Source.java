package settle.sim.source;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What heats the water. A kind of source answers here all that is asked of it, so that nobody has
 * to ask which kind it is.
 */
public interface Source {

  /** What it is called. */
  String name();

  /** What people call such a source. */
  default String kind() {
    return "source";
  }

  /** Flow temperature asked for where no weather compensation sets it [°C]. */
  double flowSetPoint();

  /** This source asked for another flow temperature [°C]. */
  Source setTo(double flowTemperature);

  /**
   * A source of this kind in another size.
   *
   * @param factor by which its powers are multiplied, and what goes with them [-], > 0
   */
  Source scaled(double factor);

  /**
   * Largest heat output [W]; may be infinite.
   *
   * @param outdoor outdoor temperature [°C]
   * @param flow flow temperature [°C]
   */
  double maximumPower(double outdoor, double flow);

  /** Flow temperature it never passes [°C]; infinite where none is declared. */
  double highestFlow();

  /** How long the pump runs on after the call for heat ends [s]. */
  double overRunTime();

  /** What it takes to make heat. */
  Carrier carrier();

  /**
   * Steps it through a run.
   *
   * @param specificHeat of the water [J/(kg K)]
   * @param startTemperature of its water [°C]
   */
  SourceStepper stepper(double specificHeat, double startTemperature);

  /**
   * What it does with a load that stays as it is.
   *
   * @param outdoor outdoor temperature [°C]
   * @param load heat taken by the water [W]
   * @param flow flow temperature while it runs [°C]
   * @param entering temperature of the water that enters it while it runs [°C]
   */
  Delivery deliver(double outdoor, double load, double flow, double entering);

  /**
   * Least heat output while running [W].
   *
   * @param outdoor outdoor temperature [°C]
   * @param flow flow temperature [°C]
   */
  default double minimumPower(double outdoor, double flow) {
    return 0;
  }

  /** Half-band: off at set-point + band, on at set-point - band [K]. */
  default double switchingBand() {
    return 0;
  }

  /** Hottest water it makes while asked for a flow temperature [°C]. */
  default double hottest(double setPoint) {
    return setPoint + switchingBand();
  }

  /** Heat capacity of its water and metal [J/K]. */
  default double thermalMass() {
    return 0;
  }

  /** Flow of water below which it does not run [kg/s]. */
  default double minimumFlow() {
    return 0;
  }

  /** Least running time before it may stop by itself [s]. */
  default double minimumOnTime() {
    return 0;
  }

  /** Least rest before it may start [s]. */
  default double minimumOffTime() {
    return 0;
  }

  /** Heat that its casing loses with water of a temperature [°C] in it [W]. */
  default double casingLoss(double water) {
    return 0;
  }

  /** Surroundings to which its casing loses heat [°C]; empty if it does not. */
  default OptionalDouble surroundings() {
    return OptionalDouble.empty();
  }

  /** Dew point of its flue gas [°C]; empty if it burns nothing. */
  default OptionalDouble dewPoint() {
    return OptionalDouble.empty();
  }

  /**
   * Share of its flue's vapour that condenses [-]; empty if it burns nothing.
   *
   * @param entering temperature of the water that enters it [°C]
   */
  default OptionalDouble condensed(double entering) {
    return OptionalDouble.empty();
  }

  /** What it asks of its water, and what a start costs. */
  default Exchanger exchanger() {
    return Exchanger.UNLIMITED;
  }

  /** Its capacity and COP as they are declared; empty for one that takes no heat from outdoors. */
  default Optional<HeatPumpPerformance> ratings() {
    return Optional.empty();
  }

  /** What gives electrically what it lacks; empty if nothing does. */
  default Optional<BackupHeater> backup() {
    return Optional.empty();
  }

  /** How its coil is defrosted; empty if it does not ice. */
  default Optional<Defrost> defrost() {
    return Optional.empty();
  }

  /** Whether its coil ices in weather of an outdoor temperature [°C]. */
  default boolean ices(double outdoor) {
    return defrost().filter(d -> d.icesAt(outdoor)).isPresent();
  }

  /**
   * Outdoor temperatures at which what it can changes its course [°C], and both sides of those at
   * which that jumps.
   *
   * @param jump how far apart those are [K]
   */
  default List<Double> bends(double jump) {
    return List.of();
  }
}
