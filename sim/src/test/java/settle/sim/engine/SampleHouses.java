package settle.sim.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Partition;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Building;
import settle.sim.house.Distribution;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.house.WaterProperties;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.CurvePump;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.Tube;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.source.IdealSource;
import settle.sim.source.PerformanceMap;
import settle.sim.source.Source;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;
import settle.sim.weather.Weather;

/** Invented houses for tests and benchmarks. */
public final class SampleHouses {

  private static final Construction BRICK =
      new Construction(
          "plastered solid brick",
          List.of(
              Layer.solid("plaster", 0.013, 0.57, 1300, 1000),
              Layer.solid("brick", 0.215, 0.77, 1700, 800)));
  private static final Construction BLOCK =
      new Construction(
          "plastered block",
          List.of(
              Layer.solid("plaster", 0.013, 0.57, 1300, 1000),
              Layer.solid("block", 0.1, 0.51, 1400, 1000),
              Layer.solid("plaster", 0.013, 0.57, 1300, 1000)));
  private static final Construction TIMBER_FLOOR =
      new Construction(
          "boarded joists over plasterboard",
          List.of(
              Layer.solid("boards", 0.02, 0.13, 500, 1600),
              Layer.cavity("joist space", 0.18),
              Layer.solid("plasterboard", 0.0125, 0.21, 700, 1000)));
  private static final Construction CEILING =
      new Construction(
          "insulated ceiling",
          List.of(
              Layer.solid("plasterboard", 0.0125, 0.21, 700, 1000),
              Layer.solid("wool", 0.2, 0.036, 25, 1030)));

  private SampleHouses() {}

  /** Skirting of so many metres, 130 W/m, a third of a litre a metre, fixed to the outer wall. */
  public static PerimeterEmitter skirting(double length) {
    return new PerimeterEmitter(
        "skirting",
        length,
        130,
        1.3,
        0.3e-3,
        1.6 * 500,
        0.4,
        0.05,
        Fixing.outside("outer wall"),
        new PerimeterEmitter.Face(0.14, 0.03, 0.05, 0.11));
  }

  /** A panel radiator with the same output at 50 K. */
  public static PanelEmitter radiator(double watts) {
    return new PanelEmitter(
        "radiator",
        watts,
        1.3,
        watts * 4e-6,
        watts * 0.015 * 450,
        0.3,
        0.05,
        Fixing.outside("outer wall"),
        5);
  }

  /** A head at a knob position that passes its nominal flow at the given temperature. */
  public static WaxValve head(double setPoint) {
    return new WaxValve(
        "head",
        setPoint,
        2,
        0.4,
        new WaxValve.Lags(1200, 0, 0),
        0.7 / 30,
        0,
        0.5,
        0.25,
        0.5,
        RoomSensing.OPERATIVE);
  }

  private static Branch branch(String room, Emitter emitter, double setPoint) {
    double design = emitter.ratedOutput() / 4180 / 10;
    double kv = design * 3600 / 988 / Math.sqrt(0.08);
    return new Branch(
        room,
        emitter,
        head(setPoint),
        new Lockshield("lockshield", 1, kv),
        Pipe.withoutDelay("10 mm", 0.0088, 1.5e-6, 12, 8),
        null,
        OptionalDouble.empty());
  }

  private static Timetable want(double day, double setback) {
    return new Timetable(
        86_400, new double[] {6 * 3600.0, 22 * 3600.0}, new double[] {day, day - setback});
  }

  private static Room room(String name, double side, Timetable want, boolean top) {
    double height = 2.5;
    List<Surface> surfaces = new ArrayList<>();
    surfaces.add(
        new Surface(
            "outer wall", Facing.WALL, 2 * side * height - 2, BRICK, new Boundary.Outdoors()));
    surfaces.add(
        top
            ? new Surface("ceiling", Facing.CEILING, side * side, CEILING, new Boundary.Outdoors())
            : new Surface(
                "floor",
                Facing.FLOOR,
                side * side,
                TIMBER_FLOOR,
                new Boundary.Held("underfloor", 8)));
    return new Room(
        name,
        side * side,
        4 * side,
        side * side * height,
        0.7,
        4,
        surfaces,
        List.of(new Window("window", 2, 2.0, 0.6)),
        want,
        new Timetable(86_400, new double[] {7 * 3600.0, 21 * 3600.0}, new double[] {60, 20}),
        Timetable.constant(20));
  }

