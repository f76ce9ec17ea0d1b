package settle.sim.valve;

/** Which temperature of the room a head or its thermostat feels. */
public enum RoomSensing {
  /** Mean of air and radiant temperature. */
  OPERATIVE,
  /** Air temperature. */
  AIR;

  /**
   * What it feels [°C].
   *
   * @param air temperature of the air [°C]
   * @param star radiant temperature [°C]
   */
  public double of(double air, double star) {
    return this == AIR ? air : (air + star) / 2;
  }
}
