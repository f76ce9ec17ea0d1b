package settle.sim.bench;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import settle.sim.atrest.Balancing;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.valve.Valve;

/**
 * Puts a valve of a house through everything the bench has. The runs in its room, which take
 * longest, can be asked for one by one, so that whoever asks may have them done side by side.
 */
public final class ValveBench {

  /** Weather in which load lines are drawn, above the design temperature [K]. */
  private static final double[] MILDER = {0, 6, 12};

  private final HouseModel model;
  private final int branch;
  private final RoomTest room;

  /**
   * @param house the house
   * @param arrangement one of its arrangements
   * @param branch position of the valve's branch
   */
  public ValveBench(House house, Arrangement arrangement, int branch) {
    model = Balancing.asRun(house, arrangement);
    this.branch = branch;
    room = new RoomTest(model, branch);
  }

  /**
   * The branch whose valve there is most to see of: the first thermostatic valve, else the first
   * motor head, actuator or opening.
   *
   * @param branches some branches, at least one
   * @return position of one of them
   */
  public static int mostTelling(List<Branch> branches) {
    int best = 0;
    for (int b = 1; b < branches.size(); b++) {
      if (rank(branches.get(b).valve()) < rank(branches.get(best).valve())) {
        best = b;
      }
    }
    return best;
  }

  private static int rank(Valve valve) {
    if (valve.thermostatic()) {
      return 0;
    }
    if (valve.throttles()) {
      return 1;
    }
    return valve.hasHead() ? 2 : 3;
  }

  /**
   * The valve in its room while something changes.
   *
   * @return empty where there is nothing to change: no glass, no room next door, a valve that
   *     cannot be turned
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public Optional<Course> through(Disturbance disturbance) {
    return room.through(disturbance);
  }

  /** Everything, one after the other. */
  public BenchFindings findings() {
    return findings(
        Stream.of(Disturbance.values()).map(this::through).flatMap(Optional::stream).toList());
  }

  /**
   * The valve on the rig, in its branch and against its room's load, with courses that were run.
   */
  public BenchFindings findings(List<Course> courses) {
    House house = model.house();
    Branch fitted = model.arrangement().branches().get(branch);
    RigFindings rig = RigFindings.of(fitted.valve(), house.water().density());
    List<LoadLine> lines =
        Arrays.stream(MILDER)
            .mapToObj(milder -> LoadLine.of(model, branch, house.designOutdoor() + milder))
            .toList();
    return new BenchFindings(
        house,
        model.arrangement().name(),
        model.arrangement().place(branch),
        model.arrangement().label(branch),
        fitted,
        rig,
        InBranch.of(model, branch, rig.loop()),
        lines,
        courses);
  }
}
