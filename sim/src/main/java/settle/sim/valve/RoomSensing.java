package settle.sim.valve;

/** Which temperature of the room a head or its thermostat feels. */
public enum RoomSensing {
  /** Mean of air and radiant temperature. */
  OPERATIVE,
  /** Air temperature. */
  AIR
}
