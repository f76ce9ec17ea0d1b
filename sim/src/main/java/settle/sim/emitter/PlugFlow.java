package settle.sim.emitter;

/**
 * Steps a perimeter emitter: water moves as a plug, in parcels.
 *
 * <p>Along the path, C' dT/dt + m c dT/dx = -K' max(T - T_ref, 0)^n. For water that moves along,
 * with y = T - T_ref and w = y^(1-n), this is dw/dt = kappa = (n-1) K'/C' (n = 1: w = -ln y, kappa
 * = K'/C'): every parcel ages alike, wherever it is and however fast it moves. Over a step T_ref is
 * its mean. The flow may rise or fall evenly through the step: held at its mean, water that comes
 * in would be taken for as old as in a steady flow, which is where steps would lose most.
 *
 * <p>Heat emitted is what came in, less what left, less what is stored more. Water colder than
 * T_ref passes unchanged.
 */
public final class PlugFlow implements EmitterStepper {

  /**
   * Time constant with which heat that is only a matter of how parcels are seen is given off [s]:
   * long against a step, short against a room's hours.
   */
  private static final double SETTLING = 600;

  private static final double LEAST_EXCESS = AgeingLaw.LEAST_EXCESS;

  /** Change of the flow over half a step that makes no difference, as a share of its mean [-]. */
  private static final double LEAST_CHANGE = 0.005;

  /** The most that is followed: beyond it a valve leaves its seat or shuts, in a short step [-]. */
  private static final double MOST_CHANGE = 0.5;

  // Model
  private final double length;
  private final double heatCapacity;
  private final double exponent;
  private final double emission;
  private final AgeingLaw law;

  // State
  private Parcels now;

  /**
   * Heat held [J]: what entered, less what left and what was emitted. The parcels may show a little
   * more or less: between the same edges a parcel holds otherwise when it is seen from another
   * T_ref, and two that are joined hold a little otherwise than each. Taken for emission that would
   * be a blow, the harder the shorter the step.
   */
  private double held;

  // Attempt
  private Parcels next;
  private double nextHeld;
  private double emittedHeat;
  private double returnTemperature;

  // Scratch of an attempt: length of the step [s] and how fast and far the water moves in it
  private double step;
  private double speed;
  private double moved;

  /**
   * By what share of its mean the flow ends above it [-], and how fast that lets water speed up.
   */
  private double endsAbove;

  private double gathers;

  /** Excess of what left, times its length [K m]. */
  private double left;

