package settle.sim.emitter;

/**
 * Steps a perimeter emitter: water moves as a plug, in parcels.
 *
 * <p>Along the path, C' dT/dt + m c dT/dx = -K' max(T - T_ref, 0)^n. For water that moves along,
 * with y = T - T_ref and w = y^(1-n), this is dw/dt = kappa = (n-1) K'/C' (n = 1: w = -ln y, kappa
 * = K'/C'): every parcel ages alike, wherever it is and however fast it moves. A parcel is a
 * stretch of water that entered in one step at one temperature; w is linear along it, so that the
 * two edge temperatures describe it exactly while T_ref holds. Over a step T_ref is its mean.
 *
 * <p>Heat emitted is what came in, less what left, less what is stored more. Water colder than
 * T_ref passes unchanged.
 */
public final class PlugFlow implements EmitterStepper {

  /** Excess below which water no longer emits [K]. */
  private static final double LEAST_EXCESS = 1e-7;

  /**
   * Neighbouring parcels are joined if no temperature changes by more than this [K], what earlier
   * joints have left counted: a parcel that grows by a little every step would else bend away from
   * the water, the further the shorter the steps.
   */
  private static final double JOIN_TOLERANCE = 0.004;

  /**
   * Largest ratio of the excesses at a parcel's ends. Between edges further apart a small error of
   * T_ref at the cool end would bend the whole stretch.
   */
  private static final double WIDEST_RATIO = 1.5;

  /** Two neighbouring parcels shorter than this share of the path are mixed. */
  private static final double SHORTEST_SHARE = 1.0 / 200;

  /**
   * Time constant with which heat that is only a matter of how parcels are seen is given off [s]:
   * long against a step, short against a room's hours.
   */
  private static final double SETTLING = 600;

  /** Relative change within which powers are followed by their series [-]. */
  private static final double SMALL = 0.02;

  private static final int CAPACITY = 512;

  private static final double RATIO_LOG = Math.log(WIDEST_RATIO);

  // Model
  private final double length;
  private final double heatCapacity;
  private final double exponent;
  private final double emission;
  private final double kappa;
  private final double power;
  private final boolean linear;
  private final double ratioPower;
  private final double joinTolerance;
  private final double shortest;

  // State: parcels from inlet to outlet, edges upstream and downstream
  private int count = 1;
  private double[] size;
  private double[] upper;
  private double[] lower;

  /** Of each parcel, how far its water may be from the line between its edges [K]. */
  private double[] bent;

  /**
   * Heat held [J]: what entered, less what left and what was emitted. The parcels may show a little
   * more or less: between the same edges a parcel holds otherwise when it is seen from another
   * T_ref, and two that are joined hold a little otherwise than each. Taken for emission that would
   * be a blow, the harder the shorter the step.
   */
  private double held;

  // w of the edges, for the reference temperature of the last step
  private double[] upperW;
  private double[] lowerW;
  private double reference;

  // Where w(y) at the inlet and y(w) at the outlet were last computed in full
  private double anchorY = Double.NaN;
  private double anchorYW;
  private double anchorW = Double.NaN;
  private double anchorWY;

  // Attempt
  private int nextCount;
  private double[] nextSize;
  private double[] nextUpper;
  private double[] nextLower;
  private double[] nextBent;
  private double[] nextUpperW;
  private double[] nextLowerW;
  private double nextHeld;

  /** Excess of what was pushed so far, times its length, before any of it was joined [K m]. */
  private double pushed;

  private double nextReference;
  private double emittedHeat;
  private double returnTemperature;

  /**
   * @param length of the path [m]
   * @param heatCapacity C', water and metal [J/(m K)]
   * @param coefficient K' L [W/K^n]
   * @param exponent n [-]
   * @param startTemperature of the water [°C]
   */
  public PlugFlow(
      double length,
      double heatCapacity,
      double coefficient,
      double exponent,
      double startTemperature) {
    this(length, heatCapacity, coefficient, exponent, startTemperature, 1);
  }

