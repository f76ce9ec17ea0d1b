package settle.sim.emitter;

import java.util.Arrays;

/**
 * Steps skirting whose water runs in one tube, or out in one and back in another, with a film
 * between water and metal and a web between the two halves of the metal; see {@link TubeCells}.
 *
 * <p>Within a step emission follows its tangent at the mean excess of the cell's metal, which is
 * brought into agreement with the mean that comes of it. The film is that of the water and metal of
 * the last accepted step. Where a front is so sharp that some node would end beyond all that acts
 * on it, as much of the implicit Euler method is mixed in as keeps it within.
 */
final class TubesInMetal implements EmitterStepper {

  /**
   * Agreement of a cell's mean excess with that of its tangent, as a share of it [-]: what is left
   * is of the order of its square.
   */
  private static final double AGREEMENT = 0.01;

  /** What counts as agreed however small an excess is [K]. */
  private static final double CLOSE = 1e-3;

  /**
   * Excess at which metal gives nothing worth counting [K]: about there the tangent turns from
   * nothing to steep, and a mean over the step goes to and fro.
   */
  private static final double NOTHING = 0.01;

  /** How closely metal is to stay where it is for that to be rest [K]. */
  private static final double AT_REST = 1e-8;

  /** How far a node may be beyond what acts on it [K]. */
  private static final double BEYOND = 2e-3;

  /** Most by which a cell's metal is behind, over its excess [-]. */
  private static final double MOST_BEHIND = 2;

  /** Least of the same, where metal further on is warmer [-]. */
  private static final double LEAST_BEHIND = -0.9;

  private static final int MOST_ROUNDS = 200;

  /**
   * From this round on, what metal is behind moves by a share of what it would: at a trickle, which
   * gives all its heat in the first cell, it goes to and fro.
   */
  private static final int SLOWED = 12;

  private static final double SLOW_SHARE = 0.3;

  /** Difference of water and metal below which the film is no thicker [K]. */
  private static final double LEAST_DIFFERENCE = 1e-3;

  /** Film of water that has the temperature of its metal [W/(m K)]. */
  private static final double IN_CONTACT = 1e6;

  /** Heat brought by water below which it gives all of it [W]. */
  private static final double TRICKLE = 1e-5;

  /**
   * Share of its film that is left where water runs along the bottom of a tube full of air [-];
   * assumed, no source.
   */
  private static final double UNDER_AIR = 0.05;

  /** Film of water that otherwise has the temperature of its metal, in a full tube [W/(m K)]. */
  private static final double USUAL_FILM = 10;

  /** By how much more flow the slope with it is asked [-]. */
  private static final double MORE_FLOW = 1e-4;

  // Model
  private final TubeCells cells;
  private final TubeFilm film;
  private final double specificHeat;
  private final double exponent;
  private double coefficient;
  private final int all;

  /** What share of each cell's film air leaves [-]. */
  private final double[] wetted;

  // State: means of water and metal of each cell
  private double[] content;
  private double[] metal;
  private double held;
  private final double[] difference;
  private double lastInlet;

  /** Water at the ends of the cells [°C]. */
  private final double[] water;

  /** How fast the water at its end gets warmer [K/s]. */
  private final double[] rise;

  // Attempt
  private final CellPowers powers;
  private final double[] excess;

  /** Excess of what stands for a cell's metal over that of its mean [-]. */
  private final double[] factor;

  private final double[] meanMetal;
  private final double[] perMetre;
  private final double[] growth;
  private final double[] emission;
  private final double[] given;
  private final double[] nextWater;
  private double[] nextContent;
  private double[] nextMetal;
  private double conductedFlow = Double.NaN;
  private double triedReference;
  private double triedInlet;
  private double triedLength;
  private double meanLeaving;

  // What acts on water and metal in it is between these [°C]
  private double lowest;
  private double highest;
  private double nextHeld;
  private double emittedHeat;
  private double returnTemperature;
  private boolean agreed = true;

  // At rest: where the last answer was, from which the next is looked for
  private final CellPowers restPowers;
  private final double[] restExcess;
  private final double[] restFactor;
  private final double[] restDifference;
  private final double[] restWater;
  private double restSlope;
  private double restFlow;
  private double restInlet;
  private double restOutput;
  private boolean gaveAll;