  /**
   * Eight rooms on two floors, each with two outer walls, night set-back at the heads, a design
   * day.
   */
  public static House eightRooms(double days, Source source) {
    List<Room> rooms = new ArrayList<>();
    List<Partition> partitions = new ArrayList<>();
    List<AirExchange> doors = new ArrayList<>();
    List<Branch> perimeter = new ArrayList<>();
    List<Branch> radiators = new ArrayList<>();
    double[] day = {21, 21, 19, 20, 18, 18, 22, 19};
    for (int i = 0; i < 8; i++) {
      String name = "room " + (i + 1);
      rooms.add(room(name, 3.6 + 0.15 * i, want(day[i], 5), i >= 4));
      double length = 15 + 0.4 * i;
      perimeter.add(branch(name, skirting(length), day[i]));
      radiators.add(branch(name, radiator(130 * length), day[i]));
    }
    for (int i = 0; i < 4; i++) {
      String lower = "room " + (i + 1);
      String upper = "room " + (i + 5);
      partitions.add(
          new Partition(
              "floor over " + lower, upper, lower, Facing.FLOOR, Facing.CEILING, 12, TIMBER_FLOOR));
      String next = "room " + ((i + 1) % 4 + 1);
      partitions.add(
          new Partition(
              "wall " + lower + " to " + next, lower, next, Facing.WALL, Facing.WALL, 8, BLOCK));
      String nextUpper = "room " + ((i + 1) % 4 + 5);
      partitions.add(
          new Partition(
              "wall " + upper + " to " + nextUpper,
              upper,
              nextUpper,
              Facing.WALL,
              Facing.WALL,
              8,
              BLOCK));
    }
    doors.add(new AirExchange("room 1", "room 2", 20));
    doors.add(new AirExchange("room 5", "room 6", 10));
    return new House(
        "eight rooms",
        -3,
        new Weather.DesignDay(1, 3, 5 * 3600),
        new Building(rooms, partitions, doors),
        List.of(
            new Arrangement("skirting", perimeter, false),
            new Arrangement("radiators", radiators, false)),
        new Heating(
            WaterProperties.AT_50,
            Distribution.direct(new ConstantPump(20_000, 0.3)),
            source,
            Optional.empty(),
            Control.byHeads()),
        Aims.within(0.5),
        new RunSettings(
            16,
            0,
            days * 86_400,
            RunSettings.DEFAULT_SHORTEST_STEP,
            RunSettings.DEFAULT_LONGEST_STEP,
            RunSettings.DEFAULT_PROFILE_TIMES));
  }

