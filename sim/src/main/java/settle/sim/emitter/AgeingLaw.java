package settle.sim.emitter;

/**
 * How the excess y = T - T_ref of water falls on its way through an emitter: with w = y^(1-n) (n =
 * 1: w = -ln y), dw/dt = kappa = (n-1) K'/C' (n = 1: K'/C'), so that w only has to be counted on.
 */
final class AgeingLaw {

  /** Excess below which water no longer emits [K]. */
  static final double LEAST_EXCESS = 1e-7;

  /**
   * Largest ratio of the excesses at the ends of a stretch along which w is taken to be linear [-].
   * Between edges further apart a small error of T_ref at the cool end would bend it all.
   */
  static final double WIDEST_RATIO = 1.5;

  private static final double RATIO_LOG = Math.log(WIDEST_RATIO);

  // Model
  private final double exponent;
  private final double kappa;
  private final double power;
  private final double ratioPower;

  /** (n - 1)/(n - 2), and what the series of {@link #mean} needs. */
  private final double meanFactor;

  private final double second;
  private final double third;
  private final boolean linear;

  /** The powers 1 - n and 1/(1 - n) near 1. */
  private final PowerSeries toW;

  private final PowerSeries toY;

  // Where w(y) at the inlet and y(w) at the outlet were last computed in full
  private double anchorY = Double.NaN;
  private double anchorYW;
  private double anchorW = Double.NaN;
  private double anchorWY;

  /**
   * @param exponent n [-]
   * @param emission K' [W/(m K^n)]
   * @param heatCapacity C' [J/(m K)]
   */
  AgeingLaw(double exponent, double emission, double heatCapacity) {
    this.exponent = exponent;
    linear = exponent == 1;
    kappa = (linear ? 1 : exponent - 1) * emission / heatCapacity;
    power = linear ? 0 : -1 / (exponent - 1);
    meanFactor = (exponent - 1) / (exponent - 2);
    second = (1 - power) / (-3 * power);
    third = (2 - power) / (-4 * power);
    toW = new PowerSeries(1 - exponent);
    toY = new PowerSeries(power);
    ratioPower = Math.pow(WIDEST_RATIO, exponent - 1);
  }

  /** By how much w grows over a time [s]. */
  double growth(double time) {
    return kappa * time;
  }

  /** w after water of w has aged by a time [s]. */
  double aged(double w, double age) {
    return w + kappa * age;
  }

  /** w of water whose excess is {@link #WIDEST_RATIO} times smaller. */
  double furtherDown(double w) {
    return linear ? w + RATIO_LOG : w * ratioPower;
  }

  /** By how much an excess is off that belongs to a w which is off by so much [K]. */
  double excessOff(double dw, double w, double y) {
    return linear ? dw * y : dw * y * power / w;
  }

  /** Excess after water of an excess [K] and its w has aged so that w grew by so much. */
  double agedY(double y, double w, double growth) {
    double s = growth / w;
    return linear || !toY.reaches(s) ? toY(w + growth) : y * toY.above(s);
  }

  /** w of an excess [K]; infinite where that no longer emits. */
  double toW(double y) {
    if (y <= LEAST_EXCESS) {
      return Double.POSITIVE_INFINITY;
    }
    return linear ? -Math.log(y) : Math.pow(y, 1 - exponent);
  }

  /**
   * w of an edge after T_ref has moved: its series about the old value where the move is small, (1
   * - r)^(1-n) with r = shift/y.
   */
  double moved(double oldY, double shift, double oldW) {
    double r = shift / oldY;
    boolean none = oldY <= LEAST_EXCESS || oldY - shift <= LEAST_EXCESS;
    if (none || !(Math.abs(r) < PowerSeries.WIDEST) || linear) {
      return toW(oldY - shift);
    }
    return oldW * toW.at(-r);
  }

  /** w of the water coming in, by its series about the last value computed in full. */
  double inletW(double y) {
    double s = y / anchorY - 1;
    boolean none = y <= LEAST_EXCESS || anchorY <= LEAST_EXCESS;
    if (linear || none || !(Math.abs(s) < PowerSeries.WIDEST)) {
      anchorY = y;
      anchorYW = toW(y);
      return anchorYW;
    }
    return anchorYW * toW.at(s);
  }

  /** y of the water going out, by its series about the last value computed in full. */
  double outletY(double w) {
    double s = w / anchorW - 1;
    if (linear || !(Math.abs(s) < PowerSeries.WIDEST)) {
      anchorW = w;
      anchorWY = toY(w);
      return anchorWY;
    }
    return anchorWY * toY.at(s);
  }

  /** Excess of a w [K]. */
  double toY(double w) {
    return linear ? Math.exp(-w) : Math.pow(w, power);
  }

  /** Mean excess between two points of a profile along which w is linear. */
  double mean(double y1, double y2, double w1, double w2) {
    if (y1 <= LEAST_EXCESS || y2 <= LEAST_EXCESS) {
      return (y1 + y2) / 2;
    }
    if (linear) {
      double d = w2 - w1;
      return Math.abs(d) < 1e-3 ? y1 * (1 - d / 2 * (1 - d / 3 * (1 - d / 4))) : (y1 - y2) / d;
    }
    double d = w2 - w1;
    if (Math.abs(d) < 1e-3 * w1) {
      double s = -power * d / w1;
      return y1 * (1 - s / 2 * (1 - second * s * (1 - third * s)));
    }
    return meanFactor * (y2 * w2 - y1 * w1) / d;
  }

  /**
   * Mean of y^n between two points of a profile along which w is linear: (n-1)(y1 - y2)/(w2 - w1).
   */
  double meanPower(double y1, double y2, double w1, double w2) {
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
}
