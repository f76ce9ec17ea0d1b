package settle.sim.valve;

import java.util.stream.IntStream;

/**
 * Set temperature over the knob's position: frost 7, then 12, 16, 20, 24, 28 °C for 1 to 5, linear
 * between (common practice).
 */
public final class KnobScale {

  private static final double[] SET = {7, 12, 16, 20, 24, 28};

  /** Strokes from one number to the next. */
  private static final int STROKES = 4;

  private KnobScale() {}

  /**
   * Set temperature.
   *
   * @param position 0 (frost) to 5
   * @return [°C]
   */
  public static double set(double position) {
    int i = (int) Math.min(Math.max(position, 0), SET.length - 2);
    return SET[i] + (position - i) * (SET[i + 1] - SET[i]);
  }

  /**
   * Set temperatures at which a knob has a number, or one of three strokes between two, within
   * limits; ascending.
   *
   * @param lowest [°C]
   * @param highest [°C]
   */
  public static double[] marks(double lowest, double highest) {
    return IntStream.rangeClosed(0, STROKES * (SET.length - 1))
        .mapToDouble(stroke -> set((double) stroke / STROKES))
        .filter(set -> set >= lowest && set <= highest)
        .toArray();
  }

  /**
   * Position for a set temperature.
   *
   * @param set [°C]
   * @return 0 (frost) to 5, beyond where the temperature is
   */
  public static double position(double set) {
    int i = 0;
    while (i + 2 < SET.length && set > SET[i + 1]) {
      i++;
    }
    return i + (set - SET[i]) / (SET[i + 1] - SET[i]);
  }
}
