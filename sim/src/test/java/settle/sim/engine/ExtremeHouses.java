package settle.sim.engine;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;
import settle.sim.source.Boiler;
import settle.sim.source.HeatPump;
import settle.sim.source.IdealSource;
import settle.sim.source.Source;
import settle.sim.valve.FixedOpening;
import settle.sim.weather.Weather;

/**
 * Two rooms whose sizes, emitters, pipes, doors, pumps and sources have nothing to do with one
 * another: from a cupboard to a hall, from a towel rail to a street of skirting.
 */
final class ExtremeHouses {

  private static final Construction BRICK =
      new Construction("brick", List.of(Layer.solid("brick", 0.215, 0.77, 1700, 800)));

  private final Random random;

  ExtremeHouses(long seed) {
    random = new Random(seed);
  }

  /** A value between two, evenly in its logarithm. */
  private double between(double least, double most) {
    return least * Math.pow(most / least, random.nextDouble());
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  private Room room(String name) {
    double side = between(0.3, 30);
    return room(name, side, chance(0.5) ? 4 : between(0.5, 10), chance(0.7) ? 0 : between(1, 2000));
  }

  static Room room(String name, double side, double furnishing, double gain) {
    return new Room(
        name,
        side * side,
        4 * side,
        side * side * side,
        0.7,
        furnishing,
        List.of(
            new Surface(
                "outer wall", Facing.WALL, 6 * side * side, BRICK, new Boundary.Outdoors())),
        List.of(),
        Timetable.constant(21),
        Timetable.constant(gain),
        Timetable.constant(gain / 2));
  }

  private Emitter emitter() {
    double rated = between(20, 300_000);
    double water = between(0.2, 5);
    if (chance(0.5)) {
      double length = between(0.5, 2000);
      return new PerimeterEmitter(
          "skirting",
          length,
          rated / length,
          chance(0.3) ? 1 : 1 + 0.6 * random.nextDouble(),
          0.3e-3 * water,
          800 * water,
          0.4,
          0,
          List.of(),
          new PerimeterEmitter.Face(0.14, 0.03, 0.05, 0.11));
    }
    return radiator(rated, water);
  }

  static PanelEmitter radiator(double rated, double water) {
    return new PanelEmitter(
        "radiator", rated, 1.3, rated * 4e-6 * water, rated * 7 * water, 0.3, 0, List.of(), 5);
  }

  private Source source() {
    double power = between(50, 200_000);
    return switch (random.nextInt(4)) {
      case 0 -> SampleHouses.ideal();
      case 1 -> new IdealSource("limited", 40 + 40 * random.nextDouble(), power);
      case 2 -> boiler(power);
      default -> SampleHouses.heatPump();
    };
  }

  private Boiler boiler(double power) {
    Boiler usual = (Boiler) SampleHouses.boiler();
    return new Boiler(
        "boiler",
        power,
        power / 4,
        60,
        5,
        between(2000, 200_000),
        60,
        180,
        180,
        1.5,
        usual.efficiency());
  }

  /** The next house; a run of a day, no lead-in. */
  House next() {
    double flow = between(0.02, 5);
    Source source = source();
    List<Branch> branches =
        List.of(branch("a", emitter(), flow), branch("b", emitter(), between(0.02, 5)));
    boolean door = chance(0.5);
    return house(
            List.of(room("a"), room("b")),
            door ? List.of(new AirExchange("a", "b", between(1, 3000))) : List.of(),
            branches,
            source)
        .withDistribution(Distribution.direct(new ConstantPump(between(500, 200_000), 0.3)));
  }

  private Branch branch(String room, Emitter emitter, double kv) {
    Pipe bare = new Pipe("bare", 0.0136, 1.5e-6, between(1, 60), 8, 700, between(0.1, 3));
    Pipe pipe = chance(0.5) ? Pipe.withoutDelay("none", 0.0136, 1.5e-6, 12, 8) : bare;
    boolean wax = chance(0.5);
    return new Branch(
        room,
        emitter,
        wax ? SampleHouses.head(21) : new FixedOpening("open", kv),
        new Lockshield("lockshield", 1, kv),
        pipe,
        null,
        OptionalDouble.empty());
  }

  static House house(
      List<Room> rooms, List<AirExchange> doors, List<Branch> branches, Source source) {
    House usual = SampleHouses.twoRooms(1, source);
    return new House(
        "extremes",
        -3,
        new Weather.DesignDay(1, 3, 5 * 3600),
        new Building(rooms, List.of(), doors),
        List.of(new settle.sim.house.Arrangement("one", branches, false)),
        new Heating(usual.water(), usual.distribution(), source, Optional.empty(), usual.control()),
        usual.aims(),
        new RunSettings(16, 0, 86_400, 10, 640, List.of()));
  }

  /** The highest temperature water can have from a source [°C]. */
  static double hottest(House house) {
    double set = house.source().flowSetPoint();
    return house.source() instanceof HeatPump pump
        ? pump.highestFlow()
        : house.source() instanceof Boiler boiler ? set + boiler.switchingBand() : set;
  }
}
