package settle.sim.valve;

/**
 * Steps the head of a {@link WaxValve}.
 *
 * <p>Head: tau dT_b/dt = T_sense - T_b, exact for the mean of T_sense over the step; T_sense =
 * T_loc + b (T_water - 50) + bias. Play: u stays within w/2 of T_b. Capacity: K_v = clamp(K_v,nom
 * (T_set + X_p - u)/X_p, 0, K_vs).
 */
final class WaxDrive implements ValveDrive {

  private static final int DELAY_SLOTS = 1024;

  /**
   * Added to a head's distance from shut where steps are chosen, so that they stay finite at the
   * seat [K].
   */
  private static final double NEAR_SHUT = 0.3;

  /**
   * Change of K_v over half a step below which the mean is taken from its ends, as a share of K_vs
   * [-]: of less, the difference of two areas keeps too few digits.
   */
  private static final double NO_CHANGE = 1e-9;

  /**
   * Longest step in which a head that stood within its play begins to move, as a share of its lag
   * [-]: of a longer one the water would have the mean of still and moving.
   */
  private static final double ACROSS_PLAY = 0.15;

  /**
   * Share of its play up to which a head that moves by so much in a step has not begun to move, and
   * by so much in half its lag still stands [-].
   */
  private static final double STILL = 0.01;

  // Model
  private final boolean sensesAir;
  private final double setPoint;
  private final double band;
  private final double play;
  private final double lag;
  private final double secondLag;
  private final double deadTime;
  private final HeadWater body;
  private final double waterInfluence;
  private final double bias;
  private final double pressureInfluence;
  private final double kvNominal;
  private final double kvMaximum;

  // State
  private double element;
  private double firstElement;
  private double position;
  private double water;
  private double meanSense;
  private double drift;
  private double shift;
  private double lastLength;
  private boolean still;

  // Attempt
  private double nextElement;
  private double nextFirst;
  private double nextPosition;
  private double nextWater;
  private double nextMeanSense;
  private double nextDrift;
  private double nowSense;
  private double leavesSeat;
  private double endsAbove;

  /** Where the head is while it is followed through a step [°C]. */
  private double u;

  // What was sensed, for a head with a dead time: ends of steps and values
  private final double[] delayTime;
  private final double[] delaySense;
  private int delayCount;
  private double time;

  // e^(-h/(2 tau)), kept while steps are equal
  private double halfDecay;
  private double decayLength;

  WaxDrive(WaxValve valve, double startTemperature) {
    sensesAir = valve.sensing() == RoomSensing.AIR;
    setPoint = valve.setPoint();
    band = valve.proportionalBand();
    play = valve.play();
    lag = valve.lags().timeConstant();
    secondLag = valve.lags().secondTimeConstant();
    deadTime = valve.lags().deadTime();
    body = valve.headWater();
    waterInfluence = valve.waterInfluence();
    bias = valve.bias();
    pressureInfluence = valve.pressureInfluence();
    kvNominal = valve.kvNominal();
    kvMaximum = valve.kvMaximum();
    element = startTemperature;
    firstElement = startTemperature;
    position = startTemperature;
    water = startTemperature;
    meanSense = CapacityCurve.sensed(startTemperature, waterInfluence, startTemperature, bias);
    delayTime = new double[deadTime > 0 ? DELAY_SLOTS : 0];
    delaySense = new double[delayTime.length];
  }

  @Override
  public void shiftSetPoint(double by) {
    shift = by;
  }

  @Override
  public void decide() {
    // Nothing jumps: wax moves all the time.
  }

  @Override
  public double lookAhead(double length, double pressureDrop) {
    if (length != decayLength) {
      halfDecay = Math.exp(-length / (2 * lag));
      decayLength = length;
    }
    return follow(length, meanSense + drift * lastLength / 2, drift, pressureDrop);
  }

