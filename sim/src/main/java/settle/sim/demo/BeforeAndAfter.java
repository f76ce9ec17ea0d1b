package settle.sim.demo;

import java.util.List;
import settle.sim.engine.Simulation;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.result.RunResult;

/**
 * A demonstration that has been run.
 *
 * @param demonstration what it shows
 * @param house the house before, whose rooms are those after
 * @param before the first run
 * @param after the second
 */
public record BeforeAndAfter(
    Demonstration demonstration, House house, RunResult before, RunResult after) {

  /**
   * Runs it, each house in its first arrangement.
   *
   * @param demonstration what to show
   * @param before the house before
   * @param after the house after
   * @throws ArithmeticException if a model could not be solved
   */
  public static BeforeAndAfter of(Demonstration demonstration, House before, House after) {
    return new BeforeAndAfter(
        demonstration,
        before,
        Simulation.run(before, before.arrangements().get(0)),
        Simulation.run(after, after.arrangements().get(0)));
  }

  /** A figure before, in the unit of its reading. */
  public double before(Figure figure) {
    return read(before, figure);
  }

  /** A figure after, in the unit of its reading. */
  public double after(Figure figure) {
    return read(after, figure);
  }

  private double read(RunResult result, Figure figure) {
    return figure.reading().of(result, room(figure), branch(result, figure), demonstration.read());
  }

  /** Position of a figure's room in the house; 0 for the house as a whole. */
  public int room(Figure figure) {
    return figure.room().isEmpty() ? 0 : house.roomIndex(figure.room());
  }

  /**
   * Position of a figure's branch in an arrangement; 0 if it is about none.
   *
   * @throws IllegalArgumentException if the room has no such emitter
   */
  public static int branch(RunResult result, Figure figure) {
    if (!figure.reading().ofEmitter()) {
      return 0;
    }
    List<Branch> branches = result.arrangement().branches();
    int count = 0;
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b).room().equals(figure.room()) && count++ == figure.emitter()) {
        return b;
      }
    }
    throw new IllegalArgumentException(
        "room '" + figure.room() + "' has no emitter " + figure.emitter());
  }
}
