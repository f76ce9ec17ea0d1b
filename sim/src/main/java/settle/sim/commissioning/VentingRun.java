package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import settle.sim.commissioning.Venting.Passage;
import settle.sim.commissioning.Venting.Stages;
import settle.sim.commissioning.Venting.Turn;
import settle.sim.emitter.Emitter;
import settle.sim.engine.HouseRun;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.RunSettings;
import settle.sim.house.Storeys;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.source.Buffer;

/**
 * Opens one emitter of a cold house after the other, all others shut, and looks when hot water has
 * been through.
 *
 * <p>The order is common practice, no source: from the lowest storey up, so that air is driven
 * upwards, and on each from the nearest to the source to the farthest, so that the mains behind are
 * flushed by what lies ahead.
 */
public final class VentingRun {

  private final HouseModel day;
  private final double start;
  private final Set<Integer> keptOpen = new TreeSet<>();
  private final Set<Integer> forSource = new TreeSet<>();
  private final Lockshield open;

  private VentingRun(HouseModel day, double start) {
    this.day = day;
    this.start = start;
    open = day.house().distribution().lockshields().open();
  }

  /**
   * Vents a house, in thought.
   *
   * @param asRun the house, lockshields and pump as they are set
   * @param day the day; when it is read does not matter
   * @throws ArithmeticException if the model could not be solved; the message names room and time
   */
  public static Venting of(HouseModel asRun, CommissioningDay day) {
    return new VentingRun(CommissioningRun.onTheDay(asRun, day), day.start()).find();
  }

