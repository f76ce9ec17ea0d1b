package settle.sim.validation;

import java.util.List;
import settle.sim.control.Timetable;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.Layer;
import settle.sim.fabric.Surface;
import settle.sim.fabric.Window;
import settle.sim.room.HouseFabric;
import settle.sim.room.HouseNetwork;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.room.SteadyResponse;
import settle.sim.room.SteadyRooms;

/**
 * A single room reduced to a problem with a known solution, stepped by the engine's own stepper.
 *
 * @param room the room
 * @param radiant share of its one heat input that goes to the star
 */
record TestRooms(Room room, double radiant) {

  private static final double VOLUME = 50;

  /** Air of a heat capacity [J/K] that loses so much [W/K] to outdoors, with these surfaces. */
  static TestRooms of(
      double airCapacity,
      double airLoss,
      double radiant,
      List<Surface> surfaces,
      List<Window> windows) {
    return new TestRooms(
        new Room(
            "room",
            20,
            18,
            VOLUME,
            airLoss * 3600 / (Room.AIR_HEAT_CAPACITY * VOLUME),
            airCapacity / (Room.AIR_HEAT_CAPACITY * VOLUME),
            surfaces,
            windows,
            Timetable.constant(20),
            Timetable.constant(0),
            Timetable.constant(0)),
        radiant);
  }

  /** An inner face that holds and passes nothing: it makes a star of a room without fabric. */
  static Surface inertFace(double area) {
    return new Surface(
        "inert",
        Facing.WALL,
        area,
        new Construction("inert", List.of(Layer.cavity("inert", 1))),
        new Boundary.Adiabatic());
  }

  /** A wall of 1 m2 behind air that follows outdoors at once; its far side is adiabatic. */
  static TestRooms behindAir(List<Layer> layers) {
    Surface wall =
        new Surface(
            "wall", Facing.WALL, 1, new Construction("wall", layers), new Boundary.Adiabatic());
    return of(1000, 1e6, 0, List.of(wall), List.of());
  }

  private HouseNetwork network() {
    return HouseNetwork.of(
        List.of(room), List.of(), List.of(), List.of(new HouseNetwork.HeatInput(0, radiant)), 1);
  }

  RoomStepper stepper(double start) {
    return new RoomStepper(new HouseFabric(network()), start);
  }

  SteadyRooms atRest(double outdoor) {
    return new SteadyRooms(new SteadyResponse(network()), outdoor, new double[1], new double[1]);
  }

  /** Advances by so much time in equal steps with outdoor temperature and heat held. */
  static void advance(RoomStepper stepper, double outdoor, double heat, double time, double step) {
    long steps = Math.round(time / step);
    stepper.prepare(new double[] {step});
    for (long i = 0; i < steps; i++) {
      stepper.setOutdoor(outdoor);
      stepper.setHeat(0, heat);
      stepper.beginPrepared(0);
      stepper.settleLinks();
      stepper.finish();
    }
  }
}
