package settle.sim.sizing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.atrest.AtWant;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.DesignFlows;
import settle.sim.emitter.Emitter;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * How much skirting of a profile holds each room in design weather, without sun and other gains:
 * every valve open, every room at its want, each run fed with the water that the network brings it,
 * as warm as it arrives. What pipes give to a room is not counted.
 *
 * <p>Several runs of a room share what it needs as their lengths do now; its other emitters stay.
 */
public final class Sizing {

  /** Coolest and hottest flow temperature at which an answer is sought [°C]. */
  private static final double COOLEST = 20;

  private static final double HOTTEST = 90;

  /** Accuracy asked of a flow temperature [K]. */
  private static final double FLOW_ACCURACY = 0.01;

  /** Lengths between which one is sought [m]: beyond, none is said to suffice. */
  private static final double SHORTEST = 0.01;

  private static final double LONGEST = 100;

  /** Accuracy asked of a length [m]. */
  private static final double LENGTH_ACCURACY = 1e-3;

  /** Longer runs take other water, so lengths are sought again until they stay within this [m]. */
  private static final double STAYS = 0.01;

  private static final int ROUNDS = 40;

  /** From this round on, what no length held stays so: longer runs leave each other less water. */
  private static final int SETTLED = 3;

  /** From this round on, lengths move half as far as they would: some go to and fro. */
  private static final int HALVED = 6;

  /** From this round on, a run that has to be longer and longer never suffices. */
  private static final int LATE = 20;

  private final House house;
  private final Arrangement arrangement;
  private final HouseModel prepared;
  private final DesignFlows design;

  /** Which branches are sized. */
  private final boolean[] sized;

  /** Share of its room's skirting that each of them has. */
  private final double[] share;

  /** Rooms that have any of them. */
  private final int[] rooms;

  /**
   * @param house the house
   * @param arrangement one of its arrangements: what runs along walls in it is sized; where nothing
   *     does, every emitter is taken to give place to skirting
   */
  public Sizing(House house, Arrangement arrangement) {
    this.house = house;
    this.arrangement = arrangement;
    prepared = HouseModel.forRest(house, arrangement);
    design = new DesignFlows(prepared);
    List<Branch> branches = arrangement.branches();
    boolean any = branches.stream().anyMatch(Sizing::runs);
    sized = new boolean[branches.size()];
    boolean[] shut = arrangement.shut();
    for (int b = 0; b < sized.length; b++) {
      sized[b] = !shut[b] && (!any || runs(branches.get(b)));
    }
    rooms =
        IntStream.of(prepared.heatedRooms())
            .filter(r -> IntStream.range(0, sized.length).anyMatch(b -> isIn(b, r)))
            .toArray();
    share = new double[sized.length];
    for (int r : rooms) {
      double all = sumOverRuns(r, this::size);
      for (int b = 0; b < sized.length; b++) {
        share[b] = isIn(b, r) ? size(b) / all : share[b];
      }
    }
  }

  private static boolean runs(Branch branch) {
    return branch.emitter().run().isPresent();
  }

  /** Whether a branch is sized and in a room. */
  private boolean isIn(int branch, int room) {
    return sized[branch] && prepared.branchRoom(branch) == room;
  }

  private double size(int branch) {
    Emitter emitter = emitter(branch);
    return emitter.run().map(Emitter.Run::length).orElse(emitter.ratedOutput());
  }

  private Emitter emitter(int branch) {
    return arrangement.branches().get(branch).emitter();
  }

  private double sumOverRuns(int room, IntToDoubleFunction of) {
    return IntStream.range(0, sized.length).filter(b -> isIn(b, room)).mapToDouble(of).sum();
  }

  /** Whether the arrangement has any room for which skirting can be sized. */
  public boolean hasRooms() {
    return rooms.length > 0;
  }

