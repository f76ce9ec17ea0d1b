package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Surface;
import settle.sim.room.RoomStepper;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.ValveStepper;
import settle.sim.valve.WaxValve;

/** A proportional valve as the engine steps it, holding a room. */
final class ValveRows implements RowGroup {

  private static final double KV_NOMINAL = 0.3;
  private static final double NOMINAL_PRESSURE = 10_000;

  @Override
  public String title() {
    return "Valve as stepped: droop";
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
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

  private static void step(ValveStepper valve, double length, double air) {
    valve.lookAhead(length, new double[] {NOMINAL_PRESSURE});
    valve.feel(0, length, air, air, 0.02, 50, NOMINAL_PRESSURE);
    valve.accept(length);
  }

  /** Room temperature and opening at rest: the valve's opening sets the heat, the room answers. */
  private static double[] held(double outdoor) {
    Surface face = TestRooms.inertFace(10);
    RoomStepper room = TestRooms.of(200e3, 40, 0, List.of(face), List.of()).stepper(20);
    WaxValve proportional =
        new WaxValve(
            "valve",
            20,
            2,
            0,
            new WaxValve.Lags(600, 0, 0),
            0,
            0,
            0,
            KV_NOMINAL,
            KV_NOMINAL,
            RoomSensing.AIR);
    ValveStepper valve = new ValveStepper(List.of(proportional), 20);
    double[] drop = {NOMINAL_PRESSURE};
    room.prepare(new double[] {60});
    for (int i = 0; i < 5000; i++) {
      double opening = valve.lookAhead(60, drop)[0] / KV_NOMINAL;
      room.setOutdoor(outdoor);
      room.setHeat(0, 1500 * opening);
      room.beginPrepared(0);
      room.settleLinks();
      double air = room.settledAir(0);
      room.finish();
      step(valve, 60, air);
    }
    return new double[] {room.air(0), valve.opening(0)};
  }
}
