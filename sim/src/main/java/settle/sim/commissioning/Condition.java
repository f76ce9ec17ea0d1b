package settle.sim.commissioning;

import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * How a house is found on commissioning day: as it was designed, or with something changed.
 *
 * @param house the house as it is on the day
 * @param arrangement its heating, every valve open
 * @param start temperature of everything when the source is started [°C]
 * @param late by how much later than noted it is read [s]
 * @param exchanged branches whose flow and return are exchanged: what is taken for the return is
 *     the pipe that water enters by
 */
record Condition(
    House house, Arrangement arrangement, double start, double late, SortedSet<Integer> exchanged) {

  /** A house as it was designed. */
  static Condition of(HouseModel onTheDay, CommissioningDay day) {
    return new Condition(onTheDay.house(), onTheDay.arrangement(), day.start(), 0, new TreeSet<>());
  }

  Condition with(House other) {
    return new Condition(other, arrangement, start, late, exchanged);
  }

  Condition with(Arrangement other) {
    return new Condition(house, other, start, late, exchanged);
  }

  Condition startedAt(double other) {
    return new Condition(house, arrangement, other, late, exchanged);
  }

  Condition readLater(double by) {
    return new Condition(house, arrangement, start, by, exchanged);
  }

  Condition withBranch(int branch, UnaryOperator<Branch> change) {
    return with(arrangement.withBranch(branch, change));
  }

  Condition withExchanged(int branch) {
    TreeSet<Integer> more = new TreeSet<>(exchanged);
    more.add(branch);
    return new Condition(house, arrangement, start, late, more);
  }

  /**
   * Starts it and reads it.
   *
   * @param like a prepared house whose fabric is shared where it is the same
   * @param points what is read
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  CommissioningRun.Taken read(HouseModel like, List<Point> points) {
    List<Point> really = points.stream().map(this::really).toList();
    return CommissioningRun.read(like.like(house, arrangement), start, really);
  }

  /** What is read in truth where somebody means to read a point. */
  private Point really(Point meant) {
    Point.Kind kind = meant.kind();
    if (exchanged.contains(meant.which())) {
      kind =
          switch (kind) {
            case INLET -> Point.Kind.RETURN;
            case RETURN -> Point.Kind.INLET;
            case FAR_END -> oneWay(meant.which()) ? Point.Kind.INLET : Point.Kind.FAR_END;
            case AIR, FLOW -> kind;
          };
    }
    return new Point(kind, meant.which(), meant.time() + late);
  }

  /** Whether an emitter's far end is where its water leaves. */
  private boolean oneWay(int branch) {
    return arrangement
        .branches()
        .get(branch)
        .emitter()
        .run()
        .filter(r -> r.tubes() == 1)
        .isPresent();
  }
}
