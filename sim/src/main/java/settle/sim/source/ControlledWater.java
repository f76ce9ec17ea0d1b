package settle.sim.source;

/**
 * Water and metal of a source as one mixed node under its controller:
 *
 * <pre>
 *   C dT/dt = P - m c (T - T_ret) - G (T - T_s)
 * </pre>
 *
 * <p>The controller asks for the power that takes T to set-point with its time constant, P = C
 * (T_set - T)/tau_c + m c (T - T_ret) + G (T - T_s): what a PI controller does whose integral time
 * equals the node's own. P is held between a least and a largest output. Every stretch between two
 * changes of regime is linear, dT/dt = a - b T, and is advanced exactly; a source that switches
 * strings stretches together, so that its switching falls where it belongs however long the step.
 */
final class ControlledWater {

  /** Shortest stretch [s]: what keeps the number of stretches finite where rounding hesitates. */
  private static final double SHORTEST_STRETCH = 1e-3;

  /** Distance from set-point within which powers count as equal [K]. */
  private static final double HAIR = 1e-9;

  // Model
  private final double capacity;
  private final double lossRate;
  private final double surroundings;
  private final double controlTime;
  private final double hair;

  // What holds over a step: without power, dT/dt = rest - pull T
  private double pull;
  private double rest;

  // The last stretch
  private double end;
  private double area;
  private double heat;
  private double power;

  /**
   * @param capacity C of water and metal [J/K]
   * @param lossRate G, heat lost to the surroundings [W/K]
   * @param surroundings their temperature T_s [°C]
   * @param controlTime tau_c [s]
   */
  ControlledWater(double capacity, double lossRate, double surroundings, double controlTime) {
    this.capacity = capacity;
    this.lossRate = lossRate;
    this.surroundings = surroundings;
    this.controlTime = controlTime;
    hair = HAIR * capacity / controlTime;
  }

  double capacity() {
    return capacity;
  }

  /**
   * Says what holds over a step.
   *
   * @param capacityFlow m c of the water [W/K]
   * @param returnTemperature [°C]; ignored without flow
   */
  void begin(double capacityFlow, double returnTemperature) {
    pull = (capacityFlow + lossRate) / capacity;
    double carried = capacityFlow > 0 ? capacityFlow * returnTemperature : 0;
    rest = (carried + lossRate * surroundings) / capacity;
  }

  /**
   * Loss to the surroundings [J] over a time [s] in which the temperature has an integral [K s].
   */
  double loss(double integral, double time) {
    return lossRate * (integral - surroundings * time);
  }

  /** Power the controller asks for at a temperature [W]; limits not yet heeded. */
  private double asked(double temperature, double setPoint) {
    return capacity * ((setPoint - temperature) / controlTime + pull * temperature - rest);
  }

  /** Power that holds the set-point [W]. */
  private double askedAt(double setPoint) {
    return capacity * (pull * setPoint - rest);
  }

  /**
   * Whether the controller asks for more than an output [W], or for just that and is on its way up.
   */
  boolean asksMoreThan(double output, double temperature, double setPoint) {
    double asked = asked(temperature, setPoint);
    return asked > output + hair || (asked > output - hair && askedAt(setPoint) > output);
  }

  /**
   * Whether the controller asks for less than an output [W], or for just that and is on its way
   * down.
   */
  boolean asksLessThan(double output, double temperature, double setPoint) {
    double asked = asked(temperature, setPoint);
    return asked < output - hair || (asked < output + hair && askedAt(setPoint) < output);
  }