  /**
   * @param cells water and metal
   * @param film between them; null for none
   * @param specificHeat of the water [J/(kg K)]
   * @param exponent n [-]
   * @param ratedOutput that it is calibrated for, at 75/65/20 [W]
   * @param startTemperature of water and metal [°C]
   */
  TubesInMetal(
      TubeCells cells,
      TubeFilm film,
      double specificHeat,
      double exponent,
      double ratedOutput,
      double startTemperature) {
    this.cells = cells;
    this.film = film;
    this.specificHeat = specificHeat;
    this.exponent = exponent;
    all = cells.legs * cells.cells;
    wetted = new double[all];
    water = new double[all];
    metal = new double[all];
    nextWater = new double[all];
    nextMetal = new double[all];
    difference = new double[all];
    excess = new double[all];
    factor = new double[all];
    Arrays.fill(factor, 1);
    meanMetal = new double[all];
    restFactor = new double[all];
    Arrays.fill(restFactor, 1);
    perMetre = new double[all];
    growth = new double[all];
    emission = new double[all];
    given = new double[all];
    content = new double[all];
    nextContent = new double[all];
    rise = new double[all];
    restWater = new double[all];
    restExcess = new double[all];
    restDifference = new double[all];
    powers = new CellPowers(exponent, all);
    restPowers = new CellPowers(exponent, all);
    begin(startTemperature);
    calibrate(ratedOutput);
  }

  /** Fills it with water of one temperature. */
  private void begin(double startTemperature) {
    Arrays.fill(wetted, 1);
    Arrays.fill(water, startTemperature);
    Arrays.fill(content, startTemperature);
    Arrays.fill(metal, startTemperature);
    Arrays.fill(difference, LEAST_DIFFERENCE);
    Arrays.fill(restDifference, 1);
    Arrays.fill(restExcess, EmissionLaw.RATED_MEAN_EXCESS);
    Arrays.fill(restWater, 20 + EmissionLaw.RATED_MEAN_EXCESS);
    lastInlet = startTemperature;
    triedReference = startTemperature;
    returnTemperature = startTemperature;
    held = cells.heatCapacity() * startTemperature;
  }