  private Venting find() {
    Storeys storeys = Storeys.of(day.house());
    List<Integer> order = order(storeys);
    keepOpen(order, storeys);
    keepOpenForSource(order);
    double[] inTurn = inTurn(order);
    List<Turn> turns = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      int b = order.get(i);
      Passage asSet = passage(b, false);
      turns.add(
          new Turn(
              b,
              day.arrangement().place(b),
              storeys.of(day.branchRoom(b)),
              keptOpen.contains(b) || forSource.contains(b),
              asSet,
              branch(b).lockshield().kv() >= open.kv() ? asSet : passage(b, true),
              Double.isNaN(inTurn[i]) ? OptionalDouble.empty() : OptionalDouble.of(inTurn[i])));
    }
    return new Venting(
        turns, List.copyOf(keptOpen), List.copyOf(forSource), order.get(order.size() - 1));
  }

  /** Emitters that are not shut by hand, as they are opened. */
  private List<Integer> order(Storeys storeys) {
    List<Integer> order = new ArrayList<>();
    boolean[] shut = day.arrangement().shut();
    for (int b = 0; b < day.branches(); b++) {
      if (!shut[b]) {
        order.add(b);
      }
    }
    order.sort(
        Comparator.<Integer>comparingInt(b -> storeys.of(day.branchRoom(b)))
            .thenComparingDouble(this::wayFromSource));
    return order;
  }

  /** Length of pipe from the source to an emitter and back [m]. */
  private double wayFromSource(int b) {
    double sum = 0;
    Loops loops = day.arrangement().loops();
    for (int before = b; before >= 0; before = loops.after(before)) {
      sum += branch(before).pipe().length();
    }
    List<Main> mains = day.house().distribution().mains();
    for (int m = day.house().distribution().mainIndex(branch(b).fedFrom()); m >= 0; ) {
      sum += mains.get(m).pipe().length();
      m = day.house().distribution().mainIndex(mains.get(m).fedFrom());
    }
    return sum;
  }

  /** Where some are skirting, what stands in the highest storey stays open: air gathers there. */
  private void keepOpen(List<Integer> order, Storeys storeys) {
    boolean anyRun = order.stream().anyMatch(b -> run(b).isPresent());
    int top = order.stream().mapToInt(b -> storeys.of(day.branchRoom(b))).max().orElse(0);
    for (int b : order) {
      if (anyRun && run(b).isEmpty() && storeys.of(day.branchRoom(b)) == top) {
        keptOpen.add(b);
      }
    }
  }

  /** A source that asks for more water than one emitter passes gets that of the largest besides. */
  private void keepOpenForSource(List<Integer> order) {
    boolean apart =
        day.house()
            .buffer()
            .filter(buffer -> buffer.placement() == Buffer.Placement.PARALLEL)
            .isPresent();
    double least = apart ? 0 : day.house().source().minimumFlow();
    List<Integer> largest = new ArrayList<>(order);
    largest.removeAll(keptOpen);
    largest.sort(Comparator.comparingDouble(b -> -branch(b).emitter().ratedOutput()));
    for (int i = 0; i < largest.size() && leastFlow(order) < least; i++) {
      forSource.add(largest.get(i));
    }
  }

  /** Least flow that the source gets in any turn [kg/s]. */
  private double leastFlow(List<Integer> order) {
    double least = Double.POSITIVE_INFINITY;
    for (int b : order) {
      HouseModel opened = with(b, false);
      NetworkFlow network = opened.networkFlow();
      network.solve(
          opened.arrangement().branches().stream()
              .mapToDouble(branch -> branch.valve().kvMaximum())
              .toArray(),
          true);
      least = Math.min(least, network.totalFlow());
    }
    return least;
  }

  /** The house with one emitter open, and what is kept open. */
  private HouseModel with(int opened, boolean fully) {
    List<Branch> branches = new ArrayList<>();
    for (int b = 0; b < day.branches(); b++) {
      Branch branch = branch(b);
      if (b == opened) {
        boolean turned = fully && branch.lockshield().isFitted();
        branches.add(turned ? branch.withLockshield(open) : branch);
      } else if (keptOpen.contains(b) || forSource.contains(b) || isOnTheWay(b, opened)) {
        branches.add(branch);
      } else {
        branches.add(branch.withLockshield(new Lockshield(branch.lockshield().name(), 0, 0)));
      }
    }
    Arrangement others = day.arrangement().withBranches(branches);
    return day.like(day.house(), others);
  }

  /** Whether the water of one emitter has to pass another, in one loop with it. */
  private boolean isOnTheWay(int other, int emitter) {
    Loops loops = day.arrangement().loops();
    return loops.first(other) == loops.first(emitter) && branch(other).loop().byPass().isEmpty();
  }

  /** From cold, this emitter alone. */
  private Passage passage(int b, boolean fully) {
    HouseRun run = new HouseRun(with(b, fully), settings(Venting.LONGEST));
    Watched watched = new Watched(run, 0, b, start);
    double massFlow = run.massFlow(b);
    return new Passage(massFlow, speed(b, massFlow), front(b, massFlow), watched.stages(asked()));
  }

  /** One emitter after the other without a pause; of each how long it takes, NaN for too long. */
  private double[] inTurn(List<Integer> order) {
    HouseRun run = new HouseRun(with(order.get(0), true), settings(Venting.LONGEST * order.size()));
    double[] taken = new double[order.size()];
    for (int i = 0; i < taken.length; i++) {
      int b = order.get(i);
      double from = i * Venting.LONGEST;
      if (i > 0) {
        run.goOnAs(with(b, true), from);
      }
      taken[i] =
          new Watched(run, from, b, start).stages(asked()).map(Stages::total).orElse(Double.NaN);
    }
    return taken;
  }

  /** Flow temperature that the source is asked for on the day [°C]. */
  private double asked() {
    return day.house()
        .control()
        .flowCurve()
        .map(curve -> curve.setPoint(day.house().weather().outdoorAt(0), 0))
        .orElse(day.house().source().flowSetPoint());
  }

  private RunSettings settings(double length) {
    return new RunSettings(
        start, 0, length, RunSettings.DEFAULT_SHORTEST_STEP, 4 * Watched.LOOK, List.of());
  }

  /** Speed in the run, or in the pipe of what has none [m/s]. */
  private double speed(int b, double massFlow) {
    double volumeFlow = massFlow / day.house().water().density();
    Emitter emitter = branch(b).emitter();
    if (run(b).isEmpty()) {
      return volumeFlow / branch(b).pipe().area();
    }
    Emitter.Run run = run(b).get();
    double area = emitter.waterVolume() / (run.length() * run.tubes());
    return leastShare(emitter, massFlow) * volumeFlow / area;
  }

  /** Share of the water that the run with less of it gets [-]. */
  private static double leastShare(Emitter emitter, double massFlow) {
    double shorter = emitter.shareOfShorter(massFlow);
    return shorter > 0 ? Math.min(shorter, 1 - shorter) : 1;
  }

  /** For how long a front passes the longest part of an emitter [s]. */
  private double front(int b, double massFlow) {
    Emitter emitter = branch(b).emitter();
    double capacity = HouseModel.heatCapacity(emitter, day.house().water());
    double part = run(b).map(r -> r.longest() / r.length()).orElse(1.0);
    double share = 1 - emitter.shareOfShorter(massFlow);
    return part * capacity / (share * massFlow * day.house().water().specificHeat());
  }

  private Optional<Emitter.Run> run(int b) {
    return branch(b).emitter().run();
  }

  private Branch branch(int b) {
    return day.arrangement().branches().get(b);
  }
}
