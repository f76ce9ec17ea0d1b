package settle.sim.house;

/**
 * Properties of the water in the system, constant over a run.
 *
 * @param density [kg/m³]
 * @param specificHeat [J/(kg K)]
 * @param viscosity dynamic viscosity [Pa s]
 */
public record WaterProperties(double density, double specificHeat, double viscosity) {

  /** Water at 50 °C, rounded as the model states it; viscosity after IAPWS at 50 °C. */
  public static final WaterProperties AT_50 = new WaterProperties(988, 4180, 5.465e-4);

  public WaterProperties {
    if (!(density > 0 && specificHeat > 0 && viscosity > 0)) {
      throw new IllegalArgumentException("water properties must be > 0");
    }
  }

  /** A mass flow [kg/s] in the trade's unit [l/h]. */
  public double litresPerHour(double massFlow) {
    return massFlow / density * 3.6e6;
  }
}
