package settle.sim.control;

import java.util.List;

/**
 * Decides at each step's beginning whether heat is called for, which want each room's programme
 * carries out, and the flow temperature to ask for.
 *
 * <pre>
 *               day                        set-back
 *   HEADS       thermostat, or always      thermostat, or always
 *   SOURCE      thermostat, or always      thermostat with the source's differential
 *   OFF         thermostat, or always      never
 * </pre>
 *
 * <p>The thermostat acts about the want in force; optimum start brings a day period forward. With
 * an interlock the call also waits for an actuator or motor head to open. Frost protection of the
 * reference room stands above all that.
 */
public final class PlantControl {

  /** How far above frost protection it ends [K]. */
  private static final double FROST_DIFFERENTIAL = 1;

  private static final double FROST_WANT = Control.FROST_PROTECTION + FROST_DIFFERENTIAL / 2;

  private final Control control;
  private final Programme[] programmes;
  private final RoomSensor[] sensors;
  private final int reference;
  private final double warmEnough;
  private final RoomSensor sensor;
  private final Relay setBack;
  private final Relay frost = new Relay(FROST_DIFFERENTIAL);
  private final Relay dayRelay;
  private final CycleTimer dayCycle;
  private final WarmUpLearner learner;
  private final double fixedLead;
  private double time;

  /**
   * @param control how programme, thermostat and weather act
   * @param wants each room's programme
   * @param reference which room is measured in
   * @param warmEnough how far below want a room counts as warm, for learning [K]
   * @param start temperature of all sensors at the beginning [°C]
   */
  public PlantControl(
      Control control, List<Timetable> wants, int reference, double warmEnough, double start) {
    this.control = control;
    this.reference = reference;
    this.warmEnough = warmEnough;
    programmes = wants.stream().map(Programme::new).toArray(Programme[]::new);
    sensors = new RoomSensor[programmes.length];
    for (int r = 0; r < sensors.length; r++) {
      sensors[r] = new RoomSensor(0, start);
    }
    setBack = new Relay(control.differential());
    Thermostat thermostat = control.thermostat();
    dayRelay = thermostat.onOff().map(t -> new Relay(t.differential())).orElse(null);
    dayCycle = thermostat.fold(() -> null, onOff -> null, CycleTimer::new);
    sensor = new RoomSensor(thermostat.timeConstant(), start);
    fixedLead = control.optimumStart().lead();
    learner = control.optimumStart().fold(() -> null, fixed -> null, WarmUpLearner::new);
  }

  /** Whether a room's temperature must be followed. */
  public boolean watches(int room) {
    return learner != null || (room == reference && control.usesReferenceRoom());
  }

  /**
   * Follows a room that is watched over a step.
   *
   * @param room which
   * @param length of the step [s]
   * @param mean its mean operative temperature over the step [°C]
   * @param end its operative temperature at the step's end [°C]
   */
  public void follow(int room, double length, double mean, double end) {
    if (room == reference) {
      if (learner != null && learner.learning()) {
        double warm = programmes[room].dayWant() - warmEnough;
        double before = sensors[room].value();
        if (end >= warm) {
          double share = before < warm ? (warm - before) / (end - before) : 0;
          learner.reached(time + share * length, programmes[room].dayWant());
        }
      }
      sensor.follow(length, mean, end);
    }
    sensors[room].follow(length, mean, end);
  }

  /**
   * Decides for the coming step.
   *
   * @param now time at its beginning [s]
   * @param driveOpen whether an actuator or motor head is open; true where there is none
   * @return whether heat is called for
   */
  public boolean decide(double now, boolean driveOpen) {
    time = now;
    Programme programme = programmes[reference];
    boolean wasDay = programme.isDay();
    for (int r = 0; r < programmes.length; r++) {
      programmes[r].update(now, lead(r));
    }
    if (learner != null && wasDay != programme.isDay()) {
      if (programme.isDay()) {
        learner.begin(now, sensors[reference].value());
      } else if (learner.learning()) {
        learner.neverReached(now, programme.dayWant());
      }
    }
    boolean asked = asked(programme) && (driveOpen || !control.interlock());
    boolean freezing = control.usesReferenceRoom() && frost.update(FROST_WANT, sensor.value());
    return asked || freezing;
  }

