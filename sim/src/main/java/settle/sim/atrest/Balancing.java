package settle.sim.atrest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.LoopFlow;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.PipeResistance;
import settle.sim.hydraulics.Pump;
import settle.sim.model.HouseModel;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.valve.Valve;

/**
 * Balances an arrangement, or looks at it as it is: every valve open, as an installer works, heads
 * off.
 *
 * <p>The branch that needs most pressure at its design flow, its lockshield open, is the index
 * branch. The pump is set to what that branch needs, though not above its given setting, and every
 * other lockshield takes what its branch is offered too much. Where the pump does not suffice, all
 * flows are brought down in one proportion. A pump with a curve has no setting: there the index
 * branch's lockshield takes what is too much as well.
 *
 * <p>What the scenario shut by hand, a lockshield or an open valve of no Kv, stays shut, and the
 * others are balanced without it. A head turned down is not shut: it may be turned up again, and
 * its lockshield has to be right then.
 */
public final class Balancing {

  /** Velocity above which water is heard in a pipe [m/s]; common practice, no source. */
  private static final double NOISY_VELOCITY = 1.0;

  /** Pressure at which a closing valve is heard [Pa]; common practice, no source. */
  private static final double NOISY_PRESSURE = 20_000;

  /**
   * Authority below which a valve governs its flow only close to its seat [-]; common practice, no
   * source. A thermostatic valve behind a lockshield that balances it seldom has more than 0.3.
   */
  private static final double LEAST_AUTHORITY = 0.1;

  /**
   * Opening below which a lockshield blocks up and sets badly [turns]; common practice, no source.
   */
  private static final double LEAST_TURNS = 0.25;

  private final HouseModel model;
  private final House house;
  private final Arrangement given;
  private final Distribution distribution;
  private final double density;
  private final int[] branchNode;
  private final double[] designFlow;

  /** Which branches are not shut by hand. */
  private final boolean[] open;

  private final Loops loops;

  /** Of the first branch of each loop, what all of it takes; null elsewhere. */
  private final LoopFlow[] loop;

  private final PipeResistance[] branchPipe;
  private final PipeResistance[] mainPipe;

  /**
   * A prepared house as it is run, and what its flows are with every valve open.
   *
   * @param model balanced, where the arrangement asks for it
   * @param balance design flows and flows, before and after
   */
  public record AsRun(HouseModel model, Balance balance) {}

  /**
   * Prepares a house as it is run: balanced, where the arrangement asks for it.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @return the prepared house
   * @throws IllegalArgumentException if an emitter is fixed to a surface its room does not have
   */
  public static HouseModel asRun(House house, Arrangement arrangement) {
    return balancedIfAsked(new HouseModel(house, arrangement, 1));
  }

  /** A prepared house as it is run: balanced, where its arrangement asks for it. */
  public static HouseModel balancedIfAsked(HouseModel given) {
    return given.arrangement().balanced() ? asRun(given).model() : given;
  }

  /** Balances a prepared house, where its arrangement asks for it, and looks at its flows. */
  public static AsRun asRun(HouseModel given) {
    return new Balancing(given).find();
  }

  /** Flows with every valve open, lockshields and pump as this model has them. */
  public static Balance balance(HouseModel model) {
    return asRun(model).balance();
  }

  private Balancing(HouseModel model) {
    this.model = model;
    house = model.house();
    given = model.arrangement();
    distribution = house.distribution();
    density = house.water().density();
    double viscosity = house.water().viscosity();
    int n = given.branches().size();
    DesignFlows design = new DesignFlows(model);
    branchNode = new int[n];
    designFlow = new double[n];
    branchPipe = new PipeResistance[n];
    open = new boolean[n];
    boolean[] shut = given.shut();
    loops = given.loops();
    loop = new LoopFlow[n];
    for (int b = 0; b < n; b++) {
      Branch branch = given.branches().get(b);
      branchNode[b] = distribution.mainIndex(branch.fedFrom());
      designFlow[b] = design.flow(b);
      branchPipe[b] = new PipeResistance(branch.pipe(), branch.within(), density, viscosity);
      open[b] = !shut[b];
      if (loops.has(b) && loops.after(b) < 0) {
        loop[b] = new LoopFlow(loops.members(b), opened(), density, viscosity);
      }
    }
    mainPipe = new PipeResistance[distribution.mains().size()];
    for (int i = 0; i < mainPipe.length; i++) {
      mainPipe[i] = new PipeResistance(distribution.mains().get(i).pipe(), density, viscosity);
    }
  }

  /** Branches with those lockshields open that a balance sets. */
  private List<Branch> opened() {
    List<Branch> opened = new ArrayList<>(given.branches());
    for (int b = 0; b < opened.size(); b++) {
      if (given.throttledAt(b) == b) {
        opened.set(b, opened.get(b).withLockshield(distribution.lockshields().open()));
      }
    }
    return opened;
  }

