package settle.scenarios.room;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.fabric.Glazing;
import settle.scenarios.fabric.Layers;
import settle.scenarios.fabric.MakeUp;
import settle.scenarios.fabric.UnderFloor;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.weather.SiteSection;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FromUValue;
import settle.sim.fabric.Leaf;
import settle.sim.fabric.Partition;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.AirExchange;
import settle.sim.room.Room;

/** Reads the rooms, and closes each with what the scenario does not say. */
public final class RoomsReader {

  /** Smallest part of a room's walls, floor or ceiling that is worth a surface of its own [m2]. */
  private static final double WORTH_A_SURFACE = 0.2;

  /** Walls listed over walls there are that still passes as rounding [1]. */
  private static final double ROUNDING = 1.05;

  /** Height of a door, to tell its width from its area [m]; common practice, no source. */
  private static final double DOOR_HEIGHT = 2.1;

  /** Height from which a window reaches the floor [m]; common practice, no source. */
  private static final double TALL = 1.9;

  /** What closes a room towards rooms as warm, where the scenario does not say. */
  private static final String INNER_WALL = "stud partition";

  private static final String INNER_FLOOR = "timber intermediate floor";

  private static final String AS_WARM = "to a room equally warm, " + PRACTICE;

  private final Definitions known;
  private final SiteSection site;
  private final Programmes programmes;
  private final List<String> roomNames;
  private final Map<String, RoomDraft> drafts = new LinkedHashMap<>();
  private final List<Partition> partitions = new ArrayList<>();
  private final List<AirExchange> airExchanges = new ArrayList<>();

  /** Who wrote a partition: "wall a|b" to the room that did. */
  private final Map<String, String> writtenBy = new HashMap<>();

  /** Surfaces that lead to rooms: read after all rooms, whose sizes they need. */
  private final List<ToRoom> toRooms = new ArrayList<>();

  /** Air exchanges, resolved in the same way. */
  private final List<Exchange> exchanges = new ArrayList<>();

  /** Floors to the ground: what is under them depends on all of them together. */
  private final List<GroundFloor> groundFloors = new ArrayList<>();

  private record GroundFloor(RoomDraft room, int position, MakeUp makeUp) {

    Surface surface() {
      return room.surfaces.get(position);
    }
  }

  private record Exchange(String room, String other, Value value) {}

  private record ToRoom(
      RoomDraft room, Section section, Facing facing, Value beyond, String other) {}

  public RoomsReader(
      Definitions known, SiteSection site, Programmes programmes, List<String> roomNames) {
    this.known = known;
    this.site = site;
    this.programmes = programmes;
    this.roomNames = roomNames;
  }

  /** Reads a room and all its surfaces that do not lead to other rooms. */
  public void read(String name, Value value) {
    Section s = value.section(RoomKeys.TABLE);
    if (Form.Beyond.WORDS.contains(name) || Form.Beyond.isTemperature(name)) {
      s.problem(
          "a room cannot be called '" + name + "': surfaces use it for what lies behind them");
    }
    double want = s.number(RoomKeys.WANT);
    RoomDraft room = sized(name, s, want);
    drafts.put(name, room);
    for (Value item : s.several(RoomKeys.SURFACES)) {
      surface(room, item.section(RoomKeys.SURFACE_TABLE));
    }
    s.named(RoomKeys.AIR_EXCHANGE)
        .forEach((other, v) -> exchanges.add(new Exchange(name, other, v)));
  }

