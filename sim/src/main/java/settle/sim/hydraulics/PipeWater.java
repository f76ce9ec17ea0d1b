package settle.sim.hydraulics;

/**
 * Steps the water in one pipe: it moves as a plug and loses heat to surroundings of one
 * temperature.
 *
 * <pre>
 *   C' dT/dt + m c dT/dx = -G' (T - T_s),   T(0,t) = inlet
 * </pre>
 *
 * <p>Water that moves along cools as e^(-lambda t), lambda = G'/C', wherever it is. A parcel is a
 * stretch of water whose temperature rises evenly from its older to its newer end, since its older
 * water has had more time to cool: a step may be longer than the water takes to pass, and the next
 * one shorter. All parcels cool by the same law T <- a T + (1 - a) T_s, so that only the product of
 * these laws is kept, T = scale theta + base, and a step touches no parcel but those that enter or
 * leave. Heat lost is what came in, less what left, less what is stored more.
 *
 * <p>A step is tried, as often as its neighbours need to agree with it, then accepted.
 */
public final class PipeWater {

  private static final int SLOTS = 256;

  /** Two neighbouring parcels shorter than this share of the pipe are mixed. */
  private static final double SHORTEST_SHARE = 1.0 / 50;

  /** Neighbouring parcels this close to one even rise are joined [K]. */
  private static final double JOIN_TOLERANCE = 0.005;

  /** Below this x, series: a third order of it is below rounding's part in the closed forms [-]. */
  private static final double SERIES = 1e-3;

  /** Scale below which temperatures are written out anew, so that no digits are lost [-]. */
  private static final double LEAST_SCALE = 1e-4;

  // Model
  private final double length;
  private final double heatCapacity;
  private final double decayRate;
  private final double joinTolerance;
  private final double shortest;
  private final int slots;

  // State: parcels from outlet (oldest) to inlet in a ring
  private final double[] size;
  private final double[] theta;

  /** How much theta rises over the parcel, from its older to its newer end. */
  private final double[] rise;

  private int oldest;
  private int count = 1;
  private double scale = 1;
  private double base;
  private double stored;

  // Attempt
  private double speed;
  private double moved;

  /** What is left of the water that was there, and what went out, each times its length [K m]. */
  private double kept;

  private double left;
  private double decay;
  private double target;
  private double enteringSize;
  private double enteringTemperature;
  private double enteringRise;
  private double nextStored;
  private double loss;
  private double outlet;

  // With what it was tried last since the last accepted step; not a number: not yet
  private double triedLength = Double.NaN;
  private double triedFlow;
  private double triedInlet;

  // e^(-lambda h) of the last length
  private double decayLength = Double.NaN;
  private double decayOfLength;

  /**
   * @param pipe what it is made of
   * @param length of this pipe [m], > 0: flow or return alone
   * @param startTemperature of the water [°C]
   */
  public PipeWater(Pipe pipe, double length, double startTemperature) {
    this(pipe, length, startTemperature, 1);
  }

  /**
   * @param pipe what it is made of
   * @param length of this pipe [m], > 0: flow or return alone
   * @param startTemperature of the water [°C]
   * @param parcels differences and lengths up to which parcels are joined or mixed, as a share of
   *     what is usual [-], 1/8 to 1
   */
  public PipeWater(Pipe pipe, double length, double startTemperature, double parcels) {
    this.length = length;
    joinTolerance = JOIN_TOLERANCE * parcels;
    shortest = SHORTEST_SHARE * length * parcels;
    slots = (int) Math.ceil(SLOTS / parcels);
    size = new double[slots];
    theta = new double[slots];
    rise = new double[slots];
    heatCapacity = pipe.heatCapacity();
    decayRate = pipe.lossCoefficient() / heatCapacity;
    size[0] = length;
    theta[0] = startTemperature;
    stored = heatCapacity * length * startTemperature;
    outlet = startTemperature;
  }

  /**
   * Tries a step.
   *
   * @param h its length [s]
   * @param capacityFlow m c of the water [W/K], >= 0
   * @param inlet mean temperature of the water coming in [°C]; ignored without flow
   * @param surroundings mean temperature around the pipe [°C]
   */
  public void attempt(double h, double capacityFlow, double inlet, double surroundings) {
    if (h == triedLength
        && capacityFlow == triedFlow
        && inlet == triedInlet
        && surroundings == target) {
      return;
    }
    triedLength = h;
    triedFlow = capacityFlow;
    triedInlet = inlet;
    if (h != decayLength) {
      decayLength = h;
      decayOfLength = Math.exp(-decayRate * h);
    }
    decay = decayOfLength;
    target = surroundings;
    speed = capacityFlow / heatCapacity;
    moved = speed * h;
    kept = stored / heatCapacity;
    left = 0;
    enteringSize = Math.min(moved, length);
    if (moved > 0) {
      leave(enteringSize);
      enter(inlet);
      outlet = left / moved;
    } else {
      int slot = oldest % slots;
      double end = scale * (theta[slot] - rise[slot] / 2) + base;
      outlet = decay * end + (1 - decay) * target;
    }
    double cooled = decay * kept + (1 - decay) * target * (length - enteringSize);
    nextStored = heatCapacity * (cooled + enteringSize * enteringTemperature);
    double entered = moved > 0 ? heatCapacity * moved * inlet : 0;
    loss = stored + entered - heatCapacity * left - nextStored;
  }

