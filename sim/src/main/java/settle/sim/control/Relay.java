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

  /**
   * How far into a step that is being tried it will switch [s]; infinite if it will not.
   *
   * @param length of the step [s]
   * @param mean mean temperature of the sensor's room over it [°C]
   */
  public double switchesAfter(double want, RoomSensor sensor, double length, double mean) {
    return on
        ? sensor.passesAfter(want + differential / 2, true, length, mean)
        : sensor.passesAfter(want - differential / 2, false, length, mean);
  }
}
