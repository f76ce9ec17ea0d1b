package settle.sim.control;

/** A room's timetable as it is carried out: its day periods may be brought forward. */
final class Programme {

  private final Timetable want;
  private final double dayWant;
  private double inForce;
  private double nextDay = Double.NEGATIVE_INFINITY;
  private boolean early;

  Programme(Timetable want) {
    this.want = want;
    dayWant = want.maximum();
  }

  /**
   * Brings it up to date.
   *
   * @param time now [s]
   * @param lead how early the next day period is to be brought forward [s]; once it is, it stays
   */
  void update(double time, double lead) {
    inForce = want.valueAt(time);
    if (isDay()) {
      early = false;
      nextDay = Double.NEGATIVE_INFINITY;
      return;
    }
    if (nextDay <= time) {
      early = false;
      nextDay = dayAfter(time);
    }
    early |= lead > 0 && nextDay - time <= lead + 1e-6;
    if (early) {
      inForce = dayWant;
    }
  }

  private double dayAfter(double time) {
    double at = want.nextChange(time);
    while (want.valueAt(at) < dayWant) {
      at = want.nextChange(at);
    }
    return at;
  }

  /** Want carried out now [°C]. */
  double inForce() {
    return inForce;
  }

  double dayWant() {
    return dayWant;
  }

  /** Whether the day want is carried out, early or not. */
  boolean isDay() {
    return inForce >= dayWant;
  }

  /** Beginning of the next day period while it is waited for [s]; minus infinity otherwise. */
  double nextDay() {
    return isDay() ? Double.NEGATIVE_INFINITY : nextDay;
  }
}
