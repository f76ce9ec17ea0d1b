package settle.sim.source;

/** Steps a source. A step is tried until it agrees with what the emitters return, then accepted. */
public interface SourceStepper {

  /**
   * Tries a step from the accepted state.
   *
   * @param length of the step [s]
   * @param capacityFlow m c of the water [W/K], >= 0
   * @param returnTemperature mean return [°C]; ignored without flow
   * @param called whether heat is called for
   * @return mean flow temperature over the step [°C]
   */
  double attempt(double length, double capacityFlow, double returnTemperature, boolean called);

  /**
   * Makes the attempted step the state.
   *
   * @param heatTaken what the water really took in the step [J], which differs a little from the
   *     attempt where the iteration with the emitters ended
   */
  void accept(double heatTaken);

  /** Heat made over the accepted step [J]. */
  double heatMade();

  /** Fuel (gross) or electricity taken over the accepted step [J]. */
  double input();

  /** Loss to the surroundings over the accepted step [J]. */
  double loss();

  /** Heat stored above 0 °C [J]. */
  double stored();

  /** Number of starts so far. */
  int starts();

  /** Shortest complete firing so far [s]; infinite if there was none. */
  double shortestRun();

  /** Longest step that follows what the source is doing [s]. */
  double steadyFor();
}