  @Override
  public double feel(
      double length,
      double air,
      double operative,
      double massFlow,
      double inlet,
      double pressureDrop) {
    // dT_w/dt = m/M (T_in - T_w) + (T_a - T_w)/tau_w
    double renewal = massFlow / body.mass();
    double rate = renewal + 1 / body.cooling();
    double settled = massFlow > 0 ? (renewal * inlet + air / body.cooling()) / rate : air;
    double x = rate * length;
    double left = x < 40 ? Math.exp(-x) : 0;
    double meanWater = settled + (water - settled) * (1 - left) / x;
    nextWater = settled + (water - settled) * left;
    double local = sensesAir ? air : operative;
    nowSense = CapacityCurve.sensed(local, waterInfluence, meanWater, bias);
    double felt = deadTime > 0 ? delayed(length) : nowSense;
    if (secondLag > 0) {
      double e = Math.exp(-length / secondLag);
      nextFirst = felt + (firstElement - felt) * e;
      felt += (firstElement - felt) * (1 - e) * secondLag / length;
    }
    nextMeanSense = felt;
    // A mean stands for its step's middle: the head is taken along the line through the last two.
    nextDrift = lastLength > 0 ? (felt - meanSense) / ((length + lastLength) / 2) : 0;
    return follow(length, felt - nextDrift * length / 2, nextDrift, pressureDrop);
  }

  /**
   * Follows element, play and opening over a step in which what is sensed runs along a straight
   * line from {@code start} with slope {@code rise}: tau dT_b/dt = start + rise t - T_b. The
   * element's course is taken as straight over each half of the step, and to and from where it
   * turns.
   */
  private double follow(double length, double start, double rise, double pressureDrop) {
    double lagging = start - rise * lag;
    double away = (element - lagging) * halfDecay;
    double middle = lagging + rise * length / 2 + away;
    double end = lagging + rise * length + away * halfDecay;
    double half = play / 2;
    double set = CapacityCurve.underPressure(setPoint + shift, pressureInfluence, pressureDrop);
    double turns = turnsAfter(start - element, start + rise * length - end, rise) / (length / 2);
    // Where it turns it lags by nothing: T_b = start + rise t.
    double turned = start + rise * turns * (length / 2);
    u = position;
    double firstKv = goOverHalf(set, element, middle, turns, turned);
    double u1 = u;
    double secondKv = goOverHalf(set, middle, end, turns - 1, turned);
    nextElement = end;
    nextPosition = u;
    leavesSeat = Double.POSITIVE_INFINITY;
    double shut = set + band;
    if (position >= shut && u < shut) {
      // The play is taken up; from here on the head moves with the element.
      double leaving = shut - half;
      leavesSeat =
          u1 < shut
              ? length / 2 * (element - leaving) / (element - middle)
              : length / 2 * (1 + (middle - leaving) / (middle - end));
    }
    double mean = (firstKv + secondKv) / 2;
    endsAbove = mean > 0 ? (secondKv - firstKv) / mean : 0;
    return mean;
  }

  /**
   * How far into a step the element turns [s]; not a number if it goes one way. What it lags behind
   * by, T_sense - T_b, goes from its first value towards rise tau.
   */
  private double turnsAfter(double lagsAtFirst, double lagsAtLast, double rise) {
    boolean turns = lagsAtFirst * lagsAtLast < 0;
    return turns ? -lag * Math.log(rise * lag / (rise * lag - lagsAtFirst)) : Double.NaN;
  }

  /**
   * Mean K_v over half a step; the head goes on with the element.
   *
   * @param set temperature it is set to [°C]
   * @param from element at the beginning [°C]
   * @param to element at the end [°C]
   * @param turns after which share of this half the element turns; elsewhere, or not a number, if
   *     it does not here [-]
   * @param turned element where it does [°C]
   */
  private double goOverHalf(double set, double from, double to, double turns, double turned) {
    if (!(turns > 0 && turns < 1)) {
      return go(set, from, to);
    }
    double there = go(set, from, turned);
    return turns * there + (1 - turns) * go(set, turned, to);
  }

  @Override
  public double endsAbove() {
    return endsAbove;
  }

