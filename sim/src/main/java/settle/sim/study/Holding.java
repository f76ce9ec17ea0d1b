package settle.sim.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.DesignFlows;
import settle.sim.atrest.FullOutput;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * What an arrangement holds at rest, room by room, without sun and other gains: found as roots of
 * the settled house, not by runs.
 *
 * <p>A room is held where it settles no lower than its want less the tolerance.
 */
public final class Holding {

  /**
   * Outdoor temperature below which nobody asks whether a house is held, unless its design weather
   * is colder [°C]; common practice, no source.
   */
  public static final double COLDEST = -20;

  /** Heating limit: up to which a house is heated [°C]; EN 14825:2018 ends its bins there. */
  public static final double MILDEST = 15;

  /** Flow temperatures between which answers are sought [°C]. */
  public static final double COOLEST_FLOW = 20;

  /** Upper end of those [°C]. */
  public static final double HOTTEST_FLOW = 90;

  /** Spacing of the outdoor temperatures looked at before a root is sought [K]. */
  private static final double SPACING = 3;

  /** Accuracy asked of an outdoor or flow temperature [K]. */
  private static final double ACCURACY = 0.01;

  private final House house;
  private final HouseModel model;
  private final double[] none;

  /** Shortfalls already found, by outdoor temperature: rooms ask for the same ones. */
  private final Map<Double, double[]> solved = new HashMap<>();

  /**
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public Holding(House house, Arrangement arrangement) {
    this(house, Balancing.asRun(house, arrangement));
  }

  /**
   * @param model the house as it is run
   */
  public Holding(HouseModel model) {
    this(model.house(), model);
  }

  private Holding(House house, HouseModel model) {
    this.house = house;
    this.model = model;
    none = new double[house.rooms().size()];
  }

  /**
   * A house that may be this one changed; what is the same of the fabric need not be prepared
   * again.
   *
   * @param other the house
   * @param arrangement one of its arrangements
   */
  Holding like(House other, Arrangement arrangement) {
    return new Holding(other, Balancing.balancedIfAsked(model.like(other, arrangement)));
  }

  /**
   * Lowest outdoor temperature that is looked at [°C].
   *
   * @param designOutdoor design temperature [°C]
   */
  public static double coldest(double designOutdoor) {
    return Math.min(COLDEST, designOutdoor);
  }

  /**
   * Highest outdoor temperature at which rooms are to be held [°C].
   *
   * @param designOutdoor design temperature [°C]
   */
  public static double mildest(double designOutdoor) {
    return Math.max(MILDEST, designOutdoor);
  }

  /** Answers for every room that has an emitter, in the house's order. */
  public List<RoomAnswer> rooms() {
    double outdoor = house.designOutdoor();
    DesignFlows design = new DesignFlows(model);
    SettledHouse settled = settled(outdoor).asControlled();
    double[] shortAtDesign = shortfalls(settled);
    double asked = asked(outdoor);
    FullOutput full = new FullOutput(model, asked);
    SettledHouse kept = settled(outdoor).at(asked);
    List<RoomAnswer> answers = new ArrayList<>();
    for (int r : model.heatedRooms()) {
      double want = house.dayWant(r);
      answers.add(
          new RoomAnswer(
              house.rooms().get(r).name(),
              want,
              design.load(r),
              full.of(r) + kept.pipeHeat(r),
              want - house.wantTolerance() - shortAtDesign[r],
              shortAtDesign[r] <= 0,
              holdingOutdoor(r),
              leastFlow(r, outdoor)));
    }
    return answers;
  }

  /**
   * Whether every room that has an emitter is held at an outdoor temperature [°C], as controlled.
   */
  public boolean holds(double outdoor) {
    return worstShortfall(outdoor) <= 0;
  }

  /**
   * How far the worst room that has an emitter is below what counts as held [K]; below 0 where all
   * are held.
   *
   * @param outdoor outdoor temperature [°C]
   */
  public double worstShortfall(double outdoor) {
    return worst(shortfalls(settled(outdoor).asControlled()));
  }

  /**
   * How far each room that has an emitter is below what counts as held [K], below 0 where it is
   * held: in the house's order.
   *
   * @param outdoor outdoor temperature [°C]
   */
  public double[] shortfallsOfHeated(double outdoor) {
    double[] all = shortfalls(settled(outdoor).asControlled());
    return IntStream.of(model.heatedRooms()).mapToDouble(r -> all[r]).toArray();
  }

  /**
   * How far a room is below what counts as held [K]; below 0 where it is held.
   *
   * @param outdoor outdoor temperature [°C]
   * @param room which
   */
  public double shortfall(double outdoor, int room) {
    return shortfalls(settled(outdoor).asControlled())[room];
  }

