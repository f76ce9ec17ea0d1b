package settle.sim.valve;

/** What throttles a branch: a thermostatic valve or a fixed opening. */
public sealed interface Valve permits WaxValve, FixedOpening {

  /** What it is called. */
  String name();

  /** Flow coefficient fully open, K_vs [m³/h at 1 bar]. */
  double kvMaximum();
}
