package settle.sim.units;

/** The one place where hours and days meet seconds. */
public final class Times {

  /** An hour [s]. */
  public static final double HOUR = 3600;

  /** A day [s]. */
  public static final double DAY = 24 * HOUR;

  /** A kilowatt for an hour [J]. */
  public static final double KILOWATT_HOUR = 1000 * HOUR;

  private Times() {}
}
