package settle.sim.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.stat.StatUtils;
import settle.sim.atrest.Balancing;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.house.Uncertainty;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;

/**
 * The house as it may be: each uncertain thing where a standard normal number puts it. Shares are
 * multiplied, those of U-values and air change log-normally (they cannot be negative, and are as
 * often half as double), emitter output normally; temperatures are moved.
 *
 * <p>Lockshields and pump stay as the balance of the house as stated sets them. Partitions between
 * rooms stay as they are.
 */
public final class DrawnHouse {

  /** Least that an emitter gives of its rating, however far the draw lies out [-]. */
  private static final double LEAST_OUTPUT = 0.1;

  private final HouseModel model;

  /** As stated, of which nothing is run. */
  private final HouseModel atRest;

  private final House house;
  private final Arrangement arrangement;

  /** What is uncertain, by coordinate of a draw. */
  private final List<Uncertainty> inputs;

  private final List<String> heated;

  /**
   * @param house the house as stated; {@link settle.sim.house.Aims#spreads} says what is uncertain
   * @param arrangement one of its arrangements
   */
  public DrawnHouse(House house, Arrangement arrangement) {
    this(Balancing.asRun(house, arrangement));
  }

  /**
   * @param model the house as stated, as it is run
   */
  public DrawnHouse(HouseModel model) {
    this.model = model;
    house = model.house();
    arrangement = model.arrangement().asSet();
    atRest = HouseModel.forRest(house, arrangement);
    heated = Arrays.stream(model.heatedRooms()).mapToObj(r -> house.rooms().get(r).name()).toList();
    inputs = new ArrayList<>();
    Spreads spreads = house.aims().spreads();
    // Those of valves come last, so that two arrangements are tried in the same houses.
    for (Uncertainty what : Uncertainty.values()) {
      if (what.of(spreads) > 0) {
        int times = what == Uncertainty.VALVE_SETTING ? arrangement.branches().size() : 1;
        for (int i = 0; i < times; i++) {
          inputs.add(what);
        }
      }
    }
  }

  /** What each coordinate of a draw stands for; valves one by one. */
  public List<Uncertainty> inputs() {
    return inputs;
  }

  /** Names of the rooms that have an emitter, in the house's order. */
  public List<String> rooms() {
    return heated;
  }

  /**
   * One house of those it may be.
   *
   * @param house the house, its design outdoor temperature as stated
   * @param arrangement its heating, lockshields as they are run
   * @param outdoor how cold its coldest weather is [°C]
   */
  public record Drawn(House house, Arrangement arrangement, double outdoor) {}

  /**
   * How far each room with an emitter, in that order, is from being held [K], above 0 where it is
   * not.
   *
   * @param z standard normal numbers, one per input
   */
  public double[] shortfalls(double[] z) {
    return both(z).asDrawn();
  }

  /**
   * How far rooms are from being held, as {@link #shortfalls} says it.
   *
   * @param asDrawn in the house as it is drawn [K]; not modified
   * @param turnedUp once heads that are set too low are turned up to their mark [K]; not modified
   */
  public record Shortfalls(double[] asDrawn, double[] turnedUp) {}

  /**
   * How far each room with an emitter is from being held, heads as they are set and, where a room
   * is not held, turned up.
   *
   * @param z standard normal numbers, one per input
   */
  public Shortfalls both(double[] z) {
    Drawn drawn = at(z);
    HouseModel prepared = atRest.like(drawn.house(), drawn.arrangement());
    double[] shortfalls = new Holding(prepared).shortfallsOfHeated(drawn.outdoor());
    if (!(StatUtils.max(shortfalls) > 0)) {
      return new Shortfalls(shortfalls, shortfalls);
    }
    Drawn turned = at(headsTurnedUp(z));
    HouseModel other = prepared.like(turned.house(), turned.arrangement());
    return new Shortfalls(shortfalls, new Holding(other).shortfallsOfHeated(turned.outdoor()));
  }

  /** A drawn house prepared, of the fabric as stated where that is not what was drawn. */
  public HouseModel model(Drawn drawn) {
    return model.like(drawn.house(), drawn.arrangement());
  }

  /**
   * The house where so many standard normal numbers put it.
   *
   * @param z one per input
   */
  public Drawn at(double[] z) {
    double outdoor = house.designOutdoor() + moved(Uncertainty.COLDEST_OUTDOOR, z);
    double uFactor = Math.exp(logarithm(Uncertainty.U_VALUES, z));
    double airFactor = Math.exp(logarithm(Uncertainty.AIR_CHANGE, z));
    double warmer = moved(Uncertainty.WANT, z);
    List<Room> rooms = new ArrayList<>();
    for (Room room : house.rooms()) {
      rooms.add(
          room.withUValuesTimes(uFactor)
              .withAirChange(room.airChangesPerHour() * airFactor)
              .withWant(room.want().raised(warmer)));
    }
    double output = Math.max(1 + moved(Uncertainty.EMITTER_OUTPUT, z), LEAST_OUTPUT);
    double[] set = valveErrors(z);
    List<Branch> branches = new ArrayList<>();
    for (int b = 0; b < set.length; b++) {
      Branch branch = arrangement.branches().get(b);
      branches.add(
          branch
              .withEmitter(branch.emitter().withOutputTimes(output))
              .withValve(branch.valve().raised(warmer + set[b])));
    }
    return new Drawn(house.withRooms(rooms), arrangement.withBranches(branches), outdoor);
  }

  /** This draw with the heads that are set too low turned up to their mark; a new array. */
  public double[] headsTurnedUp(double[] z) {
    double[] turned = z.clone();
    for (int i = 0; i < turned.length; i++) {
      if (inputs.get(i) == Uncertainty.VALVE_SETTING) {
        turned[i] = Math.max(z[i], 0);
      }
    }
    return turned;
  }

  private double[] valveErrors(double[] z) {
    double[] errors = new double[arrangement.branches().size()];
    int first = inputs.indexOf(Uncertainty.VALVE_SETTING);
    if (first >= 0) {
      double spread = Uncertainty.VALVE_SETTING.of(house.aims().spreads());
      Arrays.setAll(errors, b -> spread * z[first + b]);
    }
    return errors;
  }

  /** Where it lies, from where it is stated: in its own unit. */
  private double moved(Uncertainty what, double[] z) {
    int at = inputs.indexOf(what);
    return at < 0 ? 0 : what.of(house.aims().spreads()) * z[at];
  }

  /**
   * Logarithm of a factor of median 1 whose standard deviation over its mean is v: sigma^2 = ln(1 +
   * v^2).
   */
  private double logarithm(Uncertainty what, double[] z) {
    int at = inputs.indexOf(what);
    double v = what.of(house.aims().spreads());
    return at < 0 ? 0 : Math.sqrt(Math.log1p(v * v)) * z[at];
  }
}