  private RoomDraft sized(String name, Section s, double want) {
    double floorArea;
    double height;
    double perimeter;
    double longest;
    double rectangle;
    WallFeet feet = new WallFeet(s);
    Optional<Value> size = s.value(RoomKeys.SIZE);
    if (size.isPresent()) {
      double[] lengths = size.get().size();
      floorArea = lengths[0] * lengths[1];
      height = lengths[2];
      longest = Math.max(lengths[0], lengths[1]);
      double around = 2 * (lengths[0] + lengths[1]);
      perimeter =
          feet.inOrder() ? feet.listed() : s.numberIfWritten(RoomKeys.PERIMETER).orElse(around);
      rectangle = around;
      s.value(RoomKeys.HEIGHT)
          .ifPresent(v -> v.problem("is part of 'size'; leave one of them out"));
      warnOfSize(size.get(), floorArea, height);
    } else {
      Optional<Value> area = s.value(RoomKeys.FLOOR_AREA);
      floorArea = area.map(Value::area).orElse(16.0);
      if (area.isPresent() && !s.has(RoomKeys.HEIGHT)) {
        s.lacks(RoomKeys.HEIGHT);
      }
      height = s.number(RoomKeys.HEIGHT);
      longest = Double.POSITIVE_INFINITY;
      perimeter =
          feet.inOrder() ? feet.listed() : s.number(RoomKeys.PERIMETER, 4 * Math.sqrt(floorArea));
      rectangle = Double.POSITIVE_INFINITY;
    }
    if (feet.inOrder()) {
      feet.doubtSize(rectangle, floorArea);
    }
    return new RoomDraft(
        name,
        s,
        new double[] {floorArea, height},
        perimeter,
        longest,
        feet,
        want,
        KnownLoss.read(s, want, site.designOutdoor(), floorArea * height),
        s.number(RoomKeys.FURNISHING),
        programmes.want(s, want),
        Programmes.gains(s));
  }

  private static void warnOfSize(Value size, double floorArea, double height) {
    if (floorArea > 200 || floorArea < 1) {
      size.warn(
          "a floor of " + Dimension.AREA.show(floorArea) + " is unusual for a room; is it meant?");
    }
    if (height > 5 || height < 1.9) {
      size.warn("a height of " + Dimension.LENGTH.show(height) + " is unusual; is it meant?");
    }
  }

  private void surface(RoomDraft room, Section s) {
    boolean wall = s.has(RoomKeys.WALL);
    boolean floor = s.has(RoomKeys.FLOOR);
    Key part = wall ? RoomKeys.WALL : floor ? RoomKeys.FLOOR : RoomKeys.CEILING;
    Facing facing = wall ? Facing.WALL : floor ? Facing.FLOOR : Facing.CEILING;
    Optional<Value> value = s.value(part);
    if (value.isEmpty()) {
      return;
    }
    Value beyond = value.get();
    String what = beyond.beyond(roomNames);
    if (what.equals(room.name)) {
      beyond.problem("found the room itself, expected what lies behind the " + part.name());
    } else if (roomNames.contains(what)) {
      toRooms.add(new ToRoom(room, s, facing, beyond, what));
    } else if (room.loss.isPresent() && !what.equals(Form.Beyond.ADIABATIC)) {
      beyond.problem(
          "is in 'heat loss' already; with that, surfaces lead to other rooms or are adiabatic");
    } else {
      surfaceTo(beyond, what, room, s, facing);
    }
  }

  private Boundary boundary(Value beyond, String what) {
    return switch (what) {
      case Form.Beyond.OUTDOORS -> new Boundary.Outdoors();
      case Form.Beyond.GROUND -> new Boundary.Held(what, site.ground());
      case Form.Beyond.NEIGHBOUR -> new Boundary.Held(what, site.neighbours());
      case Form.Beyond.ADIABATIC -> new Boundary.Adiabatic();
      default -> {
        double temperature = beyond.number(Form.Beyond.TEMPERATURE);
        yield new Boundary.Held("space at " + Dimension.TEMPERATURE.show(temperature), temperature);
      }
    };
  }

  private void surfaceTo(Value beyond, String what, RoomDraft room, Section s, Facing facing) {
    Boundary boundary = boundary(beyond, what);
    String defaultName = facing.name().toLowerCase(Locale.ROOT) + " to " + what;
    String name = room.freeName(s.words(RoomKeys.SURFACE_NAME, defaultName));
    if (s.has(RoomKeys.SURFACE_NAME) && room.isTaken(s.words(RoomKeys.SURFACE_NAME, ""))) {
      s.problem(
          "another surface of this room is called '" + s.words(RoomKeys.SURFACE_NAME, "") + "'");
    }
    double gross = area(room, s, facing);
    room.cover(facing, gross);
    Openings openings = openings(room, s, name, boundary, gross);
    double net = gross - openings.area();
    if (facing == Facing.WALL) {
      room.feet.add(new WallFeet.Behind(name, gross, openings.toFloor(), boundary.isOutdoors()));
    }
    if (boundary.isOutdoors()) {
      room.outsideArea += gross;
      room.outsideWallArea += facing == Facing.WALL ? gross : 0;
    }
    if (net > 1e-6) {
      MakeUp makeUp = makeUp(s, facing, behind(what));
      if (facing == Facing.FLOOR && what.equals(Form.Beyond.GROUND)) {
        groundFloors.add(new GroundFloor(room, room.surfaces.size(), makeUp));
      }
      room.surfaces.add(
          new Surface(name, facing, net, makeUp.construction(facing, behind(what)), boundary));
    }
  }

