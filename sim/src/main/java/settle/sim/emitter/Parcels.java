package settle.sim.emitter;

/**
 * The water in an emitter as parcels from inlet to outlet. A parcel is a stretch of water that
 * entered in one step at one temperature; w of {@link AgeingLaw} is linear along it, so that the
 * two edge temperatures describe it exactly while the reference temperature holds.
 */
final class Parcels {

  /**
   * Neighbouring parcels are joined if no temperature changes by more than this [K], what earlier
   * joints have left counted: a parcel that grows by a little every step would else bend away from
   * the water, the further the shorter the steps.
   */
  private static final double JOIN_TOLERANCE = 0.004;

  /** Two neighbouring parcels shorter than this share of the path are mixed. */
  private static final double SHORTEST_SHARE = 1.0 / 200;

  private static final int CAPACITY = 512;

  // Model
  private final AgeingLaw law;
  private final double joinTolerance;
  private final double shortest;

  // State: parcels from inlet to outlet, temperature and w of their edges upstream and downstream
  int count;
  final double[] size;
  final double[] upper;
  final double[] lower;
  final double[] upperW;
  final double[] lowerW;

  /** Of each parcel, how far its water may be from the line between its edges [K]. */
  final double[] bent;

  /** Temperature that their excesses are measured from [°C]. */
  double reference;

  /** Excess of what was pushed so far, times its length, before any of it was joined [K m]. */
  double pushed;

  /**
   * @param law by which their water cools
   * @param length of the path [m]
   * @param parcels differences and lengths up to which parcels are joined or mixed, as a share of
   *     what is usual [-]
   */
  Parcels(AgeingLaw law, double length, double parcels) {
    this.law = law;
    joinTolerance = JOIN_TOLERANCE * parcels;
    shortest = SHORTEST_SHARE * length * parcels;
    int room = (int) Math.ceil(CAPACITY / parcels);
    size = new double[room];
    upper = new double[room];
    lower = new double[room];
    upperW = new double[room];
    lowerW = new double[room];
    bent = new double[room];
  }

  /** None yet, excesses measured from a temperature [°C]. */
  void begin(double newReference) {
    count = 0;
    pushed = 0;
    reference = newReference;
  }

  /** One parcel of water as warm as what it is measured from. */
  void fill(double length, double temperature) {
    begin(temperature);
    count = 1;
    size[0] = length;
    upper[0] = temperature;
    lower[0] = temperature;
    upperW[0] = Double.POSITIVE_INFINITY;
    lowerW[0] = Double.POSITIVE_INFINITY;
  }

  /** Adds a parcel cut so that no part's ends are too far apart. */
  void pushInParts(double parcel, double yu, double yl, double wu, double wl) {
    double fromY = yu;
    double fromW = wu;
    double done = 0;
    while (yl > AgeingLaw.LEAST_EXCESS && fromY > AgeingLaw.WIDEST_RATIO * yl) {
      double y = fromY / AgeingLaw.WIDEST_RATIO;
      double w = law.furtherDown(fromW);
      double part = parcel * (w - wu) / (wl - wu) - done;
      push(part, fromY, y, fromW, w, 0);
      done += part;
      fromY = y;
      fromW = w;
    }
    push(parcel - done, fromY, yl, fromW, wl, 0);
  }

  /** Adds a parcel whose water has aged so that its w grew by so much. */
  void pushAged(
      double parcel, double yu, double yl, double wu, double wl, double growth, double bentBefore) {
    if (parcel <= 0) {
      return;
    }
    double newWu = wu + growth;
    double newWl = wl + growth;
    double newYu = yu > AgeingLaw.LEAST_EXCESS ? law.agedY(yu, wu, growth) : yu;
    double newYl = yl == yu ? newYu : yl > AgeingLaw.LEAST_EXCESS ? law.agedY(yl, wl, growth) : yl;
    push(parcel, newYu, newYl, newWu, newWl, bentBefore);
  }

  /** Adds a parcel downstream, joining it to the last one where that changes next to nothing. */
  private void push(double parcel, double yu, double yl, double wu, double wl, double bentBefore) {
    pushed += parcel * law.mean(yu, yl, wu, wl);
    int last = count - 1;
    double bentTogether =
        last >= 0
            ? Math.max(bent[last], bentBefore) + bending(last, parcel, yu, yl, wu, wl)
            : Double.POSITIVE_INFINITY;
    if (bentTogether < joinTolerance) {
      size[last] += parcel;
      bent[last] = bentTogether;
      lower[last] = yl + reference;
      lowerW[last] = wl;
      return;
    }
    if (last >= 0 && size[last] < shortest && parcel < shortest) {
      mix(last, parcel, law.mean(yu, yl, wu, wl));
      return;
    }
    size[count] = parcel;
    bent[count] = bentBefore;
    upper[count] = yu + reference;
    lower[count] = yl + reference;
    upperW[count] = wu;
    lowerW[count] = wl;
    count++;
  }

  /**
   * Mixes a short parcel into the last one, which is short too: both at their common mean, so that
   * no heat appears or vanishes where hot water stands against cold.
   */
  private void mix(int last, double parcel, double meanExcess) {
    double before = size[last];
    double y =
        (before
                    * law.mean(
                        upper[last] - reference,
                        lower[last] - reference,
                        upperW[last],
                        lowerW[last])
                + parcel * meanExcess)
            / (before + parcel);
    size[last] = before + parcel;
    upper[last] = y + reference;
    lower[last] = y + reference;
    upperW[last] = law.toW(y);
    lowerW[last] = upperW[last];
    bent[last] = 0;
  }

  /**
   * How far the line through both moves the water where they meet, if a parcel is joined to the
   * last one [K]; infinite where they may not be joined.
   */
  private double bending(int last, double parcel, double yu, double yl, double wu, double wl) {
    double before = size[last];
    double lastYl = lower[last] - reference;
    double lastYu = upper[last] - reference;
    if (lastYu > AgeingLaw.WIDEST_RATIO * (1 + 1e-9) * yl && yl > AgeingLaw.LEAST_EXCESS) {
      return Double.POSITIVE_INFINITY;
    }
    double gap = Math.abs(lastYl - yu);
    double share = before / (before + parcel);
    if (yl <= AgeingLaw.LEAST_EXCESS
        || yu <= AgeingLaw.LEAST_EXCESS
        || lastYu <= AgeingLaw.LEAST_EXCESS) {
      return Math.max(gap, Math.abs(lastYu + (yl - lastYu) * share - yu));
    }
    double joinedW = upperW[last] + (wl - upperW[last]) * share;
    return Math.max(gap, Math.abs(law.excessOff(joinedW - wu, wu, yu)));
  }
}