  /**
   * @param length of the path [m]
   * @param heatCapacity C', water and metal [J/(m K)]
   * @param coefficient K' L [W/K^n]
   * @param exponent n [-]
   * @param startTemperature of the water [°C]
   * @param parcels differences and lengths up to which parcels are joined or mixed, as a share of
   *     what is usual [-], 1/8 to 1
   */
  public PlugFlow(
      double length,
      double heatCapacity,
      double coefficient,
      double exponent,
      double startTemperature,
      double parcels) {
    this.length = length;
    joinTolerance = JOIN_TOLERANCE * parcels;
    shortest = SHORTEST_SHARE * length * parcels;
    int room = (int) Math.ceil(CAPACITY / parcels);
    size = new double[room];
    upper = new double[room];
    lower = new double[room];
    bent = new double[room];
    upperW = new double[room];
    lowerW = new double[room];
    nextSize = new double[room];
    nextUpper = new double[room];
    nextLower = new double[room];
    nextBent = new double[room];
    nextUpperW = new double[room];
    nextLowerW = new double[room];
    this.heatCapacity = heatCapacity;
    this.exponent = exponent;
    emission = coefficient / length;
    linear = exponent == 1;
    kappa = (linear ? 1 : exponent - 1) * emission / heatCapacity;
    power = linear ? 0 : -1 / (exponent - 1);
    ratioPower = Math.pow(WIDEST_RATIO, exponent - 1);
    size[0] = length;
    upper[0] = startTemperature;
    lower[0] = startTemperature;
    held = heatCapacity * length * startTemperature;
    upperW[0] = Double.POSITIVE_INFINITY;
    lowerW[0] = Double.POSITIVE_INFINITY;
    reference = startTemperature;
    returnTemperature = startTemperature;
  }

  @Override
  public void attempt(double stepLength, double capacityFlow, double inlet, double newReference) {
    double speed = capacityFlow / heatCapacity;
    double moved = speed * stepLength;
    nextReference = newReference;
    double shift = newReference - reference;
    nextCount = 0;
    pushed = 0;
    double left = 0;
    double position = 0;
    if (moved > 0) {
      double y = inlet - newReference;
      double w = inletW(y);
      double stay = Math.min(moved, length);
      double age = stay / speed;
      double endW = aged(w, age);
      double endY = y > LEAST_EXCESS ? outletY(endW) : y;
      pushInParts(stay, y, endY, w, endW);
      // What entered and left again within the step did so at the same age, and so at the same
      // temperature.
      left += (moved - stay) * endY;
      position = stay;
    }
    double seenAnew = 0;
    double passed = moved;
    double growth = kappa * stepLength;
    for (int i = 0; i < count; i++) {
      double yu = upper[i] - newReference;
      double yl = lower[i] - newReference;
      double wu = moved(upper[i] - reference, shift, upperW[i]);
      double wl = yl == yu ? wu : moved(lower[i] - reference, shift, lowerW[i]);
      seenAnew += size[i] * mean(yu, yl, wu, wl);
      double from = passed;
      passed += size[i];
      double stay = Math.min(passed, length) - from;
      // Sizes add up to the length only to rounding, which is to be measured against the length: a
      // sliver's own size drowns in it. Without flow nothing leaves, whatever their sum.
      if (moved == 0 || passed <= length * (1 + 1e-12)) {
        pushAged(size[i], yu, yl, wu, wl, growth, bent[i]);
        position += size[i];
        continue;
      }
      // Cut at the outlet; w is linear along the parcel.
      double cutW = wu;
      double cutY = yu;
      double cutFrom = from;
      if (stay > 0) {
        double share = stay / size[i];
        if (yu > LEAST_EXCESS && yl > LEAST_EXCESS) {
          cutW = wu + (wl - wu) * share;
          cutY = toY(cutW);
        } else {
          cutY = yu + (yl - yu) * share;
          cutW = toW(cutY);
        }
        pushAged(length - position, yu, cutY, wu, cutW, growth, bent[i]);
        position = length;
        cutFrom = length;
      }
      // Each point beyond the outlet left when it had aged by as long as it took to get there.
      double ageFrom = stepLength - (cutFrom - length) / speed;
      double ageTo = stepLength - (passed - length) / speed;
      double exitUpperW = aged(cutW, ageFrom);
      double exitLowerW = aged(wl, ageTo);
      double exitUpper = cutY > LEAST_EXCESS ? outletY(exitUpperW) : cutY;
      double exitLower = yl > LEAST_EXCESS && ageTo > 1e-9 * stepLength ? toY(exitLowerW) : yl;
      left += (passed - cutFrom) * mean(exitUpper, exitLower, exitUpperW, exitLowerW);
    }
    double leaving = heatCapacity * (left + moved * newReference);
    double entering = moved > 0 ? heatCapacity * moved * inlet : 0;
    double seen = heatCapacity * (seenAnew + length * newReference);
    double shown = heatCapacity * (pushed + length * newReference);
    double toGive = entering - leaving - shown + held;
    // Heat not seen may be owed, or be no more than rounding: it is then taken from what the water
    // emits, never from the room.
    double unseen = Math.min((held - seen) * Math.exp(-stepLength / SETTLING), toGive);
    emittedHeat = toGive - unseen;
    nextHeld = unseen + shown;
    returnTemperature = moved > 0 ? newReference + left / moved : nextLower[nextCount - 1];
  }