  /**
   * The same house with its water in a tree of copper mains: a riser, from which one pair serves
   * the rooms below and one those above. All pipes take time and lose heat; the riser outside the
   * rooms. The branches have the lockshields of {@link #eightRooms} and 10 mm tails.
   */
  public static House onMains(House house) {
    Pipe riser = pipe(Tube.copper(0.022, 0.0009), 8, 4, 0.3);
    Pipe storey = pipe(Tube.copper(0.022, 0.0009), 14, 6, 0.8);
    Pipe tail = pipe(Tube.copper(0.010, 0.0006), 10, 8, 0.4);
    List<Main> mains =
        List.of(
            new Main("riser", null, riser, null, 12),
            new Main("below", "riser", storey, house.rooms().get(0).name(), 15),
            new Main("above", "riser", storey, house.rooms().get(4).name(), 15));
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement a : house.arrangements()) {
      List<Branch> branches = new ArrayList<>();
      for (Branch b : a.branches()) {
        String from = house.roomIndex(b.room()) < 4 ? "below" : "above";
        branches.add(
            new Branch(
                b.room(), b.emitter(), b.valve(), b.lockshield(), tail, from, b.designFlow()));
      }
      arrangements.add(a.withBranches(branches));
    }
    return house
        .withDistribution(
            new Distribution(
                house.distribution().pump(), mains, Optional.empty(), 10, LockshieldScale.TYPICAL))
        .withArrangements(arrangements);
  }

  /**
   * The same house with its emitters in loops of four: one after the other, with one head for all
   * of a loop, or each with its head and a by-pass.
   */
  public static House inLoops(House house, boolean passedBy) {
    Pipe tees = Pipe.withoutDelay("by-pass", 0.0136, 1.5e-6, 0.5, 40);
    Optional<Pipe> byPass = passedBy ? Optional.of(tees) : Optional.empty();
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement a : house.arrangements()) {
      List<Branch> branches = new ArrayList<>();
      for (int b = 0; b < a.branches().size(); b++) {
        boolean first = b % 4 == 0;
        Branch branch = a.branches().get(b).in(new InLoop(first ? -1 : b - 1, byPass));
        branches.add(
            first || passedBy
                ? branch
                : branch.withValve(Valve.none()).withLockshield(Lockshield.NONE));
      }
      arrangements.add(a.withBranches(branches));
    }
    return house.withArrangements(arrangements);
  }

  private static Pipe pipe(Tube tube, double length, double fittings, double loss) {
    return new Pipe(
        "copper",
        tube.bore(),
        1.5e-6,
        length,
        fittings,
        tube.heatCapacityPerMetre(988, 4180),
        loss);
  }

  /** An ideal source at 60 °C. */
  public static Source ideal() {
    return new IdealSource("ideal", 60, Double.POSITIVE_INFINITY);
  }

  /** An ideal source that cannot carry the house on its own. */
  public static Source weak() {
    return new IdealSource("weak", 60, 5000);
  }

  /** A boiler at 60 °C, too strong for the house in mild hours. */
  public static Source boiler() {
    BoilerEfficiency efficiency =
        new BoilerEfficiency(
            new double[] {25, 30, 40, 50, 55, 70},
            new double[] {0.3, 1},
            new double[][] {
              {0.97, 0.965},
              {0.96, 0.955},
              {0.94, 0.935},
              {0.905, 0.9},
              {0.88, 0.875},
              {0.87, 0.865}
            },
            55);
    return new Boiler("boiler", 18_000, 5_000, 60, 5, 30_000, 60, 180, 180, 1.5, efficiency);
  }

  /** A heat pump that carries the house in all weathers and is too strong for it in mild ones. */
  public static HeatPump heatPump() {
    PerformanceMap map =
        new PerformanceMap(
            new double[] {-7, 2, 7, 12},
            new double[] {35, 45, 55},
            new double[][] {
              {9200, 8900, 8500},
              {11_000, 10_600, 10_200},
              {13_000, 12_500, 12_000},
              {14_500, 14_000, 13_400}
            },
            new double[][] {{2.8, 2.3, 1.9}, {3.6, 2.9, 2.4}, {4.6, 3.6, 2.9}, {5.2, 4.1, 3.3}});
    return new HeatPump(
        "heat pump",
        map,
        0.35,
        50,
        new HeatPump.Limits(4, 60, 0.1, 300, 300),
        60,
        30_000,
        180,
        15,
        Optional.of(new Defrost(-5, 5, 3600, 240, 5000, 1500)),
        Optional.empty());
  }

  /**
   * {@link #onMains} on that heat pump with weather compensation and an automatic bypass, pump on a
   * falling curve: everything that a wet system has.
   */
  public static House wetSystem(double days) {
    House house = onMains(eightRooms(days, heatPump()));
    Distribution with = house.distribution();
    Control control =
        new Control(
            Control.Setback.HEADS,
            "",
            0.5,
            new Thermostat.None(),
            Optional.of(new FlowCurve(1.6, 0, 30, 58, 0)),
            new OptimumStart.None(),
            false);
    CurvePump pump =
        new CurvePump(
            new double[] {0, 2e-4, 4e-4, 8e-4}, new double[] {38_000, 36_000, 30_000, 0}, 0.3);
    return house
        .withDistribution(
            new Distribution(
                pump,
                with.mains(),
                Optional.of(new Bypass(null, 33_000, 4000, 1.5)),
                with.designDrop(),
                with.lockshields()))
        .withControl(control);
  }

  /** A house without day and night: constant weather, wants at their day value, mean gains. */
  public static House steady(House house, double outdoor) {
    List<Room> rooms =
        house.rooms().stream()
            .map(
                r ->
                    r.withWant(Timetable.constant(r.want().maximum()))
                        .withGains(
                            Timetable.constant(r.convectiveGain().mean()),
                            Timetable.constant(r.radiantGain().mean())))
            .toList();
    return house.withRooms(rooms).withWeather(new Weather.Constant(outdoor));
  }

  /** Two rooms one above the other, otherwise as {@link #eightRooms}. */
  public static House twoRooms(double days, Source source) {
    House whole = eightRooms(days, source);
    List<Room> rooms = List.of(whole.rooms().get(0), whole.rooms().get(4));
    List<String> names = rooms.stream().map(Room::name).toList();
    List<Partition> between =
        whole.partitions().stream()
            .filter(p -> names.contains(p.firstRoom()) && names.contains(p.secondRoom()))
            .toList();
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement a : whole.arrangements()) {
      arrangements.add(
          a.withBranches(a.branches().stream().filter(b -> names.contains(b.room())).toList()));
    }
    return new House(
        "two rooms",
        whole.designOutdoor(),
        whole.weather(),
        new Building(rooms, between, List.of()),
        arrangements,
        new Heating(
            whole.water(), whole.distribution(), whole.source(), whole.buffer(), whole.control()),
        whole.aims(),
        whole.run());
  }

  /** The same house under other controls. */
  public static House withControl(House house, Control control) {
    return rebuilt(house, house.rooms(), house.weather(), control);
  }

  /** The same house with other valves. */
  public static House withValves(House house, Function<Branch, Valve> valve) {
    return house.withArrangements(
        house.arrangements().stream()
            .map(
                a ->
                    a.withBranches(
                        a.branches().stream().map(b -> b.withValve(valve.apply(b))).toList()))
            .toList());
  }

  /** The same house set back by so much at night [K]. */
  public static House withSetBack(House house, double setback) {
    List<Room> rooms =
        house.rooms().stream()
            .map(
                r ->
                    under(
                        r, want(r.want().maximum(), setback), r.convectiveGain(), r.radiantGain()))
            .toList();
    return rebuilt(house, rooms, house.weather(), house.control());
  }

  /** The same house with nothing that changes: outdoor temperature [°C], wants and mean gains. */
  static House steadied(House house, double outdoor) {
    List<Room> rooms =
        house.rooms().stream()
            .map(
                r ->
                    under(
                        r,
                        Timetable.constant(r.want().maximum()),
                        Timetable.constant(r.convectiveGain().mean()),
                        Timetable.constant(r.radiantGain().mean())))
            .toList();
    return rebuilt(house, rooms, new Weather.Constant(outdoor), house.control());
  }

  private static Room under(Room r, Timetable want, Timetable convective, Timetable radiant) {
    return new Room(
        r.name(),
        r.floorArea(),
        r.walls(),
        r.volume(),
        r.airChangesPerHour(),
        r.furnishingMultiplier(),
        r.surfaces(),
        r.windows(),
        r.directLoss(),
        want,
        convective,
        radiant);
  }

  private static House rebuilt(House house, List<Room> rooms, Weather weather, Control control) {
    return new House(
        house.title(),
        house.designOutdoor(),
        weather,
        new Building(rooms, house.partitions(), house.airExchanges()),
        house.arrangements(),
        new Heating(house.water(), house.distribution(), house.source(), house.buffer(), control),
        house.aims(),
        house.run());
  }
}
