package settle.sim.house;

import java.util.List;

/**
 * How a run begins, how long it lasts and how finely it is stepped.
 *
 * @param startTemperature air, fabric, water and heads at the beginning [°C]
 * @param leadIn time run before the recording begins, so that the fabric has found its daily course
 *     [s], >= 0
 * @param length recorded time [s], > 0
 * @param shortestStep step after an event [s], > 0
 * @param longestStep step in quiet stretches [s], >= shortestStep
 * @param profileTimes how long after the first call for heat the temperature along each emitter is
 *     kept [s]
 */
public record RunSettings(
    double startTemperature,
    double leadIn,
    double length,
    double shortestStep,
    double longestStep,
    List<Double> profileTimes) {

  /** Step after an event if nothing else is asked for [s]. */
  public static final double DEFAULT_SHORTEST_STEP = 10;

  /** Longest step if nothing else is asked for [s]. */
  public static final double DEFAULT_LONGEST_STEP = 640;

  /** When profiles are kept if nothing else is asked for [s]. */
  public static final List<Double> DEFAULT_PROFILE_TIMES =
      List.of(30.0, 60.0, 120.0, 300.0, 1800.0);

  public RunSettings {
    profileTimes = List.copyOf(profileTimes);
    if (!(leadIn >= 0 && length > 0)) {
      throw new IllegalArgumentException("need lead-in >= 0 s and length > 0 s");
    }
    if (!(shortestStep > 0 && longestStep >= shortestStep)) {
      throw new IllegalArgumentException("need 0 < shortest step <= longest step");
    }
  }

  /**
   * A run stepped alike, for a study: no profiles are kept.
   *
   * @param start temperature of everything at the beginning [°C]
   * @param before time run before the recording begins [s]
   * @param recorded time [s]
   */
  public RunSettings lasting(double start, double before, double recorded) {
    return new RunSettings(start, before, recorded, shortestStep, longestStep, List.of());
  }

  /** This run after another lead-in [s]. */
  public RunSettings after(double before) {
    return new RunSettings(
        startTemperature, before, length, shortestStep, longestStep, profileTimes);
  }

  /** This run with other steps [s]. */
  public RunSettings withSteps(double shortest, double longest) {
    return new RunSettings(startTemperature, leadIn, length, shortest, longest, profileTimes);
  }
}