  /**
   * Mean K_v while the element goes straight from one temperature to another: still until the play
   * is taken up, straight then. The head is left where that takes it.
   */
  private double go(double set, double from, double to) {
    double u0 = u;
    double u1 = Math.min(Math.max(u0, to - play / 2), to + play / 2);
    u = u1;
    double k0 = kvNominal * (set + band - u0) / band;
    if (u1 == u0) {
      return Math.min(Math.max(k0, 0), kvMaximum);
    }
    double k1 = kvNominal * (set + band - u1) / band;
    if (Math.abs(k1 - k0) < NO_CHANGE * kvMaximum) {
      return Math.min(Math.max((k0 + k1) / 2, 0), kvMaximum);
    }
    double takenUp = u1 > u0 ? u0 + play / 2 : u0 - play / 2;
    double still = Math.min(Math.max((takenUp - from) / (to - from), 0), 1);
    double held = Math.min(Math.max(k0, 0), kvMaximum);
    double moving = (clampedArea(k1, kvMaximum) - clampedArea(k0, kvMaximum)) / (k1 - k0);
    return still * held + (1 - still) * moving;
  }

  /** Integral of clamp(k, 0, most) from 0 to k. */
  private static double clampedArea(double k, double most) {
    if (k <= 0) {
      return 0;
    }
    return k < most ? k * k / 2 : most * (k - most / 2);
  }

  @Override
  public double leavesSeatAfter() {
    return leavesSeat;
  }

  @Override
  public double longestAcrossPlay() {
    boolean begins = still && Math.abs(nextPosition - position) > STILL * play;
    return begins ? ACROSS_PLAY * lag : Double.POSITIVE_INFINITY;
  }

  @Override
  public void accept(double length) {
    if (deadTime > 0) {
      int slot = delayCount++ % DELAY_SLOTS;
      delayTime[slot] = time + length / 2;
      delaySense[slot] = nowSense;
    }
    water = nextWater;
    firstElement = nextFirst;
    meanSense = nextMeanSense;
    drift = nextDrift;
    element = nextElement;
    // One that creeps is not still: it would else begin to move in every longer step.
    still = Math.abs(nextPosition - position) * lag / 2 < STILL * play * length;
    position = nextPosition;
    time += length;
    lastLength = length;
  }

  @Override
  public void see(double length, double air, double operative) {
    // What it feels is followed by step means.
  }

  /**
   * What was sensed a dead time before the middle of the step being tried: linear between what was
   * kept.
   */
  private double delayed(double length) {
    double wanted = time + length / 2 - deadTime;
    int newest = delayCount;
    int oldest = Math.max(0, newest - DELAY_SLOTS);
    double laterTime = time + length / 2;
    double later = nowSense;
    for (int k = newest - 1; k >= oldest; k--) {
      double at = delayTime[k % DELAY_SLOTS];
      double value = delaySense[k % DELAY_SLOTS];
      if (at <= wanted) {
        return value + (later - value) * (wanted - at) / (laterTime - at);
      }
      laterTime = at;
      later = value;
    }
    return later;
  }

  @Override
  public double sensed() {
    return element;
  }

  @Override
  public double lift() {
    return CapacityCurve.kv(setPoint + shift, band, kvNominal, kvMaximum, position) / kvMaximum;
  }

  @Override
  public double steadyFor(double share) {
    double sense = meanSense + drift * lastLength / 2;
    double speed = Math.abs(sense - element) / lag;
    double shut = setPoint + shift + band;
    double open = shut - band * kvMaximum / kvNominal;
    double throttled = Math.min(Math.max(shut - position, 0), shut - open);
    // Beyond the throttling range the head may travel up to half way to its edge.
    double away = Math.max(Math.max(position - shut, open - position) - play, 0);
    double travel = share * (throttled + NEAR_SHUT) + away / 2;
    double longest = travel / Math.max(speed, 1e-12);
    // At a turning point the head stands still; what it senses does not.
    double turning = Math.abs(drift) / (2 * lag);
    return Math.min(longest, Math.sqrt(travel / Math.max(turning, 1e-15)));
  }
}