  private static Behind behind(String what) {
    return switch (what) {
      case Form.Beyond.OUTDOORS -> Behind.OUTDOORS;
      case Form.Beyond.GROUND -> Behind.GROUND;
      default -> Behind.ROOM;
    };
  }

  private static double area(RoomDraft room, Section s, Facing facing) {
    Optional<Value> area = s.value(RoomKeys.SURFACE_AREA);
    if (area.isPresent()) {
      return area.get().area();
    }
    if (facing == Facing.WALL) {
      s.lacks(RoomKeys.SURFACE_AREA);
    } else {
      s.note(RoomKeys.SURFACE_AREA, Dimension.AREA.show(room.floorArea));
    }
    return room.floorArea;
  }

  /**
   * The openings of a surface.
   *
   * @param area of all [m2]
   * @param toFloor width of those that reach the floor [m]
   */
  private record Openings(double area, double toFloor) {

    static final Openings NONE = new Openings(0, 0);
  }

  /** Reads the openings of a surface. */
  private Openings openings(
      RoomDraft room, Section s, String wall, Boundary boundary, double gross) {
    double total = 0;
    double toFloor = 0;
    List<Value> values = s.several(RoomKeys.OPENINGS);
    if (!values.isEmpty() && !boundary.isOutdoors()) {
      s.value(RoomKeys.OPENINGS)
          .orElseThrow()
          .problem("openings lead outdoors; this surface does not");
      return Openings.NONE;
    }
    for (Value value : values) {
      Section o = value.section(RoomKeys.OPENING_TABLE);
      double area = o.value(RoomKeys.OPENING_AREA).map(Value::area).orElse(0.0);
      if (area > 0) {
        Window window = window(room.freeName("opening in " + wall), area, o);
        room.windows.add(window);
        toFloor += widthAtFloor(o, window);
      }
      total += area;
    }
    if (total > gross) {
      s.value(RoomKeys.OPENINGS)
          .orElseThrow()
          .problem(
              "found openings of "
                  + Dimension.AREA.show(total)
                  + " in a surface of "
                  + Dimension.AREA.show(gross)
                  + ", expected less");
      return Openings.NONE;
    }
    return new Openings(total, toFloor);
  }

  /** How much of the floor's edge an opening takes [m]. */
  private static double widthAtFloor(Section o, Window window) {
    Optional<double[]> sides = o.value(RoomKeys.OPENING_AREA).flatMap(Value::sides);
    double width =
        o.numberIfWritten(RoomKeys.OPENING_WIDTH)
            .orElse(sides.isPresent() ? sides.get()[0] : window.area() / DOOR_HEIGHT);
    boolean tall = sides.isPresent() && window.area() / width >= TALL;
    boolean toFloor =
        o.has(RoomKeys.OPENING_TO_FLOOR)
            ? o.yesNo(RoomKeys.OPENING_TO_FLOOR)
            : window.gValue() == 0 || tall;
    return toFloor ? width : 0;
  }

  private Window window(String name, double area, Section o) {
    double height =
        o.value(RoomKeys.OPENING_AREA).flatMap(Value::sides).map(sides -> sides[1]).orElse(0.0);
    if (!o.has(RoomKeys.OPENING_TYPE)) {
      return new Window(
          name, area, o.number(RoomKeys.OPENING_U), o.number(Glazing.G_VALUE), height);
    }
    Glazing type = known.named(o, RoomKeys.OPENING_TYPE, Glazing.SECTION);
    double gValue = o.has(Glazing.G_VALUE) ? o.number(Glazing.G_VALUE) : type.gValue();
    return new Window(name, area, type.uValue(), gValue, height);
  }

