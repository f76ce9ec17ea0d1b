package settle.sim.valve;

import java.util.List;

/**
 * Steps the valves of all branches.
 *
 * <p>Head: tau dT_b/dt = T_sense - T_b, exact for the mean of T_sense over the step; T_sense =
 * T_loc + b (T_water - 50) + bias. Play: u stays within w/2 of T_b. Capacity: K_v = clamp(K_v,nom
 * (T_set + X_p - u)/X_p, 0, K_vs).
 *
 * <p>The opening held over a step is the one that the head, going on as it does now, reaches at the
 * step's middle.
 */
public final class ValveStepper {

  /**
   * Water held at the valve body [kg], which takes the passing water's temperature; common
   * practice, no source.
   */
  private static final double BODY_WATER = 0.05;

  /**
   * Time constant with which standing water at the valve cools to the room [s]; common practice, no
   * source.
   */
  private static final double BODY_COOLING = 1200;

  private static final int DELAY_SLOTS = 1024;

  // Model
  private final int count;
  private final boolean[] thermostatic;
  private final double[] setPoint;
  private final double[] band;
  private final double[] play;
  private final double[] lag;
  private final double[] secondLag;
  private final double[] deadTime;
  private final double[] waterInfluence;
  private final double[] bias;
  private final double[] pressureInfluence;
  private final double[] kvNominal;
  private final double[] kvMaximum;
  private final boolean[] sensesAir;

  // State
  private final double[] element;
  private final double[] firstElement;
  private final double[] position;
  private final double[] water;
  private final double[] sense;
  private final double[] shift;
  private final double[] kv;

  // What was sensed, for heads with a dead time: [valve][slot], ends of steps and values
  private final double[][] delayTime;
  private final double[][] delaySense;
  private final int[] delayCount;
  private double time;

  /**
   * @param valves in the order of the branches
   * @param startTemperature of heads and water [°C]
   */
  public ValveStepper(List<Valve> valves, double startTemperature) {
    count = valves.size();
    thermostatic = new boolean[count];
    setPoint = new double[count];
    band = new double[count];
    play = new double[count];
    lag = new double[count];
    secondLag = new double[count];
    deadTime = new double[count];
    waterInfluence = new double[count];
    bias = new double[count];
    pressureInfluence = new double[count];
    kvNominal = new double[count];
    kvMaximum = new double[count];
    sensesAir = new boolean[count];
    element = new double[count];
    firstElement = new double[count];
    position = new double[count];
    water = new double[count];
    sense = new double[count];
    shift = new double[count];
    kv = new double[count];
    delayTime = new double[count][];
    delaySense = new double[count][];
    delayCount = new int[count];
    for (int i = 0; i < count; i++) {
      kvMaximum[i] = valves.get(i).kvMaximum();
      kv[i] = kvMaximum[i];
      element[i] = startTemperature;
      firstElement[i] = startTemperature;
      position[i] = startTemperature;
      water[i] = startTemperature;
      sense[i] = startTemperature;
      if (valves.get(i) instanceof WaxValve valve) {
        thermostatic[i] = true;
        setPoint[i] = valve.setPoint();
        band[i] = valve.proportionalBand();
        play[i] = valve.play();
        lag[i] = valve.timeConstant();
        secondLag[i] = valve.secondTimeConstant();
        deadTime[i] = valve.deadTime();
        waterInfluence[i] = valve.waterInfluence();
        bias[i] = valve.bias();
        pressureInfluence[i] = valve.pressureInfluence();
        kvNominal[i] = valve.kvNominal();
        sensesAir[i] = valve.sensing() == WaxValve.Sensing.AIR;
        sense[i] = sensed(i, startTemperature, startTemperature);
        if (deadTime[i] > 0) {
          delayTime[i] = new double[DELAY_SLOTS];
          delaySense[i] = new double[DELAY_SLOTS];
        }
      }
    }
  }

  /** Number of valves. */
  public int count() {
    return count;
  }

  /** Whether a valve has a thermostatic head. */
  public boolean thermostatic(int valve) {
    return thermostatic[valve];
  }

  /**
   * Moves a programmable head's set-point.
   *
   * @param shift by how much [K], 0 for the set-point as declared
   */
  public void shiftSetPoint(int valve, double shift) {
    this.shift[valve] = shift;
  }

  /**
   * Openings to hold over the coming step.
   *
   * @param length of the step [s]
   * @param pressureDrop differential pressure across each valve as it was [Pa]; not modified
   * @return K_v of each valve [m³/h at 1 bar]; this object's own array
   */
  public double[] openings(double length, double[] pressureDrop) {
    for (int i = 0; i < count; i++) {
      if (!thermostatic[i]) {
        continue;
      }
      double middle = sense[i] + (element[i] - sense[i]) * Math.exp(-length / (2 * lag[i]));
      double u = Math.min(Math.max(position[i], middle - play[i] / 2), middle + play[i] / 2);
      kv[i] = capacity(i, u, pressureDrop[i]);
    }
    return kv;
  }

