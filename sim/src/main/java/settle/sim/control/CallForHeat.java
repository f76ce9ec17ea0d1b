package settle.sim.control;

/**
 * Whether the plant is asked for heat. Under {@link Control.Setback#HEADS} always: the heads
 * decide. Under {@link Control.Setback#SOURCE} while the reference room's programme is at its day
 * value, and in set-back as a thermostat with a differential about the want in force.
 */
public final class CallForHeat {

  private final Control control;
  private final Timetable want;
  private final double dayWant;
  private boolean called;
  private boolean day;

  /**
   * @param control how the programme acts
   * @param want programme of the reference room; ignored under HEADS
   */
  public CallForHeat(Control control, Timetable want) {
    this.control = control;
    this.want = want;
    dayWant = want.maximum();
  }

  /**
   * Decides for the coming step.
   *
   * @param time at its start [s]
   * @param operative operative temperature of the reference room [°C]
   * @return whether heat is called for
   */
  public boolean update(double time, double operative) {
    if (control.setback() == Control.Setback.HEADS) {
      return true;
    }
    double wanted = want.valueAt(time);
    boolean wasDay = day;
    day = wanted >= dayWant;
    if (day || operative < wanted - control.differential() / 2) {
      called = true;
    } else if (wasDay || operative > wanted + control.differential() / 2) {
      called = false;
    }
    return called;
  }
}
