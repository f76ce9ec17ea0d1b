package settle.sim.valve;

/** What throttles a branch. */
public sealed interface Valve permits WaxValve, FixedOpening, OnOffActuator, MotorHead {

  /** What it is called. */
  String name();

  /** Flow coefficient fully open, K_vs [m³/h at 1 bar]. */
  double kvMaximum();

  /** What it is set to [°C]; not a number where it has nothing to set. */
  double setPoint();

  /** The same valve set so much higher [K]; one without a set-point stays as it is. */
  Valve raised(double by);
}