  /** What leaves of the water that was there: the older, the sooner, and the less it cools. */
  private void leave(double gone) {
    double position = 0;
    double cooled = 1;
    for (int k = 0; k < count && position < gone; k++) {
      boolean last = k + 1 == count;
      int slot = (oldest + k) % slots;
      double part = last ? gone - position : Math.min(size[slot], gone - position);
      double share = Math.min(part / size[slot], 1);
      double partRise = scale * rise[slot] * share;
      double temperature = scale * (theta[slot] - rise[slot] / 2 * (1 - share)) + base;
      kept -= part * temperature;
      double x = decayRate * part / speed;
      double out = Math.exp(-x);
      left +=
          part
              * (target
                  + cooled
                      * ((temperature - target) * meanDecay(x, out)
                          + partRise * decayOfRise(x, out)));
      cooled *= out;
      position += part;
    }
  }

  /**
   * What comes in: what stays entered over the last size/speed seconds, what passed right through
   * took length/speed.
   */
  private void enter(double inlet) {
    double x = decayRate * enteringSize / speed;
    double out = Math.exp(-x);
    enteringTemperature = target + (inlet - target) * meanDecay(x, out);
    enteringRise =
        (inlet - target) * Math.min(1 - out, 2 * meanDecay(x, out)); // no end beyond target
    if (moved > length) {
      double through = target + (inlet - target) * out;
      left += (moved - length) * through;
    }
  }

  /** Mean of e^-(x s) for s from 0 to 1: (1 - e^-x)/x. */
  private static double meanDecay(double x, double out) {
    return x < SERIES ? 1 - x / 2 + x * x / 6 : (1 - out) / x;
  }

  /** Mean of (s - 1/2) e^-(x s) for s from 0 to 1: what cooling takes of an even rise. */
  private static double decayOfRise(double x, double out) {
    return x < SERIES ? x * (x / 2 - 1) / 12 : (1 - out) / (x * x) - out / x - (1 - out) / (2 * x);
  }

  /** Makes the attempted step the state. */
  public void accept() {
    double gone = enteringSize;
    while (gone > 0 && count > 0) {
      int slot = oldest % slots;
      if (size[slot] > gone + 1e-12 * length) {
        double share = gone / size[slot];
        theta[slot] += rise[slot] / 2 * share;
        rise[slot] *= 1 - share;
        size[slot] -= gone;
        gone = 0;
      } else {
        gone -= size[slot];
        oldest = (oldest + 1) % slots;
        count--;
      }
    }
    scale *= decay;
    base = decay * base + (1 - decay) * target;
    if (scale < LEAST_SCALE) {
      for (int k = 0; k < count; k++) {
        int slot = (oldest + k) % slots;
        theta[slot] = scale * theta[slot] + base;
        rise[slot] *= scale;
      }
      scale = 1;
      base = 0;
    }
    if (enteringSize > 0) {
      push();
    }
    stored = nextStored;
    triedLength = Double.NaN;
  }

  private void push() {
    double value = (enteringTemperature - base) / scale;
    double up = enteringRise / scale;
    if (count > 0) {
      int last = (oldest + count - 1) % slots;
      boolean shortOnes = size[last] < shortest && enteringSize < shortest;
      if (shortOnes || inLine(last, value, up)) {
        double together = size[last] + enteringSize;
        join(last, value, up, enteringSize / together);
        size[last] = together;
        return;
      }
    }
    int slot = (oldest + count) % slots;
    size[slot] = enteringSize;
    theta[slot] = value;
    rise[slot] = up;
    count++;
  }

  /** Mixes the parcel that enters into the last one, whose ends stay within what both had. */
  private void join(int last, double value, double up, double share) {
    double old = theta[last] - rise[last] / 2;
    double lowest = Math.min(Math.min(old, old + rise[last]), value - Math.abs(up) / 2);
    double highest = Math.max(Math.max(old, old + rise[last]), value + Math.abs(up) / 2);
    double all = value + up / 2 - old;
    theta[last] += (value - theta[last]) * share;
    double most = 2 * Math.max(Math.min(theta[last] - lowest, highest - theta[last]), 0);
    rise[last] = Math.max(-most, Math.min(most, all));
  }

  /** Whether the parcel that enters carries on the rise of the last one. */
  private boolean inLine(int last, double value, double up) {
    double first = theta[last] - rise[last] / 2;
    double all = value + up / 2 - first;
    double between = first + all * size[last] / (size[last] + enteringSize);
    return Math.abs(theta[last] + rise[last] / 2 - between) * scale < joinTolerance
        && Math.abs(value - up / 2 - between) * scale < joinTolerance;
  }

  /** Mean temperature of the water that left in the attempted step [°C]; at rest, at the outlet. */
  public double outlet() {
    return outlet;
  }

  /** Heat lost to the surroundings in the attempted step [J]. */
  public double loss() {
    return loss;
  }

  /** Heat stored in water and metal, above 0 °C [J]. */
  public double stored() {
    return stored;
  }

  /** Number of parcels now. */
  int parcels() {
    return count;
  }
}
