package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import settle.sim.atrest.DesignFlows;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.Fixing;
import settle.sim.emitter.PanelEmitter;
import settle.sim.emitter.PerimeterEmitter;
import settle.sim.emitter.Tubes;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FromUValue;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Leaf;
import settle.sim.fabric.MassClass;
import settle.sim.fabric.MassPlace;
import settle.sim.fabric.Partition;
import settle.sim.fabric.RoomMass;
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
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Pump;
import settle.sim.hydraulics.PumpPlace;
import settle.sim.hydraulics.Tube;
import settle.sim.model.HouseModel;
import settle.sim.room.AirExchange;
import settle.sim.room.DirectLoss;
import settle.sim.room.Room;
import settle.sim.source.BackupHeater;
import settle.sim.source.Boiler;
import settle.sim.source.BoilerEfficiency;
import settle.sim.source.Buffer;
import settle.sim.source.CarnotPerformance;
import settle.sim.source.Defrost;
import settle.sim.source.Exchanger;
import settle.sim.source.HeatPump;
import settle.sim.source.HeatPumpPerformance;
import settle.sim.source.IdealSource;
import settle.sim.source.PerformanceMap;
import settle.sim.source.Source;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;
import settle.sim.weather.Weather;

/**
 * An invented house such as one might meet, drawn at random: one to six rooms of light to heavy
 * fabric, some of which are known by their heat loss alone, skirting or radiators or both, any
 * source, control, valve and way of the water. Sizes go with the heat loss, from somewhat too small
 * to much too large. One seed is one house, for good.
 *
 * @param seed it was drawn by
 * @param house the house, its programmes at their day value, no gains
 * @param outdoor outdoor temperature to hold it at [°C]
 * @param source kind of source
 * @param control kind of control
 * @param valves kind of valves
 * @param water way of the water
 */