  /** Flow temperature that the controls ask for at an outdoor temperature [°C]. */
  public double asked(double outdoor) {
    return house
        .control()
        .flowCurve()
        .map(curve -> curve.setPoint(outdoor, 0))
        .orElse(house.source().flowSetPoint());
  }

  /**
   * Flow temperature that controls and source bring about at an outdoor temperature while heat is
   * called for [°C].
   */
  public double held(double outdoor) {
    return settled(outdoor).asControlled().flowTemperature();
  }

  /** The house settled without gains, yet to be asked. */
  public SettledHouse settled(double outdoor) {
    return new SettledHouse(model, outdoor, none, none);
  }

  /** The model the answers refer to, balanced where the arrangement asks for it. */
  public HouseModel model() {
    return model;
  }

  /** Heat the house needs from its emitters in design weather [W]. */
  public double load() {
    DesignFlows design = new DesignFlows(model);
    double sum = 0;
    for (int r : model.heatedRooms()) {
      sum += design.load(r);
    }
    return sum;
  }

  /**
   * Lowest outdoor temperature down to which a room is held: looked for from design weather on, to
   * the colder side if it is held there and to the milder if not. So a weather compensation that is
   * too cool in mild weather alone does not hide what holds in the cold.
   */
  private OptionalDouble holdingOutdoor(int room) {
    double known = house.designOutdoor();
    boolean held = shortAt(known)[room] <= 0;
    double end = held ? coldest(known) : mildest(known);
    while (known != end) {
      double next = held ? Math.max(known - SPACING, end) : Math.min(known + SPACING, end);
      if (shortAt(next)[room] <= 0 != held) {
        double low = Math.min(known, next);
        double high = Math.max(known, next);
        return OptionalDouble.of(
            new BrentSolver(ACCURACY).solve(100, t -> shortAt(t)[room], low, high));
      }
      known = next;
    }
    return held ? OptionalDouble.of(end) : OptionalDouble.empty();
  }

  /** Shortfall of every room, solved once for each outdoor temperature. */
  private double[] shortAt(double outdoor) {
    return solved.computeIfAbsent(outdoor, t -> shortfalls(settled(t).asControlled()));
  }

  /**
   * Most that a room's emitters give at a flow temperature, the room at want, with what its pipes
   * give there when it has settled on it [W].
   *
   * @param room which
   * @param outdoor outdoor temperature [°C]
   * @param flow flow temperature [°C]
   */
  double output(int room, double outdoor, double flow) {
    return new FullOutput(model, flow).of(room) + settled(outdoor).at(flow).pipeHeat(room);
  }

  /** How much more than the source has a house must take for the source to be short [-]. */
  private static final double WEAK = 1.005;

  /**
   * Whether at an outdoor temperature [°C] the house would take more than the source has, at the
   * flow temperature asked for.
   */
  boolean overloadsSource(double outdoor) {
    double asked = asked(outdoor);
    return settled(outdoor).at(asked).sourceHeat()
        > house.shareForRooms() * house.source().maximumPower(outdoor, asked) * WEAK;
  }

  /** Heat a room needs at an outdoor temperature [W]. */
  double load(int room, double outdoor) {
    return new DesignFlows(model, outdoor).load(room);
  }

  /**
   * Lowest flow temperature that holds a room.
   *
   * @param room which
   * @param outdoor outdoor temperature [°C]
   * @return [°C]; empty if none up to {@link #HOTTEST_FLOW} does
   */
  public OptionalDouble leastFlow(int room, double outdoor) {
    SettledHouse settled = settled(outdoor);
    return lowest(flow -> shortfalls(settled.at(flow))[room]);
  }

  /**
   * Lowest flow temperature that holds every room.
   *
   * @param outdoor outdoor temperature [°C]
   * @return [°C]; empty if none up to {@link #HOTTEST_FLOW} does
   */
  public OptionalDouble leastFlow(double outdoor) {
    SettledHouse settled = settled(outdoor);
    return lowest(flow -> worst(shortfalls(settled.at(flow))));
  }

  private static OptionalDouble lowest(DoubleUnaryOperator shortfall) {
    if (shortfall.applyAsDouble(COOLEST_FLOW) <= 0) {
      return OptionalDouble.of(COOLEST_FLOW);
    }
    if (shortfall.applyAsDouble(HOTTEST_FLOW) > 0) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        new BrentSolver(ACCURACY).solve(100, shortfall::applyAsDouble, COOLEST_FLOW, HOTTEST_FLOW));
  }

  private double[] shortfalls(SettledHouse settled) {
    double[] shortfall = new double[house.rooms().size()];
    for (int r = 0; r < shortfall.length; r++) {
      shortfall[r] = house.dayWant(r) - house.wantTolerance() - settled.operative(r);
    }
    return shortfall;
  }

  private double worst(double[] shortfall) {
    return IntStream.of(model.heatedRooms())
        .mapToDouble(r -> shortfall[r])
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }
}