  /**
   * Sizes a profile for every room.
   *
   * @param profile the profile
   * @param flows flow temperatures at the source [°C]
   */
  public SizedProfile of(Profile profile, double[] flows) {
    Water full = new Water(profile, alongAllWall());
    double[][] lengths = new double[flows.length][];
    Water[] water = new Water[flows.length];
    double[] guess = alongAllWall();
    for (int i = 0; i < flows.length; i++) {
      lengths[i] = lengths(profile, flows[i], guess);
      guess = usable(lengths[i], guess);
      water[i] = new Water(profile, guess);
    }
    List<SizedRoom> all = new ArrayList<>();
    for (int r : rooms) {
      List<SizedRoom.AtFlow> at = new ArrayList<>();
      for (int i = 0; i < flows.length; i++) {
        at.add(at(profile, r, flows[i], lengths[i], water[i], full));
      }
      double free = house.rooms().get(r).freeWall();
      all.add(
          new SizedRoom(
              house.rooms().get(r).name(),
              house.dayWant(r),
              design.load(r),
              free,
              free > 0 ? leastFlow(r, full) : OptionalDouble.empty(),
              at));
    }
    Emitter metre = profile.cut().of(1, emitter(firstSized()));
    return new SizedProfile(
        profile.name(),
        metre.ratedOutput(),
        metre.run().map(Emitter.Run::faceHeight).orElse(Double.NaN),
        isUsed(profile),
        all);
  }

  /**
   * What the arrangement lays in each room that it lays skirting in, beside what of that profile
   * the room needs.
   *
   * @param profiles sized by this, all that it lays among them
   */
  public List<LaidRoom> laid(List<SizedProfile> profiles) {
    List<LaidRoom> laid = new ArrayList<>();
    for (int i = 0; i < rooms.length; i++) {
      int r = rooms[i];
      int longest =
          IntStream.range(0, sized.length)
              .filter(b -> isIn(b, r))
              .boxed()
              .max(Comparator.comparingDouble(this::size))
              .orElseThrow();
      String name = emitter(longest).name();
      double length = sumOverRuns(r, b -> emitter(b).run().map(Emitter.Run::length).orElse(0.0));
      int position = i;
      profiles.stream()
          .filter(p -> p.name().equals(name))
          .findFirst()
          .ifPresent(p -> laid.add(new LaidRoom(name, length, p.rooms().get(position))));
    }
    return laid;
  }

  private int firstSized() {
    return IntStream.range(0, sized.length).filter(b -> sized[b]).findFirst().orElseThrow();
  }

  private boolean isUsed(Profile profile) {
    return IntStream.range(0, sized.length)
        .anyMatch(b -> sized[b] && emitter(b).name().equals(profile.name()));
  }

  /** Every run as long as its share of the room's free wall. */
  private double[] alongAllWall() {
    double[] lengths = new double[sized.length];
    for (int b = 0; b < lengths.length; b++) {
      double free = house.rooms().get(prepared.branchRoom(b)).freeWall();
      lengths[b] = sized[b] ? Math.max(free * share[b], SHORTEST) : 0;
    }
    return lengths;
  }

  /** Lengths that can be cut: those before, where none suffices. */
  private static double[] usable(double[] lengths, double[] before) {
    double[] usable = lengths.clone();
    for (int b = 0; b < usable.length; b++) {
      usable[b] = Double.isFinite(lengths[b]) ? Math.max(lengths[b], SHORTEST) : before[b];
    }
    return usable;
  }

  /** Length of every run at a flow temperature [m]; infinite where none suffices. */
  private double[] lengths(Profile profile, double flow, double[] guess) {
    double[] known = guess;
    boolean[] hopeless = new boolean[sized.length];
    double[] grown = new double[sized.length];
    for (int round = 0; round < ROUNDS; round++) {
      Water water = new Water(profile, known);
      AtWant at = water.at(flow);
      double[] found = new double[sized.length];
      double moved = 0;
      for (int b = 0; b < sized.length; b++) {
        if (hopeless[b]) {
          found[b] = Double.POSITIVE_INFINITY;
        } else if (sized[b]) {
          int r = prepared.branchRoom(b);
          double need = (design.load(r) - water.others(r, at)) * share[b];
          found[b] = length(profile, b, need, at);
          moved = Math.max(moved, Double.isFinite(found[b]) ? Math.abs(found[b] - known[b]) : 0);
        }
      }
      if (moved <= STAYS) {
        return found;
      }
      for (int b = 0; b < sized.length; b++) {
        hopeless[b] |= round >= SETTLED && Double.isInfinite(found[b]);
        found[b] = round >= HALVED ? (found[b] + known[b]) / 2 : found[b];
        // In a loop a longer run holds back the water of all: it may grow without end.
        double grows = found[b] - known[b];
        hopeless[b] |= round >= LATE && grows > STAYS && grows > grown[b];
        grown[b] = grows;
      }
      known = usable(found, known);
    }
    throw new ArithmeticException(
        "lengths of skirting '" + profile.name() + "' at " + flow + " °C do not come to agree");
  }

