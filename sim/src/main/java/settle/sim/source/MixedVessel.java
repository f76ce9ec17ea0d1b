package settle.sim.source;

/**
 * A fully mixed vessel that water of one temperature runs through over a step:
 *
 * <pre>
 *   C dT/dt = m c (T_in - T) - G (T - T_s)
 * </pre>
 *
 * <p>advanced exactly; what leaves has the vessel's own temperature.
 */
final class MixedVessel {

  // Model
  private final double capacity;
  private final double lossRate;
  private final double surroundings;

  // State
  private double temperature;
  private double change;
  private double length = 1;
  private double loss;

  // Attempt
  private double nextTemperature;
  private double nextLength;
  private double mean;
  private double nextLoss;

  /**
   * @param capacity C [J/K]
   * @param lossRate G [W/K]
   * @param surroundings their temperature T_s [°C]
   * @param startTemperature [°C]
   */
  MixedVessel(double capacity, double lossRate, double surroundings, double startTemperature) {
    this.capacity = capacity;
    this.lossRate = lossRate;
    this.surroundings = surroundings;
    temperature = startTemperature;
  }

  /**
   * Tries a step from the accepted state.
   *
   * @param step its length [s]
   * @param capacityFlow m c of the water [W/K]
   * @param entering its mean temperature [°C]; ignored without flow
   * @return mean temperature in the vessel [°C]
   */
  double attempt(double step, double capacityFlow, double entering) {
    double pull = capacityFlow + lossRate;
    nextLength = step;
    if (pull > 0) {
      double carried = capacityFlow > 0 ? capacityFlow * entering : 0;
      double settled = (carried + lossRate * surroundings) / pull;
      double gone = -Math.expm1(-pull / capacity * step);
      nextTemperature = temperature + (settled - temperature) * gone;
      mean = settled + (temperature - settled) * gone * capacity / (pull * step);
    } else {
      nextTemperature = temperature;
      mean = temperature;
    }
    nextLoss = lossRate * (mean - surroundings) * step;
    return mean;
  }

  /**
   * Makes the attempted step the state.
   *
   * @param surplus heat left in the vessel beyond what was tried [J]
   */
  void accept(double surplus) {
    double before = temperature;
    temperature = nextTemperature + surplus / capacity;
    change = temperature - before;
    length = nextLength;
    loss = nextLoss;
  }

  /** [°C] */
  double temperature() {
    return temperature;
  }

  /** Mean temperature over the attempted step [°C]. */
  double mean() {
    return mean;
  }

  /** Heat lost over the accepted step [J]. */
  double loss() {
    return loss;
  }

  /** Heat stored above 0 °C [J]. */
  double stored() {
    return capacity * temperature;
  }

  /** Time in which it moves by so much if it goes on as it did [s]; infinite at rest. */
  double timeToMove(double difference) {
    return difference * length / Math.abs(change);
  }
}
