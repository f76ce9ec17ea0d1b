package settle.sim.source;

/** What heats the water. */
public sealed interface Source permits IdealSource, Boiler {

  /** What it is called. */
  String name();

  /** Flow temperature asked for [°C]. */
  double flowSetPoint();

  /** Largest heat output [W]; may be infinite. */
  double maximumPower();
}
