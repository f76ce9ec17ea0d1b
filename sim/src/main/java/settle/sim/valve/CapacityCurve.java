package settle.sim.valve;

/** The laws of a thermostatic valve at rest. */
public final class CapacityCurve {

  private CapacityCurve() {}

  /**
   * Flow coefficient, K_v = clamp(K_v,nom (T_set + X_p - u)/X_p, 0, K_vs): straight between shut
   * and fully open.
   *
   * @param setPoint T_set: sensed temperature at which K_v is nominal [°C]
   * @param band X_p: from there to shut [K]
   * @param kvNominal [m³/h at 1 bar]
   * @param kvMaximum K_vs [m³/h at 1 bar]
   * @param position u: temperature at which the valve stands, its play taken up [°C]
   * @return K_v [m³/h at 1 bar]
   */
  public static double kv(
      double setPoint, double band, double kvNominal, double kvMaximum, double position) {
    double k = kvNominal * (setPoint + band - position) / band;
    return Math.min(Math.max(k, 0), kvMaximum);
  }

  /**
   * Temperature a head feels, T_sense = T_loc + b (T_water - 50 °C) + bias.
   *
   * @param local temperature of the room at the head [°C]
   * @param waterInfluence b [K/K]
   * @param water temperature of the water at the valve [°C]
   * @param bias how much warmer than the room it is where the head sits [K]
   * @return [°C]
   */
  public static double sensed(double local, double waterInfluence, double water, double bias) {
    return local + waterInfluence * (water - WaxValve.SCALE_WATER_TEMPERATURE) + bias;
  }

  /**
   * Set-point under differential pressure: lower by d_p per bar above 0.1 bar.
   *
   * @param setPoint T_set at 0.1 bar [°C]
   * @param pressureInfluence d_p [K/bar]
   * @param pressureDrop across the valve [Pa]
   * @return [°C]
   */
  public static double underPressure(
      double setPoint, double pressureInfluence, double pressureDrop) {
    double above = (pressureDrop - WaxValve.SCALE_PRESSURE) / 1e5;
    return setPoint - pressureInfluence * Math.max(above, 0);
  }
}