  private MakeUp makeUp(Section s, Facing facing, Behind behind) {
    MakeUp.refuseWithout(s, MakeUp.U_VALUE);
    Optional<Value> layers = s.value(MakeUp.LAYERS);
    if (layers.isPresent()) {
      return new MakeUp.Layered(
          new Described("own layers", "", ""),
          Layers.read(layers.get(), known),
          false,
          MakeUp.isSuspended(s));
    }
    if (s.has(MakeUp.U_VALUE)) {
      return byUValue(s, facing, behind);
    }
    s.value(MakeUp.SUSPENDED)
        .ifPresent(
            v -> v.problem("goes with 'layers' or 'U-value'; a construction says it itself"));
    return known.named(s, RoomKeys.SURFACE_CONSTRUCTION, MakeUp.SECTION);
  }

  private static MakeUp.ByUValue byUValue(Section s, Facing facing, Behind behind) {
    double uValue = s.number(MakeUp.U_VALUE);
    String leaf =
        FromUValue.isMasonry(uValue, Optional.empty(), facing)
            ? "solid masonry"
            : Leaf.usual(facing, behind).word();
    double largest = MakeUp.ByUValue.largestUValue(facing);
    if (uValue > largest) {
      s.value(MakeUp.U_VALUE)
          .orElseThrow()
          .problem(
              "found "
                  + Dimension.TRANSMITTANCE.show(uValue)
                  + ", expected at most "
                  + Dimension.TRANSMITTANCE.show(largest)
                  + ": the surface resistances of ISO 6946 alone allow no more");
    }
    return MakeUp.ByUValue.read(new Described("own U-value", "", ""), s, leaf);
  }

  /** Joins the rooms and closes what is still open. To be called when all rooms have been read. */
  public void close() {
    toRooms.forEach(this::join);
    exchanges.forEach(this::exchange);
    putGroundUnderFloors();
    addThermalBridges();
    drafts.values().forEach(this::closeRoom);
  }

  /** Puts soil or a void under floors to the ground, once their sizes together are known. */
  private void putGroundUnderFloors() {
    if (groundFloors.isEmpty()) {
      return;
    }
    Set<RoomDraft> rooms = new LinkedHashSet<>();
    double area = 0;
    for (GroundFloor floor : groundFloors) {
      area += floor.surface().area();
      rooms.add(floor.room);
    }
    double exposed = rooms.stream().mapToDouble(r -> r.outsideWallArea / r.height).sum();
    double breadth = rooms.size() == 1 ? site.floorDimension() : site.floorDimension(area, exposed);
    for (GroundFloor floor : groundFloors) {
      double swing = site.groundSwing(floor.room.want);
      UnderFloor under = UnderFloor.of(floor.makeUp, breadth, site.ground(), swing);
      Surface surface = floor.surface();
      floor.room.surfaces.set(
          floor.position,
          new Surface(
              surface.name(),
              Facing.FLOOR,
              surface.area(),
              under.construction(),
              under.boundary()));
    }
  }

  private void addThermalBridges() {
    double area = 0;
    double effect = 0;
    for (RoomDraft room : drafts.values()) {
      area += room.outsideArea;
      effect += room.outsideArea * (room.want - site.designOutdoor());
    }
    if (area > 0) {
      double bridges = site.thermalBridges(effect);
      drafts.values().forEach(room -> room.thermalBridges = bridges * room.outsideArea);
    }
  }

  private void join(ToRoom p) {
    RoomDraft other = drafts.get(p.other());
    Section s = p.section();
    Facing facingInOther =
        switch (p.facing()) {
          case WALL -> Facing.WALL;
          case CEILING -> Facing.FLOOR;
          case FLOOR -> Facing.CEILING;
        };
    String part = p.facing() == Facing.WALL ? "wall" : "floor";
    String writer = writtenBy.putIfAbsent(part + pair(p.room().name, p.other()), p.room().name);
    if (writer != null && !writer.equals(p.room().name)) {
      p.beyond()
          .problem(
              "the "
                  + part
                  + " between these rooms is written in '"
                  + writer
                  + "' too; write it in one of the two");
      return;
    }
    s.value(RoomKeys.OPENINGS)
        .ifPresent(v -> v.problem("openings lead outdoors; this surface does not"));
    double area = area(p.room(), s, p.facing());
    String name =
        s.words(RoomKeys.SURFACE_NAME, part + " between " + p.room().name + " and " + p.other());
    p.room().cover(p.facing(), area);
    other.cover(facingInOther, area);
    String free = freePartitionName(name);
    if (p.facing() == Facing.WALL) {
      p.room().feet.add(new WallFeet.Behind(free, area, 0, false));
      other.feet.add(new WallFeet.Behind(free, area, 0, false));
    }
    partitions.add(
        new Partition(
            free,
            p.room().name,
            p.other(),
            p.facing(),
            facingInOther,
            area,
            makeUp(s, p.facing(), Behind.ROOM).construction(p.facing(), Behind.ROOM)));
  }

