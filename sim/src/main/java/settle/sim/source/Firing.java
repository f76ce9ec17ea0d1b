package settle.sim.source;

/** What a burner did while it fired, added up. */
public final class Firing {

  private double time;
  private double belowDewPoint;
  private double entered;
  private double gas;
  private double condensed;

  /** Begins anew. */
  public void clear() {
    time = 0;
    belowDewPoint = 0;
    entered = 0;
    gas = 0;
    condensed = 0;
  }

  /** Adds another's sums. */
  public void add(Firing other) {
    time += other.time;
    belowDewPoint += other.belowDewPoint;
    entered += other.entered;
    gas += other.gas;
    condensed += other.condensed;
  }

  /**
   * Adds a stretch of firing.
   *
   * @param length of it [s]
   * @param entering mean temperature of the water that entered [°C]
   * @param burnt gas (gross) [J]
   * @param flue where it went
   */
  void add(double length, double entering, double burnt, Flue flue) {
    time += length;
    belowDewPoint += entering < flue.dewPoint() ? length : 0;
    entered += entering * length;
    gas += burnt;
    condensed += burnt * flue.condensed(entering);
  }

  /** How long it fired [s]. */
  public double time() {
    return time;
  }

  /** Mean temperature of the water that entered meanwhile [°C]; not a number if it never fired. */
  public double entering() {
    return entered / time;
  }

  /** Share of the flue's vapour that condensed [-]; not a number if it never fired. */
  public double condensedShare() {
    return condensed / gas;
  }

  /**
   * Share of the firing time in which the water that entered was below the dew point [-]; not a
   * number if it never fired.
   */
  public double belowDewPointShare() {
    return belowDewPoint / time;
  }
}
