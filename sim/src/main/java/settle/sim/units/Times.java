package settle.sim.units;

/** The one place where hours and days meet seconds. */
public final class Times {

  /** An hour [s]. */
  public static final double HOUR = 3600;

  /** A day [s]. */
  public static final double DAY = 24 * HOUR;

  private Times() {}
}
