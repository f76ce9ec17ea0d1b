package settle.sim.emitter;

import java.util.Arrays;

/**
 * Steps a radiator: a chain of well-mixed cells, C dT/dt = m c (T_before - T) - K max(T - T_ref,
 * 0)^n.
 *
 * <p>Within a step the emission is written K g (T - T_ref) with g = y^(n-1) at the cell's mean
 * excess, and the water coming in is taken to go along a straight line through its mean with the
 * slope between its ends: each cell's course and mean are then exact. g is brought into agreement
 * with the mean: the larger the excess taken for g, the smaller the mean excess that follows, so
 * that excess and answer always have the root between them. Without flow all cells cool in place.
 */
public final class MixedChain implements EmitterStepper {

  /** Agreement of a cell's mean excess with the one used for its emission [K]. */
  private static final double AGREEMENT = 1e-3;

  /** Width of a bracket in which there is nothing left to look for [K]. */
  private static final double NOTHING_BETWEEN = 1e-9;

  /** Halvings of any bracket that leave nothing to be halved; two or three rounds do. */
  private static final int MOST_ROUNDS = 100;

  // Model
  private final int cells;
  private final double cellCapacity;
  private final double coefficient;
  private final double exponent;
  private final CellPowers powers;

  // State
  private double[] temperature;

  // Attempt
  private double[] next;
  private final double[] meanExcess;
  private double emittedHeat;
  private double returnTemperature;
  private double triedReference;
  private boolean emits;
  private boolean agreed = true;

  /**
   * @param cells number of cells, >= 1
   * @param heatCapacity water and metal of the whole radiator [J/K]
   * @param cellCoefficient K of one cell [W/K^n]
   * @param exponent n [-]
   * @param startTemperature of the water [°C]
   */
  public MixedChain(
      int cells,
      double heatCapacity,
      double cellCoefficient,
      double exponent,
      double startTemperature) {
    this.cells = cells;
    cellCapacity = heatCapacity / cells;
    coefficient = cellCoefficient;
    this.exponent = exponent;
    temperature = new double[cells];
    next = new double[cells];
    powers = new CellPowers(exponent, cells);
    meanExcess = new double[cells];
    Arrays.fill(temperature, startTemperature);
  }

  @Override
  public void attempt(double length, double capacityFlow, double inlet, double reference) {
    double shift = reference - triedReference;
    triedReference = reference;
    agreed = true;
    emittedHeat = 0;
    double before = inlet;
    double beforeRise = 0;
    for (int i = 0; i < cells; i++) {
      double start = temperature[i];
      double mean = settle(i, length, capacityFlow, before, beforeRise, shift);
      double end = next[i];
      double given = cellCapacity * (start - end);
      if (capacityFlow > 0) {
        given += capacityFlow * length * (before - mean);
        before = mean;
        beforeRise = rise(start, mean, end) / length;
      }
      // What does not emit gives nothing, not even what rounding leaves.
      emittedHeat += emits ? Math.max(given, 0) : 0;
    }
    returnTemperature = capacityFlow > 0 ? before : next[cells - 1];
  }

  /**
   * How much a cell rises over the step, as a straight line through its mean; no end of the line
   * lies beyond where the cell has been, however soon it came to rest.
   */
  private static double rise(double start, double mean, double end) {
    double early = mean - start;
    double late = end - mean;
    return early * late > 0 ? 2 * (Math.abs(early) < Math.abs(late) ? early : late) : 0;
  }

  /** Finds a cell's end and its mean temperature, which is returned [°C]. */
  private double settle(
      int i, double length, double capacityFlow, double before, double beforeRise, double shift) {
    // First guess of the mean excess: the last one tried, the reference having moved; where that
    // says nothing, where the cell stands.
    double y = meanExcess[i] - shift;
    if (y <= 0) {
      y = temperature[i] - triedReference;
    }
    double below = Double.NEGATIVE_INFINITY;
    double above = Double.POSITIVE_INFINITY;
    double lastY = Double.NaN;
    double lastOff = Double.NaN;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double answer = meanExcess(i, length, capacityFlow, before, beforeRise, y);
      double off = answer - y;
      below = Math.max(below, Math.min(y, answer));
      above = Math.min(above, Math.max(y, answer));
      // A cell that passes T_ref within the step: with an exponent near 1 its conductance jumps
      // there, and what lies between is neither.
      if (Math.abs(off) < AGREEMENT || above - below < NOTHING_BETWEEN) {
        if (y > 0 && answer < 0) {
          // Warm water would have to warm itself by the room: it does not emit.
          answer = meanExcess(i, length, capacityFlow, before, beforeRise, 0);
        }
        meanExcess[i] = answer;
        return triedReference + answer;
      }
      double slope = (off - lastOff) / (y - lastY);
      lastY = y;
      lastOff = off;
      y = slope < 0 ? y - off / slope : answer;
      if (!(y >= below && y <= above)) {
        y = (below + above) / 2;
      }
    }
    agreed = false;
    meanExcess[i] = y;
    return triedReference + meanExcess(i, length, capacityFlow, before, beforeRise, y);
  }

  /**
   * Mean excess of a cell over the step if it emits as at an excess of y [K]; its end on the way.
   * What the cell makes for moves along a straight line: dT/dt = (S(t) - T)/tau, S(t) = settled +
   * rise (t - h/2).
   */
  private double meanExcess(
      int i, double length, double capacityFlow, double before, double beforeRise, double y) {
    double start = temperature[i];
    double conductance = y > 0 ? coefficient * powers.at(i, y) : 0;
    emits = conductance > 0;
    double total = capacityFlow + conductance;
    if (total == 0) {
      next[i] = start;
      return start - triedReference;
    }
    double settled =
        capacityFlow == 0
            ? triedReference
            : (capacityFlow * before + conductance * triedReference) / total;
    double rise = capacityFlow * beforeRise / total;
    double tau = cellCapacity / total;
    double x = length / tau;
    double decay = x < 40 ? Math.exp(-x) : 0;
    double phi = x < 1e-5 ? 1 - x / 2 : (1 - decay) / x;
    double away = start - (settled - rise * (length / 2 + tau));
    next[i] = settled + rise * (length / 2 - tau) + away * decay;
    return settled - rise * tau + away * phi - triedReference;
  }

  @Override
  public double atRest(double capacityFlow, double inlet, double reference) {
    double excess = inlet - reference;
    return capacityFlow > 0
        ? capacityFlow
            * (excess
                - EmissionLaw.chainOutletExcess(excess, exponent, coefficient, cells, capacityFlow))
        : 0;
  }

  @Override
  public double emitted() {
    return emittedHeat;
  }

  @Override
  public double meanReturn() {
    return returnTemperature;
  }

  @Override
  public double emissionNow(double reference) {
    double sum = 0;
    for (int i = 0; i < cells; i++) {
      double y = next[i] - reference;
      if (y > 0) {
        sum += coefficient * y * powers.at(i, y);
      }
    }
    return sum;
  }

  @Override
  public void accept() {
    double[] swap = temperature;
    temperature = next;
    next = swap;
  }

  @Override
  public boolean agreed() {
    return agreed;
  }

  @Override
  public double stored() {
    double sum = 0;
    for (double t : temperature) {
      sum += t;
    }
    return cellCapacity * sum;
  }

  @Override
  public double face(double share) {
    return temperature[Math.min((int) (share * cells), cells - 1)];
  }

  @Override
  public void profile(double[] shares, double[] temperatures) {
    for (int k = 0; k < shares.length; k++) {
      temperatures[k] = face(shares[k]);
    }
  }
}
