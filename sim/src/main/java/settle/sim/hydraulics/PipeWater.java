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
 * stretch of water at one temperature. All parcels cool by the same law T <- a T + (1 - a) T_s, so
 * that only the product of these laws is kept, T = scale theta + base, and a step touches no parcel
 * but those that enter or leave. Heat lost is what came in, less what left, less what is stored
 * more.
 *
 * <p>A step is tried, as often as its neighbours need to agree with it, then accepted.
 */
public final class PipeWater {

  private static final int SLOTS = 256;

  /** Two neighbouring parcels shorter than this share of the pipe are mixed. */
  private static final double SHORTEST_SHARE = 1.0 / 50;

  /** Neighbouring parcels no further apart than this are joined [K]. */
  private static final double JOIN_TOLERANCE = 0.005;

  /** Scale below which temperatures are written out anew, so that no digits are lost [-]. */
  private static final double LEAST_SCALE = 1e-4;

  // Model
  private final double length;
  private final double heatCapacity;
  private final double decayRate;

  // State: parcels from outlet (oldest) to inlet in a ring
  private final double[] size = new double[SLOTS];
  private final double[] theta = new double[SLOTS];
  private int oldest;
  private int count = 1;
  private double scale = 1;
  private double base;
  private double stored;

  // Attempt
  private double moved;
  private double decay;
  private double target;
  private double enteringSize;
  private double enteringTemperature;
  private double nextStored;
  private double loss;
  private double outlet;

  // e^(-lambda h) of the last length
  private double decayLength = Double.NaN;
  private double decayOfLength;

  /**
   * @param pipe what it is made of
   * @param length of this pipe [m], > 0: flow or return alone
   * @param startTemperature of the water [°C]
   */
  public PipeWater(Pipe pipe, double length, double startTemperature) {
    this.length = length;
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
    if (h != decayLength) {
      decayLength = h;
      decayOfLength = Math.exp(-decayRate * h);
    }
    decay = decayOfLength;
    target = surroundings;
    double speed = capacityFlow / heatCapacity;
    moved = speed * h;
    double kept = stored / heatCapacity;
    double keptLength = length;
    double left = 0;
    if (moved > 0) {
      double gone = Math.min(moved, length);
      double position = 0;
      int k = oldest;
      while (position < gone) {
        boolean last = ++k - oldest == count;
        int slot = (k - 1) % SLOTS;
        double part = last ? gone - position : Math.min(size[slot], gone - position);
        double temperature = scale * theta[slot] + base;
        kept -= part * temperature;
        // It left on average when its middle reached the outlet.
        double age = (position + part / 2) / speed;
        left += part * (target + (temperature - target) * Math.exp(-decayRate * age));
        position += part;
      }
      keptLength = length - gone;
      enteringSize = gone;
      // What stays entered over the last gone/speed seconds; what passed right through took
      // length/speed.
      double x = decayRate * gone / speed;
      enteringTemperature = target + (inlet - target) * meanDecay(x);
      if (moved > length) {
        double through = target + (inlet - target) * Math.exp(-x);
        left += (moved - length) * through;
      }
      outlet = left / moved;
    } else {
      enteringSize = 0;
      outlet = decay * (scale * theta[oldest % SLOTS] + base) + (1 - decay) * target;
    }
    double cooled = decay * kept + (1 - decay) * target * keptLength;
    nextStored = heatCapacity * (cooled + enteringSize * enteringTemperature);
    double entered = moved > 0 ? heatCapacity * moved * inlet : 0;
    loss = stored + entered - heatCapacity * left - nextStored;
  }

  /** (1 - e^-x)/x. */
  private static double meanDecay(double x) {
    return x < 1e-5 ? 1 - x / 2 : (1 - Math.exp(-x)) / x;
  }

  /** Makes the attempted step the state. */
  public void accept() {
    double gone = enteringSize;
    while (gone > 0 && count > 0) {
      int slot = oldest % SLOTS;
      if (size[slot] > gone + 1e-12 * length) {
        size[slot] -= gone;
        gone = 0;
      } else {
        gone -= size[slot];
        oldest = (oldest + 1) % SLOTS;
        count--;
      }
    }
    scale *= decay;
    base = decay * base + (1 - decay) * target;
    if (scale < LEAST_SCALE) {
      for (int k = 0; k < count; k++) {
        int slot = (oldest + k) % SLOTS;
        theta[slot] = scale * theta[slot] + base;
      }
      scale = 1;
      base = 0;
    }
    if (enteringSize > 0) {
      push();
    }
    stored = nextStored;
  }

  private void push() {
    double value = (enteringTemperature - base) / scale;
    if (count > 0) {
      int last = (oldest + count - 1) % SLOTS;
      double shortest = SHORTEST_SHARE * length;
      boolean shortOnes = size[last] < shortest && enteringSize < shortest;
      if (shortOnes || Math.abs(value - theta[last]) * scale < JOIN_TOLERANCE) {
        double together = size[last] + enteringSize;
        theta[last] += (value - theta[last]) * enteringSize / together;
        size[last] = together;
        return;
      }
    }
    int slot = (oldest + count) % SLOTS;
    size[slot] = enteringSize;
    theta[slot] = value;
    count++;
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
}
