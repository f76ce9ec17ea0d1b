package settle.sim.bench;

import java.util.List;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.valve.Valve;
import settle.sim.valve.ValveStepper;
import settle.sim.valve.WaxValve;

/**
 * A valve alone on the bench: a pressure held across it, water of one temperature at its body
 * whether it is open or not, air of a given temperature at its head. What is read is the flow.
 */
public final class TestRig {

  /** Differential pressure at which EN 215 reads flows, from memory [Pa]. */
  public static final double PRESSURE = WaxValve.SCALE_PRESSURE;

  /** Water temperature at which the rig works if nothing else is asked for [°C]. */
  public static final double WATER = WaxValve.SCALE_WATER_TEMPERATURE;

  /** Flow past the body, so large that it has the water's temperature at once [kg/s]. */
  private static final double FLUSH = 1;

  /** Rest at each temperature of a slow sweep [s]: dozens of a head's time constants. */
  private static final double REST = 100_000;

  /** A stretch in which nothing moves, over which an opening is read [s]. */
  private static final double INSTANT = 1e-3;

  /** Distance of the temperatures of a slow sweep [K]: what its readings are accurate to. */
  static final double SPACING = 1e-3;

  private final ValveStepper valve;
  private final double[] pressure;
  private final double water;
  private final double density;

  /**
   * @param valve the valve
   * @param start temperature of its head at the beginning [°C]
   * @param pressure differential pressure across it [Pa]
   * @param water temperature of the water [°C]
   * @param density of the water [kg/m³]
   */
  public TestRig(Valve valve, double start, double pressure, double water, double density) {
    this.valve = new ValveStepper(List.of(valve), start);
    this.pressure = new double[] {pressure};
    this.water = water;
    this.density = density;
    rest(start);
  }

  /** The usual rig: 10 kPa, water at 50 °C. */
  public static TestRig usual(Valve valve, double start, double density) {
    return new TestRig(valve, start, PRESSURE, WATER, density);
  }

  /**
   * Holds the head in air of one temperature.
   *
   * @param length for how long [s]
   * @param air [°C]
   */
  public void hold(double length, double air) {
    valve.decide();
    valve.lookAhead(length, pressure);
    valve.feel(0, length, air, air, FLUSH, water, pressure[0]);
    valve.accept(length);
    valve.see(0, length, air, air);
  }

  /**
   * Holds the head in air of one temperature until it has followed.
   *
   * @param air [°C], little changed from what it was: a large change would count as a long slope,
   *     beyond which a head with two lags overshoots
   */
  public void rest(double air) {
    // A thermostat must feel a change before its actuator moves; a head with a dead time must
    // remember at the end what it felt last, not half a rest ago.
    hold(INSTANT, air);
    hold(REST, air);
    hold(INSTANT, air);
  }

  /** Flow now [kg/s]. */
  public double flow() {
    return FlowCoefficient.massFlow(pressure[0], valve.lookAhead(INSTANT, pressure)[0], density);
  }

  /**
   * Moves the temperature at the head so slowly that the head's lag no longer counts: step by step,
   * with a long rest at each.
   *
   * @param from first temperature, at which the rig should be at rest [°C]
   * @param to last temperature, above or below [°C]
   * @return flow against temperature
   */
  public Sweep sweep(double from, double to) {
    int steps = (int) Math.round(Math.abs(to - from) / SPACING);
    double[] sensed = new double[steps + 1];
    double[] flow = new double[steps + 1];
    boolean rising = to > from;
    for (int i = 0; i <= steps; i++) {
      double air = from + (to - from) * i / steps;
      rest(air);
      int place = rising ? i : steps - i;
      sensed[place] = air;
      flow[place] = flow();
    }
    return new Sweep(sensed, flow);
  }

  /**
   * Sets the air at the head to another temperature at once and records the flow.
   *
   * @param air [°C]
   * @param step between readings [s]
   * @param length for how long [s]
   */
  public StepResponse respond(double air, double step, double length) {
    int steps = (int) Math.round(length / step);
    double[] time = new double[steps + 1];
    double[] flow = new double[steps + 1];
    flow[0] = flow();
    hold(INSTANT, air);
    for (int i = 1; i <= steps; i++) {
      hold(step, air);
      time[i] = i * step;
      flow[i] = flow();
    }
    rest(air);
    return new StepResponse(time, flow, flow());
  }
}
