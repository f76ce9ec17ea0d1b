package settle.sim.result;

import java.util.OptionalDouble;

/**
 * How a source runs: its starts, and whether the water is enough to keep it running.
 *
 * @param starts within the recording
 * @param startsPerHour mean over the recording [1/h]
 * @param mostStartsInAnHour largest number within any hour
 * @param shortestRun shortest complete run [s]; empty if there was none
 * @param timeAtMinimum time running at least output [s]
 * @param defrosts within the recording
 * @param timeBlocked time it was called but did not run because too little water flowed [s]
 * @param waterVolume water in circulation: source, buffer, pipes and emitters [m³]
 * @param waterNeeded least volume that keeps the source's shortest running time at least output in
 *     mild weather with no heat taken, within its switching band [m³]; empty if it asks for none
 */
public record CyclingFigures(
    int starts,
    double startsPerHour,
    int mostStartsInAnHour,
    OptionalDouble shortestRun,
    double timeAtMinimum,
    int defrosts,
    double timeBlocked,
    double waterVolume,
    OptionalDouble waterNeeded) {

  /** Starts per day, mean over the recording [1/d]. */
  public double startsPerDay() {
    return startsPerHour * 24;
  }
}