  private String freePartitionName(String wanted) {
    String free = wanted;
    int n = 2;
    while (isPartition(free)) {
      free = wanted + " " + n;
      n++;
    }
    return free;
  }

  private boolean isPartition(String name) {
    return partitions.stream().anyMatch(p -> p.name().equals(name));
  }

  private static String pair(String a, String b) {
    return a.compareTo(b) < 0 ? a + "|" + b : b + "|" + a;
  }

  private void exchange(Exchange e) {
    double conductance =
        e.value().number((Form.Quantity) ((Form.Named) RoomKeys.AIR_EXCHANGE.form()).each());
    if (!drafts.containsKey(e.other())) {
      e.value().unknownName(RoomKeys.ROOM, e.other(), roomNames);
      return;
    }
    if (e.other().equals(e.room())) {
      e.value().problem("found the room itself, expected another room");
      return;
    }
    for (AirExchange earlier : airExchanges) {
      if (pair(earlier.firstRoom(), earlier.secondRoom()).equals(pair(e.room(), e.other()))) {
        e.value()
            .problem(
                "the exchange between these rooms is written in '"
                    + earlier.firstRoom()
                    + "' too; write it in one of the two");
        return;
      }
    }
    airExchanges.add(new AirExchange(e.room(), e.other(), conductance));
  }

  private void closeRoom(RoomDraft room) {
    room.feet.close(room.perimeter, room.height);
    for (Facing facing : Facing.values()) {
      double whole = room.area(facing);
      double rest = whole - room.covered(facing);
      if (rest > WORTH_A_SURFACE) {
        closeWith(room, facing, rest);
      } else if (room.covered(facing) > whole * ROUNDING) {
        String what =
            facing == Facing.WALL ? "walls" : facing == Facing.FLOOR ? "floors" : "ceilings";
        room.section.warn(
            "the "
                + what
                + " written for it add up to "
                + Dimension.AREA.show(room.covered(facing))
                + ", but its size has "
                + Dimension.AREA.show(whole));
      }
    }
  }

  /**
   * Closes a room with what is as warm behind, or with the mass that is all that is known of it.
   */
  private void closeWith(RoomDraft room, Facing facing, double area) {
    String what =
        facing == Facing.WALL ? "inner walls" : facing == Facing.FLOOR ? "floor" : "ceiling";
    Construction inside;
    if (room.loss.isPresent()) {
      inside = room.loss.get().mass().spread("mass of the room", room.floorArea, room.area());
    } else {
      MakeUp.Layered makeUp =
          (MakeUp.Layered)
              known.of(MakeUp.SECTION).get(facing == Facing.WALL ? INNER_WALL : INNER_FLOOR);
      inside = makeUp.half(facing);
      room.section.noteDefault(
          what, Dimension.AREA.show(area) + " of " + makeUp.described().name(), AS_WARM);
    }
    room.surfaces.add(
        new Surface(room.freeName(what), facing, area, inside, new Boundary.Adiabatic()));
  }

  /** The rooms with their surfaces. */
  public List<Room> rooms() {
    List<Room> rooms = new ArrayList<>();
    drafts.values().forEach(d -> rooms.add(d.room()));
    return rooms;
  }

  /** The rooms by name, with what emitters need to know of them. */
  public Map<String, RoomDraft> drafts() {
    return drafts;
  }

  /** Walls and floors between rooms. */
  public List<Partition> partitions() {
    return partitions;
  }

  /** Open doors. */
  public List<AirExchange> airExchanges() {
    return airExchanges;
  }
}
