package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.NormalDistribution;
import settle.sim.atrest.Balancing;
import settle.sim.house.Uncertainty;
import settle.sim.model.HouseModel;
import settle.sim.study.DrawnHouse;

/**
 * What the coldest weather makes of each room in all but a share 1 - p of the houses it may be.
 * What all rooms share is put where their shortfalls grow fastest, beta standard deviations from
 * the house as stated; by themselves each valve is set as far wrong; the two together, being
 * independent, move a room by
 *
 * <pre>
 *   sqrt(shared² + own²),   Phi(beta) = p
 * </pre>
 *
 * <p>exact where the shortfall is straight in all that is uncertain: first order reliability
 * (Hasofer and Lind 1974, from memory), its direction found at the mean. A warm-up is asked of the
 * house that the shared part makes.
 */
public final class Reserve {

  /** Width of the difference quotient, in standard deviations. */
  private static final double WIDTH = 0.5;

  /** What all rooms share, put where it is hard; valves as stated. */
  private final double[] shared;

  /** Every valve set too low, all else as stated. */
  private final double[] own;

  private final double[] stated;

  /** The house as stated and what the shared part makes of it, prepared. */
  private final HouseModel model;

  private final HouseModel hard;

  /**
   * @param plant the house as stated, its settings near those looked for
   * @param sure p: share of houses in which each room is to be held [-]
   */
  public Reserve(Plant plant, double sure) {
    model = Balancing.asRun(plant.house(), plant.arrangement());
    double beta = new NormalDistribution().inverseCumulativeProbability(sure);
    DrawnHouse drawn = new DrawnHouse(model);
    int n = drawn.inputs().size();
    stated = new double[n];
    shared = new double[n];
    own = new double[n];
    double length = 0;
    for (int d = 0; d < n; d++) {
      if (drawn.inputs().get(d) == Uncertainty.VALVE_SETTING) {
        own[d] = -beta;
      } else {
        double[] at = new double[n];
        at[d] = WIDTH;
        shared[d] = Arrays.stream(drawn.shortfalls(at)).sum();
        at[d] = -WIDTH;
        shared[d] -= Arrays.stream(drawn.shortfalls(at)).sum();
        length = Math.hypot(length, shared[d]);
      }
    }
    for (int d = 0; d < n && length > 0; d++) {
      shared[d] *= beta / length;
    }
    hard = drawn.model(drawn.at(shared));
  }

  /**
   * What is asked of the coldest weather, with what comes of it in all but that share of houses.
   *
   * @param plant the house, otherwise set
   */
  public List<Aim> aims(Plant plant) {
    DrawnHouse drawn = new DrawnHouse(plant.model(model));
    double[] middle = drawn.shortfalls(stated);
    double[] valves = drawn.shortfalls(own);
    DrawnHouse.Drawn far = drawn.at(shared);
    HouseModel farModel = hard.like(far.house(), far.arrangement());
    List<Aim> all = new ArrayList<>();
    int room = 0;
    for (Aim aim : Aim.atRest(farModel, far.outdoor())) {
      if (aim.kind() == Aim.Kind.SETTLED) {
        double usual = middle[room] + aim.limit();
        double byAll = Math.max(aim.value() - usual, 0);
        double byItself = Math.max(valves[room] - middle[room], 0);
        all.add(
            new Aim(
                aim.kind(),
                aim.when(),
                aim.room(),
                usual + Math.hypot(byAll, byItself),
                aim.limit()));
        room++;
      } else {
        all.add(aim);
      }
    }
    return all;
  }
}
