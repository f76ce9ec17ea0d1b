package settle.sim.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.control.Thermostat;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.room.Room;

/**
 * What would let a room be held in design weather that is not: each remedy by itself, found as the
 * root of the settled house with that one figure changed.
 *
 * <p>They come cheapest first, in an order that is common practice, no source: an earlier start,
 * the room thermostat moved, a balance, a setting, draught proofing, a better profile, more of it,
 * glazing, a larger source.
 */
public final class Remedies {

  /** Least air change a dwelling should have [1/h]; EN 12831:2003 Table D.6, from memory. */
  public static final double LEAST_AIR_CHANGE = 0.5;

  /** Best window that is looked for [W/(m² K)]; triple glazing, common practice, no source. */
  public static final double BEST_WINDOW = 0.8;

  /** How many times its output a richer profile may give [-]; common practice, no source. */
  private static final double RICHEST = 2;

  /** Largest emitter looked for, as a multiple of the present one [-]. */
  private static final double LARGEST = 6;

  /** How far a remedy goes beyond the bare root, so that the house holds with it [-]. */
  private static final double MARGIN = 1.002;

  private static final double ACCURACY = 1e-4;

  /** How much more than the source has the house must take for the source to be the reason [-]. */
  private static final double WEAK = 1.005;

  /** What is changed. */
  public enum Kind {
    /** Heating begun before the programme, for a room that is warm too late: lead [s]. */
    PREHEAT,
    /** Lockshields and pump, set by a balance: share of its design flow that the room gets [-]. */
    BALANCE,
    /**
     * The room thermostat moved to the room: flow temperature that the source keeps in design
     * weather, the mean of starts and stops [°C].
     */
    REFERENCE_ROOM,
    /** Flow temperature asked of the source [°C]. */
    FLOW_TEMPERATURE,
    /** Air change of the room [1/h]. */
    AIR_CHANGE,
    /** Output of the skirting's profile [W/m]. */
    PROFILE,
    /** Length of skirting in the room [m]. */
    LENGTH,
    /** Rated output of the room's radiators [W]. */
    RADIATOR,
    /** U-value of the room's windows [W/(m² K)]. */
    WINDOW,
    /** Power of the source [W]. */
    SOURCE
  }

  /**
   * One remedy.
   *
   * @param room the room that is not held
   * @param kind what is changed
   * @param from as it is, in the kind's unit
   * @param to what it takes; empty if no change of this kind suffices
   * @param limit furthest that this kind can go: length of wall, highest flow temperature, least
   *     air change; not a number where there is no limit
   */
  public record Remedy(String room, Kind kind, double from, OptionalDouble to, double limit) {

    /** Whether it suffices and is within its limit. */
    public boolean possible() {
      if (to.isEmpty()) {
        return false;
      }
      boolean rises = to.getAsDouble() > from;
      return Double.isNaN(limit) || (rises ? to.getAsDouble() <= limit : to.getAsDouble() >= limit);
    }
  }

  private final House house;
  private final Arrangement arrangement;
  private final Holding holding;
  private final double outdoor;

  private Remedies(House house, Arrangement arrangement, Holding holding) {
    this.house = house;
    this.arrangement = arrangement;
    this.holding = holding;
    outdoor = house.designOutdoor();
  }

  /**
   * Remedies for every room that is not held.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param holding its answers
   * @param answers the rooms' answers
   * @return per room those that suffice first, cheapest first
   */
  public static List<Remedy> of(
      House house, Arrangement arrangement, Holding holding, List<Holding.RoomAnswer> answers) {
    Remedies search = new Remedies(house, arrangement, holding);
    List<Remedy> remedies = new ArrayList<>();
    double asked = holding.asked(search.outdoor);
    double taken = holding.settled(search.outdoor).at(asked).sourceHeat();
    boolean weak = taken > house.source().maximumPower(search.outdoor, asked) * WEAK;
    for (Holding.RoomAnswer answer : answers) {
      if (answer.holds()) {
        continue;
      }
      List<Remedy> forRoom = new ArrayList<>();
      if (weak) {
        forRoom.add(search.source(answer, asked));
      } else {
        search.collect(answer, asked, forRoom);
      }
      forRoom.sort(Comparator.comparing((Remedy r) -> !r.possible()).thenComparing(Remedy::kind));
      remedies.addAll(forRoom);
    }
    return remedies;
  }

  /** With the flow temperature held as asked, how much the source would have to give. */
  private Remedy source(Holding.RoomAnswer answer, double asked) {
    double power = holding.settled(outdoor).at(asked).sourceHeat();
    double now = house.source().maximumPower(outdoor, asked);
    return new Remedy(answer.room(), Kind.SOURCE, now, OptionalDouble.of(power), Double.NaN);
  }

  private void collect(Holding.RoomAnswer answer, double asked, List<Remedy> found) {
    double highest = Math.min(house.source().highestFlow(), Holding.HOTTEST_FLOW);
    int index = house.roomIndex(answer.room());
    Room room = house.rooms().get(index);
    if (!(house.control().thermostat() instanceof Thermostat.None)
        && !house.control().referenceRoom().equals(answer.room())) {
      found.add(referenceRoom(answer, index));
    }
    if (!arrangement.balanced()) {
      found.add(balance(answer, index));
    }
    // Where a room thermostat rests the source, hotter water would only make it rest longer.
    if (answer.leastFlow().orElse(Double.POSITIVE_INFINITY) > asked) {
      found.add(
          new Remedy(answer.room(), Kind.FLOW_TEMPERATURE, asked, answer.leastFlow(), highest));
    }
    double air = room.airChangesPerHour();
    if (air > LEAST_AIR_CHANGE) {
      OptionalDouble to =
          root(index, 0, air, n -> house.withRooms(replaced(index, r -> r.withAirChange(n))));
      found.add(new Remedy(answer.room(), Kind.AIR_CHANGE, air, to, LEAST_AIR_CHANGE));
    }
    emitters(answer, index, room, found);
    double worst = room.windows().stream().mapToDouble(Window::uValue).max().orElse(0);
    if (worst > BEST_WINDOW) {
      OptionalDouble to =
          root(index, 0.05, worst, u -> house.withRooms(replaced(index, r -> glazed(r, u))));
      found.add(new Remedy(answer.room(), Kind.WINDOW, worst, to, BEST_WINDOW));
    }
  }

