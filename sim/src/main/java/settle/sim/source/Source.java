package settle.sim.source;

/** What heats the water. */
public sealed interface Source permits IdealSource, Boiler, HeatPump {

  /** What it is called. */
  String name();

  /** Flow temperature asked for where no weather compensation sets it [°C]. */
  double flowSetPoint();

  /** The same source asked for another flow temperature [°C]. */
  Source setTo(double flowTemperature);

  /**
   * The same kind of source of another size.
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
}
