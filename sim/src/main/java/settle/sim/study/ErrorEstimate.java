package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import settle.sim.engine.Fineness;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

/**
 * How far the headline figures of a run are from where they would come to if everything were run at
 * higher resolution: steps, agreement within them, parcels of water, cut of the fabric. An estimate
 * of the numerical error, not of what is unknown about the house.
 *
 * <p>The run is made again twice and four times as fine; of both differences the larger counts.
 * Two, because a source or a head that goes on and off may by chance end alike in two runs, and
 * steps that only halve leave half of an error that falls in proportion to them.
 *
 * @param rooms per room, in the house's order
 * @param flowMean of the mean flow temperature [K]
 * @param returnMean of the mean return temperature [K]
 * @param sourceHeat of the heat made by the source, as a share of it [-]
 */
public record ErrorEstimate(
    List<RoomError> rooms, double flowMean, double returnMean, double sourceHeat) {

  /** How many times finer the runs are that the given one is compared with [-]. */
  private static final double[] TIMES = {2, 4};

  /** How much finer the fabric is cut in them: its own budget is a hundredth of a kelvin [-]. */
  private static final double FABRIC = 2;

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
    ErrorEstimate worst = null;
    for (double times : TIMES) {
      ErrorEstimate found = between(result, finer(house, result.arrangement(), times));
      worst = worst == null ? found : worst.orWorse(found);
    }
    return worst;
  }

  /** This house run so many times as fine [-]. */
  static RunResult finer(House house, Arrangement arrangement, double times) {
    RunSettings run = house.run();
    return Simulation.run(
        house,
        arrangement,
        run.withSteps(run.shortestStep() / times, run.longestStep() / times),
        FABRIC,
        Fineness.finer(times));
  }

  /** Differences of the figures of two runs. */
  static ErrorEstimate between(RunResult one, RunResult other) {
    List<RoomError> rooms = new ArrayList<>();
    for (int r = 0; r < one.rooms().size(); r++) {
      RoomFigures a = one.rooms().get(r);
      RoomFigures b = other.rooms().get(r);
      rooms.add(
          new RoomError(
              a.name(),
              both(a.warmUp(), b.warmUp(), (x, y) -> Math.abs(x - y)),
              Math.abs(a.overshoot() - b.overshoot()),
              Math.abs(a.lastDay().operative() - b.lastDay().operative())));
    }
    return new ErrorEstimate(
        rooms,
        Math.abs(one.plant().flowMean() - other.plant().flowMean()),
        Math.abs(one.plant().returnMean() - other.plant().returnMean()),
        Math.abs(one.plant().sourceHeat() - other.plant().sourceHeat())
            / other.plant().sourceHeat());
  }

  private static OptionalDouble both(OptionalDouble a, OptionalDouble b, DoubleBinaryOperator of) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(of.applyAsDouble(a.getAsDouble(), b.getAsDouble()))
        : OptionalDouble.empty();
  }

  private ErrorEstimate orWorse(ErrorEstimate other) {
    List<RoomError> worse = new ArrayList<>();
    for (int r = 0; r < rooms.size(); r++) {
      RoomError a = rooms.get(r);
      RoomError b = other.rooms.get(r);
      worse.add(
          new RoomError(
              a.name,
              both(a.warmUp, b.warmUp, Math::max),
              Math.max(a.overshoot, b.overshoot),
              Math.max(a.lastOperative, b.lastOperative)));
    }
    return new ErrorEstimate(
        worse,
        Math.max(flowMean, other.flowMean),
        Math.max(returnMean, other.returnMean),
        Math.max(sourceHeat, other.sourceHeat));
  }
}
