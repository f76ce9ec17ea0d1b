package settle.sim.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.fabric.Window;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.Pump;
import settle.sim.room.Room;
import settle.sim.source.Buffer;
import settle.sim.source.Source;

/**
 * One thing changed about a house. Values are such as can be set, bought or fitted; what is printed
 * of one is what it does to the house.
 */
public sealed interface Measure {

  /** What is changed, in order of effort; the order is common practice, no source. */
  enum Kind {
    /** Thermostatic or motor heads, set higher [°C]. */
    HEADS,
    /** Lockshields of the cold room, opened [turns]. */
    LOCKSHIELD,
    /** Lockshields of rooms that are warmer than they need be, throttled [turns]. */
    THROTTLE,
    /** Lockshields and pump, set by a balance: least share of its design flow a branch has [-]. */
    BALANCE,
    /** The room thermostat, put in another room. */
    REFERENCE_ROOM,
    /** Heating begun before the programme: lead [s]. */
    PREHEAT,
    /** Weather compensation: flow temperature in design weather [°C]. */
    CURVE,
    /** Flow temperature asked of the source [°C]. */
    FLOW_TEMPERATURE,
    /** Pressure of the pump [Pa]. */
    PUMP,
    /** Air change of a room [1/h]. */
    AIR_CHANGE,
    /** A bypass between flow and return: pressure at which it opens [Pa]. */
    BYPASS,
    /** A vessel of water between source and mains: volume [m³]. */
    BUFFER,
    /** Output of the profile of a room's skirting [W/m]. */
    PROFILE,
    /** Length of skirting in a room [m]. */
    LENGTH,
    /** Rated output of a radiator [W]. */
    RADIATOR,
    /** U-value of a room's glazing [W/(m² K)]. */
    WINDOW,
    /** Power of the source in design weather [W]. */
    SOURCE
  }

  /** What is changed. */
  Kind kind();

  /** As it is, in the kind's unit; not a number where there is none yet. */
  double from();

  /** As it is to be. */
  double to();

  /**
   * The house with it carried out.
   *
   * @param house the house as it is
   * @param arrangement name of the arrangement that is changed, where it belongs to one
   */
  House on(House house, String arrangement);

  /** Every head of a room set to a temperature, if it is set lower. */
  record Heads(String room, double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.HEADS;
    }

