package settle.sim.room;

/**
 * What an emitter loses to outdoors before its room has it: through the walls behind it, and by air
 * that it warms above where people are. The metal's excess over the room follows from the heat, y =
 * 50 K (Q/Phi)^(1/n), and what is lost from that, G y; what the wall loses more because of the
 * profile in front of it, whether that is warm or not, is a conductance of the room. Below an
 * excess of a kelvin, and where more than half the heat would be lost, the loss is a share of the
 * heat.
 *
 * @param perExcess G, loss per kelvin that the metal is warmer than the room [W/K]
 * @param perRoom loss per kelvin that the room is warmer than outdoors [W/K]; may be below 0
 * @param output heat at an excess of 50 K all along the emitter, Phi [W]
 * @param exponent n [-]
 * @param returned share of the heat that comes back to the room from the wall beside the run [-]
 * @param leastHeat heat below which the loss is a share of it [W]
 * @param share that share [-]
 */
public record LostBehind(
    double perExcess,
    double perRoom,
    double output,
    double exponent,
    double returned,
    double leastHeat,
    double share) {

  /** Nothing is lost. */
  public static final LostBehind NONE = new LostBehind(0, 0, 1, 1, 0, 0, 0);

  /** Excess of the output [K]. */
  private static final double EXCESS = 50;

  /** Excess below which the loss is a share of the heat [K]. */
  private static final double LEAST_EXCESS = 1;

  /** Most of the heat that is lost [-]. */
  private static final double MOST = 0.5;

  /**
   * Finds below which heat the loss is a share of it.
   *
   * @param perExcess G [W/K]
   * @param perRoom [W/K]
   * @param output Phi [W], above 0
   * @param exponent n [-], 1 or more
   * @param returned share of the heat [-]
   */
  public static LostBehind of(
      double perExcess, double perRoom, double output, double exponent, double returned) {
    double atLeast =
        perExcess * LEAST_EXCESS / (output * Math.pow(LEAST_EXCESS / EXCESS, exponent));
    double excess = LEAST_EXCESS;
    if (atLeast > MOST) {
      // The share falls with the excess, as its power 1 - n.
      excess *= exponent > 1 ? Math.pow(atLeast / MOST, 1 / (exponent - 1)) : Double.MAX_VALUE;
    }
    return new LostBehind(
        perExcess,
        perRoom,
        output,
        exponent,
        returned,
        output * Math.pow(excess / EXCESS, exponent),
        Math.min(atLeast, MOST));
  }

  /** Heat that the room has of what the emitter gives [W]. */
  public double kept(double heat) {
    return perExcess == 0 ? heat : heat - lost(heat);
  }

  private double lost(double heat) {
    return heat > leastHeat
        ? perExcess * EXCESS * Math.pow(heat / output, 1 / exponent)
        : heat * share;
  }

  /** What the room has more per watt that the emitter gives more [-]. */
  public double keptPerHeat(double heat) {
    return keptPerHeat(heat, lost(heat));
  }

  /** What the room has more per watt of a heat of which it is known what is lost [W]. */
  double keptPerHeat(double heat, double lost) {
    return heat > leastHeat ? 1 - lost / heat / exponent : 1 - share;
  }

  /**
   * Heat of which the room has so much [W].
   *
   * @throws ArithmeticException if none is found
   */
  public double heatFor(double kept) {
    double heat = kept;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double step = (kept - kept(heat)) / keptPerHeat(heat);
      heat += step;
      if (Math.abs(step) <= 1e-12 * Math.abs(heat)) {
        return heat;
      }
    }
    throw new ArithmeticException("no heat found of which " + kept + " W are kept: " + this);
  }

  /** Newton's steps on a slope between a half and one; five do. */
  private static final int MOST_ROUNDS = 50;
}