  /** Adds a parcel cut so that no part's ends are too far apart. */
  private void pushInParts(double parcel, double yu, double yl, double wu, double wl) {
    double fromY = yu;
    double fromW = wu;
    double done = 0;
    while (yl > LEAST_EXCESS && fromY > WIDEST_RATIO * yl) {
      double y = fromY / WIDEST_RATIO;
      double w = linear ? fromW + RATIO_LOG : fromW * ratioPower;
      double part = parcel * (w - wu) / (wl - wu) - done;
      push(part, fromY, y, fromW, w, 0);
      done += part;
      fromY = y;
      fromW = w;
    }
    push(parcel - done, fromY, yl, fromW, wl, 0);
  }

  private void pushAged(
      double parcel, double yu, double yl, double wu, double wl, double growth, double bentBefore) {
    if (parcel <= 0) {
      return;
    }
    double newWu = wu + growth;
    double newWl = wl + growth;
    double newYu = yu > LEAST_EXCESS ? toY(newWu) : yu;
    double newYl = yl == yu ? newYu : yl > LEAST_EXCESS ? toY(newWl) : yl;
    push(parcel, newYu, newYl, newWu, newWl, bentBefore);
  }

  /** Adds a parcel downstream, joining it to the last one where that changes next to nothing. */
  private void push(double parcel, double yu, double yl, double wu, double wl, double bentBefore) {
    pushed += parcel * mean(yu, yl, wu, wl);
    int last = nextCount - 1;
    double bentTogether =
        last >= 0
            ? Math.max(nextBent[last], bentBefore) + bending(last, parcel, yu, yl, wu, wl)
            : Double.POSITIVE_INFINITY;
    if (bentTogether < joinTolerance) {
      nextSize[last] += parcel;
      nextBent[last] = bentTogether;
      nextLower[last] = yl + nextReference;
      nextLowerW[last] = wl;
      return;
    }
    if (last >= 0 && nextSize[last] < shortest && parcel < shortest) {
      mix(last, parcel, mean(yu, yl, wu, wl));
      return;
    }
    nextSize[nextCount] = parcel;
    nextBent[nextCount] = bentBefore;
    nextUpper[nextCount] = yu + nextReference;
    nextLower[nextCount] = yl + nextReference;
    nextUpperW[nextCount] = wu;
    nextLowerW[nextCount] = wl;
    nextCount++;
  }

