package settle.sim.house;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Timetable;
import settle.sim.fabric.Partition;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pump;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;
import settle.sim.source.Buffer;
import settle.sim.source.Source;
import settle.sim.weather.Weather;

/**
 * A house with everything that heats it, in one or more arrangements of emitters.
 *
 * @param title what it is called
 * @param designOutdoor outdoor design temperature [°C]
 * @param weather outdoor conditions of the run
 * @param building its rooms and what lies between them
 * @param arrangements what is compared: at least one, names unique
 * @param heating what makes the heat, brings it to the emitters and decides when
 * @param aims what is asked of the heating
 * @param run length, start and step
 */
public record House(
    String title,
    double designOutdoor,
    Weather weather,
    Building building,
    List<Arrangement> arrangements,
    Heating heating,
    Aims aims,
    RunSettings run) {

  public House {
    arrangements = List.copyOf(arrangements);
    if (arrangements.isEmpty()) {
      throw new IllegalArgumentException("a house needs at least one arrangement");
    }
    Set<String> names = new HashSet<>();
    for (Arrangement a : arrangements) {
      if (!names.add(a.name())) {
        throw new IllegalArgumentException("two arrangements are called '" + a.name() + "'");
      }
      for (Branch b : a.branches()) {
        building.requireKnown(b.room());
        if (b.pipePlace().room() != null) {
          building.requireKnown(b.pipePlace().room());
        }
        heating.distribution().mainIndex(b.fedFrom());
      }
    }
    for (Main main : heating.distribution().mains()) {
      if (main.room() != null) {
        building.requireKnown(main.room());
      }
    }
    if (heating.control().usesReferenceRoom()) {
      building.requireKnown(heating.control().referenceRoom());
    }
  }

  /** Its rooms: at least one, names unique. */
  public List<Room> rooms() {
    return building.rooms();
  }

  /** Walls, floors and ceilings between rooms. */
  public List<Partition> partitions() {
    return building.partitions();
  }

  /** Open doors. */
  public List<AirExchange> airExchanges() {
    return building.airExchanges();
  }

  /** The water in the system. */
  public WaterProperties water() {
    return heating.water();
  }

  /** Pump, mains and bypass. */
  public Distribution distribution() {
    return heating.distribution();
  }

  /** What heats the water. */
  public Source source() {
    return heating.source();
  }

  /** The vessel between source and mains, if there is one. */
  public Optional<Buffer> buffer() {
    return heating.buffer();
  }

  /** How the programme acts. */
  public Control control() {
    return heating.control();
  }

  /** Above 0 while hot water takes the source away. */
  public Timetable hotWater() {
    return heating.hotWater();
  }

  /** Share of the time in which hot water leaves the source to the rooms [-]. */
  public double shareForRooms() {
    return 1 - hotWater().mean();
  }

  /** How far below want still counts as warm [K]. */
  public double wantTolerance() {
    return aims.tolerance();
  }

  /** This house with another run. */
  public House withRun(RunSettings other) {
    return new House(title, designOutdoor, weather, building, arrangements, heating, aims, other);
  }

  /** This house where it gets as cold as that [°C]. */
  public House withDesignOutdoor(double other) {
    return new House(title, other, weather, building, arrangements, heating, aims, run);
  }

  /** This house in other weather. */
  public House withWeather(Weather other) {
    return new House(title, designOutdoor, other, building, arrangements, heating, aims, run);
  }

  private House with(Building other) {
    return new House(title, designOutdoor, weather, other, arrangements, heating, aims, run);
  }

  /** This house with other rooms of the same names. */
  public House withRooms(List<Room> others) {
    return with(new Building(others, partitions(), airExchanges()));
  }

  /**
   * This house with one of its rooms changed.
   *
   * @param name which
   * @param change what is done to it
   */
  public House withRoom(String name, UnaryOperator<Room> change) {
    return withRooms(
        rooms().stream().map(r -> r.name().equals(name) ? change.apply(r) : r).toList());
  }

  /** This house with other doors open. */
  public House withAirExchanges(List<AirExchange> others) {
    return with(new Building(rooms(), partitions(), others));
  }

  /** This house with one or several arrangements of other emitters. */
  public House withArrangements(List<Arrangement> others) {
    return new House(title, designOutdoor, weather, building, others, heating, aims, run);
  }

  /** This house with one of its arrangements, known by its name, put in place of what it was. */
  public House with(Arrangement changed) {
    return withArrangements(
        arrangements.stream().map(a -> a.name().equals(changed.name()) ? changed : a).toList());
  }

  private House with(Heating other) {
    return new House(title, designOutdoor, weather, building, arrangements, other, aims, run);
  }

  /** This house with another distribution of water. */
  public House withDistribution(Distribution other) {
    return with(new Heating(water(), other, source(), buffer(), control(), hotWater()));
  }

  /** This house with another pump. */
  public House withPump(Pump other) {
    return withDistribution(distribution().withPump(other));
  }

  /** This house with another source. */
  public House withSource(Source other) {
    return with(new Heating(water(), distribution(), other, buffer(), control(), hotWater()));
  }

  /** This house with a vessel between source and mains. */
  public House withBuffer(Buffer vessel) {
    return with(
        new Heating(water(), distribution(), source(), Optional.of(vessel), control(), hotWater()));
  }

  /** This house with other controls. */
  public House withControl(Control other) {
    return with(new Heating(water(), distribution(), source(), buffer(), other, hotWater()));
  }

  /** This house with hot water at other times. */
  public House withHotWater(Timetable other) {
    return with(new Heating(water(), distribution(), source(), buffer(), control(), other));
  }

  /** This house with another weather compensation. */
  public House withFlowCurve(FlowCurve curve) {
    return withControl(control().withFlowCurve(curve));
  }

  /**
   * This house with heating that begins earlier or later; the first room is followed where nothing
   * measured in a room before.
   *
   * @param start how early
   */
  public House withOptimumStart(OptimumStart start) {
    Control changed = control().withOptimumStart(start);
    return withControl(
        changed.usesReferenceRoom() && !control().usesReferenceRoom()
            ? changed.withReferenceRoom(rooms().get(0).name())
            : changed);
  }

  /**
   * An arrangement by its name.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public Arrangement arrangement(String name) {
    return arrangements.stream()
        .filter(a -> a.name().equals(name))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no arrangement is called '" + name + "'"));
  }

  /**
   * Position of a room in {@link #rooms()}.
   *
   * @throws IllegalArgumentException if there is none of that name
   */
  public int roomIndex(String name) {
    return building.roomIndex(name);
  }

  /**
   * Highest temperature wanted in a room in the course of a day [°C].
   *
   * @param room its position
   */
  public double dayWant(int room) {
    return rooms().get(room).want().maximum();
  }

  /**
   * Highest temperature wanted in a room in the course of a day [°C].
   *
   * @param room its name
   */
  public double dayWant(String room) {
    return dayWant(roomIndex(room));
  }
}
