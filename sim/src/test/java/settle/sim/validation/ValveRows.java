package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import settle.sim.fabric.Surface;
import settle.sim.room.RoomStepper;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.ValveStepper;
import settle.sim.valve.WaxValve;

/**
 * The valve as the engine steps it: the procedure of EN 215, and a proportional valve holding a
 * room.
 */
final class ValveRows implements RowGroup {

  private static final double KV_NOMINAL = 0.3;
  private static final double KV_MAXIMUM = 0.6;
  private static final double SET_POINT = 20;
  private static final double NOMINAL_PRESSURE = 10_000;

  /** A step so long that the head has followed. */
  private static final double LONG = 100_000;

  @Override
  public String title() {
    return "Valve as stepped: the procedure of EN 215, droop";
  }

  private static WaxValve valve(double play) {
    return new WaxValve(
        "valve",
        SET_POINT,
        2,
        play,
        1200,
        0,
        0,
        0.7 / 30,
        0,
        0.5,
        KV_NOMINAL,
        KV_MAXIMUM,
        RoomSensing.AIR);
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    Tolerance kelvin = Tolerance.absolute(0.01, "air moved in steps of 1 mK");
    DoubleUnaryOperator closing = pressure -> nominalTemperature(pressure, 50, true);
    rows.add(
        procedure("Hysteresis C at nominal flow", "play 0.4 K")
            .expects(0.40, "K", kelvin)
            .codeGives(
                () ->
                    nominalTemperature(NOMINAL_PRESSURE, 50, true)
                        - nominalTemperature(NOMINAL_PRESSURE, 50, false)));
    rows.add(
        procedure("Water temperature influence W", "water from 50 to 80 C, 0.7 K per 30 K")
            .expects(0.70, "K", kelvin)
            .codeGives(
                () ->
                    closing.applyAsDouble(NOMINAL_PRESSURE)
                        - nominalTemperature(NOMINAL_PRESSURE, 80, true)));
    rows.add(
        procedure("Differential pressure influence D", "0.1 to 0.6 bar, 0.5 K/bar")
            .expects(0.25, "K", kelvin)
            .codeGives(
                () -> closing.applyAsDouble(NOMINAL_PRESSURE) - closing.applyAsDouble(60_000)));
    Tolerance step = Tolerance.absolute(0.17, "one step of 10 s");
    rows.add(
        procedure("Response to 63.2 % of a step", "lag 20 min, steps of 10 s")
            .expects(20.0, "min", step)
            .codeGives(() -> responseTime(0.632)));
    rows.add(
        procedure("Response to 90 % of a step", "lag 20 min, steps of 10 s")
            .expects(46.1, "min", step)
            .codeGives(() -> responseTime(0.9)));
    limits(rows, closing);
    DataFile droop = DataFile.read("proportional-droop.csv");
    rows.addAll(
        droop.rows(
            "room",
            Tolerance.absolute(1e-3, "stepped to rest"),
            line -> "Room at rest under a proportional valve",
            line -> held(line.number("outdoor"))[0]));
    rows.addAll(
        droop.rows(
            "opening",
            Tolerance.absolute(1e-3, "stepped to rest"),
            line -> "Opening at rest of a proportional valve",
            line -> held(line.number("outdoor"))[1]));
    return rows;
  }

  private static void limits(List<Row> rows, DoubleUnaryOperator closing) {
    String reason = "limit of the standard, from memory";
    rows.add(
        limit("Hysteresis C of the default head")
            .expectsBetween(0, 1.0, "K", reason)
            .codeGives(
                () ->
                    nominalTemperature(NOMINAL_PRESSURE, 50, true)
                        - nominalTemperature(NOMINAL_PRESSURE, 50, false)));
    rows.add(
        limit("Water temperature influence W of the default head")
            .expectsBetween(0, 1.5, "K", reason)
            .codeGives(
                () ->
                    closing.applyAsDouble(NOMINAL_PRESSURE)
                        - nominalTemperature(NOMINAL_PRESSURE, 80, true)));
    rows.add(
        limit("Differential pressure influence D of the default head")
            .expectsBetween(0, 1.0, "K", reason)
            .codeGives(
                () -> closing.applyAsDouble(NOMINAL_PRESSURE) - closing.applyAsDouble(60_000)));
    rows.add(
        limit("Response time Z of the default head, 63.2 %")
            .expectsBetween(0, 40, "min", reason)
            .codeGives(() -> responseTime(0.632)));
  }

  private static Row.Draft procedure(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.EN_215, "test procedure, on the head's declared figures")
        .kind(Kind.COMPUTED)
        .given(inputs);
  }

  private static Row.Draft limit(String claim) {
    return Row.claim(claim).source(Source.EN_215, "limits").kind(Kind.MEMORY).given("default head");
  }

  /** Air temperature at which the opening passes nominal Kv, while closing (warming) or opening. */
  private static double nominalTemperature(double pressure, double water, boolean closing) {
    double from = closing ? 15 : 25;
    ValveStepper valve = new ValveStepper(List.of(valve(0.4)), from);
    double[] drop = {pressure};
    double air = from;
    for (int i = 0; i < 10_000; i++) {
      step(valve, LONG, air, water, pressure);
      double kv = valve.lookAhead(LONG, drop)[0];
      if (closing ? kv <= KV_NOMINAL : kv >= KV_NOMINAL) {
        return air;
      }
      air += closing ? 1e-3 : -1e-3;
    }
    throw new IllegalStateException("nominal flow was never passed");
  }

  private static void step(
      ValveStepper valve, double length, double air, double water, double pressure) {
    valve.lookAhead(length, new double[] {pressure});
    valve.feel(0, length, air, air, 0.02, water, pressure);
    valve.accept(length);
  }

  /** Time until the head has followed a step of the air by such a share [min]. */
  private static double responseTime(double share) {
    ValveStepper valve = new ValveStepper(List.of(valve(0)), 18);
    for (int i = 0; i < 100; i++) {
      step(valve, LONG, 18, 50, NOMINAL_PRESSURE);
    }
    double before = valve.element(0);
    int steps = 0;
    while (valve.element(0) < before + share * 2) {
      step(valve, 10, 20, 50, NOMINAL_PRESSURE);
      steps++;
    }
    return steps * 10 / 60.0;
  }

  /** Room temperature and opening at rest: the valve's opening sets the heat, the room answers. */
  private static double[] held(double outdoor) {
    Surface face = TestRooms.inertFace(10);
    RoomStepper room = TestRooms.of(200e3, 40, 0, List.of(face), List.of()).stepper(20);
    WaxValve proportional =
        new WaxValve(
            "valve", 20, 2, 0, 600, 0, 0, 0, 0, 0, KV_NOMINAL, KV_NOMINAL, RoomSensing.AIR);
    ValveStepper valve = new ValveStepper(List.of(proportional), 20);
    double[] drop = {NOMINAL_PRESSURE};
    room.prepare(new double[] {60});
    for (int i = 0; i < 5000; i++) {
      double opening = valve.lookAhead(60, drop)[0] / KV_NOMINAL;
      room.setOutdoor(outdoor);
      room.setHeat(0, 1500 * opening);
      room.beginPrepared(0);
      room.settleLinks();
      double air = room.meanAir(0);
      room.finish();
      step(valve, 60, air, 50, NOMINAL_PRESSURE);
    }
    return new double[] {room.air(0), valve.opening(0)};
  }
}