  /**
   * Mixes a short parcel into the last one, which is short too: both at their common mean, so that
   * no heat appears or vanishes where hot water stands against cold.
   */
  private void mix(int last, double parcel, double meanExcess) {
    double before = nextSize[last];
    double y =
        (before
                    * mean(
                        nextUpper[last] - nextReference,
                        nextLower[last] - nextReference,
                        nextUpperW[last],
                        nextLowerW[last])
                + parcel * meanExcess)
            / (before + parcel);
    nextSize[last] = before + parcel;
    nextUpper[last] = y + nextReference;
    nextLower[last] = y + nextReference;
    nextUpperW[last] = toW(y);
    nextLowerW[last] = nextUpperW[last];
    nextBent[last] = 0;
  }

  /**
   * How far the line through both moves the water where they meet, if a parcel is joined to the
   * last one [K]; infinite where they may not be joined.
   */
  private double bending(int last, double parcel, double yu, double yl, double wu, double wl) {
    double before = nextSize[last];
    double lastYl = nextLower[last] - nextReference;
    double lastYu = nextUpper[last] - nextReference;
    if (lastYu > WIDEST_RATIO * (1 + 1e-9) * yl && yl > LEAST_EXCESS) {
      return Double.POSITIVE_INFINITY;
    }
    double gap = Math.abs(lastYl - yu);
    double share = before / (before + parcel);
    if (yl <= LEAST_EXCESS || yu <= LEAST_EXCESS || lastYu <= LEAST_EXCESS) {
      return Math.max(gap, Math.abs(lastYu + (yl - lastYu) * share - yu));
    }
    double joinedW = nextUpperW[last] + (wl - nextUpperW[last]) * share;
    double deviation = linear ? (joinedW - wu) * yu : (joinedW - wu) * yu * power / wu;
    return Math.max(gap, Math.abs(deviation));
  }

  private double toW(double y) {
    if (y <= LEAST_EXCESS) {
      return Double.POSITIVE_INFINITY;
    }
    return linear ? -Math.log(y) : Math.pow(y, 1 - exponent);
  }

  /**
   * w of an edge after T_ref has moved: its series about the old value where the move is small, (1
   * - r)^(1-n) with r = shift/y.
   */
  private double moved(double oldY, double shift, double oldW) {
    double r = shift / oldY;
    boolean none = oldY <= LEAST_EXCESS || oldY - shift <= LEAST_EXCESS;
    if (none || !(Math.abs(r) < SMALL) || linear) {
      return toW(oldY - shift);
    }
    return oldW * powerSeries(-r, 1 - exponent);
  }

  /** w of the water coming in, by its series about the last value computed in full. */
  private double inletW(double y) {
    double s = y / anchorY - 1;
    boolean none = y <= LEAST_EXCESS || anchorY <= LEAST_EXCESS;
    if (linear || none || !(Math.abs(s) < SMALL)) {
      anchorY = y;
      anchorYW = toW(y);
      return anchorYW;
    }
    return anchorYW * powerSeries(s, 1 - exponent);
  }

  /** y of the water going out, by its series about the last value computed in full. */
  private double outletY(double w) {
    double s = w / anchorW - 1;
    if (linear || !(Math.abs(s) < SMALL)) {
      anchorW = w;
      anchorWY = toY(w);
      return anchorWY;
    }
    return anchorWY * powerSeries(s, power);
  }

  /** (1 + s)^q to the sixth order: to 1e-8 of itself for |s| below 0.02 and q above -10. */
  private static double powerSeries(double s, double q) {
    return 1
        + q
            * s
            * (1
                + (q - 1)
                    / 2
                    * s
                    * (1
                        + (q - 2)
                            / 3
                            * s
                            * (1
                                + (q - 3)
                                    / 4
                                    * s
                                    * (1 + (q - 4) / 5 * s * (1 + (q - 5) / 6 * s)))));
  }

  private double toY(double w) {
    return linear ? Math.exp(-w) : Math.pow(w, power);
  }

  private double aged(double w, double age) {
    return w + kappa * age;
  }