  private boolean asked(Programme programme) {
    if (programme.isDay() || control.setback() == Control.Setback.HEADS) {
      setBack.release();
      return thermostatAsks(programme.inForce());
    }
    if (dayRelay != null) {
      dayRelay.release();
    }
    if (dayCycle != null) {
      dayCycle.stop();
    }
    return control.setback() == Control.Setback.SOURCE
        && setBack.update(programme.inForce(), sensor.value());
  }

  private boolean thermostatAsks(double want) {
    if (dayRelay != null) {
      return dayRelay.update(want, sensor.value());
    }
    return dayCycle == null || dayCycle.update(time, want, sensor.value());
  }

  private double lead(int room) {
    if (learner == null) {
      return fixedLead;
    }
    return learner.lead(programmes[room].dayWant() - sensors[room].value());
  }

  /** Want that a room's programme carries out now: its day want early under optimum start [°C]. */
  public double want(int room) {
    return programmes[room].inForce();
  }

  /**
   * Flow temperature to ask for [°C].
   *
   * @param outdoor mean outdoor temperature of the coming step [°C]
   * @param own what the source asks for without weather compensation [°C]
   */
  public double flowSetPoint(double outdoor, double own) {
    if (control.flowCurve().isEmpty()) {
      return own;
    }
    FlowCurve curve = control.flowCurve().get();
    double roomShort =
        curve.roomInfluence() > 0 ? programmes[reference].inForce() - sensor.value() : 0;
    return curve.setPoint(outdoor, roomShort);
  }

  /** Next instant at which the clock may change what is decided [s]; programmes apart. */
  public double nextSwitch() {
    double next = dayCycle != null ? dayCycle.nextSwitch(time) : Double.POSITIVE_INFINITY;
    if (fixedLead > 0) {
      for (Programme programme : programmes) {
        double start = programme.nextDay() - fixedLead;
        if (start > time) {
          next = Math.min(next, start);
        }
      }
    }
    return next;
  }

  /**
   * Longest step that meets the next switching by temperature [s]: the time until then, as things
   * go.
   */
  public double steadyFor() {
    if (!control.usesReferenceRoom()) {
      return Double.POSITIVE_INFINITY;
    }
    double steady = frost.timeToSwitch(FROST_WANT, sensor);
    Relay relay = relayInForce();
    if (relay != null) {
      steady = Math.min(steady, relay.timeToSwitch(programmes[reference].inForce(), sensor));
    }
    if (learner != null) {
      for (int r = 0; r < programmes.length; r++) {
        steady = Math.min(steady, timeToEarlyStart(r));
      }
    }
    return steady;
  }

  /**
   * How far into a step that is being tried a room that is watched switches something [s]; infinite
   * if it does not.
   *
   * @param room which
   * @param length of the step [s]
   * @param mean its mean operative temperature over the step [°C]
   */
  public double switchesAfter(int room, double length, double mean) {
    double first = Double.POSITIVE_INFINITY;
    if (room == reference && control.usesReferenceRoom()) {
      first = frost.switchesAfter(FROST_WANT, sensor, length, mean);
      Relay relay = relayInForce();
      if (relay != null) {
        double want = programmes[reference].inForce();
        first = Math.min(first, relay.switchesAfter(want, sensor, length, mean));
      }
    }
    if (learner != null) {
      double left = programmes[room].nextDay() - time;
      double want = programmes[room].dayWant();
      double early = left - lead(room);
      double tooLate = learner.lead(want - sensors[room].after(length, mean)) - (left - length);
      if (early > 0 && tooLate > 0) {
        first = Math.min(first, length * early / (early + tooLate));
      }
    }
    return first;
  }

  /** What calls for heat by temperature now; null where nothing does. */
  private Relay relayInForce() {
    if (programmes[reference].isDay() || control.setback() == Control.Setback.HEADS) {
      return dayRelay;
    }
    return control.setback() == Control.Setback.SOURCE ? setBack : null;
  }

  /** Time left and lead close in on each other at 1 + k |dT/dt| while the room cools [s]. */
  private double timeToEarlyStart(int room) {
    double left = programmes[room].nextDay() - time - lead(room);
    double closing = 1 + learner.k() * Math.max(-sensors[room].slope(), 0);
    return left > 0 ? left / closing : Double.POSITIVE_INFINITY;
  }
}
