package settle.sim.engine;

import settle.sim.model.HouseModel;
import settle.sim.room.RoomStepper;
import settle.sim.source.SourceStepper;
import settle.sim.valve.ValveStepper;

/**
 * The parts of a house in one run, each with its own state.
 *
 * @param rooms air and fabric
 * @param circuit the water from the source's outlet to its inlet, emitters included
 * @param valves what throttles the branches
 * @param source what heats the water
 */
record Steppers(
    RoomStepper rooms, WaterCircuit circuit, ValveStepper valves, SourceStepper source) {

  /** Parts that begin at one temperature [°C]. */
  static Steppers of(HouseModel model, double start, Fineness fineness) {
    return new Steppers(
        new RoomStepper(model.fabric(), start, fineness.agreement()),
        new WaterCircuit(model, start, fineness.parcels()),
        model.valveStepper(start),
        model.sourceStepper(start));
  }
}