  private double capacity(int i, double u, double pressureDrop) {
    double set =
        CapacityCurve.underPressure(setPoint[i] + shift[i], pressureInfluence[i], pressureDrop);
    return CapacityCurve.kv(set, band[i], kvNominal[i], kvMaximum[i], u);
  }

  private double sensed(int i, double local, double waterTemperature) {
    return CapacityCurve.sensed(local, waterInfluence[i], waterTemperature, bias[i]);
  }

  /**
   * Advances one valve over a step.
   *
   * @param valve which
   * @param length of the step [s]
   * @param air mean air temperature of its room [°C]
   * @param operative mean operative temperature of its room [°C]
   * @param massFlow through it [kg/s]
   * @param inlet mean temperature of the water entering [°C]; ignored without flow
   */
  public void advance(
      int valve, double length, double air, double operative, double massFlow, double inlet) {
    if (!thermostatic[valve]) {
      return;
    }
    // dT_w/dt = m/M (T_in - T_w) + (T_a - T_w)/tau_w
    double renewal = massFlow / BODY_WATER;
    double rate = renewal + 1 / BODY_COOLING;
    double settled = massFlow > 0 ? (renewal * inlet + air / BODY_COOLING) / rate : air;
    double x = rate * length;
    double decay = Math.exp(-x);
    double meanWater = settled + (water[valve] - settled) * (1 - decay) / x;
    water[valve] = settled + (water[valve] - settled) * decay;
    double local = sensesAir[valve] ? air : operative;
    double felt = delayed(valve, length, sensed(valve, local, meanWater));
    sense[valve] = felt;
    if (secondLag[valve] > 0) {
      double e = Math.exp(-length / secondLag[valve]);
      double before = firstElement[valve];
      firstElement[valve] = felt + (before - felt) * e;
      felt += (before - felt) * (1 - e) * secondLag[valve] / length;
      sense[valve] = firstElement[valve];
    }
    element[valve] = felt + (element[valve] - felt) * Math.exp(-length / lag[valve]);
    double half = play[valve] / 2;
    position[valve] =
        Math.min(Math.max(position[valve], element[valve] - half), element[valve] + half);
  }

  /** Tells that all valves have been advanced over a step [s]. */
  public void passed(double length) {
    time += length;
  }

  /** Puts the newest value in and takes the one of a dead time ago out. */
  private double delayed(int valve, double length, double value) {
    if (deadTime[valve] == 0) {
      return value;
    }
    double[] at = delayTime[valve];
    double[] values = delaySense[valve];
    int n = delayCount[valve]++;
    at[n % DELAY_SLOTS] = time + length / 2;
    values[n % DELAY_SLOTS] = value;
    double wanted = time + length / 2 - deadTime[valve];
    int oldest = Math.max(0, n - DELAY_SLOTS + 1);
    int k = n;
    while (k > oldest && at[k % DELAY_SLOTS] > wanted) {
      k--;
    }
    if (k == n) {
      return value;
    }
    int a = k % DELAY_SLOTS;
    int b = (k + 1) % DELAY_SLOTS;
    double share = Math.min(Math.max((wanted - at[a]) / (at[b] - at[a]), 0), 1);
    return values[a] + share * (values[b] - values[a]);
  }

  /** Temperature of the sensing element now [°C]; not a number for a fixed opening. */
  public double element(int valve) {
    return thermostatic[valve] ? element[valve] : Double.NaN;
  }

  /** Opening held over the last step, K_v/K_vs [-]; 0 for a valve that cannot open. */
  public double opening(int valve) {
    return kvMaximum[valve] > 0 ? kv[valve] / kvMaximum[valve] : 0;
  }

  /**
   * Longest step over which a valve's opening changes little [s].
   *
   * @param movement of the sensing element that counts as little while the valve throttles [K]
   */
  public double steadyFor(double movement) {
    double longest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (!thermostatic[i]) {
        continue;
      }
      double speed = Math.abs(sense[i] - element[i]) / lag[i];
      double shut = setPoint[i] + shift[i] + band[i];
      double open = shut - band[i] * kvMaximum[i] / kvNominal[i];
      // Far from the throttling range the head may travel up to its edge.
      double away = Math.max(Math.max(position[i] - shut, open - position[i]) - play[i], 0);
      longest = Math.min(longest, (movement + away / 2) / Math.max(speed, 1e-12));
    }
    return longest;
  }
}
