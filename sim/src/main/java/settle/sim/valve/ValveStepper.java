package settle.sim.valve;

import java.util.List;

/**
 * Steps the valves of all branches.
 *
 * <p>Head: tau dT_b/dt = T_sense - T_b, exact for the mean of T_sense over the step; T_sense =
 * T_loc + b (T_water - 50) + bias. Play: u stays within w/2 of T_b. Capacity: K_v = clamp(K_v,nom
 * (T_set + X_p - u)/X_p, 0, K_vs).
 *
 * <p>A step is tried and accepted. It begins with the openings the heads are about to take; once
 * the rooms' mean temperatures are known, the heads are followed again with those, and where the
 * mean opening comes out otherwise the step is tried again with it.
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

  /** Opening against which a smaller one's change is measured, as a share of K_vs [-]. */
  private static final double LEAST_OPENING = 0.01;

  /**
   * Added to a head's distance from shut where steps are chosen, so that they stay finite at the
   * seat [K].
   */
  private static final double NEAR_SHUT = 0.3;

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
  private final double[] meanSense;
  private final double[] drift;
  private final double[] shift;
  private final boolean[] wasShut;

  // Attempt
  private final double[] kv;
  private final double[] meanKv;
  private final double[] nextElement;
  private final double[] nextFirst;
  private final double[] nextPosition;
  private final double[] nextWater;
  private final double[] nextMeanSense;
  private final double[] nextDrift;
  private final double[] nowSense;

  // What was sensed, for heads with a dead time: [valve][slot], ends of steps and values
  private final double[][] delayTime;
  private final double[][] delaySense;
  private final int[] delayCount;
  private double time;
  private double lastLength;

  // e^(-h/(2 tau)), kept while steps are equal
  private final double[] halfDecay;
  private double decayLength;

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
    meanSense = new double[count];
    drift = new double[count];
    shift = new double[count];
    wasShut = new boolean[count];
    kv = new double[count];
    meanKv = new double[count];
    nextElement = new double[count];
    nextFirst = new double[count];
    nextPosition = new double[count];
    nextWater = new double[count];
    nextMeanSense = new double[count];
    nextDrift = new double[count];
    nowSense = new double[count];
    halfDecay = new double[count];
    delayTime = new double[count][];
    delaySense = new double[count][];
    delayCount = new int[count];
    for (int i = 0; i < count; i++) {
      kvMaximum[i] = valves.get(i).kvMaximum();
      kv[i] = kvMaximum[i];
      meanKv[i] = kvMaximum[i];
      element[i] = startTemperature;
      firstElement[i] = startTemperature;
      position[i] = startTemperature;
      water[i] = startTemperature;
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
        sensesAir[i] = valve.sensing() == RoomSensing.AIR;
        meanSense[i] =
            CapacityCurve.sensed(
                startTemperature, valve.waterInfluence(), startTemperature, valve.bias());
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
   * Openings to begin a step with: what the heads will do if what they sense goes on along the
   * straight line it last took.
   *
   * @param length of the step [s]
   * @param pressureDrop differential pressure across each valve as it was [Pa]; not modified
   * @return K_v of each valve [m³/h at 1 bar], mean over the step; this object's own array
   */
  public double[] lookAhead(double length, double[] pressureDrop) {
    if (length != decayLength) {
      prepareDecay(length);
    }
    for (int i = 0; i < count; i++) {
      if (thermostatic[i]) {
        double start = meanSense[i] + drift[i] * lastLength / 2;
        follow(i, length, start, drift[i], pressureDrop[i]);
        kv[i] = meanKv[i];
      }
    }
    return kv;
  }

  private void prepareDecay(double length) {
    for (int i = 0; i < count; i++) {
      if (thermostatic[i]) {
        halfDecay[i] = Math.exp(-length / (2 * lag[i]));
      }
    }
    decayLength = length;
  }

  /**
   * Tries a step of one valve with what its head really felt.
   *
   * @param i which valve
   * @param length of the step [s]
   * @param air mean air temperature of its room over the step [°C]
   * @param operative mean operative temperature of its room over the step [°C]
   * @param massFlow through it [kg/s]
   * @param inlet mean temperature of the water entering [°C]; ignored without flow
   * @param pressureDrop differential pressure across it [Pa]
   * @return how far the mean opening is from the one held, as a share of it [-]
   */
  public double feel(
      int i,
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop) {
    if (!thermostatic[i]) {
      return 0;
    }
    // dT_w/dt = m/M (T_in - T_w) + (T_a - T_w)/tau_w
    double renewal = massFlow / BODY_WATER;
    double rate = renewal + 1 / BODY_COOLING;
    double settled = massFlow > 0 ? (renewal * inlet + air / BODY_COOLING) / rate : air;
    double x = rate * length;
    double left = x < 40 ? Math.exp(-x) : 0;
    double meanWater = settled + (water[i] - settled) * (1 - left) / x;
    nextWater[i] = settled + (water[i] - settled) * left;
    double local = sensesAir[i] ? air : operative;
    nowSense[i] = CapacityCurve.sensed(local, waterInfluence[i], meanWater, bias[i]);
    double felt = deadTime[i] > 0 ? delayed(i, length) : nowSense[i];
    if (secondLag[i] > 0) {
      double e = Math.exp(-length / secondLag[i]);
      nextFirst[i] = felt + (firstElement[i] - felt) * e;
      felt += (firstElement[i] - felt) * (1 - e) * secondLag[i] / length;
    }
    nextMeanSense[i] = felt;
    // A mean stands for its step's middle: the head is taken along the line through the last two.
    nextDrift[i] = lastLength > 0 ? (felt - meanSense[i]) / ((length + lastLength) / 2) : 0;
    follow(i, length, felt - nextDrift[i] * length / 2, nextDrift[i], pressureDrop);
    return Math.abs(meanKv[i] - kv[i]) / (kv[i] + LEAST_OPENING * kvMaximum[i]);
  }

  /**
   * Follows element, play and opening over a step in which what is sensed runs along a straight
   * line from {@code start} with slope {@code rise}: tau dT_b/dt = start + rise t - T_b. The
   * element's course is taken as straight over each half of the step.
   */
  private void follow(int i, double length, double start, double rise, double pressureDrop) {
    double lagging = start - rise * lag[i];
    double away = (element[i] - lagging) * halfDecay[i];
    double middle = lagging + rise * length / 2 + away;
    double end = lagging + rise * length + away * halfDecay[i];
    double half = play[i] / 2;
    double u0 = position[i];
    double u1 = Math.min(Math.max(u0, middle - half), middle + half);
    double u2 = Math.min(Math.max(u1, end - half), end + half);
    double set =
        CapacityCurve.underPressure(setPoint[i] + shift[i], pressureInfluence[i], pressureDrop);
    meanKv[i] =
        (meanKv(i, set, u0, u1, element[i], middle) + meanKv(i, set, u1, u2, middle, end)) / 2;
    nextElement[i] = end;
    nextPosition[i] = u2;
  }

  /**
   * Mean K_v while the element goes straight from one temperature to another: still until the play
   * is taken up, straight then.
   */
  private double meanKv(int i, double set, double u0, double u1, double from, double to) {
    double k0 = kvNominal[i] * (set + band[i] - u0) / band[i];
    if (u1 == u0) {
      return Math.min(Math.max(k0, 0), kvMaximum[i]);
    }
    double k1 = kvNominal[i] * (set + band[i] - u1) / band[i];
    double takenUp = u1 > u0 ? u0 + play[i] / 2 : u0 - play[i] / 2;
    double still = Math.min(Math.max((takenUp - from) / (to - from), 0), 1);
    double held = Math.min(Math.max(k0, 0), kvMaximum[i]);
    double moving = (clampedArea(k1, kvMaximum[i]) - clampedArea(k0, kvMaximum[i])) / (k1 - k0);
    return still * held + (1 - still) * moving;
  }

  /** Integral of clamp(k, 0, most) from 0 to k. */
  private static double clampedArea(double k, double most) {
    if (k <= 0) {
      return 0;
    }
    return k < most ? k * k / 2 : most * (k - most / 2);
  }

  /** Lets the next trial of the step be made with the openings the last one led to. */
  public double[] correct() {
    System.arraycopy(meanKv, 0, kv, 0, count);
    return kv;
  }

  /**
   * Makes the tried step of all valves the state.
   *
   * @return whether a valve left its seat in it, so that hot water reached its head
   */
  public boolean accept(double length) {
    boolean opened = false;
    for (int i = 0; i < count; i++) {
      if (!thermostatic[i]) {
        continue;
      }
      if (deadTime[i] > 0) {
        int slot = delayCount[i]++ % DELAY_SLOTS;
        delayTime[i][slot] = time + length / 2;
        delaySense[i][slot] = nowSense[i];
      }
      opened |= kv[i] > 0 && wasShut[i];
      wasShut[i] = kv[i] == 0;
      water[i] = nextWater[i];
      firstElement[i] = nextFirst[i];
      meanSense[i] = nextMeanSense[i];
      drift[i] = nextDrift[i];
      element[i] = nextElement[i];
      position[i] = nextPosition[i];
    }
    time += length;
    lastLength = length;
    return opened;
  }

  /**
   * What was sensed a dead time before the middle of the step being tried: linear between what was
   * kept.
   */
  private double delayed(int i, double length) {
    double wanted = time + length / 2 - deadTime[i];
    int newest = delayCount[i];
    int oldest = Math.max(0, newest - DELAY_SLOTS);
    double laterTime = time + length / 2;
    double later = nowSense[i];
    for (int k = newest - 1; k >= oldest; k--) {
      double at = delayTime[i][k % DELAY_SLOTS];
      double value = delaySense[i][k % DELAY_SLOTS];
      if (at <= wanted) {
        return value + (later - value) * (wanted - at) / (laterTime - at);
      }
      laterTime = at;
      later = value;
    }
    return later;
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
   * Longest step over which the valves' openings change little [s].
   *
   * @param share of its distance from shut that a throttling head may travel in a step [-]
   */
  public double steadyFor(double share) {
    double longest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < count; i++) {
      if (!thermostatic[i]) {
        continue;
      }
      double sense = meanSense[i] + drift[i] * lastLength / 2;
      double speed = Math.abs(sense - element[i]) / lag[i];
      double shut = setPoint[i] + shift[i] + band[i];
      double open = shut - band[i] * kvMaximum[i] / kvNominal[i];
      double throttled = Math.min(Math.max(shut - position[i], 0), shut - open);
      // Beyond the throttling range the head may travel up to half way to its edge.
      double away = Math.max(Math.max(position[i] - shut, open - position[i]) - play[i], 0);
      double travel = share * (throttled + NEAR_SHUT) + away / 2;
      longest = Math.min(longest, travel / Math.max(speed, 1e-12));
      // At a turning point the head stands still; what it senses does not.
      double turning = Math.abs(drift[i]) / (2 * lag[i]);
      longest = Math.min(longest, Math.sqrt(travel / Math.max(turning, 1e-15)));
    }
    return longest;
  }
}