  /** The room thermostat hung where it is cold; heads rule the room it hung in. */
  private Remedy referenceRoom(Holding.RoomAnswer answer, int index) {
    Holding moved =
        new Holding(
            house.withControl(house.control().withReferenceRoom(answer.room())), arrangement);
    OptionalDouble to =
        moved.shortfall(outdoor, index) <= 0
            ? OptionalDouble.of(moved.held(outdoor))
            : OptionalDouble.empty();
    return new Remedy(answer.room(), Kind.REFERENCE_ROOM, holding.held(outdoor), to, Double.NaN);
  }

  /** Everything set by a balance; so far the room gets what it gets with every valve open. */
  private Remedy balance(Holding.RoomAnswer answer, int index) {
    double got = Double.POSITIVE_INFINITY;
    List<Balance.BranchBalance> flows = holding.model().balance().branches();
    for (int b = 0; b < flows.size(); b++) {
      if (arrangement.branches().get(b).room().equals(answer.room())) {
        got = Math.min(got, flows.get(b).flow() / flows.get(b).designFlow());
      }
    }
    Arrangement set = new Arrangement(arrangement.name(), arrangement.branches(), true);
    boolean holds = new Holding(house, set).shortfall(outdoor, index) <= 0;
    OptionalDouble to = holds ? OptionalDouble.of(1) : OptionalDouble.empty();
    return new Remedy(answer.room(), Kind.BALANCE, got, to, Double.NaN);
  }

  private void emitters(Holding.RoomAnswer answer, int index, Room room, List<Remedy> found) {
    double length = 0;
    double perMetre = 0;
    double radiators = 0;
    for (Branch branch : arrangement.branches()) {
      if (!branch.room().equals(answer.room())) {
        continue;
      }
      if (branch.emitter() instanceof PerimeterEmitter skirting) {
        length += skirting.length();
        perMetre = Math.max(perMetre, skirting.ratedOutputPerMetre());
      } else {
        radiators += branch.emitter().ratedOutput();
      }
    }
    if (length > 0) {
      OptionalDouble richer = root(index, RICHEST, 1, k -> withOutput(answer.room(), k));
      found.add(
          new Remedy(
              answer.room(), Kind.PROFILE, perMetre, scaled(richer, perMetre), perMetre * RICHEST));
    }
    OptionalDouble larger = root(index, LARGEST, 1, k -> withSize(answer.room(), k));
    if (length > 0) {
      found.add(
          new Remedy(answer.room(), Kind.LENGTH, length, scaled(larger, length), room.freeWall()));
    } else {
      found.add(
          new Remedy(
              answer.room(), Kind.RADIATOR, radiators, scaled(larger, radiators), Double.NaN));
    }
  }

  private static OptionalDouble scaled(OptionalDouble factor, double by) {
    return factor.isPresent() ? OptionalDouble.of(factor.getAsDouble() * by) : factor;
  }

  private List<Room> replaced(int index, UnaryOperator<Room> change) {
    List<Room> rooms = new ArrayList<>(house.rooms());
    rooms.set(index, change.apply(rooms.get(index)));
    return rooms;
  }

  private static Room glazed(Room room, double uValue) {
    return room.withWindows(
        room.windows().stream()
            .map(w -> new Window(w.name(), w.area(), Math.min(w.uValue(), uValue), w.gValue()))
            .toList());
  }

  private House withOutput(String room, double factor) {
    return changed(
        room,
        b ->
            b.emitter() instanceof PerimeterEmitter skirting
                ? b.withEmitter(skirting.withOutput(skirting.ratedOutputPerMetre() * factor))
                : b);
  }

  private House withSize(String room, double factor) {
    return changed(room, b -> b.withEmitter(b.emitter().scaled(factor)));
  }

  private House changed(String room, UnaryOperator<Branch> change) {
    List<Branch> branches =
        arrangement.branches().stream()
            .map(b -> b.room().equals(room) ? change.apply(b) : b)
            .toList();
    return house.withArrangements(List.of(arrangement.withBranches(branches)));
  }

  /**
   * The figure, between one that surely helps and the present one, at which the room is just held;
   * empty if even the first does not hold it.
   */
  private OptionalDouble root(
      int room, double furthest, double present, DoubleFunction<House> with) {
    if (shortfall(with.apply(furthest), room) > 0) {
      return OptionalDouble.empty();
    }
    double found =
        new BrentSolver(ACCURACY * Math.max(Math.abs(present), Math.abs(furthest)))
            .solve(
                100,
                x -> shortfall(with.apply(x), room),
                Math.min(furthest, present),
                Math.max(furthest, present));
    return OptionalDouble.of(furthest > present ? found * MARGIN : found / MARGIN);
  }

  private double shortfall(House changed, int room) {
    Arrangement same =
        changed.arrangements().size() == 1 ? changed.arrangements().get(0) : arrangement;
    return new Holding(changed, same).shortfall(outdoor, room);
  }
}
