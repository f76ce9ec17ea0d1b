package settle.sim.engine;

import java.util.List;
import settle.sim.control.Control;
import settle.sim.control.PlantControl;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.valve.ValveStepper;

/**
 * Whether heat is called for and the pump runs: the controls, what they see of rooms and valves,
 * and the programme that each room's heads carry out.
 */
final class CallForHeat {

  // Model
  private final HouseModel model;
  private final RoomStepper rooms;
  private final ValveStepper valves;
  private final double[] dayWant;
  private final boolean[] watched;
  private final boolean byHeads;
  private final boolean interlock;
  private final double overRun;
  private final double ownSetPoint;
  private final Timetable hotWater;

  // State
  private final PlantControl control;
  private final double[] carriedOut;
  private boolean called;
  private boolean pumping;
  private double pumpUntil = Double.NEGATIVE_INFINITY;

  /**
   * @param model the prepared house
   * @param parts its rooms and valves
   * @param start temperature of all sensors at the beginning [°C]
   */
  CallForHeat(HouseModel model, Steppers parts, double start) {
    this.model = model;
    rooms = parts.rooms();
    valves = parts.valves();
    House house = model.house();
    Control rules = house.control();
    List<Timetable> wants = house.rooms().stream().map(Room::want).toList();
    int reference = rules.usesReferenceRoom() ? house.roomIndex(rules.referenceRoom()) : 0;
    control = new PlantControl(rules, wants, reference, house.wantTolerance(), start);
    dayWant = wants.stream().mapToDouble(Timetable::maximum).toArray();
    carriedOut = new double[dayWant.length];
    watched = new boolean[dayWant.length];
    for (int r = 0; r < watched.length; r++) {
      watched[r] = control.watches(r);
    }
    byHeads = rules.setback() == Control.Setback.HEADS;
    interlock = rules.interlock();
    overRun = house.source().overRunTime();
    ownSetPoint = house.source().flowSetPoint();
    hotWater = house.hotWater();
  }

  /**
   * Decides for the step that begins at an instant [s], on what has been seen so far.
   *
   * @return whether the call or what a room's programme carries out is another than before
   */
  boolean decide(double time) {
    boolean before = called;
    boolean away = hotWater.valueAt(time) > 0;
    called = control.decide(time, valves.anyElectricOpen()) && !away;
    boolean changed = before != called;
    for (int r = 0; r < carriedOut.length; r++) {
      if (control.want(r) != carriedOut[r]) {
        carriedOut[r] = control.want(r);
        changed = true;
      }
    }
    for (int b = 0; b < valves.count(); b++) {
      if (byHeads || valves.electric(b)) {
        int r = model.branchRoom(b);
        valves.shiftSetPoint(b, carriedOut[r] - dayWant[r]);
      }
    }
    valves.decide();
    if (before && !called) {
      pumpUntil = time + overRun;
    }
    pumping = called || (!away && time < pumpUntil - 1e-6);
    return changed;
  }

  /** Whether heat is called for and hot water has not taken the source away. */
  boolean called() {
    return called;
  }

  /** Whether the pump runs, after the call for its over-run. */
  boolean pumping() {
    return pumping;
  }

  /** Next instant after now at which the clock switches something [s]. */
  double nextSwitch(double now) {
    double next = Math.min(control.nextSwitch(), hotWater.nextChange(now));
    return !called && pumping ? Math.min(next, Math.max(pumpUntil, now + 1e-3)) : next;
  }

  /** For how long nothing switches by temperature, as things go [s]. */
  double steadyFor() {
    return control.steadyFor();
  }

  /** Flow temperature to ask for over a step with a mean outdoor temperature [°C]. */
  double flowSetPoint(double outdoor) {
    return control.flowSetPoint(outdoor, ownSetPoint);
  }

  /** How far into a step of a length [s] that is being tried something switches [s]. */
  double switchesAfter(double h) {
    double switches = valves.switchesAfter(h);
    if (interlock) {
      switches = Math.min(switches, valves.opensOrShutsAfter(h));
    }
    for (int r = 0; r < watched.length; r++) {
      if (watched[r]) {
        switches = Math.min(switches, control.switchesAfter(r, h, rooms.settledOperative(r)));
      }
    }
    return switches;
  }

  /** Lets controls and electric heads see what the rooms have done over a step [s]. */
  void observe(double h) {
    for (int r = 0; r < watched.length; r++) {
      if (watched[r]) {
        control.follow(r, h, rooms.settledOperative(r), rooms.operative(r));
      }
    }
    for (int b = 0; b < valves.count(); b++) {
      if (valves.electric(b)) {
        int r = model.branchRoom(b);
        valves.see(b, h, rooms.air(r), rooms.operative(r));
      }
    }
  }
}
