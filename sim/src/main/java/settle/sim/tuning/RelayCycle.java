package settle.sim.tuning;

/**
 * The limit cycle of an on/off thermostat about a lag with a dead time: exponentials towards the
 * two ends, switched theta late.
 *
 * <pre>
 *   min = y_off + (r - h - y_off) e^(-theta/tau),   max = y_on + (r + h - y_on) e^(-theta/tau)
 *   period = tau ln[(y_on - min)/(y_on - r - h)] + tau ln[(max - y_off)/(r - h - y_off)] + 2 theta
 * </pre>
 *
 * @param least lowest temperature [°C]
 * @param most highest temperature [°C]
 * @param period [s]
 * @param share of it on [-]
 */
public record RelayCycle(double least, double most, double period, double share) {

  /**
   * The cycle.
   *
   * @param on y_on: where the room would go, always on [°C]; above r + h
   * @param off y_off: where it would go, always off [°C]; below r - h
   * @param plant its lag and dead time
   * @param set r: what the thermostat is set to [°C]
   * @param differential 2 h: full switching differential [K]
   */
  public static RelayCycle of(
      double on, double off, FirstOrderDeadTime plant, double set, double differential) {
    double h = differential / 2;
    double late = Math.exp(-plant.deadTime() / plant.lag());
    double least = off + (set - h - off) * late;
    double most = on + (set + h - on) * late;
    double heating = plant.lag() * Math.log((on - least) / (on - set - h)) + plant.deadTime();
    double cooling = plant.lag() * Math.log((most - off) / (set - h - off)) + plant.deadTime();
    return new RelayCycle(least, most, heating + cooling, heating / (heating + cooling));
  }

  /** Starts of the source in an hour [1/h]. */
  public double startsPerHour() {
    return 3600 / period;
  }
}
