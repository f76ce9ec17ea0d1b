package settle.sim.commissioning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
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

  /** How often temperatures are looked at [s]: minutes are what is asked for. */
  private static final double LOOK = 20;

  /** How often from {@link #FINELY} on [s]. */
  private static final double LATER_LOOK = 60;

  /** Up to when they are looked at that often [s]. */
  private static final double FINELY = 1200;

  /**
   * Over how much of the end of a turn its last temperature is taken [s]: sources start and stop.
   */
  private static final double END = 900;

  /** Rise below which no hot water came [K]. */
  private static final double LEAST_RISE = 6;

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
    for (int b = 0; b < day.branches(); b++) {
      if (!branch(b).isShut()) {
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
    double sum = branch(b).pipe().length();
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
        branches.add(fully ? branch.withLockshield(open) : branch);
      } else if (keptOpen.contains(b) || forSource.contains(b)) {
        branches.add(branch);
      } else {
        branches.add(branch.withLockshield(new Lockshield(branch.lockshield().name(), 0, 0)));
      }
    }
    Arrangement others = day.arrangement().withBranches(branches);
    return day.like(day.house(), others);
  }

  /** From cold, this emitter alone. */
  private Passage passage(int b, boolean fully) {
    HouseRun run = new HouseRun(with(b, fully), settings(Venting.LONGEST));
    Watch source = new Watch(run::flowTemperature);
    Watch inlet = new Watch(() -> run.entering(b));
    Watch far = new Watch(() -> run.face(b, 1));
    Watch back = new Watch(() -> run.leaving(b));
    watch(run, 0, Venting.LONGEST, List.of(source, inlet, far, back));
    double massFlow = run.massFlow(b);
    double atSource = source.arrival();
    double atInlet = inlet.arrival();
    double done = Math.max(far.arrival(), back.arrival());
    double first = Math.min(atSource, atInlet);
    boolean there = done + atInlet + atSource < Double.POSITIVE_INFINITY;
    return new Passage(
        massFlow,
        speed(b, massFlow),
        front(b, massFlow),
        there
            ? Optional.of(
                new Stages(
                    first,
                    Math.max(0, atInlet - first),
                    Math.max(0, done - Math.max(atInlet, first))))
            : Optional.empty());
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
      Watch far = new Watch(() -> run.face(b, 1));
      Watch back = new Watch(() -> run.leaving(b));
      watch(run, from, from + Venting.LONGEST, List.of(far, back));
      double done = Math.max(far.arrival(), back.arrival());
      taken[i] = Double.isInfinite(done) ? Double.NaN : done;
    }
    return taken;
  }

  private RunSettings settings(double length) {
    return new RunSettings(
        start, 0, length, RunSettings.DEFAULT_SHORTEST_STEP, 4 * LOOK, List.of());
  }

  private static void watch(HouseRun run, double from, double to, List<Watch> all) {
    double at = 0;
    while (at < to - from) {
      at += at < FINELY ? LOOK : LATER_LOOK;
      run.goOnTo(from + at);
      for (Watch watch : all) {
        watch.look(at);
      }
    }
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

  /** A temperature that is looked at again and again. */
  private final class Watch {
    private final DoubleSupplier temperature;
    private final List<Double> when = new ArrayList<>();
    private final List<Double> seen = new ArrayList<>();

    Watch(DoubleSupplier temperature) {
      this.temperature = temperature;
    }

    void look(double at) {
      when.add(at);
      seen.add(temperature.getAsDouble());
    }

    /**
     * When it first came close to where it is at the end [s]; infinite where it does not come to
     * stand, or where no hot water came.
     */
    double arrival() {
      double end = when.get(when.size() - 1);
      double last = mean(end - END, end);
      double before = mean(end - 2 * END, end - END);
      if (Math.abs(last - before) > Venting.CLOSE || last < start + LEAST_RISE) {
        return Double.POSITIVE_INFINITY;
      }
      int i = 0;
      while (seen.get(i) < last - Venting.CLOSE) {
        i++;
      }
      return when.get(i);
    }

    private double mean(double from, double to) {
      double sum = 0;
      int count = 0;
      for (int i = 0; i < seen.size(); i++) {
        if (when.get(i) > from && when.get(i) <= to) {
          sum += seen.get(i);
          count++;
        }
      }
      return sum / count;
    }
  }
}
