package settle.sim.validation;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.PlantControl;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.fabric.Surface;
import settle.sim.room.RoomStepper;

/**
 * A room of one time constant, stepped by the engine's own stepper, with a heater that the engine's
 * own controls switch, a dead time late if wanted.
 */
final class ControlledRoom {

  /** Heat loss of the room [W/K]. */
  static final double LOSS = 40;

  /** Step at which switchings are looked for [s]. */
  private static final double SHORTEST = 0.1;

  private static final double LONGEST = 300;

  final RoomStepper room;
  final PlantControl control;
  private final double deadTime;
  private final Deque<double[]> onTheWay = new ArrayDeque<>();
  double time;
  double outdoor;
  double power;
  boolean called;
  private boolean heating;

  /**
   * @param timeConstant of the room [s]
   * @param deadTime after which the heater follows the call [s]
   * @param rules how it is controlled; its reference room is this one
   * @param want programme
   * @param start temperature at the beginning [°C]
   */
  ControlledRoom(
      double timeConstant, double deadTime, Control rules, Timetable want, double start) {
    this.deadTime = deadTime;
    Surface face = TestRooms.inertFace(10);
    room = TestRooms.of(timeConstant * LOSS, LOSS, 0, List.of(face), List.of()).stepper(start);
    control = new PlantControl(rules, List.of(want), 0, 0.5, start);
  }

  static Control rules(
      Control.Setback setback, Thermostat thermostat, FlowCurve curve, OptimumStart early) {
    return new Control(setback, "room", 0.5, thermostat, Optional.ofNullable(curve), early, false);
  }

  double temperature() {
    return room.air(0);
  }

  /** One step, no further than an instant [s]; says whether the call changed at its beginning. */
  boolean step(double stop) {
    boolean before = called;
    called = control.decide(time, true);
    if (called != before) {
      onTheWay.add(new double[] {time + deadTime, called ? 1 : 0});
    }
    while (!onTheWay.isEmpty() && onTheWay.peek()[0] <= time + 1e-9) {
      heating = onTheWay.remove()[1] > 0;
    }
    double until = Math.min(stop, control.nextSwitch());
    if (!onTheWay.isEmpty()) {
      until = Math.min(until, onTheWay.peek()[0]);
    }
    double steady = Math.min(Math.max(control.steadyFor(), SHORTEST), LONGEST);
    advance(Math.min(steady, until - time), heating ? power : 0);
    return called != before;
  }

  /** Advances with a given heat [W]. */
  void advance(double length, double heat) {
    room.setOutdoor(outdoor);
    room.setHeat(0, heat);
    room.begin(length);
    room.settleLinks();
    double mean = room.settledAir(0);
    room.finish();
    control.follow(0, length, mean, room.air(0));
    time += length;
  }
}
