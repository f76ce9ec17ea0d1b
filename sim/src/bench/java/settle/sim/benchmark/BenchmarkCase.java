package settle.sim.benchmark;

import settle.sim.house.Building;
import settle.sim.house.Heating;
import java.util.List;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;

/** What is measured: a house, how long it runs, and what heats its water. */
public enum BenchmarkCase {
  /** One room without neighbours. */
  ONE_ROOM_48_H("one room, 48 h", 1, 2, SampleHouses.ideal()),
  /** Eight rooms, 5 K night set-back at every head, play in every valve. */
  EIGHT_ROOMS_7_DAYS("eight rooms, 7 days", 8, 7, SampleHouses.ideal()),
  /** The same for a heating season, the design day repeated. */
  EIGHT_ROOMS_212_DAYS("eight rooms, 212 days", 8, 212, SampleHouses.ideal()),
  /** Eight rooms on a boiler that cycles. */
  BOILER_7_DAYS("eight rooms on a boiler, 7 days", 8, 7, SampleHouses.boiler()),
  /** The same for a heating season. */
  BOILER_212_DAYS("eight rooms on a boiler, 212 days", 8, 212, SampleHouses.boiler()),
  /** Eight rooms on a tree of mains whose water takes time and loses heat, source as above. */
  MAINS_7_DAYS("eight rooms on mains, 7 days", 8, 7, SampleHouses.ideal()),
  /** The same on a heat pump with weather compensation and a bypass. */
  WET_SYSTEM_7_DAYS("mains, bypass, heat pump, 7 days", 8, 7, SampleHouses.heatPump());

  /** Longest run that the general integrator is given [d]: two set-backs and two warm-ups. */
  private static final double LONGEST_INTEGRATED = 2;

  private final String title;
  private final int rooms;
  private final double days;
  private final Source source;

  BenchmarkCase(String title, int rooms, double days, Source source) {
    this.title = title;
    this.rooms = rooms;
    this.days = days;
    this.source = source;
  }

  /** What it is called in the table. */
  String title() {
    return title;
  }

  /** Number of rooms. */
  int rooms() {
    return rooms;
  }

  /** How long it runs [d]. */
  double days() {
    return days;
  }

  /** The house, with as many days in its settings as the case has. */
  House house() {
    return house(days);
  }

  /** The house with another length of run [d]. */
  House house(double length) {
    House eight = SampleHouses.eightRooms(length, source);
    return switch (this) {
      case ONE_ROOM_48_H -> firstRoomOf(eight);
      case MAINS_7_DAYS -> SampleHouses.onMains(eight);
      case WET_SYSTEM_7_DAYS -> SampleHouses.wetSystem(length);
      default -> eight;
    };
  }

  /** Whether the general model knows the source. */
  boolean integrable() {
    return source instanceof IdealSource && this != MAINS_7_DAYS;
  }

  /** How much of it the general integrator is measured on [d]; the rest is scaled. */
  double integratedDays() {
    return Math.min(days, LONGEST_INTEGRATED);
  }

  private static House firstRoomOf(House house) {
    List<Arrangement> arrangements =
        house.arrangements().stream()
            .map(a -> a.withBranches(a.branches().subList(0, 1)))
            .toList();
    return new House(
        "one room",
        house.designOutdoor(),
        house.weather(),
        new Building(house.rooms().subList(0, 1),
        List.of(),
        List.of()),
        arrangements,
        new Heating(house.water(),
        house.distribution(),
        house.source(),
        house.buffer(),
        house.control()),
        house.aims(),
        house.run());
  }

  /** The emitters the rooms are fitted with. */
  public enum Emitters {
    /** Heated skirting, the house's first arrangement. */
    SKIRTING,
    /** Radiators, its second. */
    RADIATORS;

    Arrangement of(House house) {
      return house.arrangements().get(ordinal());
    }
  }
}