    @Override
    public House on(House house, String arrangement) {
      return everyBranch(
          house,
          arrangement,
          b ->
              b.room().equals(room) && b.valve().setPoint() < to
                  ? b.withValve(b.valve().raised(to - b.valve().setPoint()))
                  : b);
    }
  }

  /**
   * Lockshields turned.
   *
   * @param kind whether those of a cold room are opened or those of warm ones throttled
   * @param turns each that is turned
   */
  record Lockshields(Kind kind, List<Turn> turns) implements Measure {

    public Lockshields {
      turns = List.copyOf(turns);
    }

    /**
     * One of them.
     *
     * @param branch position in the arrangement
     * @param room that branch's room
     * @param from turns open as it is
     * @param to turns open as it is to be
     */
    public record Turn(int branch, String room, double from, double to) {}

    /** Of the first that is turned [turns]. */
    @Override
    public double from() {
      return turns.get(0).from();
    }

    /** Of the first that is turned [turns]. */
    @Override
    public double to() {
      return turns.get(0).to();
    }

    @Override
    public House on(House house, String arrangement) {
      Arrangement as = house.arrangement(arrangement);
      List<Branch> branches = new ArrayList<>(as.branches());
      for (Turn turn : turns) {
        branches.set(
            turn.branch(),
            branches
                .get(turn.branch())
                .withLockshield(house.distribution().lockshields().atTurns(turn.to())));
      }
      return house.with(as.withBranches(branches));
    }
  }

  /** A balance before the run. */
  record Balanced(double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.BALANCE;
    }

    @Override
    public House on(House house, String arrangement) {
      Arrangement as = house.arrangement(arrangement);
      return house.with(new Arrangement(as.name(), as.branches(), true));
    }
  }

  /** The room thermostat in another room. */
  record ThermostatMoved(String fromRoom, String toRoom) implements Measure {
    @Override
    public Kind kind() {
      return Kind.REFERENCE_ROOM;
    }

    @Override
    public double from() {
      return Double.NaN;
    }

    @Override
    public double to() {
      return Double.NaN;
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withControl(house.control().withReferenceRoom(toRoom));
    }
  }

  /** Heating that begins earlier [s]. */
  record StartLead(double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.PREHEAT;
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withOptimumStart(new OptimumStart.Fixed(to));
    }
  }

  /**
   * Another weather compensation.
   *
   * @param before as it is
   * @param after as it is to be
   * @param designOutdoor outdoor temperature for which both are compared [°C]
   */
  record Curve(FlowCurve before, FlowCurve after, double designOutdoor) implements Measure {
    @Override
    public Kind kind() {
      return Kind.CURVE;
    }

    @Override
    public double from() {
      return before.setPoint(designOutdoor, 0);
    }

    @Override
    public double to() {
      return after.setPoint(designOutdoor, 0);
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withControl(house.control().withFlowCurve(after));
    }
  }

  /** Another flow temperature asked of the source [°C]. */
  record FlowTemperature(double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.FLOW_TEMPERATURE;
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withSource(house.source().setTo(to));
    }
  }

  /** The pump set higher [Pa]; one with a curve has no setting. */
  record PumpHead(double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.PUMP;
    }

    /** What a pump is set to [Pa]; not a number where it has no setting. */
    public static double of(Pump pump) {
      return pump.setHead().orElse(Double.NaN);
    }

    @Override
    public House on(House house, String arrangement) {
      Pump set = house.distribution().pump().setTo(to);
      return house.withDistribution(house.distribution().withPump(set));
    }
  }

  /** Less air let into a room [1/h]. */
  record AirChange(String room, double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.AIR_CHANGE;
    }

    @Override
    public House on(House house, String arrangement) {
      return oneRoom(house, room, r -> r.withAirChange(to));
    }
  }

  /** An automatic bypass. */
  record BypassFitted(Bypass bypass) implements Measure {
    @Override
    public Kind kind() {
      return Kind.BYPASS;
    }

    @Override
    public double from() {
      return Double.NaN;
    }

    @Override
    public double to() {
      return bypass.setPressure();
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withDistribution(house.distribution().withBypass(bypass));
    }
  }

  /** A vessel of water between source and mains. */
  record BufferFitted(Buffer buffer) implements Measure {
    @Override
    public Kind kind() {
      return Kind.BUFFER;
    }

    @Override
    public double from() {
      return Double.NaN;
    }

    @Override
    public double to() {
      return buffer.volume();
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withBuffer(buffer);
    }
  }

  /** A profile of so much output for all skirting of a room that gives less [W/m]. */
  record Profile(String room, double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.PROFILE;
    }

    @Override
    public House on(House house, String arrangement) {
      return everyBranch(
          house,
          arrangement,
          b ->
              b.room().equals(room)
                      && b.emitter().run().filter(run -> run.outputPerMetre() < to).isPresent()
                  ? b.withEmitter(b.emitter().withOutputPerMetre(to))
                  : b);
    }
  }

  /**
   * More skirting in a room: one of its runs made longer.
   *
   * @param room which
   * @param branch position of the run that is made longer
   * @param runFrom its length as it is [m]
   * @param runTo as it is to be [m]
   * @param others length of the room's other skirting [m]
   */
  record Length(String room, int branch, double runFrom, double runTo, double others)
      implements Measure {
    @Override
    public Kind kind() {
      return Kind.LENGTH;
    }

    /** All skirting of the room [m]. */
    @Override
    public double from() {
      return runFrom + others;
    }

    @Override
    public double to() {
      return runTo + others;
    }

    @Override
    public House on(House house, String arrangement) {
      return oneBranch(house, arrangement, branch, b -> b.withEmitter(b.emitter().ofLength(runTo)));
    }
  }

  /**
   * A larger radiator of the same kind in place of one that is there.
   *
   * @param room which
   * @param branch position of the radiator
   * @param from its rated output [W]
   * @param to that of the larger one [W]
   * @param lengthTo length of the larger one [m]; not a number for one that is not sold by length
   */
  record Radiator(String room, int branch, double from, double to, double lengthTo)
      implements Measure {
    @Override
    public Kind kind() {
      return Kind.RADIATOR;
    }

    @Override
    public House on(House house, String arrangement) {
      return oneBranch(
          house,
          arrangement,
          branch,
          b ->
              b.withEmitter(
                  Double.isNaN(lengthTo)
                      ? b.emitter().scaled(to / from)
                      : b.emitter().ofLength(lengthTo)));
    }
  }

  /** Better glazing in a room [W/(m² K)]; what is better already, and doors, stay. */
  record Glazing(String room, double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.WINDOW;
    }

    /** Whether an opening is glazed and lets more heat out than the new glazing. */
    public boolean concerns(Window opening) {
      return isGlazed(opening) && opening.uValue() > to;
    }

    /** Whether an opening lets the sun in: a door that does not stays as it is. */
    public static boolean isGlazed(Window opening) {
      return opening.gValue() > 0;
    }

    @Override
    public House on(House house, String arrangement) {
      return oneRoom(
          house,
          room,
          r ->
              r.withWindows(
                  r.windows().stream()
                      .map(w -> concerns(w) ? new Window(w.name(), w.area(), to, w.gValue()) : w)
                      .toList()));
    }
  }

  /**
   * A source of the same kind of another size.
   *
   * @param from power in design weather [W]
   * @param to that of the larger one [W]
   */
  record SourceSize(double from, double to) implements Measure {
    @Override
    public Kind kind() {
      return Kind.SOURCE;
    }

    /** The larger one. */
    public Source larger(Source as) {
      return as.scaled(to / from);
    }

    @Override
    public House on(House house, String arrangement) {
      return house.withSource(larger(house.source()));
    }
  }

  /** The room that it concerns; empty for one that concerns the whole house. */
  default String room() {
    return "";
  }

  private static House everyBranch(House house, String arrangement, UnaryOperator<Branch> change) {
    Arrangement as = house.arrangement(arrangement);
    return house.with(as.withBranches(as.branches().stream().map(change).toList()));
  }

  private static House oneBranch(
      House house, String arrangement, int position, UnaryOperator<Branch> change) {
    Arrangement as = house.arrangement(arrangement);
    List<Branch> branches = new ArrayList<>(as.branches());
    branches.set(position, change.apply(branches.get(position)));
    return house.with(as.withBranches(branches));
  }

  private static House oneRoom(House house, String name, UnaryOperator<Room> change) {
    List<Room> rooms = new ArrayList<>(house.rooms());
    int at = house.roomIndex(name);
    rooms.set(at, change.apply(rooms.get(at)));
    return house.withRooms(rooms);
  }
}
