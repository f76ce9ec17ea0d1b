package settle.sim.tuning;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.Valve;

/** Where controllers begin: a step is run, a lag with a dead time found in it, a rule applied. */
final class ControllerStart {

  /** Step of a motor head's lift, as a share of its working lift [-]. */
  private static final double STEP = 0.3;

  /** Least lift a step begins with [-]. */
  private static final double LEAST_LIFT = 0.01;

  /**
   * Quickest closed loop asked of a motor head [s]: a battery is to last; common practice, no
   * source.
   */
  private static final double QUICKEST = 600;

  /** Wants at which heat is always and never called for, above frost protection [°C]. */
  private static final double ALWAYS = 60;

  private static final double NEVER = 7;

  private ControllerStart() {}

  /**
   * The smallest differential of a thermostat that keeps the starts to be expected within reason.
   */
  static void set(StartValues start, Setting differential) {
    Plant plant = start.plant();
    House house = plant.house();
    String room = house.control().referenceRoom();
    if (!plant.heats(room)) {
      return;
    }
    double want = house.dayWant(room);
    Thermostat.OnOff thermostat = house.control().thermostat().onOff().orElseThrow();
    FirstOrderDeadTime identified =
        StepTest.of(
                calledFor(plant, NEVER),
                calledFor(plant, ALWAYS),
                1,
                room,
                start.usualOutdoor(),
                want)
            .behind(thermostat.timeConstant());
    double off = start.usualOutdoor();
    double on = off + identified.gain();
    double[] marks = differential.marks(plant);
    int mark = 0;
    RelayCycle cycle = RelayCycle.of(on, off, identified, want, marks[mark]);
    while (mark + 1 < marks.length
        && on - want > marks[mark]
        && cycle.startsPerHour() > Aim.MOST_STARTS) {
      mark++;
      cycle = RelayCycle.of(on, off, identified, want, marks[mark]);
    }
    if (on - want > marks[mark]) {
      start.set(differential, marks[mark], new Reason.LimitCycle(identified, cycle));
    }
  }

  /** The plant with a want at which heat is called for all the time, or never, heads open. */
  private static Plant calledFor(Plant plant, double want) {
    List<Room> rooms =
        plant.house().rooms().stream()
            .map(room -> room.withWant(Timetable.constant(want)))
            .toList();
    Arrangement as = plant.arrangement();
    return new Plant(
        plant.house().withRooms(rooms),
        as.withBranches(
            as.branches().stream().map(b -> b.withValve(b.valve().raised(ALWAYS))).toList()));
  }

  /** Gain and integral time of a motor head by SIMC. */
  static void setGains(StartValues start, Setting gain) {
    int b = gain.branch();
    double want = start.plant().house().dayWant(gain.where());
    double lift = workingLift(start, b, want);
    FirstOrderDeadTime identified =
        StepTest.of(
            lifted(start.plant(), b, lift),
            lifted(start.plant(), b, lift * (1 + STEP)),
            lift * STEP,
            gain.where(),
            start.usualOutdoor(),
            want);
    Simc rule = Simc.pi(identified, Math.max(identified.deadTime(), QUICKEST));
    Reason reason = new Reason.Rule(identified, rule);
    start.set(gain, rule.gain(), reason);
    start.set(new MotorIntegralTime(b, gain.where()), rule.integralTime(), reason);
  }

  /** Lift that holds a room on a usual day, within what can still be stepped up. */
  private static double workingLift(StartValues start, int branch, double want) {
    Plant plant = start.plant();
    int room = plant.house().roomIndex(plant.arrangement().branches().get(branch).room());
    UnivariateFunction off = lift -> start.settled(lifted(plant, branch, lift))[room] - want;
    double most = 1 / (1 + STEP);
    if (off.value(LEAST_LIFT) >= 0) {
      return LEAST_LIFT;
    }
    return off.value(most) <= 0 ? most : new BrentSolver(1e-4).solve(100, off, LEAST_LIFT, most);
  }

  private static Plant lifted(Plant plant, int branch, double lift) {
    Valve motor = plant.arrangement().branches().get(branch).valve();
    FixedOpening still = new FixedOpening(motor.name(), lift * motor.kvMaximum());
    return plant.withBranch(branch, b -> b.withValve(still));
  }
}