  /** Mean excess between two points of a profile along which w is linear. */
  private double mean(double y1, double y2, double w1, double w2) {
    if (y1 <= LEAST_EXCESS || y2 <= LEAST_EXCESS) {
      return (y1 + y2) / 2;
    }
    if (linear) {
      double d = w2 - w1;
      return Math.abs(d) < 1e-3 ? y1 * (1 - d / 2 * (1 - d / 3 * (1 - d / 4))) : (y1 - y2) / d;
    }
    double d = (w2 - w1) / w1;
    if (Math.abs(d) < 1e-3) {
      double p = -power;
      return y1 * (1 - p * d / 2 * (1 - (p + 1) * d / 3 * (1 - (p + 2) * d / 4)));
    }
    return (exponent - 1) / (exponent - 2) * (y2 * w2 - y1 * w1) / (w2 - w1);
  }

  @Override
  public double atRest(double capacityFlow, double inlet, double reference) {
    double excess = inlet - reference;
    return capacityFlow > 0
        ? capacityFlow
            * (excess - EmissionLaw.outletExcess(excess, exponent, emission * length, capacityFlow))
        : 0;
  }

  /** Every parcel is exact while its reference holds: there is nothing to agree on. */
  @Override
  public boolean agreed() {
    return true;
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
  public double emissionNow(double atReference) {
    double shift = atReference - nextReference;
    double sum = 0;
    for (int i = 0; i < nextCount; i++) {
      double y1 = nextUpper[i] - nextReference;
      double y2 = nextLower[i] - nextReference;
      if (y1 - shift <= LEAST_EXCESS && y2 - shift <= LEAST_EXCESS) {
        continue;
      }
      double w1 = moved(y1, shift, nextUpperW[i]);
      double w2 = y2 == y1 ? w1 : moved(y2, shift, nextLowerW[i]);
      sum += nextSize[i] * meanPower(y1 - shift, y2 - shift, w1, w2);
    }
    return emission * sum;
  }

  /**
   * Mean of y^n between two points of a profile along which w is linear: (n-1)(y1 - y2)/(w2 - w1).
   */
  private double meanPower(double y1, double y2, double w1, double w2) {
    if (y1 <= LEAST_EXCESS || y2 <= LEAST_EXCESS) {
      // A straight line, of which only what is above the room emits.
      double warm = Math.max(y1, y2);
      return Math.pow(warm, exponent) / (exponent + 1) * warm / Math.abs(y1 - y2);
    }
    if (linear) {
      return mean(y1, y2, w1, w2);
    }
    double d = w2 - w1;
    return Math.abs(d) < 1e-6 * w1 ? y1 / w1 : (exponent - 1) * (y1 - y2) / d;
  }

  @Override
  public void accept() {
    double[] swap = size;
    size = nextSize;
    nextSize = swap;
    swap = upper;
    upper = nextUpper;
    nextUpper = swap;
    swap = lower;
    lower = nextLower;
    nextLower = swap;
    swap = bent;
    bent = nextBent;
    nextBent = swap;
    swap = upperW;
    upperW = nextUpperW;
    nextUpperW = swap;
    swap = lowerW;
    lowerW = nextLowerW;
    nextLowerW = swap;
    reference = nextReference;
    count = nextCount;
    held = nextHeld;
  }

  @Override
  public double stored() {
    return held;
  }

  /** Number of parcels now. */
  public int parcels() {
    return count;
  }

  @Override
  public void profile(double[] shares, double[] temperatures) {
    int i = 0;
    double from = 0;
    for (int k = 0; k < shares.length; k++) {
      double x = shares[k] * length;
      while (i < count - 1 && x > from + size[i]) {
        from += size[i];
        i++;
      }
      double share = Math.min(Math.max((x - from) / size[i], 0), 1);
      double y1 = upper[i] - reference;
      double y2 = lower[i] - reference;
      if (y1 > LEAST_EXCESS && y2 > LEAST_EXCESS) {
        double w1 = upperW[i];
        temperatures[k] = reference + toY(w1 + (lowerW[i] - w1) * share);
      } else {
        temperatures[k] = upper[i] + (lower[i] - upper[i]) * share;
      }
    }
  }
}
