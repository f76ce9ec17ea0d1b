package settle.sim.source;

/**
 * Steps a source. A step begins with what holds over it, is tried until it agrees with what the
 * emitters return, then accepted.
 */
public interface SourceStepper {

  /**
   * Says what holds over the coming step.
   *
   * @param outdoor mean outdoor temperature [°C]
   * @param setPoint flow temperature asked for [°C]
   */
  void begin(double outdoor, double setPoint);

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
   * Whether the attempt came to agree with itself; a step with one that did not is not to stay.
   * What is one body of water has nothing to agree on.
   */
  default boolean agreed() {
    return true;
  }

  /**
   * Makes the attempted step the state.
   *
   * @param heatTaken what the water really took in the step [J], which differs a little from the
   *     attempt where the iteration with the emitters ended
   */
  void accept(double heatTaken);

  /** Heat made over the accepted step [J]; less than 0 where a defrost takes more. */
  double heatMade();

  /** Of it, heat from a backup heater [J]. */
  double backupHeat();

  /** Fuel (gross) or electricity taken over the accepted step [J]. */
  double input();

  /** Loss to the surroundings over the accepted step [J]. */
  double loss();

  /** Heat stored above 0 °C [J]. */
  double stored();

  /**
   * Mean temperature of the water that left the source itself, before any buffer, over the accepted
   * step [°C].
   */
  double leaving();

  /**
   * Mean temperature of the water that entered the source itself over the accepted step, behind any
   * buffer and with what a by-pass of its own mixed into it [°C].
   */
  double entering();

  /** What its burner did over the accepted step; null if it burns nothing. */
  default Firing firing() {
    return null;
  }

  /** Time at least output within the accepted step [s]. */
  double timeAtMinimum();

  /** Time called, but kept from running by too little flow, within the accepted step [s]. */
  double timeBlocked();

  /**
   * Running time within the accepted step at an outdoor temperature and set-point that the declared
   * performance does not cover [s].
   */
  double timeOutsideMap();

  /** Number of starts so far. */
  int starts();

  /** Number of defrosts so far. */
  int defrosts();

  /** Shortest complete run so far [s]; infinite if there was none. */
  double shortestRun();

  /** Longest step that follows what the source is doing [s]. */
  double steadyFor();
}