  private double length(Profile profile, int branch, double need, AtWant at) {
    if (need <= 0) {
      return 0;
    }
    DoubleUnaryOperator missing =
        metres -> output(profile.cut().of(metres, emitter(branch)), branch, at) - need;
    if (missing.applyAsDouble(LONGEST) < 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (missing.applyAsDouble(SHORTEST) > 0) {
      return SHORTEST;
    }
    return new BrentSolver(LENGTH_ACCURACY).solve(100, missing::applyAsDouble, SHORTEST, LONGEST);
  }

  /** What an emitter gives on the water that a branch brings, its room at want [W]. */
  private double output(Emitter emitter, int branch, AtWant at) {
    double capacityFlow = at.massFlow(branch) * house.water().specificHeat();
    double reference = at.reference(prepared.branchRoom(branch), emitter.radiantFraction());
    return HouseModel.emitterStepper(emitter, house.water(), reference)
        .atRest(capacityFlow, at.inlet(branch), reference);
  }

  private SizedRoom.AtFlow at(
      Profile profile, int r, double flow, double[] lengths, Water water, Water full) {
    AtWant at = water.at(flow);
    double others = water.others(r, at);
    double massFlow = sumOverRuns(r, at::massFlow);
    double inlet =
        massFlow > 0 ? sumOverRuns(r, b -> at.massFlow(b) * at.inlet(b)) / massFlow : Double.NaN;
    double need = Math.max(design.load(r) - others, 0);
    return new SizedRoom.AtFlow(
        flow,
        sumOverRuns(r, b -> lengths[b]),
        sumOverRuns(r, b -> length(profile, b, (need - at.pipeHeat(r)) * share[b], at)),
        massFlow,
        inlet,
        inlet - need / (massFlow * house.water().specificHeat()),
        others,
        at.pipeHeat(r),
        full.skirting(r, full.at(flow)));
  }

  /** Lowest flow temperature at which skirting along all of a room's free wall suffices. */
  private OptionalDouble leastFlow(int r, Water full) {
    DoubleUnaryOperator spare =
        flow -> {
          AtWant at = full.at(flow);
          return full.skirting(r, at) + full.others(r, at) - design.load(r);
        };
    if (spare.applyAsDouble(COOLEST) >= 0) {
      return OptionalDouble.of(COOLEST);
    }
    if (spare.applyAsDouble(HOTTEST) < 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BrentSolver(FLOW_ACCURACY).solve(100, spare::applyAsDouble, COOLEST, HOTTEST));
  }

  /** The house with its runs cut to given lengths of a profile. */
  private final class Water {

    private final HouseModel model;
    private final Arrangement cut;

    Water(Profile profile, double[] lengths) {
      List<Branch> branches = new ArrayList<>();
      for (int b = 0; b < sized.length; b++) {
        Branch branch = arrangement.branches().get(b);
        branches.add(
            sized[b] ? branch.withEmitter(profile.cut().of(lengths[b], branch.emitter())) : branch);
      }
      cut = arrangement.withBranches(branches);
      model = Balancing.balancedIfAsked(prepared.like(house.with(cut), cut));
    }

    AtWant at(double flow) {
      return new AtWant(model, flow);
    }

    /** What a room's runs give [W]. */
    double skirting(int room, AtWant at) {
      return sumOverRuns(room, b -> output(cut.branches().get(b).emitter(), b, at));
    }

    /** What its other emitters give [W]. */
    double others(int room, AtWant at) {
      return IntStream.range(0, sized.length)
          .filter(b -> !sized[b] && prepared.branchRoom(b) == room)
          .mapToDouble(b -> output(emitter(b), b, at))
          .sum();
    }
  }
}