  /** Finds K' with which the rated output is given at 75/65/20. */
  private void calibrate(double ratedOutput) {
    double flow = EmissionLaw.ratedCapacityFlow(ratedOutput);
    double inlet = 20 + EmissionLaw.RATED_FLOW_EXCESS;
    coefficient =
        EmissionLaw.distributedCoefficient(ratedOutput, exponent)
            / (cells.legs * cells.legLength());
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double off = restOff(flow, inlet, 20, round);
      double ratio = ratedOutput / restOutput(flow, inlet);
      coefficient *= ratio;
      if (off < AT_REST && Math.abs(ratio - 1) < 1e-12) {
        return;
      }
    }
    throw new ArithmeticException(
        "skirting cannot give its rated "
            + Math.round(ratedOutput)
            + " W at 75/65/20: the film of water in its tubes lets no more than "
            + Math.round(restOutput(flow, inlet))
            + " W through");
  }

  /**
   * Leaves air in the tubes.
   *
   * @param share of the run that it takes, from the far end [-]
   */
  void leaveAir(double share) {
    double from = (1 - share) * cells.legLength();
    double at = 0;
    for (int i = 0; i < cells.cells; i++) {
      double dry = Math.min(Math.max((at + cells.length[i] - from) / cells.length[i], 0), 1);
      at += cells.length[i];
      for (int leg = 0; leg < cells.legs; leg++) {
        wetted[leg * cells.cells + i] = 1 - dry * (1 - UNDER_AIR);
      }
    }
  }

  /** K' of one leg [W/(m K^n)]. */
  double coefficient() {
    return coefficient;
  }

  @Override
  public void attempt(double length, double capacityFlow, double inlet, double reference) {
    if (capacityFlow != conductedFlow) {
      conductedFlow = capacityFlow;
      conduct(capacityFlow, water, difference);
      lookAhead(capacityFlow);
    }
    double shift = reference - triedReference;
    triedReference = reference;
    triedInlet = capacityFlow > 0 ? inlet : water[0];
    triedLength = length;
    for (int k = 0; k < all; k++) {
      excess[k] = excess[k] > shift ? excess[k] - shift : metal[k] - reference;
    }
    agreed = settle(1 / length, reference, water);
    end(water);
    if (isBeyond(reference)) {
      // Lines through cells are those of before the step: a front may have left them behind.
      Arrays.fill(cells.ahead, 0);
      agreed = settle(1 / length, reference, content);
      end(content);
      conductedFlow = Double.NaN;
      if (isBeyond(reference)) {
        mixEuler(1 / length);
      }
    }
    emittedHeat = 0;
    for (int k = 0; k < all; k++) {
      emittedHeat += Math.max(emission[k] * meanMetal[k] - given[k], 0) * length;
    }
    returnTemperature = capacityFlow > 0 ? meanLeaving : nextWater[cells.outlet()];
    double entering = capacityFlow > 0 ? capacityFlow * (inlet - meanLeaving) * length : 0;
    nextHeld = held + entering - emittedHeat;
  }

  /** Takes the ends of cells and what they hold, if they began so. */
  private void end(double[] began) {
    for (int k = 0; k < all; k++) {
      nextWater[k] = 2 * cells.waterI[k];
      nextMetal[k] = 2 * cells.metalI[k];
      nextContent[k] = content[k] + (nextWater[k] - began[k]);
    }
    meanLeaving = cells.meanWater(cells.outlet());
  }

  /** Whether some node ends beyond inlet, reference and what was. */
  private boolean isBeyond(double reference) {
    lowest = Math.min(triedInlet, reference);
    highest = triedInlet;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int k = 0; k < all; k++) {
      lowest = Math.min(lowest, Math.min(content[k], metal[k]));
      highest = Math.max(highest, Math.max(content[k], metal[k]));
      low = Math.min(low, Math.min(nextContent[k], Math.min(nextWater[k], nextMetal[k])));
      high = Math.max(high, Math.max(nextContent[k], Math.max(nextWater[k], nextMetal[k])));
    }
    return low < lowest - BEYOND || high > highest + BEYOND;
  }

  /** Mixes in as much of the implicit Euler method as keeps all within what acts on it. */
  private void mixEuler(double rate) {
    cells.solveOneStage(rate, triedInlet, emission, given, content, metal);
    double share = 0;
    for (int k = 0; k < all; k++) {
      share = Math.max(share, mixed(nextWater[k], 2 * cells.water[k]));
      share = Math.max(share, mixed(nextMetal[k], 2 * cells.metal[k]));
    }
    for (int k = 0; k < all; k++) {
      nextWater[k] += share * (2 * cells.water[k] - nextWater[k]);
      nextContent[k] = nextWater[k];
      nextMetal[k] += share * (2 * cells.metal[k] - nextMetal[k]);
      meanMetal[k] += share * (2 * cells.metal[k] - meanMetal[k]);
    }
    meanLeaving += share * (2 * cells.water[cells.outlet()] - meanLeaving);
  }

  /** How much of another temperature brings one within its limits [-]. */
  private double mixed(double one, double other) {
    double limit = Math.min(Math.max(one, lowest), highest);
    return limit == one ? 0 : Math.min((limit - one) / (other - one), 1);
  }

  /** Finds film and web at a flow from how warm the water is and how it differs from the metal. */
  private void conduct(double capacityFlow, double[] waterAt, double[] differenceAt) {
    if (film == null) {
      for (int k = 0; k < all; k++) {
        perMetre[k] = wetted[k] == 1 ? IN_CONTACT : USUAL_FILM * wetted[k];
      }
      cells.conduct(capacityFlow, perMetre);
      return;
    }
    int n = cells.cells;
    for (int leg = 0; leg < cells.legs; leg++) {
      double mean = 0;
      double whole = 0;
      for (int i = 0; i < n; i++) {
        mean += waterAt[leg * n + i] * cells.length[i];
        whole += cells.length[i];
      }
      film.flow(capacityFlow / specificHeat, mean / whole);
      for (int k = leg * n; k < (leg + 1) * n; k++) {
        perMetre[k] = wetted[k] * film.conductance(waterAt[k], differenceAt[k]);
        growth[k] = film.growth();
      }
    }
    cells.conduct(capacityFlow, perMetre);
  }

  /**
   * Brings the excess of metal, and with it emission, into agreement with the mean that follows.
   *
   * @return whether it came to agree
   */
  private boolean settle(double rate, double reference, double[] began) {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      emit(powers, excess, factor, reference);
      cells.solve(rate, triedInlet, emission, given, began, metal);
      boolean close = true;
      for (int k = 0; k < all; k++) {
        meanMetal[k] = cells.meanMetal(k);
        double above = meanMetal[k] - reference;
        turn(factor, k, triedInlet, above, round);
        double y = factor[k] * above;
        double off = Math.abs(y - excess[k]);
        close &=
            off < CLOSE + AGREEMENT * excess[k]
                || (y <= 0 && excess[k] <= 0)
                || (Math.abs(y) < NOTHING && Math.abs(excess[k]) < NOTHING);
        excess[k] = y;
      }
      if (close) {
        return true;
      }
    }
    return false;
  }

  /**
   * Takes anew how the excess of what stands for a cell's metal is to that of its mean.
   *
   * @return by how much that moves it [K]
   */
  private double turn(double[] factors, int k, double inlet, double above, int round) {
    if (!(above > 0)) {
      return 0;
    }
    double ratio = cells.behind(k, inlet) / above;
    double turn = 1 + Math.min(Math.max(ratio, LEAST_BEHIND), MOST_BEHIND) - factors[k];
    factors[k] += round < SLOWED ? turn : SLOW_SHARE * turn;
    return Math.abs(turn) * above;
  }

  /**
   * Finds the tangents of emission. What is behind is a share of the excess, so that metal warmer
   * than the room gives heat, and none else, whatever the last round left.
   */
  private void emit(CellPowers by, double[] at, double[] factors, double reference) {
    double lead = 1 - 1 / exponent;
    for (int k = 0; k < all; k++) {
      double y = at[k];
      double slope =
          y > 0 ? exponent * coefficient * cells.length[k % cells.cells] * by.at(k, y) : 0;
      emission[k] = slope * factors[k];
      given[k] = slope * (factors[k] * reference + lead * y);
    }
  }

  @Override
  public double atRest(double capacityFlow, double inlet, double reference) {
    if (!(capacityFlow > 0 && inlet > reference)) {
      // Water that is no warmer than the room passes unchanged.
      restSlope = 0;
      restOutput = 0;
      return 0;
    }
    gaveAll = capacityFlow * (inlet - reference) < TRICKLE;
    if (gaveAll) {
      restSlope = capacityFlow;
      restFlow = capacityFlow;
      restOutput = capacityFlow * (inlet - reference);
      return restOutput;
    }
    // What the film of the state was is to be found anew.
    conductedFlow = Double.NaN;
    comeToRest(capacityFlow, inlet, reference);
    restSlope = capacityFlow * (1 - cells.perInlet());
    restFlow = capacityFlow;
    restInlet = inlet;
    restOutput = restOutput(capacityFlow, inlet);
    return restOutput;
  }

  /** Comes nearer to rest, from where the last answer was, until it moves no more. */
  private void comeToRest(double capacityFlow, double inlet, double reference) {
    for (int round = 0; round < MOST_ROUNDS; round++) {
      if (restOff(capacityFlow, inlet, reference, round) < AT_REST) {
        return;
      }
    }
    throw new ArithmeticException(
        "skirting finds no rest at "
            + capacityFlow
            + " W/K, "
            + inlet
            + " °C, "
            + reference
            + " °C");
  }

  /** With differences of water and metal as they are, which hardly change with it. */
  @Override
  public double perFlowAtRest() {
    if (gaveAll || restOutput == 0) {
      return restOutput == 0 ? 0 : restOutput / restFlow;
    }
    double more = restFlow * (1 + MORE_FLOW);
    conduct(more, restWater, restDifference);
    followFilm();
    cells.solveRest(restInlet, emission, given);
    return (restOutput(more, restInlet) - restOutput) / (more - restFlow);
  }

  @Override
  public double perExcessAtRest() {
    return restSlope;
  }

  private double restOutput(double capacityFlow, double inlet) {
    return capacityFlow * (inlet - cells.meanWater(cells.outlet()));
  }

  /**
   * A cell's water gives to the metal by its mean, which while a front passes differs from what the
   * end of the cell tells by half of how the end moves as the cell is passed.
   */
  private void lookAhead(double capacityFlow) {
    for (int k = 0; k < all; k++) {
      double most = Math.abs(content[k] - water[k]);
      double by = capacityFlow > 0 ? rise[k] * cells.passing(k) / 2 : 0;
      cells.ahead[k] =
          perMetre[k] * cells.length[k % cells.cells] * Math.min(Math.max(by, -most), most);
    }
  }

  /** Comes nearer to rest, from where the last answer was; returns by how much it moved. */
  private double restOff(double capacityFlow, double inlet, double reference, int round) {
    conduct(capacityFlow, restWater, restDifference);
    emit(restPowers, restExcess, restFactor, reference);
    followFilm();
    cells.solveRest(inlet, emission, given);
    double off = film == null ? 0 : filmOff(capacityFlow, inlet, restDifference);
    for (int k = 0; k < all; k++) {
      double above = cells.meanMetal(k) - reference;
      double y = restFactor[k] * above;
      off = Math.max(off, y > 0 || restExcess[k] > 0 ? Math.abs(y - restExcess[k]) : 0);
      restExcess[k] = y;
      off = Math.max(off, turn(restFactor, k, inlet, above, round));
      restWater[k] = cells.meanWater(k);
    }
    return off;
  }

  /** Lets the film follow what it passes, which comes to an end sooner than asking it again. */
  private void followFilm() {
    for (int k = 0; k < all; k++) {
      cells.followFilm(
          k, growth[k], perMetre[k] * cells.length[k % cells.cells] * restDifference[k]);
    }
  }

  /**
   * Takes the difference of water and metal that follows along each cell.
   *
   * @return by how much the largest of them moved, as a share of itself [-]
   */
  private double filmOff(double capacityFlow, double inlet, double[] differences) {
    double off = 0;
    int n = cells.cells;
    for (int k = 0; k < all; k++) {
      int i = k % n;
      boolean out = k < n;
      double entering =
          out ? (i == 0 ? inlet : cells.meanWater(k - 1)) : cells.meanWater(i == n - 1 ? i : k + 1);
      double passed = capacityFlow * (entering - cells.meanWater(k)) / cells.length[i];
      double to = differences[k] + (passed / perMetre[k] - differences[k]) / (1 + growth[k]);
      if (Math.abs(to) < LEAST_DIFFERENCE) {
        to = LEAST_DIFFERENCE;
      }
      off = Math.max(off, Math.abs(to - differences[k]));
      differences[k] = to;
    }
    return off;
  }

  @Override
  public boolean agreed() {
    return agreed;
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
    for (int k = 0; k < all; k++) {
      double y = factor[k] * (nextMetal[k] - reference);
      if (y > 0) {
        sum += coefficient * cells.length[k % cells.cells] * y * powers.at(k, y);
      }
    }
    return sum;
  }

  @Override
  public void accept() {
    for (int k = 0; k < all; k++) {
      difference[k] =
          Math.max(
              cells.alongCell(k, perMetre[k]) * Math.abs(nextWater[k] - nextMetal[k]),
              LEAST_DIFFERENCE);
    }
    for (int k = 0; k < all; k++) {
      rise[k] = (nextContent[k] - content[k]) / triedLength;
    }
    double[] swap = content;
    content = nextContent;
    nextContent = swap;
    lean();
    swap = metal;
    metal = nextMetal;
    nextMetal = swap;
    held = nextHeld;
    lastInlet = triedInlet;
    conductedFlow = Double.NaN;
  }

  /**
   * Finds the water at the ends of cells from what they hold: a line through each, between its
   * neighbours and no steeper than leads to neither (van Leer).
   */
  private void lean() {
    int n = cells.cells;
    double before = triedInlet;
    double beforeHalf = 0;
    for (int i = 0; i < all; i++) {
      int k = cells.along(i);
      double half = cells.length[k % n] / 2;
      double here = content[k];
      double falls = (before - here) / (beforeHalf + half);
      double goesOn = falls;
      if (i < all - 1) {
        int next = cells.along(i + 1);
        goesOn = (here - content[next]) / (half + cells.length[next % n] / 2);
      }
      double product = falls * goesOn;
      water[k] = product > 0 ? here - 2 * product / (falls + goesOn) * half : here;
      before = here;
      beforeHalf = half;
    }
  }

  @Override
  public double stored() {
    return held;
  }

  @Override
  public void profile(double[] shares, double[] temperatures) {
    int n = cells.cells;
    for (int k = 0; k < shares.length; k++) {
      double x = shares[k] * cells.legLength() * cells.legs;
      double from = 0;
      double before = lastInlet;
      temperatures[k] = water[cells.outlet()];
      for (int c = 0; c < all; c++) {
        int at = c < n ? c : 2 * n + n - 1 - c;
        double size = cells.length[at % n];
        if (x <= from + size) {
          temperatures[k] = before + (water[at] - before) * Math.max(x - from, 0) / size;
          break;
        }
        from += size;
        before = water[at];
      }
    }
  }

  /** Between the middles of two cells' metal, the halves about both tubes taken together. */
  @Override
  public double face(double share) {
    int n = cells.cells;
    double at = share * cells.legLength();
    double middle = cells.length[0] / 2;
    int c = 0;
    while (c + 2 < n && at > middle + (cells.length[c] + cells.length[c + 1]) / 2) {
      middle += (cells.length[c] + cells.length[c + 1]) / 2;
      c++;
    }
    double apart = (cells.length[c] + cells.length[c + 1]) / 2;
    double part = (at - middle) / apart;
    double sum = 0;
    for (int leg = 0; leg < cells.legs; leg++) {
      double here = metal[leg * n + c];
      sum += here + part * (metal[leg * n + c + 1] - here);
    }
    return sum / cells.legs;
  }
}
