package settle.sim.house;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
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
 * @param rooms at least one, names unique
 * @param partitions walls, floors and ceilings between rooms
 * @param airExchanges open doors
 * @param arrangements what is compared: at least one, names unique
 * @param water the water in the system
 * @param distribution pump, mains and bypass
 * @param source what heats the water
 * @param buffer vessel between source and mains, if there is one
 * @param control how the programme acts
 * @param aims what is asked of the heating
 * @param run length, start and step
 */
public record House(
    String title,
    double designOutdoor,
    Weather weather,
    List<Room> rooms,
    List<Partition> partitions,
    List<AirExchange> airExchanges,
    List<Arrangement> arrangements,
    WaterProperties water,
    Distribution distribution,
    Source source,
    Optional<Buffer> buffer,
    Control control,
    Aims aims,
    RunSettings run) {

  public House {
    rooms = List.copyOf(rooms);
    partitions = List.copyOf(partitions);
    airExchanges = List.copyOf(airExchanges);
    arrangements = List.copyOf(arrangements);
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a house needs at least one room");
    }
    if (arrangements.isEmpty()) {
      throw new IllegalArgumentException("a house needs at least one arrangement");
    }
    Set<String> names = new HashSet<>();
    for (Room room : rooms) {
      if (!names.add(room.name())) {
        throw new IllegalArgumentException("two rooms are called '" + room.name() + "'");
      }
    }
    for (Partition p : partitions) {
      requireKnown(names, p.firstRoom());
      requireKnown(names, p.secondRoom());
    }
    for (AirExchange e : airExchanges) {
      requireKnown(names, e.firstRoom());
      requireKnown(names, e.secondRoom());
    }
    Set<String> arrangementNames = new HashSet<>();
    for (Arrangement a : arrangements) {
      if (!arrangementNames.add(a.name())) {
        throw new IllegalArgumentException("two arrangements are called '" + a.name() + "'");
      }
      for (Branch b : a.branches()) {
        requireKnown(names, b.room());
        if (b.pipePlace().room() != null) {
          requireKnown(names, b.pipePlace().room());
        }
        distribution.mainIndex(b.fedFrom());
      }
    }
    for (Main main : distribution.mains()) {
      if (main.room() != null) {
        requireKnown(names, main.room());
      }
    }
    if (control.usesReferenceRoom()) {
      requireKnown(names, control.referenceRoom());
    }
  }

  /** How far below want still counts as warm [K]. */
  public double wantTolerance() {
    return aims.tolerance();
  }

  /** The same house, run otherwise. */
  public House withRun(RunSettings other) {
    Copy copy = new Copy(this);
    copy.run = other;
    return copy.house();
  }

  /** The same house where it gets as cold as that [°C]. */
  public House withDesignOutdoor(double other) {
    Copy copy = new Copy(this);
    copy.designOutdoor = other;
    return copy.house();
  }

  /** The same house in other weather. */
  public House withWeather(Weather other) {
    Copy copy = new Copy(this);
    copy.weather = other;
    return copy.house();
  }

  /** The same house with other rooms of the same names. */
  public House withRooms(List<Room> others) {
    Copy copy = new Copy(this);
    copy.rooms = others;
    return copy.house();
  }

  /**
   * The same house with one of its rooms changed.
   *
   * @param name which
   * @param change what is done to it
   */
  public House withRoom(String name, UnaryOperator<Room> change) {
    return withRooms(rooms.stream().map(r -> r.name().equals(name) ? change.apply(r) : r).toList());
  }

  /** The same house with other doors open. */
  public House withAirExchanges(List<AirExchange> others) {
    Copy copy = new Copy(this);
    copy.airExchanges = others;
    return copy.house();
  }

  /** The same house with one or several arrangements of other emitters. */
  public House withArrangements(List<Arrangement> others) {
    Copy copy = new Copy(this);
    copy.arrangements = others;
    return copy.house();
  }

  /**
   * The same house with one of its arrangements, known by its name, put in place of what it was.
   */
  public House with(Arrangement changed) {
    return withArrangements(
        arrangements.stream().map(a -> a.name().equals(changed.name()) ? changed : a).toList());
  }

  /** The same house with its water distributed otherwise. */
  public House withDistribution(Distribution other) {
    Copy copy = new Copy(this);
    copy.distribution = other;
    return copy.house();
  }

  /** The same house with another pump. */
  public House withPump(Pump other) {
    return withDistribution(distribution.withPump(other));
  }

  /** The same house with another source. */
  public House withSource(Source other) {
    Copy copy = new Copy(this);
    copy.source = other;
    return copy.house();
  }

  /** The same house with a vessel between source and mains. */
  public House withBuffer(Buffer vessel) {
    Copy copy = new Copy(this);
    copy.buffer = Optional.of(vessel);
    return copy.house();
  }

  /** The same house controlled otherwise. */
  public House withControl(Control other) {
    Copy copy = new Copy(this);
    copy.control = other;
    return copy.house();
  }

  /** The same house with another weather compensation. */
  public House withFlowCurve(FlowCurve curve) {
    return withControl(control.withFlowCurve(curve));
  }

  /**
   * The same house with heating that begins earlier or later; the first room is followed where
   * nothing measured in a room before.
   *
   * @param start how early
   */
  public House withOptimumStart(OptimumStart start) {
    Control changed = control.withOptimumStart(start);
    return withControl(
        changed.usesReferenceRoom() && !control.usesReferenceRoom()
            ? changed.withReferenceRoom(rooms.get(0).name())
            : changed);
  }

  /** A house being copied with something changed. */
  private static final class Copy {
    private final String title;
    private double designOutdoor;
    private Weather weather;
    private List<Room> rooms;
    private final List<Partition> partitions;
    private List<AirExchange> airExchanges;
    private List<Arrangement> arrangements;
    private final WaterProperties water;
    private Distribution distribution;
    private Source source;
    private Optional<Buffer> buffer;
    private Control control;
    private final Aims aims;
    private RunSettings run;

    Copy(House house) {
      title = house.title;
      designOutdoor = house.designOutdoor;
      weather = house.weather;
      rooms = house.rooms;
      partitions = house.partitions;
      airExchanges = house.airExchanges;
      arrangements = house.arrangements;
      water = house.water;
      distribution = house.distribution;
      source = house.source;
      buffer = house.buffer;
      control = house.control;
      aims = house.aims;
      run = house.run;
    }

    House house() {
      return new House(
          title,
          designOutdoor,
          weather,
          rooms,
          partitions,
          airExchanges,
          arrangements,
          water,
          distribution,
          source,
          buffer,
          control,
          aims,
          run);
    }
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
    for (int i = 0; i < rooms.size(); i++) {
      if (rooms.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no room is called '" + name + "'");
  }

  /**
   * Highest temperature wanted in a room in the course of a day [°C].
   *
   * @param room its position
   */
  public double dayWant(int room) {
    return rooms.get(room).want().maximum();
  }

  /**
   * Highest temperature wanted in a room in the course of a day [°C].
   *
   * @param room its name
   */
  public double dayWant(String room) {
    return dayWant(roomIndex(room));
  }

  private static void requireKnown(Set<String> names, String room) {
    if (!names.contains(room)) {
      throw new IllegalArgumentException("no room is called '" + room + "'");
    }
  }
}
