package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

/**
 * How far the headline figures of a run move when its steps are halved and its fabric is cut twice
 * as fine: an estimate of the numerical error, not of what is unknown about the house.
 *
 * @param rooms per room, in the house's order
 * @param flowMean change of the mean flow temperature [K]
 * @param returnMean change of the mean return temperature [K]
 * @param sourceHeat change of the heat made by the source, as a share of it [-]
 */
public record ErrorEstimate(
    List<RoomError> rooms, double flowMean, double returnMean, double sourceHeat) {

  /**
   * Changes of one room's figures.
   *
   * @param name the room
   * @param warmUp change of the warm-up time [s]; empty unless both runs warm up
   * @param overshoot change of the overshoot [K]
   * @param lastOperative change of the operative temperature at which it settles, or of its mean of
   *     the last day [K]
   */
  public record RoomError(
      String name, OptionalDouble warmUp, double overshoot, double lastOperative) {}

  /**
   * Runs again, finer, and compares.
   *
   * @param house the house
   * @param result a run with the house's own settings
   */
  public static ErrorEstimate of(House house, RunResult result) {
    RunSettings run = house.run();
    RunResult fine =
        Simulation.run(
            house,
            result.arrangement(),
            run.withSteps(run.shortestStep() / 2, run.longestStep() / 2),
            2);
    List<RoomError> rooms = new ArrayList<>();
    for (int r = 0; r < result.rooms().size(); r++) {
      RoomFigures a = result.rooms().get(r);
      RoomFigures b = fine.rooms().get(r);
      rooms.add(
          new RoomError(
              a.name(),
              a.warmUp().isPresent() && b.warmUp().isPresent()
                  ? OptionalDouble.of(Math.abs(a.warmUp().getAsDouble() - b.warmUp().getAsDouble()))
                  : OptionalDouble.empty(),
              Math.abs(a.overshoot() - b.overshoot()),
              Math.abs(a.lastDay().operative() - b.lastDay().operative())));
    }
    return new ErrorEstimate(
        rooms,
        Math.abs(result.plant().flowMean() - fine.plant().flowMean()),
        Math.abs(result.plant().returnMean() - fine.plant().returnMean()),
        Math.abs(result.plant().sourceHeat() - fine.plant().sourceHeat())
            / fine.plant().sourceHeat());
  }
}