  /** Whether a branch carries water for itself, or first of a loop. */
  private boolean carries(int b) {
    return loop[b] == null ? open[b] && !loops.has(b) : loop[b].set(valvesOpen());
  }

  private double[] valvesOpen() {
    return given.branches().stream().mapToDouble(b -> b.valve().kvMaximum()).toArray();
  }

  /** Sets pump and lockshields where that is asked for, and looks at the flows. */
  private AsRun find() {
    double[] need = needs(1);
    int index = 0;
    for (int b = 1; b < need.length; b++) {
      index = need[b] > need[index] ? b : index;
    }
    Pump pump = distribution.pump();
    Arrangement arrangement = given;
    List<Notice> notices = new ArrayList<>();
    if (given.balanced() && anyIsOpen()) {
      double share = attainable(need[index]);
      pump = set(share < 1 ? pump.head(total(share), density) : need[index]);
      arrangement = given.withBranches(throttled(pump, share));
      if (share < 1) {
        notices.add(Notice.about(name(index), Code.PUMP_TOO_WEAK, need[index], share));
      }
    }
    if (given.balanced()) {
      addShut(notices);
      addUnbalanced(notices);
    }
    NetworkFlow after = network(pump, arrangement);
    List<BranchBalance> branches = branches(arrangement, after);
    addLimits(notices, branches, pump, after);
    double head = after.head() + distribution.pumpPlace().drop(after.totalFlow(), density);
    Balance balance = new Balance(given.balanced(), index, need[index], head, branches, notices);
    return new AsRun(given.balanced() ? model.with(arrangement, pump) : model, balance);
  }

  private boolean anyIsOpen() {
    boolean any = false;
    for (boolean is : open) {
      any |= is;
    }
    return any;
  }

  /** Flows of every branch as it was given and as it is run. */
  private List<BranchBalance> branches(Arrangement arrangement, NetworkFlow after) {
    NetworkFlow before = network(distribution.pump(), given);
    List<BranchBalance> branches = new ArrayList<>();
    for (int b = 0; b < open.length; b++) {
      branches.add(branch(arrangement.branches().get(b), b, before, after));
    }
    return branches;
  }

  /** Flow that the branches which are not shut have together [kg/s]. */
  private double total(double share) {
    double sum = 0;
    for (int b = 0; b < open.length; b++) {
      sum += carries(b) ? designFlow[b] : 0;
    }
    return share * sum;
  }

  /**
   * Pressure each branch needs at the pump with every flow at a share of its design flow, its valve
   * and lockshield open [Pa]; 0 for one that is shut.
   */
  private double[] needs(double share) {
    double[] mainFlow = new double[mainPipe.length];
    for (int b = 0; b < branchNode.length; b++) {
      for (int j = branchNode[b]; carries(b) && j >= 0; j = parent(j)) {
        mainFlow[j] += share * designFlow[b];
      }
    }
    double[] need = new double[branchNode.length];
    double widest = distribution.lockshields().open().kv();
    double source = distribution.pumpPlace().drop(total(share), density);
    for (int b = 0; b < need.length; b++) {
      if (!carries(b)) {
        continue;
      }
      double m = share * designFlow[b];
      need[b] = source + allOpen(b, m, widest);
      for (int j = branchNode[b]; j >= 0; j = parent(j)) {
        mainPipe[j].at(mainFlow[j]);
        need[b] += mainPipe[j].drop();
      }
    }
    return need;
  }

  private int parent(int main) {
    return distribution.mainIndex(distribution.mains().get(main).fedFrom());
  }

  /** Pressure over a branch, or over a loop, its valves and what throttles it open [Pa]. */
  private double allOpen(int b, double m, double widest) {
    if (loop[b] != null) {
      loop[b].set(valvesOpen());
      loop[b].at(m);
      return loop[b].drop();
    }
    branchPipe[b].at(m);
    double kv = given.branches().get(b).valve().kvMaximum();
    double pipeAndValve = branchPipe[b].drop() + FlowCoefficient.pressureDrop(m, kv, density);
    return pipeAndValve + FlowCoefficient.pressureDrop(m, widest, density);
  }

  /** Largest share of the design flows, at most 1, for which the pump's head suffices [-]. */
  private double attainable(double headNeeded) {
    if (!(headNeeded > distribution.pump().head(total(1), density))) {
      return 1;
    }
    return new BrentSolver(1e-9)
        .solve(
            200,
            share ->
                Arrays.stream(needs(share)).max().orElseThrow()
                    - distribution.pump().head(total(share), density),
            1e-4,
            1);
  }

