package settle.sim.tuning;

import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.Uncertainty;
import settle.sim.study.DrawnHouse;

/**
 * A house, among those it may be, that is about as hard to heat as one in ten. For each room by
 * itself that is so many standard deviations from the house as stated, in the direction in which
 * the room's shortfall g grows fastest,
 *
 * <pre>
 *   z = beta grad g/|grad g|,   Phi(beta) = 0.9
 * </pre>
 *
 * <p>exact where g is straight in all that is uncertain: the design point of first order
 * reliability (Hasofer and Lind 1974, from memory), found from the mean. What all rooms share is
 * put at the mean over the rooms, each valve where its own room has it.
 */
public final class HardHouse {

  /** Phi^-1(0.9). */
  public static final double BETA = 1.2816;

  /** Width of the difference quotient, in standard deviations. */
  private static final double WIDTH = 0.5;

  private final double[] z;

  /**
   * @param plant the house as stated, its settings near those looked for
   */
  public HardHouse(Plant plant) {
    DrawnHouse drawn = new DrawnHouse(plant.house(), plant.arrangement());
    int n = drawn.inputs().size();
    List<String> rooms = drawn.rooms();
    double[][] points = new double[rooms.size()][n];
    for (int d = 0; d < n; d++) {
      double[] at = new double[n];
      at[d] = WIDTH;
      double[] above = drawn.shortfalls(at);
      at[d] = -WIDTH;
      double[] below = drawn.shortfalls(at);
      for (int r = 0; r < points.length; r++) {
        points[r][d] = above[r] - below[r];
      }
    }
    for (double[] point : points) {
      scaleTo(BETA, point);
    }
    z = new double[n];
    int firstValve = drawn.inputs().indexOf(Uncertainty.VALVE_SETTING);
    List<Branch> branches = plant.arrangement().branches();
    for (int d = 0; d < n; d++) {
      if (firstValve >= 0 && d >= firstValve) {
        z[d] = points[rooms.indexOf(branches.get(d - firstValve).room())][d];
      } else {
        for (double[] point : points) {
          z[d] += point[d] / points.length;
        }
      }
    }
  }

  private static void scaleTo(double length, double[] vector) {
    double norm = 0;
    for (double v : vector) {
      norm = Math.hypot(norm, v);
    }
    for (int d = 0; d < vector.length && norm > 0; d++) {
      vector[d] *= length / norm;
    }
  }

  /** What is asked of it in its coldest weather, with what comes of it. */
  public List<Aim> aims(Plant plant) {
    DrawnHouse.Drawn drawn = new DrawnHouse(plant.house(), plant.arrangement()).at(z);
    return Aim.ofColdest(new Plant(drawn.house(), drawn.arrangement()), drawn.outdoor());
  }
}