public record PlausibleHouse(
    long seed,
    House house,
    double outdoor,
    String source,
    String control,
    String valves,
    String water) {

  private static final double DESIGN = -3;

  /** The house of a seed. */
  public static PlausibleHouse of(long seed) {
    return new Draw(seed).house();
  }

  /** Its arrangement. */
  public Arrangement arrangement() {
    return house.arrangements().get(0);
  }

  @Override
  public String toString() {
    return String.format(
        java.util.Locale.ROOT,
        "house %d: %d rooms, %.1f °C outdoors, %s, %s, %s, %s",
        seed,
        house.rooms().size(),
        outdoor,
        source,
        control,
        valves,
        water);
  }

  private static final class Draw {

    private final long seed;
    private final SplittableRandom random;

    /** For what was added later, so that all else in a house stays what it was. */
    private final SplittableRandom further;

    /** For what leads the water through skirting, without changing what else is drawn. */
    private final SplittableRandom emitters;

    /** For rooms of which a survey knows no more than their heat loss, likewise. */
    private final SplittableRandom surveys;

    private String sourceKind;
    private String controlKind;
    private String valveKind;
    private String waterKind;

    Draw(long seed) {
      this.seed = seed;
      // Neighbouring seeds would begin alike.
      random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 0x632BE59BD9B4E019L);
      further = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 0x5851F42D4C957F2DL);
      emitters = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 0x14057B7EF767814FL);
      surveys = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + 0x2545F4914F6CDD1DL);
    }

    private double between(double low, double high) {
      return low + (high - low) * random.nextDouble();
    }

    private boolean one(double share) {
      return random.nextDouble() < share;
    }

    private double any(double... values) {
      return values[random.nextInt(values.length)];
    }

    private String any(String... values) {
      return values[random.nextInt(values.length)];
    }

    PlausibleHouse house() {
      List<Room> rooms = rooms();
      List<Partition> partitions = partitions(rooms);
      List<AirExchange> doors = doors(rooms);
      double outdoor = any(between(-8, 1), between(1, 8), between(8, 15));
      sourceKind =
          any("ideal", "limited", "boiler", "boiler", "heat pump", "heat pump", "heat pump");
      boolean pump = sourceKind.equals("heat pump");
      double flow = pump ? between(35, 52) : between(45, 72);
      House bare =
          new House(
              "house " + seed,
              DESIGN,
              new Weather.Constant(outdoor),
              new Building(rooms, partitions, doors),
              List.of(new Arrangement("sized", sample(rooms), false)),
              new Heating(
                  WaterProperties.AT_50,
                  Distribution.direct(new ConstantPump(20_000, 0.3)),
                  new IdealSource("ideal", flow, Double.POSITIVE_INFINITY),
                  Optional.empty(),
                  Control.byHeads()),
              Aims.within(0.5),
              new RunSettings(
                  16,
                  0,
                  86_400,
                  RunSettings.DEFAULT_SHORTEST_STEP,
                  RunSettings.DEFAULT_LONGEST_STEP,
                  List.of()));
      DesignFlows needs = new DesignFlows(new HouseModel(bare, bare.arrangements().get(0), 1));
      double[] load = new double[rooms.size()];
      double whole = 0;
      for (int r = 0; r < load.length; r++) {
        load[r] = Math.max(needs.load(r), 8 * rooms.get(r).floorArea());
        whole += load[r];
      }
      valveKind = any("heads", "heads", "heads", "fixed", "actuators", "motors", "mixed");
      waterKind = any("direct", "tree", "manifold");
      List<Main> mains = mains(rooms, whole);
      double drop = pump ? between(4, 8) : between(7, 16);
      List<Branch> branches = branches(rooms, load, mains, flow, drop);
      double massFlow = whole / 4180 / drop;
      House house =
          bare.withDistribution(distribution(mains, massFlow, drop))
              .withArrangements(List.of(new Arrangement("drawn", branches, one(0.3))));
      if (one(0.25)) {
        house = house.withBuffer(buffer(massFlow));
      }
      house = house.withSource(source(flow, whole, massFlow));
      house = house.withControl(control(branches, flow));
      return new PlausibleHouse(
          seed, house, outdoor, sourceKind, controlKind, valveKind, waterKind);
    }

    // Rooms

    private Construction wall() {
      Construction layered = layeredWall();
      if (further.nextDouble() >= 0.25) {
        return layered;
      }
      // One wall in four is known by its U-value, and by its mass class or by its leaf.
      double uValue = layered.uValue(Facing.WALL);
      MassClass mass = MassClass.values()[further.nextInt(MassClass.values().length)];
      MassPlace place = MassPlace.values()[further.nextInt(MassPlace.values().length)];
      Leaf leaf = Leaf.values()[further.nextInt(Leaf.values().length)];
      return further.nextBoolean()
          ? place.construction("mass " + place, uValue, mass, Facing.WALL)
          : FromUValue.of("leaf " + leaf, uValue, Optional.of(leaf), Facing.WALL, Behind.OUTDOORS);
    }

    private Construction layeredWall() {
      Layer plaster = Layer.solid("plaster", 0.013, 0.57, 1300, 1000);
      Layer board = Layer.solid("board", 0.0125, 0.21, 700, 1000);
      return switch (random.nextInt(5)) {
        case 0 ->
            new Construction(
                "solid brick",
                List.of(plaster, Layer.solid("brick", between(0.1, 0.33), 0.77, 1700, 800)));
        case 1 ->
            new Construction(
                "timber frame",
                List.of(
                    board,
                    Layer.solid("wool", between(0.08, 0.25), 0.038, 25, 1030),
                    Layer.solid("sheathing", 0.012, 0.13, 600, 1600)));
        case 2 ->
            new Construction(
                "filled cavity",
                List.of(
                    plaster,
                    Layer.solid("block", 0.1, between(0.15, 0.5), 1000, 1000),
                    Layer.solid("fill", between(0.05, 0.12), 0.038, 25, 1030),
                    Layer.solid("brick", 0.102, 0.77, 1700, 800)));
        case 3 ->
            new Construction(
                "concrete insulated outside",
                List.of(
                    plaster,
                    Layer.solid("concrete", 0.15, 1.6, 2300, 1000),
                    Layer.solid("foam", between(0.05, 0.15), 0.032, 30, 1400)));
        default ->
            new Construction(
                "dry-lined block",
                List.of(
                    board,
                    Layer.solid("foam", between(0.02, 0.08), 0.024, 30, 1400),
                    Layer.solid("block", 0.2, 0.8, 1800, 1000)));
      };
    }

    private List<Room> rooms() {
      int count = 1 + random.nextInt(6);
      double bridges = 0.1 * further.nextDouble();
      Construction wall = wall();
      Construction floor =
          new Construction(
              "floor",
              one(0.5)
                  ? List.of(
                      Layer.solid("boards", 0.02, 0.13, 500, 1600),
                      Layer.solid("wool", between(0.03, 0.15), 0.038, 25, 1030))
                  : List.of(
                      Layer.solid("screed", 0.065, 1.2, 2000, 1000),
                      Layer.solid("foam", between(0.03, 0.12), 0.032, 30, 1400)));
      Construction ceiling =
          new Construction(
              "ceiling",
              List.of(
                  Layer.solid("plasterboard", 0.0125, 0.21, 700, 1000),
                  Layer.solid("wool", between(0.08, 0.3), 0.038, 25, 1030)));
      List<Room> rooms = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        double area = between(6, 28);
        double side = Math.sqrt(area);
        double glass = between(0.8, 3.5);
        double walls = (one(0.4) ? 2 : 1) * side * 2.4;
        List<Surface> surfaces = new ArrayList<>();
        surfaces.add(
            new Surface(
                "outer wall",
                Facing.WALL,
                Math.max(walls - glass, 2),
                wall,
                new Boundary.Outdoors()));
        if (i % 2 == 0) {
          surfaces.add(new Surface("floor", Facing.FLOOR, area, floor, underFloor(between(8, 12))));
        }
        if (i % 2 == 1 || count == 1) {
          surfaces.add(
              new Surface("ceiling", Facing.CEILING, area, ceiling, new Boundary.Outdoors()));
        }
        double want = any(18, 19, 20, 21, 21, 22);
        rooms.add(
            asSurveyed(
                new Room(
                        "room " + (i + 1),
                        area,
                        4 * side,
                        area * 2.4,
                        between(0.3, 1.2),
                        4,
                        surfaces,
                        List.of(new Window("window", glass, between(1, 2.8), 0.6)),
                        Timetable.constant(want),
                        Timetable.constant(0),
                        Timetable.constant(0))
                    .withDirectLoss(DirectLoss.bridges(bridges * (Math.max(walls, 2) + glass)))));
      }
      return rooms;
    }

    /** One room in five is known by its heat loss, which is about that of the room as drawn. */
    private Room asSurveyed(Room drawn) {
      boolean surveyed = surveys.nextInt(5) == 0;
      RoomMass mass = RoomMass.values()[surveys.nextInt(RoomMass.values().length)];
      double share = 0.8 + 0.4 * surveys.nextDouble();
      if (!surveyed) {
        return drawn;
      }
      double loss = drawn.directLoss().conductance();
      for (Surface s : drawn.surfaces()) {
        loss += s.area() * s.construction().uValue(s.facing());
      }
      for (Window w : drawn.windows()) {
        loss += w.area() * w.uValue();
      }
      double walls = 4 * Math.sqrt(drawn.floorArea()) * 2.4;
      Construction inner = mass.spread("mass", drawn.floorArea(), walls + 2 * drawn.floorArea());
      List<Surface> inert = new ArrayList<>();
      for (Facing facing : Facing.values()) {
        double area = facing == Facing.WALL ? walls : drawn.floorArea();
        inert.add(new Surface("inner " + facing, facing, area, inner, new Boundary.Adiabatic()));
      }
      return new Room(
          drawn.name(),
          drawn.floorArea(),
          drawn.walls(),
          drawn.volume(),
          drawn.airChangesPerHour(),
          drawn.furnishingMultiplier(),
          inert,
          List.of(),
          DirectLoss.ofWholeRoom(share * loss),
          drawn.want(),
          drawn.convectiveGain(),
          drawn.radiantGain());
    }

    /** What may be behind an emitter; nobody knows where only the heat loss is known. */
    private static List<Fixing> behind(Room room, List<Fixing> fixings) {
      return room.directLoss().whole() ? List.of() : fixings;
    }

    /** The ground in one house of two; in others ground that follows the weather, or a void. */
    private Boundary underFloor(double temperature) {
      return switch (further.nextInt(4)) {
        case 0 -> Boundary.Between.ground(temperature, 0.8, 0.4);
        case 1 -> new Boundary.Between("void", temperature, 0.7, 0.36);
        default -> new Boundary.Held("ground", temperature);
      };
    }

    private List<Partition> partitions(List<Room> rooms) {
      Layer board = Layer.solid("board", 0.0125, 0.21, 700, 1000);
      Construction light =
          new Construction("studs", List.of(board, Layer.cavity("studs", 0.18), board));
      Construction block =
          new Construction("block", List.of(Layer.solid("block", 0.1, 0.5, 1400, 1000)));
      Construction storey =
          new Construction(
              "storey",
              List.of(
                  Layer.solid("boards", 0.02, 0.13, 500, 1600),
                  Layer.cavity("joists", 0.18),
                  board));
      List<Partition> partitions = new ArrayList<>();
      for (int i = 0; i + 1 < rooms.size(); i++) {
        String here = rooms.get(i).name();
        if (i % 2 == 0) {
          double area = Math.min(rooms.get(i).floorArea(), rooms.get(i + 1).floorArea());
          partitions.add(
              new Partition(
                  "storey " + i,
                  rooms.get(i + 1).name(),
                  here,
                  Facing.FLOOR,
                  Facing.CEILING,
                  area,
                  storey));
        }
        if (i + 2 < rooms.size()) {
          partitions.add(
              new Partition(
                  "partition " + i,
                  here,
                  rooms.get(i + 2).name(),
                  Facing.WALL,
                  Facing.WALL,
                  between(6, 12),
                  one(0.5) ? light : block));
        }
      }
      return partitions;
    }

    private List<AirExchange> doors(List<Room> rooms) {
      List<AirExchange> doors = new ArrayList<>();
      for (int i = 0; i + 1 < rooms.size(); i++) {
        if (one(0.2)) {
          doors.add(new AirExchange(rooms.get(i).name(), rooms.get(i + 1).name(), between(2, 30)));
        }
      }
      return doors;
    }

    // Water

    private List<Branch> sample(List<Room> rooms) {
      List<Branch> branches = new ArrayList<>();
      for (Room room : rooms) {
        branches.add(
            new Branch(
                room.name(),
                radiator(room, "radiator", 1000),
                new FixedOpening("open", 1),
                LockshieldScale.TYPICAL.open(),
                Pipe.withoutDelay("pipe", 0.01, 1.5e-6, 10, 5),
                null,
                OptionalDouble.empty()));
      }
      return branches;
    }

    private Emitter radiator(Room room, String name, double watts) {
      return new PanelEmitter(
          name,
          watts,
          between(1.25, 1.35),
          watts * between(2.5e-6, 5e-6),
          watts * 0.015 * 450,
          between(0.2, 0.4),
          0.03,
          behind(room, Fixing.outside("outer wall")),
          5);
    }

    private Emitter skirting(Room room, String name, double watts) {
      double perMetre = between(90, 190);
      return new PerimeterEmitter(
          name,
          watts / perMetre,
          perMetre,
          between(1.2, 1.35),
          between(0.15e-3, 0.4e-3),
          1.4 * 880,
          between(0.3, 0.6),
          0.05,
          behind(room, behindSkirting()),
          tubes(),
          new PerimeterEmitter.Face(0.14, 0.03, 0.05, 0.11));
    }

    /** Out and back mostly, some one way, with and without film. */
    private Tubes tubes() {
      int kind = emitters.nextInt(4);
      double bore = 0.01 + 0.006 * emitters.nextDouble();
      return kind < 2
          ? new Tubes(Tubes.Way.OUT_AND_BACK, bore, true, 2 + 8 * emitters.nextDouble())
          : kind == 2 ? new Tubes(Tubes.Way.ONE_WAY, 1.4 * bore, true, 0) : Tubes.PLAIN;
    }

    /** In two houses of three it is known what insulates the back of skirting. */
    private List<Fixing> behindSkirting() {
      double insulation = 0.05 + further.nextDouble();
      boolean known = further.nextInt(3) > 0;
      return Fixing.outside("outer wall").stream()
          .map(fixing -> known ? fixing.insulated(insulation) : fixing)
          .toList();
    }

    private List<Branch> branches(
        List<Room> rooms, double[] load, List<Main> mains, double flow, double drop) {
      String emitters = any("skirting", "radiators", "both");
      double size = any(between(0.8, 1.1), between(1, 1.5), between(1.3, 2.2));
      boolean tails = one(0.6);
      List<Branch> branches = new ArrayList<>();
      for (int r = 0; r < rooms.size(); r++) {
        if (r > 0 && one(0.12)) {
          continue;
        }
        int emittersHere = one(0.15) ? 2 : 1;
        double want = rooms.get(r).want().maximum();
        double excess = Math.max(flow - drop / 2 - want, 8);
        double watts =
            load[r] * size * between(0.85, 1.2) / Math.pow(excess / 50, 1.3) / emittersHere;
        Valve valve = null;
        for (int e = 0; e < emittersHere; e++) {
          boolean perimeter = emitters.equals("skirting") || (emitters.equals("both") && one(0.5));
          Emitter emitter =
              perimeter
                  ? skirting(rooms.get(r), "skirting " + e, watts)
                  : radiator(rooms.get(r), "radiator " + e, watts);
          double massFlow = load[r] / emittersHere / 4180 / drop;
          if (valve == null || one(0.5)) {
            valve = valve(want, massFlow);
          }
          branches.add(branch(rooms, r, emitter, valve, mains, massFlow, tails));
        }
      }
      return branches;
    }

    private Branch branch(
        List<Room> rooms,
        int room,
        Emitter emitter,
        Valve valve,
        List<Main> mains,
        double massFlow,
        boolean tail) {
      Tube tube = massFlow > 0.05 ? Tube.copper(0.015, 0.0007) : Tube.copper(0.010, 0.0006);
      double length = between(4, 18);
      Pipe pipe =
          tail
              ? pipe(tube, length, 6, between(0.15, 0.5))
              : Pipe.withoutDelay("tail", tube.bore(), 1.5e-6, length, 6);
      double kv = massFlow * 3600 / 988 / Math.sqrt(between(0.03, 0.1)) * between(0.7, 1.6);
      String from = mains.isEmpty() ? null : mains.get(random.nextInt(mains.size())).name();
      if (waterKind.equals("manifold")) {
        from = mains.get(0).name();
      }
      return new Branch(
              rooms.get(room).name(),
              null,
              emitter,
              valve,
              one(0.2)
                  ? LockshieldScale.TYPICAL.open()
                  : new Lockshield("lockshield", 1, Math.max(kv, 0.03)),
              pipe,
              place(rooms, room),
              from,
              OptionalDouble.empty())
          .withStratification(one(0.2) ? between(0.3, 1.5) : 0);
    }

    private PipePlace place(List<Room> rooms, int room) {
      if (one(0.15)) {
        return PipePlace.outside(between(8, 16));
      }
      return PipePlace.in(rooms.get(one(0.1) ? random.nextInt(rooms.size()) : room).name());
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

    private Valve valve(double want, double massFlow) {
      String kind =
          valveKind.equals("mixed") ? any("heads", "fixed", "actuators", "motors") : valveKind;
      double nominal = Math.max(massFlow * 3600 / 988 / Math.sqrt(0.1), 0.08) * between(0.8, 2);
      RoomSensing sensing = one(0.3) ? RoomSensing.AIR : RoomSensing.OPERATIVE;
      return switch (kind) {
        case "heads" ->
            new WaxValve(
                "head",
                want + any(between(-1, 0.5), between(0, 2), 4),
                any(1, 1.5, 2, 2),
                any(0, 0.2, 0.4, 0.6),
                new WaxValve.Lags(any(900, 1200, 1500), one(0.2) ? 200 : 0, one(0.15) ? 60 : 0),
                any(0, 0.7 / 30, 0.7 / 30, 0.05),
                any(0, 0, 0.5, 1),
                any(0, 0.5),
                nominal,
                nominal * any(1, 1.5, 2.5),
                sensing);
        case "fixed" -> new FixedOpening("open", nominal * any(0.5, 1, 2));
        case "actuators" ->
            new OnOffActuator(
                "actuator", want + any(0, 0, 1), any(0.2, 0.5, 1), 180, nominal * 2, sensing);
        default ->
            new MotorHead(
                "motor",
                want + any(0, 0, 1),
                between(0.2, 0.8),
                one(0.7) ? between(1800, 7200) : Double.POSITIVE_INFINITY,
                120,
                nominal * 2,
                sensing);
      };
    }

    private List<Main> mains(List<Room> rooms, double whole) {
      List<Main> mains = new ArrayList<>();
      if (waterKind.equals("direct")) {
        return mains;
      }
      Tube tube = whole > 4000 ? Tube.copper(0.022, 0.0009) : Tube.copper(0.015, 0.0007);
      mains.add(
          new Main(
              "riser",
              null,
              pipe(tube, between(3, 15), 4, between(0.2, 0.5)),
              null,
              between(8, 20)));
      if (waterKind.equals("tree")) {
        for (int i = 0; i < 2; i++) {
          mains.add(
              new Main(
                  "mains " + i,
                  one(0.7) ? "riser" : mains.get(i).name(),
                  pipe(tube, between(4, 20), 6, between(0.1, 0.8)),
                  rooms.get(random.nextInt(rooms.size())).name(),
                  15));
        }
      }
      return mains;
    }

    private Distribution distribution(List<Main> mains, double massFlow, double drop) {
      double head = between(10_000, 35_000);
      double volume = massFlow / 988;
      Pump pump =
          switch (random.nextInt(3)) {
            case 0 -> new ConstantPump(head, 0.3);
            case 1 -> new ProportionalPump(head, volume, 0.3);
            default ->
                new CurvePump(
                    new double[] {0, volume, 3 * volume}, new double[] {head * 1.3, head, 0}, 0.3);
          };
      Optional<Bypass> bypass = Optional.empty();
      if (one(0.35)) {
        String from = mains.isEmpty() || one(0.6) ? null : mains.get(0).name();
        bypass =
            Optional.of(
                new Bypass(from, head * between(0.5, 1.1), 4000, volume * 3600 * between(0.5, 2)));
        waterKind += ", bypass";
      }
      SplittableRandom places = new SplittableRandom(Double.doubleToLongBits(drop));
      PumpPlace place =
          places.nextDouble() < 0.5
              ? PumpPlace.FREE
              : new PumpPlace(40 * places.nextDouble(), 1.5 + 3 * places.nextDouble());
      return new Distribution(pump, mains, bypass, drop, LockshieldScale.TYPICAL, place);
    }

    private Buffer buffer(double massFlow) {
      Buffer.Placement placement = Buffer.Placement.values()[random.nextInt(3)];
      waterKind += ", buffer " + placement.name().toLowerCase(java.util.Locale.ROOT);
      return new Buffer(
          placement,
          between(0.03, 0.2),
          between(0, 3),
          between(10, 20),
          massFlow * between(0.7, 1.8));
    }

    // Source and control

    private Source source(double flow, double whole, double massFlow) {
      return switch (sourceKind) {
        case "ideal" -> new IdealSource("ideal", flow, Double.POSITIVE_INFINITY);
        case "limited" -> new IdealSource("limited", flow, whole * between(0.4, 1.3));
        case "boiler" -> boiler(flow, whole);
        default -> heatPump(flow, whole, massFlow);
      };
    }

    private Source boiler(double flow, double whole) {
      double most = whole * between(0.8, 4);
      BoilerEfficiency efficiency =
          new BoilerEfficiency(
              new double[] {25, 40, 55, 70},
              new double[] {0.3, 1},
              new double[][] {{0.97, 0.965}, {0.94, 0.935}, {0.88, 0.875}, {0.87, 0.865}},
              55);
      double least = most * between(0.08, 0.4);
      Boiler boiler =
          new Boiler(
              "boiler",
              most,
              least,
              flow,
              between(2, 8),
              between(10_000, 40_000),
              60,
              any(0, 120, 180, 300),
              any(0, 180),
              between(0, 2),
              efficiency);
      // Asked of a generator of its own, so that every other house stays what it was.
      SplittableRandom exchangers = new SplittableRandom(Double.doubleToLongBits(most));
      if (exchangers.nextDouble() < 0.4) {
        return boiler;
      }
      return boiler.withExchanger(
          new Exchanger(
              exchangers.nextBoolean() ? 0 : whole / 4180 / (10 + 20 * exchangers.nextDouble()),
              exchangers.nextBoolean()
                  ? Double.POSITIVE_INFINITY
                  : 8 + 20 * exchangers.nextDouble(),
              5 * most));
    }

    private Source heatPump(double flow, double whole, double massFlow) {
      double rated = whole * between(0.7, 2.2);
      HeatPumpPerformance performance;
      if (one(0.7)) {
        double[] outdoors = {-7, 2, 7, 12};
        double[] flows = {35, 45, 55};
        double[][] capacity = new double[4][3];
        double[][] cop = new double[4][3];
        for (int i = 0; i < 4; i++) {
          for (int j = 0; j < 3; j++) {
            capacity[i][j] = rated * (1 + 0.03 * (outdoors[i] + 3)) * (1 - 0.006 * (flows[j] - 35));
            cop[i][j] = (2.8 + 0.12 * (outdoors[i] + 7)) * (1 - 0.018 * (flows[j] - 35));
          }
        }
        performance = new PerformanceMap(outdoors, flows, capacity, cop);
      } else {
        performance = new CarnotPerformance(0.42, rated * 1.25, rated * 0.025);
      }
      Optional<Defrost> defrost =
          one(0.4)
              ? Optional.of(new Defrost(-6, 5, between(2400, 5400), 240, rated * 0.5, rated * 0.15))
              : Optional.empty();
      Optional<BackupHeater> backup =
          one(0.25)
              ? Optional.of(new BackupHeater(rated * between(0.2, 0.6), between(-5, 5)))
              : Optional.empty();
      return new HeatPump(
          "heat pump",
          performance,
          between(0.2, 0.5),
          flow,
          new HeatPump.Limits(
              between(2, 5),
              Math.max(flow + any(0, 3, 10), 55),
              one(0.3) ? 0 : massFlow * between(0.2, 0.9),
              any(0, 300, 600),
              any(0, 300, 600)),
          60,
          between(10_000, 40_000),
          any(0, 180),
          15,
          defrost,
          backup);
    }

    private Control control(List<Branch> branches, double flow) {
      controlKind =
          any(
              "none",
              "none",
              "curve",
              "curve",
              "room influence",
              "on/off",
              "proportional",
              "interlock");
      boolean electric =
          branches.stream()
              .anyMatch(b -> b.valve() instanceof OnOffActuator || b.valve() instanceof MotorHead);
      if (controlKind.equals("interlock") && !electric) {
        controlKind = "none";
      }
      String room = branches.get(random.nextInt(branches.size())).room();
      double slope = (flow - 20) / (20 - DESIGN) * between(0.8, 1.2);
      double influence = controlKind.equals("room influence") ? between(1, 5) : 0;
      boolean curved = controlKind.equals("curve") || influence > 0 || one(0.2);
      Optional<FlowCurve> curve =
          curved
              ? Optional.of(
                  new FlowCurve(slope, between(-3, 5), between(20, 30), flow + 8, influence))
              : Optional.empty();
      Thermostat thermostat =
          switch (controlKind) {
            case "on/off" -> new Thermostat.OnOff(any(0.3, 0.5, 1), any(0, 600));
            case "proportional" ->
                new Thermostat.TimeProportional(any(600, 900, 1200), any(1, 1.5, 2), any(0, 600));
            default -> new Thermostat.None();
          };
      return new Control(
          Control.Setback.HEADS,
          room,
          0.5,
          thermostat,
          curve,
          new OptimumStart.None(),
          controlKind.equals("interlock"));
    }
  }
}
