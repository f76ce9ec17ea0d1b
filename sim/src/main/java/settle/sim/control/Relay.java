package settle.sim.control;

/** A thermostat's contact: on below want - differential/2, off above want + differential/2. */
public final class Relay {

  private final double differential;
  private boolean on;

  /**
   * @param differential full switching differential [K]
   */
  public Relay(double differential) {
    this.differential = differential;
  }

  /** Switches, if it is time, and says whether it is on. */
  public boolean update(double want, double sensed) {
    if (sensed < want - differential / 2) {
      on = true;
    } else if (sensed > want + differential / 2) {
      on = false;
    }
    return on;
  }

  /** Opens the contact, whatever is sensed. */
  public void release() {
    on = false;
  }

  /** Whether it is on. */
  public boolean isOn() {
    return on;
  }

  /** Time until it will switch, as things go [s]; infinite if it will not. */
  public double timeToSwitch(double want, RoomSensor sensor) {
    return on
        ? sensor.timeTo(want + differential / 2, true)
        : sensor.timeTo(want - differential / 2, false);
  }
}