  /**
   * Advances under the controller, until a limit of its output is met or left.
   *
   * @param from temperature at the beginning [°C]
   * @param setPoint [°C]
   * @param least output [W]
   * @param most largest output, at that temperature [W]
   * @param fall by how much less that is per kelvin warmer [W/K], >= 0
   * @param stopAt temperature at which to end at the latest [°C]
   * @param limit time after which to end at the latest [s]
   * @return length of the stretch [s]
   */
  double modulate(
      double from,
      double setPoint,
      double least,
      double most,
      double fall,
      double stopAt,
      double limit) {
    boolean full = asksMoreThan(most, from, setPoint);
    if (!full && !asksLessThan(least, from, setPoint)) {
      return follow(from, setPoint, least, most, fall, limit);
    }
    double held = full ? most : least;
    double falling = full ? fall : 0;
    double heldAtSet = held - falling * (setPoint - from);
    double atSet = askedAt(setPoint);
    double until = limit;
    // The controller takes over again where it asks for just this, if it asks for the opposite at
    // set-point.
    if (full ? atSet < heldAtSet : atSet > heldAtSet) {
      double where = from + (held - asked(from, setPoint)) / (askedRise() + falling);
      until =
          Math.min(
              until,
              timeTo(
                  where,
                  from,
                  (held + falling * from) / capacity + rest,
                  pull + falling / capacity));
    }
    return hold(from, held, falling, stopAt, until, limit);
  }

  /** Advances while the controller has its way. */
  private double follow(
      double from, double setPoint, double least, double most, double fall, double limit) {
    double a = setPoint / controlTime;
    double b = 1 / controlTime;
    double atSet = askedAt(setPoint);
    boolean tooMuch = atSet > most - fall * (setPoint - from);
    double until = limit;
    if (tooMuch || atSet < least) {
      double bound = tooMuch ? most : least;
      double rise = askedRise() + (tooMuch ? fall : 0);
      double where = from + (bound - asked(from, setPoint)) / rise;
      until = Math.min(until, timeTo(where, from, a, b));
    }
    double stretch = advance(from, a, b, until, limit);
    heat = capacity * (end - from) + capacity * (pull * area - rest * stretch);
    power = Double.NaN;
    return stretch;
  }

  /** How much more the controller asks for per kelvin that the temperature rises [W/K]. */
  private double askedRise() {
    return capacity * (pull - 1 / controlTime);
  }

  /**
   * Advances with a fixed power.
   *
   * @param from temperature at the beginning [°C]
   * @param output [W]; below 0 where heat is taken
   * @param stopAt temperature at which to end at the latest [°C]
   * @param limit time after which to end at the latest [s]
   * @return length of the stretch [s]
   */
  double hold(double from, double output, double stopAt, double limit) {
    return hold(from, output, 0, stopAt, limit, limit);
  }

  private double hold(
      double from, double output, double fall, double stopAt, double until, double limit) {
    double a = (output + fall * from) / capacity + rest;
    double b = pull + fall / capacity;
    double stretch = advance(from, a, b, Math.min(until, timeTo(stopAt, from, a, b)), limit);
    heat = held(output, fall, from, stretch);
    power = output;
    return stretch;
  }

  /**
   * Heat over the last stretch from an output that falls with the temperature [J].
   *
   * @param output at the beginning [W]
   * @param fall per kelvin warmer [W/K]
   * @param from temperature at the beginning [°C]
   * @param stretch [s]
   */
  double held(double output, double fall, double from, double stretch) {
    return output * stretch - fall * (area - from * stretch);
  }

  private double advance(double from, double a, double b, double time, double limit) {
    double stretch = Math.max(time, Math.min(limit, SHORTEST_STRETCH));
    if (b * stretch > 1e-12) {
      double settled = a / b;
      double gone = -Math.expm1(-b * stretch);
      end = from + (settled - from) * gone;
      area = settled * stretch + (from - settled) * gone / b;
    } else {
      end = from + a * stretch;
      area = from * stretch + a * stretch * stretch / 2;
    }
    return stretch;
  }

  /**
   * Time until a linear stretch meets a threshold [s]; infinite if it moves away or never gets
   * there.
   */
  private static double timeTo(double threshold, double from, double a, double b) {
    double speed = a - b * from;
    double distance = threshold - from;
    if (!(distance * speed > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    double share = b * distance / speed;
    if (share < 1e-9) {
      return distance / speed;
    }
    return share < 1 ? -Math.log1p(-share) / b : Double.POSITIVE_INFINITY;
  }

  /** Temperature at the end of the stretch [°C]. */
  double end() {
    return end;
  }

  /** Integral of the temperature over the stretch [K s]. */
  double area() {
    return area;
  }

  /** Heat made over the stretch [J]. */
  double heat() {
    return heat;
  }

  /** Whether the stretch ran at one output [W] throughout. */
  boolean ranAt(double output) {
    return power == output;
  }
}
