package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.control.FlowCurve;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;

/**
 * What lets as many of the houses like this be held as are asked for, where the house as stated is
 * held and too few of those are: tried in the same houses, heads set too low turned up.
 *
 * @param kind what is changed
 * @param room the room whose emitters are changed
 * @param from as it is: flow temperature in design weather [°C], or rated output of the room's
 *     emitters at 75/65/20 [W]
 * @param to what does it, in the same unit
 * @param share of the houses that are held then [-]
 * @param samples how many were tried
 */
public record Lift(Kind kind, String room, double from, double to, double share, int samples) {

  /** What is changed. */
  public enum Kind {
    /** Hotter water, by the source's setting or the weather compensation's shift. */
    FLOW_TEMPERATURE,
    /** More emitter in the room that is too cold most often. */
    EMITTER
  }

  /** How much hotter the water is tried at most [K]. */
  public static final double MOST_HOTTER = 10;

  private static final double[] HOTTER = {3, 6, MOST_HOTTER};

  /** How much more emitter is tried [-]. */
  private static final double[] LARGER = {1.25, 1.5};

  /** Houses tried; their error is some 4 of a hundred, and what is found is said with its share. */
  private static final int SAMPLES = 128;

  /**
   * Tries hotter water first, then more emitter.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param room the room that is too cold most often
   * @param seed of the draws that found it so
   * @param workers who settles the houses
   * @return empty if nothing that was tried does it
   */
  static Optional<Lift> of(
      House house, Arrangement arrangement, String room, long seed, Workers workers) {
    double asked = new Holding(house, arrangement).asked(house.designOutdoor());
    double highest = Math.min(house.source().highestFlow(), Holding.HOTTEST_FLOW);
    for (double more : HOTTER) {
      if (asked + more <= highest) {
        double share = share(hotter(house, more), arrangement, seed, workers);
        if (share >= house.aims().sure()) {
          return Optional.of(
              new Lift(Kind.FLOW_TEMPERATURE, room, asked, asked + more, share, SAMPLES));
        }
      }
    }
    double rated = arrangement.ratedOutput(room);
    for (double larger : LARGER) {
      double share = share(house, enlarged(arrangement, room, larger), seed, workers);
      if (share >= house.aims().sure()) {
        return Optional.of(new Lift(Kind.EMITTER, room, rated, rated * larger, share, SAMPLES));
      }
    }
    return Optional.empty();
  }

  private static double share(House house, Arrangement arrangement, long seed, Workers workers) {
    House with = house.withArrangements(List.of(arrangement));
    return Odds.of(with, arrangement, SAMPLES, seed, workers, done -> {}).headsTurnedUp().keepUp();
  }

  private static House hotter(House house, double by) {
    Optional<FlowCurve> curve = house.control().flowCurve();
    if (curve.isEmpty()) {
      return house.withSource(house.source().setTo(house.source().flowSetPoint() + by));
    }
    FlowCurve c = curve.get();
    return house.withControl(
        house
            .control()
            .withFlowCurve(
                new FlowCurve(
                    c.slope(), c.shift() + by, c.lowest(), c.highest() + by, c.roomInfluence())));
  }

  private static Arrangement enlarged(Arrangement arrangement, String room, double factor) {
    List<Branch> branches = new ArrayList<>();
    for (Branch branch : arrangement.branches()) {
      branches.add(
          branch.room().equals(room)
              ? branch.withEmitter(branch.emitter().scaled(factor))
              : branch);
    }
    return arrangement.withBranches(branches);
  }
}
