package settle.sim.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Control;
import settle.sim.control.OptimumStart;
import settle.sim.control.Timetable;
import settle.sim.engine.HouseRun;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Partition;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Pump;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;
import settle.sim.units.Times;
import settle.sim.valve.Valve;
import settle.sim.weather.Weather;

/**
 * A valve in the room it is fitted to: the house is brought to rest and one thing changes.
 *
 * <p>The house is the scenario's own, balanced where it asks for it, but quiet: every room wanted
 * at its day value for good, no set-back and no optimum start, weather that stays, no sun and no
 * other gains. Source, thermostat and weather compensation work as they always do.
 */
final class RoomTest {

  /**
   * Time to come to rest before the recording begins [s]: three to four times the slowest time
   * constant of brick, in rooms that their heads hold from the first day on.
   */
  private static final double LEAD_IN = 7 * Times.DAY;

  /** From the recording's beginning to the change [s]. */
  private static final double CHANGE = Times.DAY;

  /** From the change to the end [s]. */
  private static final double AFTER = 3 * Times.DAY;

  /** Period of programmes that are to change once only [s], longer than everything. */
  private static final double ONCE = LEAD_IN + 2 * (CHANGE + AFTER);

  /** How long it takes to come out and to go [s]. */
  private static final double CLOUD = 600;

  /** Conductance of a door that is shut: nothing, but a link that can be opened [W/K]. */
  private static final double SHUT = 1e-9;

  private final House quiet;
  private final Arrangement arrangement;
  private final int branch;
  private final String roomName;
  private final int room;
  private final double want;
  private final double mild;

  /**
   * @param model the house as it is run
   * @param branch which valve
   */
  RoomTest(HouseModel model, int branch) {
    House house = model.house();
    mild = house.designOutdoor() - Disturbance.OUTDOOR.size();
    arrangement = model.arrangement().asSet();
    this.branch = branch;
    roomName = arrangement.branches().get(branch).room();
    room = house.roomIndex(roomName);
    want = house.dayWant(room);
    quiet =
        house
            .withWeather(new Weather.Constant(mild))
            .withRooms(house.rooms().stream().map(RoomTest::quiet).toList())
            .withControl(quiet(house.control()))
            .withRun(house.run().lasting(want, LEAD_IN, CHANGE + AFTER));
  }

  private static Room quiet(Room room) {
    Timetable nothing = Timetable.constant(0);
    return room.withWant(Timetable.constant(room.want().maximum())).withGains(nothing, nothing);
  }

  /** Heads follow their room's want, so that turning one is a change of want. */
  private static Control quiet(Control control) {
    return new Control(
        Control.Setback.HEADS,
        control.referenceRoom(),
        control.differential(),
        control.thermostat(),
        control.flowCurve(),
        new OptimumStart.None(),
        control.interlock());
  }

  /**
   * Runs the house through a change.
   *
   * @return the course; empty where there is nothing to change: no glass, no room next door, a
   *     valve that cannot be turned
   */
  Optional<Course> through(Disturbance disturbance) {
    return switch (disturbance) {
      case WANT -> turnedUp();
      case OUTDOOR -> Optional.of(weather(disturbance, colder(), quiet.designOutdoor()));
      case PUMP -> Optional.of(pump());
      case DOOR -> neighbour().map(this::door);
      case SUN ->
          quiet.rooms().get(room).solarAperture() > 0
              ? Optional.of(weather(disturbance, sunny(), mild))
              : Optional.empty();
    };
  }

  private Optional<Course> turnedUp() {
    double by = Disturbance.WANT.size();
    if (valve().raised(by).equals(valve())) {
      return Optional.empty();
    }
    double[] starts = {0, CHANGE, CHANGE + 2 * AFTER};
    double[] wants = {want - by, want, want - by};
    House turned = quiet.withRoom(roomName, r -> r.withWant(new Timetable(ONCE, starts, wants)));
    return Optional.of(course(Disturbance.WANT, "", turned, Optional.empty(), quiet, mild));
  }

  private Valve valve() {
    return arrangement.branches().get(branch).valve();
  }

  private Course weather(Disturbance disturbance, Weather weather, double outdoorAfter) {
    House house = quiet.withWeather(weather);
    return course(disturbance, "", house, Optional.empty(), house, outdoorAfter);
  }

  private Weather colder() {
    return new Weather.Change(mild, quiet.designOutdoor(), CHANGE, 0);
  }

  private Weather sunny() {
    int points = (int) Math.round(Disturbance.SUNSHINE / CLOUD) + 1;
    double[] outdoor = new double[points];
    double[] sun = new double[points];
    Arrays.fill(outdoor, mild);
    Arrays.fill(sun, 1, points - 1, Disturbance.SUN.size());
    return new Weather.Series(CHANGE, CLOUD, outdoor, sun);
  }

  private Course pump() {
    Pump stronger = quiet.distribution().pump().times(Disturbance.PUMP.size());
    House later = quiet.withPump(stronger);
    return course(Disturbance.PUMP, "", quiet, Optional.of(later), later, mild);
  }

  private Course door(String other) {
    House shut = withDoor(other, SHUT);
    House open = withDoor(other, Disturbance.DOOR.size());
    return course(Disturbance.DOOR, other, shut, Optional.of(open), open, mild);
  }

  private House withDoor(String other, double conductance) {
    List<AirExchange> exchanges = new ArrayList<>(quiet.airExchanges());
    exchanges.add(new AirExchange(roomName, other, conductance));
    return quiet.withAirExchanges(exchanges);
  }

  /** The coolest room behind one of this room's inner walls. */
  private Optional<String> neighbour() {
    SettledHouse settled = settled(quiet, mild);
    String coolest = null;
    double least = Double.POSITIVE_INFINITY;
    for (Partition p : quiet.partitions()) {
      boolean here = p.firstRoom().equals(roomName) || p.secondRoom().equals(roomName);
      if (here && p.facingInFirst() == Facing.WALL) {
        String other = p.firstRoom().equals(roomName) ? p.secondRoom() : p.firstRoom();
        double temperature = settled.operative(quiet.roomIndex(other));
        if (temperature < least) {
          least = temperature;
          coolest = other;
        }
      }
    }
    return Optional.ofNullable(coolest);
  }

  private SettledHouse settled(House house, double outdoor) {
    double[] none = new double[house.rooms().size()];
    return new SettledHouse(new HouseModel(house, arrangement, 1), outdoor, none, none)
        .asControlled();
  }

  private Course course(
      Disturbance disturbance,
      String detail,
      House house,
      Optional<House> later,
      House after,
      double outdoorAfter) {
    HouseRun run = new HouseRun(new HouseModel(house, arrangement, 1), house.run());
    later.ifPresent(l -> run.goOnAs(new HouseModel(l, arrangement, 1), CHANGE));
    run.run();
    Trace trace = run.trace();
    double[] time = Arrays.stream(trace.time()).map(t -> t - CHANGE).toArray();
    return new Course(
        disturbance,
        detail,
        time,
        trace.column(RoomColumn.OPERATIVE, room),
        trace.column(BranchColumn.OPENING, branch),
        want,
        settled(after, outdoorAfter).operative(room));
  }
}
