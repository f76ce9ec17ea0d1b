package settle.sim.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.control.Control.Setback;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.RoomSensor;
import settle.sim.control.Thermostat;
import settle.sim.control.Timetable;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.ValveStepper;

/**
 * Controls as the engine steps them, in a room of one time constant: switching, proportioning, PI,
 * weather compensation, optimum start, strokes.
 */
final class ControlRows implements RowGroup {

  private static final double HOUR = 3600;
  private static final double DAY = 86_400;
  private static final double LOSS = ControlledRoom.LOSS;

  @Override
  public String title() {
    return "Controls as stepped: thermostats, PI, weather compensation, optimum start";
  }

  @Override
  public boolean takesDays() {
    return true;
  }

  @Override
  public Part workedOut() {
    return Part.CLOSED_FORMS;
  }

  @Override
  public List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    DataFile relay = DataFile.read("relay-limit-cycle.csv");
    Tolerance kelvin = Tolerance.absolute(0.001, "switched within 0.1 s, at up to 0.006 K/s");
    Tolerance second =
        Tolerance.absolute(
            0.5, "each switching late by up to 0.1 s, and up to 2.4 times that to come back");
    rows.addAll(
        relay.rows(
            "least",
            kelvin,
            line -> "Lowest temperature under an on/off thermostat",
            line -> cycle(line).least));
    rows.addAll(
        relay.rows(
            "most",
            kelvin,
            line -> "Highest temperature under an on/off thermostat",
            line -> cycle(line).most));
    rows.addAll(
        relay.rows(
            "period",
            second,
            line -> "Period under an on/off thermostat",
            line -> cycle(line).period));
    rows.addAll(
        relay.rows(
            "duty",
            Tolerance.absolute(2e-4, "switched within 0.1 s of 360 s or more; last printed digit"),
            line -> "Share of time on under an on/off thermostat",
            line -> cycle(line).duty));
    rows.add(
        closed("Lag of a sensor on a ramp", "tau 20 min, 1.5 K/h")
            .expects(0.5, "K", Tolerance.absolute(1e-6, "exact for a ramp"))
            .codeGives(ControlRows::rampLag));
    for (double outdoor : new double[] {-3, 8}) {
      timeProportional(rows, outdoor);
    }
    pi(rows);
    compensation(rows);
    optimumStart(rows, 30);
    optimumStart(rows, 26);
    rows.add(
        closed("Flow lost to the stroke of an actuator", "180 s, straight; steps of 40 s")
            .expects(90, "s", Tolerance.absolute(1e-9, "exact over a step"))
            .codeGives(ControlRows::lostToStroke));
    return rows;
  }

  private static Row.Draft closed(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.SWITCHED_LAG, "response between two switchings")
        .kind(Kind.ANALYTIC)
        .given(inputs);
  }

  private record Cycle(double least, double most, double period, double duty) {}

  /** The tenth cycle of a room under an on/off thermostat. */
  private static Cycle cycle(DataFile.Line line) {
    double on = line.number("y_on");
    double off = line.number("y_off");
    double set = line.number("set");
    Thermostat thermostat = new Thermostat.OnOff(2 * line.number("h"), 0);
    ControlledRoom room =
        new ControlledRoom(
            line.number("tau"),
            line.number("theta"),
            ControlledRoom.rules(Setback.HEADS, thermostat, null, new OptimumStart.None()),
            Timetable.constant(set),
            set);
    room.outdoor = off;
    room.power = (on - off) * LOSS;
    int starts = 0;
    double began = 0;
    double stopped = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    while (true) {
      double now = room.time;
      if (room.step(Double.POSITIVE_INFINITY)) {
        if (!room.called) {
          stopped = now;
        } else if (++starts == 10) {
          began = now;
        } else if (starts == 11) {
          return new Cycle(least, most, now - began, (stopped - began) / (now - began));
        }
      }
      if (starts == 10) {
        least = Math.min(least, room.temperature());
        most = Math.max(most, room.temperature());
      }
    }
  }

  private static double rampLag() {
    RoomSensor sensor = new RoomSensor(1200, 20);
    double t = 0;
    for (int i = 0; i < 1000; i++) {
      sensor.follow(60, 20 + 1.5 / HOUR * (t + 30), 20 + 1.5 / HOUR * (t + 60));
      t += 60;
    }
    return 20 + 1.5 / HOUR * t - sensor.value();
  }

  /**
   * On for u of each cycle, u = 1/2 + (want - T_0)/band with T_0 at the cycle's beginning; at rest
   * T_0 repeats and the mean is T_e + u Q/H.
   */
  private static void timeProportional(List<Row> rows, double outdoor) {
    double tau = 50_000;
    double cycle = 1200;
    double rise = 37.5;
    double share =
        new BrentSolver(1e-14)
            .solve(
                200,
                u -> {
                  double end =
                      outdoor
                          + rise
                              * Math.exp(-(1 - u) * cycle / tau)
                              * -Math.expm1(-u * cycle / tau)
                              / -Math.expm1(-cycle / tau);
                  return u - 0.5 - (20 - end) / 2;
                },
                0,
                1);
    String inputs =
        "tau 50 000 s, 1500 W, 40 W/K, cycle 20 min, band 2 K, want 20 C, outdoors "
            + Math.round(outdoor)
            + " C";
    rows.add(
        closed("Share of the cycle a time-proportional thermostat is on", inputs)
            .expects(share, "1", Tolerance.absolute(1e-6, "cycles met exactly"))
            .codeGives(() -> proportioned(outdoor, tau, cycle, rise)[0]));
    rows.add(
        closed("Mean room temperature under it", inputs)
            .expects(outdoor + share * rise, "C", Tolerance.absolute(1e-4, "cycles met exactly"))
            .codeGives(() -> proportioned(outdoor, tau, cycle, rise)[1]));
  }

  /** Share on and mean temperature of the hundredth cycle. */
  private static double[] proportioned(double outdoor, double tau, double cycle, double rise) {
    ControlledRoom room =
        new ControlledRoom(
            tau,
            0,
            ControlledRoom.rules(
                Setback.HEADS,
                new Thermostat.TimeProportional(cycle, 2, 0),
                null,
                new OptimumStart.None()),
            Timetable.constant(20),
            20);
    room.outdoor = outdoor;
    room.power = rise * LOSS;
    double on = 0;
    double area = 0;
    while (room.time < 101 * cycle - 1e-6) {
      double before = room.time;
      room.step(101 * cycle);
      if (before > 100 * cycle - 1e-6) {
        double length = room.time - before;
        on += room.called ? length : 0;
        area += room.room.settledAir(0) * length;
      }
    }
    return new double[] {on / cycle, area / cycle};
  }

  /**
   * PI about a lag: tau s² + (1 + k K_p) s + k K_p/T_i = 0, so omega_n = sqrt(k K_p/(T_i tau)),
   * zeta = (1 + k K_p)/(2 sqrt(k K_p tau/T_i)). After a jump D of the outdoor temperature the room
   * goes as D/(tau omega_d) e^(-zeta omega_n t) sin(omega_d t).
   */
  private static void pi(List<Row> rows) {
    double tau = 5000;
    double gain = 3.75;
    double integralTime = 600;
    double natural = Math.sqrt(gain / (integralTime * tau));
    double damping = (1 + gain) / (2 * Math.sqrt(gain * tau / integralTime));
    double root = Math.sqrt(1 - damping * damping);
    double damped = natural * root;
    double peakAt = Math.acos(damping) / damped;
    double peak =
        -3 / (tau * damped) * Math.exp(-damping * natural * peakAt) * Math.sin(damped * peakAt);
    String inputs = "tau 5000 s, k Kp 3.75, Ti 600 s, outdoors 0 to -3 C, steps of 10 s";
    Tolerance shape = Tolerance.absolute(1e-3, "order of the step squared, (omega h)^2 = 1e-4");
    rows.add(
        seborg("Largest deviation under a PI motor head", inputs)
            .expects(peak, "K", shape)
            .codeGives(() -> disturbed(tau, gain, integralTime)[0]));
    rows.add(
        seborg("Next deviation over it: e^(-pi zeta/sqrt(1 - zeta^2))", inputs)
            .expects(Math.exp(-Math.PI * damping / root), "1", shape)
            .codeGives(() -> disturbed(tau, gain, integralTime)[1]));
    rows.add(
        seborg("First return to the set-point: pi/(omega_n sqrt(1 - zeta^2))", inputs)
            .expects(Math.PI / damped, "s", Tolerance.absolute(10, "one step"))
            .codeGives(() -> disturbed(tau, gain, integralTime)[2]));
    for (double closedLoop : new double[] {600, 1200}) {
      rows.add(
          Row.claim("Time to 63.2 % of a set-point step, motor head tuned for it")
              .source(
                  Source.SIMC, "first-order lag without dead time: Kc = tau/(k tau_c), Ti = tau")
              .kind(Kind.COMPUTED)
              .given("tau 5000 s, tau_c " + Math.round(closedLoop) + " s, step 0.5 K")
              .expects(closedLoop, "s", Tolerance.absolute(6, "half a step of 10 s, and the motor"))
              .codeGives(() -> stepResponse(tau, tau / closedLoop)));
    }
  }

  private static Row.Draft seborg(String claim, String inputs) {
    return Row.claim(claim)
        .source(Source.SEBORG, "second-order response; chapters on PI about a lag, from memory")
        .kind(Kind.ANALYTIC)
        .given(inputs);
  }

  /** A room heated in proportion to the lift of a quick motor head. */
  private static final class MotorRoom {
    final ControlledRoom room;
    final ValveStepper valve;
    final double power;

    MotorRoom(double tau, double loopGain, double integralTime) {
      room =
          new ControlledRoom(
              tau,
              0,
              ControlledRoom.rules(
                  Setback.HEADS, new Thermostat.None(), null, new OptimumStart.None()),
              Timetable.constant(20),
              20);
      double rise = 37.5;
      power = rise * LOSS;
      MotorHead head =
          new MotorHead("motor", 20, loopGain / rise, integralTime, 1, 1, RoomSensing.AIR);
      valve = new ValveStepper(List.of(head), 20);
    }

    void step(double length) {
      double[] none = {0};
      double lift = valve.lookAhead(length, none)[0];
      room.room.setOutdoor(room.outdoor);
      room.room.begin(length);
      for (int k = 0; k < 20; k++) {
        room.room.setHeat(0, power * lift);
        room.room.settleLinks();
        double mean = room.room.settledAir(0);
        valve.feel(0, length, mean, mean, 0, 0, 0);
        lift = valve.correct()[0];
      }
      room.room.finish();
      valve.accept(length);
      valve.see(0, length, room.room.air(0), room.room.air(0));
      room.time += length;
    }

    double temperature() {
      return room.room.air(0);
    }
  }

  /** Largest deviation [K], the next over it [-], time of the first return [s]. */
  private static double[] disturbed(double tau, double gain, double integralTime) {
    MotorRoom motor = new MotorRoom(tau, gain, integralTime);
    for (int i = 0; i < 20_000; i++) {
      motor.step(10);
    }
    motor.room.outdoor = -3;
    double least = 0;
    double most = 0;
    double returned = Double.NaN;
    double before = 0;
    for (int i = 1; i < 1500; i++) {
      motor.step(10);
      double off = motor.temperature() - 20;
      least = Math.min(least, off);
      if (i > 20 && Double.isNaN(returned) && off > 0) {
        returned = 10 * (i - off / (off - before));
      }
      if (!Double.isNaN(returned)) {
        most = Math.max(most, off);
      }
      before = off;
    }
    return new double[] {least, -most / least, returned};
  }

  private static double stepResponse(double tau, double loopGain) {
    MotorRoom motor = new MotorRoom(tau, loopGain, tau);
    for (int i = 0; i < 20_000; i++) {
      motor.step(10);
    }
    double wanted = motor.temperature() + 0.5 * -Math.expm1(-1);
    motor.valve.shiftSetPoint(0, 0.5);
    double t = 0;
    double before = motor.temperature();
    while (true) {
      motor.step(10);
      double now = motor.temperature();
      if (now >= wanted) {
        return t + 10 * (wanted - before) / (now - before);
      }
      before = now;
      t += 10;
    }
  }

  /**
   * An emitter that gives K (T_flow - T) in a house that loses H (T - T_e): on the curve of slope
   * H/K the room rests at 20 °C whatever the weather; shift and room influence i move it to T, K
   * (20 + shift + s (20 - T_e) + i (want - T) - T) = H (T - T_e).
   */
  private static void compensation(List<Row> rows) {
    double emitter = 25;
    double slope = LOSS / emitter;
    Tolerance rest = Tolerance.absolute(1e-6, "stepped to rest");
    for (double outdoor : new double[] {-10, 7}) {
      rows.add(
          heatingCurve("Room on its heating curve", outdoor, "curve of slope H/K")
              .expects(20, "C", rest)
              .codeGives(
                  () -> compensated(new FlowCurve(slope, 0, -100, 200, 0), emitter, outdoor)));
    }
    double influence = 4;
    double shift = 3;
    double expected =
        (emitter * (20 + shift + slope * 20 + influence * 21) + 0)
            / (emitter * (1 + influence) + LOSS);
    rows.add(
        heatingCurve(
                "Room on a shifted curve with room influence", 0, "3 K shift, 4 K/K, want 21 C")
            .expects(expected, "C", rest)
            .codeGives(
                () -> compensated(new FlowCurve(slope, shift, -100, 200, influence), emitter, 0)));
  }

  private static Row.Draft heatingCurve(String claim, double outdoor, String curve) {
    return Row.claim(claim)
        .source(Source.HEATING_CURVE, "balance at rest")
        .kind(Kind.ANALYTIC)
        .given(curve + ", 40 W/K, emitter 25 W/K, outdoors " + Math.round(outdoor) + " C");
  }

  private static double compensated(FlowCurve curve, double emitter, double outdoor) {
    ControlledRoom room =
        new ControlledRoom(
            5000,
            0,
            ControlledRoom.rules(
                Setback.HEADS, new Thermostat.None(), curve, new OptimumStart.None()),
            Timetable.constant(21),
            15);
    room.outdoor = outdoor;
    for (int i = 0; i < 5000; i++) {
      room.control.decide(room.time, true);
      double flow = room.control.flowSetPoint(outdoor, Double.NaN);
      room.advance(60, emitter * (flow - room.temperature()));
    }
    return room.temperature();
  }

  /**
   * Off from 22 to 6 h, then heated towards T_on: the lead L with which the room is warm, at 20.5
   * °C, at 6 h, day by day alike: T_22 = T_on - (T_on - 20.5) e^(-16 h/tau); L = -tau ln(1 - (20.5
   * - T_22 e^(-8 h/tau))/(T_on - 0 °C)).
   */
  private static void optimumStart(List<Row> rows, double hot) {
    double tau = 20_000;
    double evening = hot - (hot - 20.5) * Math.exp(-16 * HOUR / tau);
    double lead = -tau * Math.log1p(-(20.5 - evening * Math.exp(-8 * HOUR / tau)) / hot);
    double atStart = evening * Math.exp(-(8 * HOUR - lead) / tau);
    String inputs = "tau 20 000 s, outdoors 0 C, heated towards " + Math.round(hot) + " C";
    rows.add(
        closed("Lead of a learned optimum start", inputs)
            .expects(lead, "s", Tolerance.absolute(5, "begun within 1 s, learned within a step"))
            .codeGives(() -> learned(tau, hot, start -> start[0])));
    rows.add(
        closed("Room temperature at which it begins", inputs)
            .expects(atStart, "C", Tolerance.absolute(0.005, "5 s at 0.001 K/s"))
            .codeGives(() -> learned(tau, hot, start -> start[1])));
  }

  private static double learned(double tau, double hot, ToDoubleFunction<double[]> which) {
    Timetable want = new Timetable(DAY, new double[] {6 * HOUR, 22 * HOUR}, new double[] {21, 16});
    ControlledRoom room =
        new ControlledRoom(
            tau,
            0,
            ControlledRoom.rules(
                Setback.OFF, new Thermostat.None(), null, new OptimumStart.Learned(600, 8 * HOUR)),
            want,
            18);
    room.power = hot * LOSS;
    double[] start = {Double.NaN, Double.NaN};
    while (room.time < 30 * DAY) {
      double now = room.time;
      double temperature = room.temperature();
      boolean changed = room.step(want.nextChange(now));
      if (changed && room.called && now % DAY < 6 * HOUR) {
        start[0] = 6 * HOUR - now % DAY;
        start[1] = temperature;
      }
    }
    return which.applyAsDouble(start);
  }

  /** How much less flows while an actuator opens than if it were open at once [s]. */
  private static double lostToStroke() {
    ValveStepper valve =
        new ValveStepper(
            List.of(new OnOffActuator("actuator", 20, 0.5, 180, 1, RoomSensing.AIR)), 15);
    double[] none = {0};
    double lost = 0;
    for (int i = 0; i < 10; i++) {
      valve.decide();
      lost += 40 * (1 - valve.lookAhead(40, none)[0]);
      valve.feel(0, 40, 15, 15, 0, 0, 0);
      valve.accept(40);
      valve.see(0, 40, 15, 15);
    }
    return lost;
  }
}