  private Pump set(double head) {
    Pump as = distribution.pump();
    OptionalDouble most = as.setHead();
    return most.isPresent()
        ? as.setTo(Math.min(head, most.getAsDouble())).setFor(total(1) / density)
        : as;
  }

  /** Branches with every lockshield that is not shut taking what its branch is offered too much. */
  private List<Branch> throttled(Pump pump, double share) {
    double[] need = needs(share);
    double head = pump.head(total(share), density);
    LockshieldScale scale = distribution.lockshields();
    List<Branch> branches = new ArrayList<>(given.branches());
    double widest = scale.open().kv();
    for (int b = 0; b < need.length; b++) {
      int at = given.throttledAt(b);
      if (!carries(b) || at < 0) {
        continue;
      }
      double m = share * designFlow[b];
      double take = head - need[b] + FlowCoefficient.pressureDrop(m, widest, density);
      double kv = Math.min(FlowCoefficient.kv(m, take, density), widest);
      branches.set(at, branches.get(at).withLockshield(scale.atKv(kv)));
    }
    return branches;
  }

  private NetworkFlow network(Pump running, Arrangement with) {
    NetworkFlow network =
        new NetworkFlow(
            distribution.pumpPlace().behind(running),
            distribution.mains(),
            distribution.bypass().orElse(null),
            with.branches(),
            density,
            house.water().viscosity());
    double[] open = with.branches().stream().mapToDouble(b -> b.valve().kvMaximum()).toArray();
    network.solve(open, true);
    return network;
  }

  private BranchBalance branch(Branch branch, int b, NetworkFlow before, NetworkFlow after) {
    double m = after.flow(b);
    boolean passedBy = branch.loop().byPass().isPresent();
    return new BranchBalance(
        model.branchNames().get(b),
        passedBy ? designFlowBeside(b) : designFlow[b],
        before.flow(b),
        m,
        branch.lockshield(),
        after.loopFlow(b) / (density * branch.pipe().area()),
        after.branchPressure(b),
        authority(branch.valve(), m, passedBy ? after.pressureOver(b) : after.branchPressure(b)));
  }

  /** What passes an emitter of its loop's design flow, its by-pass taking the rest [kg/s]. */
  private double designFlowBeside(int b) {
    LoopFlow all = loop[loops.first(b)];
    all.set(valvesOpen());
    all.at(designFlow[b]);
    return all.flow(b);
  }

  /** Of the valve at its nominal opening, in series with lockshield and pipe as they are. */
  private double authority(Valve valve, double m, double pressure) {
    if (m == 0 || !valve.throttles()) {
      return Double.NaN;
    }
    double rest = pressure - FlowCoefficient.pressureDrop(m, valve.kvMaximum(), density);
    double drop = FlowCoefficient.pressureDrop(m, valve.kvNominal(), density);
    return drop / (drop + Math.max(rest, 0));
  }

  private String name(int branch) {
    return given.branchNames().get(branch);
  }

  private void addShut(List<Notice> notices) {
    for (int b = 0; b < open.length; b++) {
      if (!open[b]) {
        notices.add(Notice.about(name(b), Code.LEFT_SHUT));
      }
    }
  }

  private void addUnbalanced(List<Notice> notices) {
    for (int b = 0; b < open.length; b++) {
      if (loop[b] != null && given.throttledAt(b) < 0) {
        notices.add(Notice.about(name(b), Code.LOOP_UNBALANCED));
      }
    }
  }

  private void addLimits(
      List<Notice> notices, List<BranchBalance> branches, Pump pump, NetworkFlow after) {
    for (BranchBalance b : branches) {
      if (b.velocity() > NOISY_VELOCITY) {
        notices.add(Notice.about(b.name(), Code.NOISY_BRANCH, b.velocity()));
      }
      if (b.authority() < LEAST_AUTHORITY) {
        notices.add(Notice.about(b.name(), Code.LITTLE_AUTHORITY, b.authority()));
      }
      if (given.balanced() && b.lockshield().kv() > 0 && b.lockshield().turns() < LEAST_TURNS) {
        notices.add(Notice.about(b.name(), Code.NEARLY_SHUT, LEAST_TURNS));
      }
    }
    List<Main> mains = distribution.mains();
    for (int i = 0; i < mains.size(); i++) {
      double velocity = after.mainFlow(i) / (density * mains.get(i).pipe().area());
      if (velocity > NOISY_VELOCITY) {
        notices.add(Notice.about(mains.get(i).name(), Code.NOISY_MAINS, velocity));
      }
    }
    double shut = pump.head(0, density);
    if (shut > NOISY_PRESSURE && (distribution.bypass().isEmpty() || pump.setHead().isEmpty())) {
      notices.add(Notice.of(Code.NOISY_VALVES, shut, NOISY_PRESSURE));
    }
  }
}
