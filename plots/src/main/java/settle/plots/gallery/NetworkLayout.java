package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import settle.plots.chart.Legend;
import settle.plots.drawing.Theme;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;

/**
 * Where everything stands on a drawing of the network: the tree of mains from left to right, one
 * row per branch, all emitters in one column; those of a loop below each other.
 */
final class NetworkLayout {

  /** Height of a row with an emitter [px]. */
  static final double ROW = 56;

  /** Height of a row with a bypass [px]. */
  static final double BYPASS_ROW = 42;

  /** Paper between the rows of one pair of mains and those of the next [px]. */
  private static final double GAP = 16;

  /** Narrowest column in which the figures of mains can be read [px]. */
  private static final double LEAST_COLUMN = 118;

  /** Widest that mains are drawn [px]. */
  private static final double MOST_COLUMN = 190;

  /** Way from the last mains to the emitter, with the valve on it [px]. */
  private static final double VALVE_ROOM = 92;

  /** Further way where emitters stand in loops, for what leads from one to the next [px]. */
  private static final double LOOP_ROOM = 36;

  private static final double TOP = Legend.HEIGHT + 14;

  /** What leaves the end of a pair of mains, or the source. */
  enum Kind {
    BRANCH,
    MAINS,
    BYPASS
  }

  /**
   * One of the ways the water can go from there.
   *
   * @param kind what it is
   * @param branch position of the branch; -1 for anything else
   * @param node the mains; null for anything else
   * @param y its middle [px]
   */
  record Outlet(Kind kind, int branch, Node node, double y) {}

  /**
   * The end of a pair of mains, or the source.
   *
   * @param main position of the mains; -1 for the source
   * @param depth how many pairs of mains lie before it
   * @param outlets from top to bottom
   * @param y where the mains arrive [px]
   */
  record Node(int main, int depth, List<Outlet> outlets, double y) {}

  private final House house;
  private final List<Branch> branches;
  private final Loops loops;
  private final double sourceEnd;
  private final double emitterRoom;
  private final double valveRoom;
  private final double column;
  private final Node root;
  private double cursor = TOP;
  private int deepest;

  /**
   * @param house whose mains they are
   * @param branches what is fed from them
   * @param sourceEnd right end of the source and what belongs to it [px]
   * @param emitterRoom width of an emitter with its words [px]
   */
  NetworkLayout(House house, List<Branch> branches, double sourceEnd, double emitterRoom) {
    this.house = house;
    this.branches = branches;
    this.loops = new Loops(branches);
    this.sourceEnd = sourceEnd;
    this.emitterRoom = emitterRoom;
    this.valveRoom = VALVE_ROOM + (loops.any() ? LOOP_ROOM : 0);
    this.root = node(-1, 0);
    double room = Theme.WIDTH - sourceEnd - valveRoom - emitterRoom;
    this.column = deepest == 0 ? 0 : Math.min(Math.max(room / deepest, LEAST_COLUMN), MOST_COLUMN);
  }

  private Node node(int main, int depth) {
    deepest = Math.max(deepest, depth);
    String name = main < 0 ? null : house.distribution().mains().get(main).name();
    List<Outlet> outlets = new ArrayList<>();
    for (int b = 0; b < branches.size(); b++) {
      if (house.distribution().mainIndex(branches.get(b).fedFrom()) == main && isFirst(b)) {
        for (int member : loops.members(b)) {
          outlets.add(new Outlet(Kind.BRANCH, member, null, row(ROW)));
        }
      }
    }
    house
        .distribution()
        .bypass()
        .filter(b -> house.distribution().mainIndex(b.fedFrom()) == main)
        .ifPresent(b -> outlets.add(new Outlet(Kind.BYPASS, -1, null, row(BYPASS_ROW))));
    List<Main> mains = house.distribution().mains();
    for (int m = 0; m < mains.size(); m++) {
      if (m != main && Objects.equals(mains.get(m).fedFrom(), name)) {
        cursor += outlets.isEmpty() ? 0 : GAP;
        Node node = node(m, depth + 1);
        outlets.add(new Outlet(Kind.MAINS, -1, node, node.y()));
      }
    }
    double y =
        outlets.isEmpty()
            ? row(ROW)
            : (outlets.get(0).y() + outlets.get(outlets.size() - 1).y()) / 2;
    return new Node(main, depth, List.copyOf(outlets), y);
  }

  private boolean isFirst(int branch) {
    return loops.after(branch) < 0;
  }

  private double row(double height) {
    cursor += height;
    return cursor - height / 2;
  }

  /** The source. */
  Node root() {
    return root;
  }

  /** Where the mains of a node end and its outlets begin [px]. */
  double x(Node node) {
    return sourceEnd + node.depth() * column;
  }

  /** Where emitters begin [px]. */
  double emitterX() {
    return Math.max(sourceEnd + deepest * column + valveRoom, Theme.WIDTH - emitterRoom);
  }

  /** Lower end of it all [px]. */
  double bottom() {
    return cursor;
  }

  /** Upper end of it all [px]. */
  static double top() {
    return TOP;
  }
}
