package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FromUValue;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.RoomStepper;
import settle.sim.room.SteadyRooms;

/** Rooms as the engine steps them, against closed forms and EN 12831. */
final class SteppedRoomRows implements RowGroup {

  private static final Tolerance EXACT =
      Tolerance.absolute(2e-5, "exact for held inputs; last printed digit");

  @Override
  public String title() {
    return "Rooms as stepped: closed forms, heat load";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.addAll(
        DataFile.read("one-node.csv")
            .rows(
                "temperature",
                EXACT,
                line -> "Air alone, steps of 200 s",
                line -> oneNode(line.number("time"))));
    DataFile two = DataFile.read("two-nodes.csv");
    rows.addAll(
        two.rows(
            "air",
            EXACT,
            line -> "Air with one mass, steps of 60 s",
            line -> afterHeating(line.number("time")).air(0)));
    rows.addAll(
        two.rows(
            "mass",
            EXACT,
            line -> "Mass behind the air, steps of 60 s",
            line -> mass(line.number("time"))));
    rows.add(
        Row.claim("Air with one mass passes 21 C")
            .source(Source.ROOM_SOLUTIONS, "two nodes")
            .kind(Kind.COMPUTED)
            .given("the same, at 341.21 s, one step")
            .expects(21, "C", Tolerance.absolute(1e-4, "last printed digit of the time at 10 mK/s"))
            .codeGives(
                () -> {
                  RoomStepper room = twoNodes().stepper(16);
                  TestRooms.advance(room, 0, 1500, 341.21, 341.21);
                  return room.air(0);
                }));
    star(rows);
    heatLoad(rows);
    return rows;
  }

  private static double oneNode(double time) {
    TestRooms room = TestRooms.of(500e3, 25, 0, List.of(TestRooms.inertFace(10)), List.of());
    RoomStepper stepper = room.stepper(15);
    TestRooms.advance(stepper, 0, 750, time, 200);
    return stepper.air(0);
  }

  /**
   * 120 W/K from air to mass: h_c A = 150 W/K in series with 0.1 m2 K/W; 20 W/K from mass to
   * outdoors.
   */
  private static TestRooms twoNodes() {
    double area = 60;
    Construction wall =
        new Construction(
            "one lump",
            List.of(
                Layer.cavity("inner", 0.1),
                new Layer("mass", 0, 3000e3 / area),
                Layer.cavity("outer", area / 20 - Facing.EXTERNAL_RESISTANCE)));
    return TestRooms.of(
        60e3,
        15,
        0,
        List.of(new Surface("wall", Facing.WALL, area, wall, new Boundary.Outdoors())),
        List.of());
  }

  private static RoomStepper afterHeating(double time) {
    RoomStepper room = twoNodes().stepper(16);
    TestRooms.advance(room, 0, 1500, time, 60);
    return room;
  }

  /** The face lies between air and mass; with one face the star is the face. */
  private static double mass(double time) {
    RoomStepper room = afterHeating(time);
    double flow = 150 * (room.air(0) - room.star(0));
    return room.star(0) - flow * 0.1 / 60;
  }

  private static void star(List<Row> rows) {
    Tolerance digits = Tolerance.absolute(2e-5, "last printed digit");
    TestRooms room =
        TestRooms.of(
            100e3,
            10,
            0.3,
            List.of(
                new Surface(
                    "wall",
                    Facing.WALL,
                    10,
                    new Construction(
                        "wall", List.of(Layer.cavity("wall", 2 - Facing.EXTERNAL_RESISTANCE))),
                    new Boundary.Outdoors()),
                TestRooms.inertFace(50)),
            List.of());
    double[] heat = {500};
    SteadyRooms rest = room.atRest(0);
    rows.add(
        starRow("Air of a star network at rest")
            .expects(33.94148, "C", digits)
            .codeGives(() -> rest.air(0, heat)));
    rows.add(
        starRow("Star of a star network at rest")
            .expects(34.35824, "C", digits)
            .codeGives(() -> rest.star(0, heat)));
    rows.add(
        starRow("Operative temperature, stepped for 10 days")
            .expects(34.14986, "C", digits)
            .codeGives(
                () -> {
                  RoomStepper stepper = room.stepper(20);
                  TestRooms.advance(stepper, 0, 500, 864_000, 3600);
                  return (stepper.air(0) + stepper.star(0)) / 2;
                }));
  }

  private static Row.Draft starRow(String claim) {
    return Row.claim(claim)
        .source(Source.ROOM_SOLUTIONS, "star network at rest")
        .kind(Kind.COMPUTED)
        .given(
            "10 m2 with 2.0 m2 K/W to 0 C, 50 m2 adiabatic, h_c 2.5, h_r 5.13, ventilation 10 W/K, 500 W, 30 % radiant");
  }

  /**
   * 4.0 x 3.5 x 2.4 m, one outside wall, window, thermal bridges 0.05 W/(m2 K), 0.5 air changes,
   * 21/-3 C.
   */
  private static void heatLoad(List<Row> rows) {
    double bridges = 0.05;
    Construction wall =
        FromUValue.of("wall", 0.30 + bridges, Optional.empty(), Facing.WALL, Behind.OUTDOORS);
    List<Surface> surfaces =
        List.of(
            new Surface("wall", Facing.WALL, 16.2, wall, new Boundary.Outdoors()),
            TestRooms.inertFace(45.6));
    List<Window> windows = List.of(new Window("window", 2.4, 1.4 + bridges, 0.6));
    double volume = 4.0 * 3.5 * 2.4;
    double ventilation = 0.34 * 0.5 * volume;
    TestRooms room = TestRooms.of(4 * 1224 * volume, ventilation, 0.3, surfaces, windows);
    rows.add(
        Row.claim("Transmission and ventilation of a room")
            .source(Source.EN_12831, "own example by its formulae; 0.34 Wh/(m3 K)")
            .kind(Kind.COMPUTED)
            .given(
                "wall 16.2 m2 at 0.30, window 2.4 m2 at 1.4, bridges 0.05 W/(m2 K), 33.6 m3, 0.5 1/h")
            .expects(14.862, "W/K", Tolerance.absolute(0.001, "last printed digit"))
            .codeGives(
                () ->
                    16.2 * wall.uValue(Facing.WALL)
                        + 2.4 * windows.get(0).uValue()
                        + room.room().ventilationConductance()));
    rows.add(
        Row.claim("Room at rest under its standard heat load, weighted as its losses are")
            .source(Source.EN_12831, "own example by its formulae; 356.69 W at 21/-3 C")
            .kind(Kind.COMPUTED)
            .given("356.69 W, 30 % radiant, outdoor -3 C")
            .expects(21, "C", Tolerance.absolute(0.15, "the standard knows one room temperature"))
            .codeGives(
                () -> {
                  SteadyRooms rest = room.atRest(-3);
                  double[] heat = {356.69};
                  return (rest.air(0, heat) + rest.star(0, heat)) / 2;
                }));
  }
}