  /** How far from the inlet parcels have been pushed [m]. */
  private double position;

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
    this.heatCapacity = heatCapacity;
    this.exponent = exponent;
    emission = coefficient / length;
    law = new AgeingLaw(exponent, emission, heatCapacity);
    now = new Parcels(law, length, parcels);
    next = new Parcels(law, length, parcels);
    now.fill(length, startTemperature);
    held = heatCapacity * length * startTemperature;
    returnTemperature = startTemperature;
  }

  @Override
  public void flowEndsAbove(double share) {
    endsAbove =
        Math.abs(share) < LEAST_CHANGE ? 0 : Math.max(-MOST_CHANGE, Math.min(share, MOST_CHANGE));
  }

  @Override
  public void attempt(double stepLength, double capacityFlow, double inlet, double newReference) {
    step = stepLength;
    speed = capacityFlow / heatCapacity;
    moved = speed * stepLength;
    gathers = 2 * endsAbove * speed / stepLength;
    next.begin(newReference);
    left = 0;
    position = 0;
    if (moved > 0) {
      enter(inlet - newReference);
    }
    double seenAnew = moveOn(newReference);
    balance(inlet, newReference, seenAnew);
  }

  /**
   * Water comes in; what entered and left again within the step did so at one age. Where the flow
   * rises or falls, more of it is young or old: two stretches, the water of half the greatest age
   * between them, then have the mean age that all of it has.
   */
  private void enter(double y) {
    double w = law.inletW(y);
    double stay = Math.min(moved, length);
    double age = step - timeOf(moved - stay);
    double endW = law.aged(w, age);
    double endY = y > LEAST_EXCESS ? law.outletY(endW) : y;
    if (endsAbove == 0) {
      next.pushInParts(stay, y, endY, w, endW);
    } else {
      double younger = stay / 2 + gathers * age * age / 6;
      double middleW = law.aged(w, age / 2);
      double middleY = y > LEAST_EXCESS ? law.agedY(y, w, middleW - w) : y;
      next.pushInParts(younger, y, middleY, w, middleW);
      next.pushInParts(stay - younger, middleY, endY, middleW, endW);
    }
    left += (moved - stay) * endY;
    position = stay;
  }

  /** After which time the water has moved so far in the step [s]. */
  private double timeOf(double far) {
    double evenly = far / speed;
    if (endsAbove == 0) {
      return evenly;
    }
    double begins = 1 - endsAbove;
    double root = begins * begins + 4 * endsAbove * evenly / step;
    return 2 * evenly / (begins + Math.sqrt(Math.max(root, 0)));
  }

  /**
   * The water that was there moves on, ages and leaves.
   *
   * @return its excess as it is seen from the new reference temperature, times its length [K m]
   */
  private double moveOn(double newReference) {
    double seenAnew = 0;
    double shift = newReference - now.reference;
    double passed = moved;
    double growth = law.growth(step);
    for (int i = 0; i < now.count; i++) {
      double size = now.size[i];
      double yu = now.upper[i] - newReference;
      double yl = now.lower[i] - newReference;
      double wu = law.moved(now.upper[i] - now.reference, shift, now.upperW[i]);
      double wl = yl == yu ? wu : law.moved(now.lower[i] - now.reference, shift, now.lowerW[i]);
      seenAnew += size * law.mean(yu, yl, wu, wl);
      double from = passed;
      passed += size;
      // Sizes add up to the length only to rounding, which is to be measured against the length: a
      // sliver's own size drowns in it. Without flow nothing leaves, whatever their sum.
      if (moved == 0 || passed <= length * (1 + 1e-12)) {
        next.pushAged(size, yu, yl, wu, wl, growth, now.bent[i]);
        position += size;
      } else {
        cut(i, from, passed, yu, yl, wu, wl, growth);
      }
    }
    return seenAnew;
  }

  /**
   * A parcel is cut at the outlet, w being linear along it; each point beyond left when it had aged
   * by as long as it took to get there.
   */
  private void cut(
      int i,
      double from,
      double passed,
      double yu,
      double yl,
      double wu,
      double wl,
      double growth) {
    double stay = Math.min(passed, length) - from;
    double cutW = wu;
    double cutY = yu;
    double cutFrom = from;
    if (stay > 0) {
      double share = stay / now.size[i];
      if (yu > LEAST_EXCESS && yl > LEAST_EXCESS) {
        cutW = wu + (wl - wu) * share;
        cutY = law.toY(cutW);
      } else {
        cutY = yu + (yl - yu) * share;
        cutW = law.toW(cutY);
      }
      next.pushAged(length - position, yu, cutY, wu, cutW, growth, now.bent[i]);
      position = length;
      cutFrom = length;
    }
    double ageFrom = timeOf(moved - (cutFrom - length));
    double ageTo = timeOf(moved - (passed - length));
    // In a flow that rises more leaves late: the line is turned until it has the mean of the ages.
    double took = ageFrom - ageTo;
    double out = passed - cutFrom;
    ageFrom += out > 0 ? gathers * took * took * took / (6 * out) : 0;
    double exitUpperW = law.aged(cutW, ageFrom);
    double exitLowerW = law.aged(wl, ageTo);
    double exitUpper = cutY > LEAST_EXCESS ? law.outletY(exitUpperW) : cutY;
    double exitLower = yl > LEAST_EXCESS && ageTo > 1e-9 * step ? law.toY(exitLowerW) : yl;
    left += out * law.mean(exitUpper, exitLower, exitUpperW, exitLowerW);
  }

  /** Heat emitted is what came in, less what left, less what is stored more. */
  private void balance(double inlet, double newReference, double seenAnew) {
    double leaving = heatCapacity * (left + moved * newReference);
    double entering = moved > 0 ? heatCapacity * moved * inlet : 0;
    double seen = heatCapacity * (seenAnew + length * newReference);
    double shown = heatCapacity * (next.pushed + length * newReference);
    double toGive = entering - leaving - shown + held;
    // Heat not seen may be owed, or be no more than rounding: it is then taken from what the water
    // emits, never from the room.
    double unseen = Math.min((held - seen) * Math.exp(-step / SETTLING), toGive);
    emittedHeat = toGive - unseen;
    nextHeld = unseen + shown;
    returnTemperature = moved > 0 ? newReference + left / moved : next.lower[next.count - 1];
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
    double shift = atReference - next.reference;
    double sum = 0;
    for (int i = 0; i < next.count; i++) {
      double y1 = next.upper[i] - next.reference;
      double y2 = next.lower[i] - next.reference;
      if (y1 - shift <= LEAST_EXCESS && y2 - shift <= LEAST_EXCESS) {
        continue;
      }
      double w1 = law.moved(y1, shift, next.upperW[i]);
      double w2 = y2 == y1 ? w1 : law.moved(y2, shift, next.lowerW[i]);
      sum += next.size[i] * law.meanPower(y1 - shift, y2 - shift, w1, w2);
    }
    return emission * sum;
  }

  @Override
  public void accept() {
    Parcels before = now;
    now = next;
    next = before;
    held = nextHeld;
  }

  @Override
  public double stored() {
    return held;
  }

  /** Number of parcels now. */
  public int parcels() {
    return now.count;
  }

  @Override
  public void profile(double[] shares, double[] temperatures) {
    int i = 0;
    double from = 0;
    for (int k = 0; k < shares.length; k++) {
      double x = shares[k] * length;
      while (i < now.count - 1 && x > from + now.size[i]) {
        from += now.size[i];
        i++;
      }
      temperatures[k] = within(i, (x - from) / now.size[i]);
    }
  }

  @Override
  public double face(double share) {
    int i = 0;
    double from = 0;
    while (i < now.count - 1 && share * length > from + now.size[i]) {
      from += now.size[i];
      i++;
    }
    return within(i, (share * length - from) / now.size[i]);
  }

  /** Temperature some way into a parcel [°C]. */
  private double within(int i, double way) {
    double share = Math.min(Math.max(way, 0), 1);
    double y1 = now.upper[i] - now.reference;
    double y2 = now.lower[i] - now.reference;
    if (y1 > LEAST_EXCESS && y2 > LEAST_EXCESS) {
      double w1 = now.upperW[i];
      return now.reference + law.toY(w1 + (now.lowerW[i] - w1) * share);
    }
    return now.upper[i] + (now.lower[i] - now.upper[i]) * share;
  }
}
