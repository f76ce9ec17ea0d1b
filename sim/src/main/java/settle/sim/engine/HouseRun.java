package settle.sim.engine;

import java.util.List;
import java.util.function.DoubleConsumer;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.Trace;
import settle.sim.result.EnergyLedger;
import settle.sim.result.Profile;
import settle.sim.room.HouseFabric;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.source.SourceStepper;
import settle.sim.units.Times;
import settle.sim.valve.ValveStepper;

/**
 * One run of a house: its state, and the stages of a step.
 *
 * <p>The order of the stages, and why: the controls decide first, on what they have seen; valves
 * and flows follow, since flow needs no temperature of this step; source and emitters are brought
 * into agreement with each other and with the rooms, links between rooms included; valves then feel
 * the mean the rooms really had, and where that opens them otherwise all is tried again. Only what
 * agrees moves the state: of a step that does not, nothing stays, and a shorter one is tried.
 */
public final class HouseRun {

  /**
   * Share of its distance from shut that a throttling head may travel in a step [-]; the error of
   * held openings falls with its square.
   */
  private static final double HEAD_TRAVEL = 0.2;

  /** Error of a room's air temperature that holding its heat over a step may cause [K]. */
  private static final double HELD_HEAT_ERROR = 0.00025;

  /**
   * Time constant that slower parts of the fabric are brought to where only the end counts [s]:
   * long against any cycle of valve, thermostat or source, short against a day.
   */
  private static final double HASTENED_LAG = 6 * 3600.0;

  /**
   * How much faster they go at most [-]: slower ones than twelve days begin where they rest anyway.
   */
  private static final double MOST_HASTE = 50;

  // Model
  private final HouseModel model;
  private final RunSettings settings;
  private final Fineness fineness;
  private final double[] airCapacity;
  private final List<String> branchNames;

  // The parts of the house, each with its own state
  private final Steppers parts;
  private final RoomStepper rooms;
  private final WaterCircuit circuit;
  private final ValveStepper valves;
  private final SourceStepper source;

  // What acts on them, and what is made of them
  private final Conditions conditions;
  private final CallForHeat call;
  private final TemperatureSpan span;
  private final StepTrial trial;
  private final RunSums sums;
  private final ProfileKeeper profiles;
  private RunRecorder recorder;

  // State of the run itself
  private double time;
  private double nextEvent;
  private HouseModel later;
  private double laterFrom = Double.POSITIVE_INFINITY;
  private int steps;
  private double lastLength;

  /** For how long heats may be held at their mean, as they move now [s]. */
  private double heatSteadyFor = Double.POSITIVE_INFINITY;

  /**
   * @param model the prepared house
   * @param settings start, length and steps
   */
  public HouseRun(HouseModel model, RunSettings settings) {
    this(model, settings, Fineness.USUAL);
  }

  /**
   * @param model the prepared house
   * @param settings start, length and steps
   * @param fineness resolution relative to the usual
   */
  HouseRun(HouseModel model, RunSettings settings, Fineness fineness) {
    this.model = model;
    this.fineness = fineness;
    this.settings = settings;
    double start = settings.startTemperature();
    airCapacity = model.house().rooms().stream().mapToDouble(Room::airCapacity).toArray();
    branchNames = model.branchNames();
    parts = Steppers.of(model, start, fineness);
    rooms = parts.rooms();
    circuit = parts.circuit();
    valves = parts.valves();
    source = parts.source();
    conditions = new Conditions(model.house(), rooms);
    call = new CallForHeat(model, parts, start);
    span = new TemperatureSpan(model, start);
    trial = new StepTrial(model, settings, fineness.agreement(), parts, conditions, call, span);
    sums = new RunSums(parts);
    profiles =
        new ProfileKeeper(
            model.arrangement().branches(),
            firstCall(),
            settings.profileTimes(),
            settings.length());
    recorder = new RunRecorder(model, settings, parts);
    time = -settings.leadIn();
    atEvent();
  }

  /**
   * Lets the run go on, from an instant on, with pump and doors as another model of the same house
   * has them; rooms, water and heads go on from where they are.
   *
   * @param other the same house but for its pump and the conductance of its air exchanges
   * @param from when [s]
   */
  public void goOnAs(HouseModel other, double from) {
    later = other;
    laterFrom = from;
    atEvent();
  }

  /**
   * Runs from start to end.
   *
   * @throws ArithmeticException if a temperature leaves what source, weather and gains span; the
   *     message names room or part of the plant, and time
   */
  public void run() {
    run(done -> {});
  }

  /**
   * Runs to the end and tells once a simulated day how far it is.
   *
   * @param progress given the share that is done [-]
   */
  public void run(DoubleConsumer progress) {
    double end = settings.length();
    double whole = end + settings.leadIn();
    if (time < -1e-6) {
      stepOn(Math.min(0, end), () -> {}, progress, whole);
    }
    if (end >= 0) {
      beginRecording();
      stepOn(end, this::record, progress, whole);
    }
  }

  /**
   * Runs through the lead-in in weather that has been as it is for long: the fabric begins where it
   * would rest, and its slow parts find their daily course faster through the first half.
   *
   * @param outdoor outdoor temperature [°C]
   * @param heat every heat input at rest [W]
   */
  void leadInAsEver(double outdoor, double[] heat) {
    beginAtRest(outdoor, heat);
    hasten(true);
    goOnTo(-settings.leadIn() / 2, () -> {});
    hasten(false);
    goOnTo(0, () -> {});
  }

  /**
   * Runs through a lead-in like {@link #leadInAsEver} and stops some time before its end, to say
   * how air and fabric then stand to where they would rest.
   *
   * @param outdoor outdoor temperature [°C]
   * @param heat every heat input at rest [W]
   * @param before how long before the lead-in's end [s]
   */
  DailySwing swing(double outdoor, double[] heat, double before) {
    beginAtRest(outdoor, heat);
    double[][] rest = rooms.state();
    hasten(true);
    goOnTo(-settings.leadIn() / 2, () -> {});
    hasten(false);
    goOnTo(-before, () -> {});
    return new DailySwing(before, rest, rooms.state());
  }

  /**
   * Runs through a lead-in that is as short as the swing is early: air and fabric begin as far from
   * where they would rest as they were in another run.
   *
   * @param outdoor outdoor temperature [°C]
   * @param heat every heat input at rest [W]
   * @param swing of the same rooms, otherwise set
   */
  void leadInFrom(double outdoor, double[] heat, DailySwing swing) {
    beginAtRest(outdoor, heat);
    rooms.moveBy(swing.rest(), swing.then());
    span.askNumbersOnly();
    goOnTo(0, () -> {});
  }

  /**
   * Steps on to an instant, recording nothing.
   *
   * @param end [s]
   * @param each called after every step
   */
  void goOnTo(double end, Runnable each) {
    stepOn(end, each, done -> {}, Double.POSITIVE_INFINITY);
  }

  /**
   * Steps on to an instant and records that alone.
   *
   * @param end [s]
   * @param each called after every step
   */
  void recordTo(double end, Runnable each) {
    recorder = new RunRecorder(model, settings, parts);
    beginRecording();
    goOnTo(
        end,
        () -> {
          record();
          each.run();
        });
  }

  private void stepOn(double end, Runnable each, DoubleConsumer progress, double whole) {
    double told = time;
    while (time < end - 1e-6) {
      if (time >= nextEvent - 1e-6) {
        atEvent();
      }
      step(Math.min(Math.min(nextEvent, end), profiles.nextMark()));
      each.run();
      profiles.keepDue(time, circuit.emitters());
      if (time >= told + Times.DAY) {
        told = time;
        progress.accept((time + settings.leadIn()) / whole);
      }
    }
  }

  /** Begins with air and fabric where they rest with these heats; water and heads as they are. */
  void beginAtRest(double outdoor, double[] heat) {
    conditions.rest(model.steadyResponse(), outdoor, heat);
    sums.fabricBegins();
  }

  /**
   * Lets slow parts of the fabric go faster towards where they rest, or at their own pace again.
   */
  void hasten(boolean faster) {
    HouseFabric own = model.fabric();
    span.askNumbersOnly();
    rooms.goOnThrough(faster ? own.hastened(HASTENED_LAG, MOST_HASTE) : own);
  }

  /**
   * Events: programmes, gains and weather that jump. Steps begin short where what is carried out
   * changes; rooms take a jump of gains or weather exactly.
   */
  private void atEvent() {
    if (time >= laterFrom - 1e-6) {
      rooms.linkAs(later.fabric());
      span.goOnAs(later.steadyResponse());
      circuit.runThrough(later.networkFlow());
      laterFrom = Double.POSITIVE_INFINITY;
      trial.beginShort();
    }
    conditions.atEvent(time);
    nextEvent = Math.min(conditions.nextEvent(), laterFrom);
  }

  private void step(double stop) {
    if (call.decide(time)) {
      trial.beginShort();
    }
    double until = Math.min(stop, call.nextSwitch(time));
    double h = trial.take(time, fineness.steps() * steadyFor(), until - time);
    if (valves.accept(h)) {
      trial.beginShort();
    }
    rooms.finish();
    conditions.atEnd(time, h);
    double flow = trial.flowTemperature();
    double taken = circuit.capacityFlow() * h * (flow - circuit.returnTemperature());
    emit(h);
    sums.addPipes();
    circuit.accept(h);
    call.observe(h);
    source.accept(taken);
    sums.addSource();
    goForward(h, stop);
  }

  /** For how long nothing will change much, as things go [s]. */
  private double steadyFor() {
    double steady = Math.min(valves.steadyFor(HEAD_TRAVEL), source.steadyFor());
    return Math.min(Math.min(steady, heatSteadyFor), call.steadyFor());
  }

  /**
   * Lets the rooms go on with what emitters give at the step's end, and asks how long the next may
   * be. The rooms took each heat to go evenly from where it began: where it ends otherwise by dQ,
   * their air is off by dQ h / (12 C_a), as the third power of h.
   */
  private void emit(double h) {
    double worst = 0;
    for (int b = 0; b < model.branches(); b++) {
      double heat = circuit.heat(b);
      sums.addEmitted(heat * h);
      double expected = heat + circuit.heatAbove(b);
      double now = circuit.emitters()[b].emissionNow(circuit.referenceNow(b, rooms));
      // Where the star follows an emitter at once, what that gives now is no better known than its
      // mean, with which the star agrees.
      if (rooms.followsAtOnce(b)) {
        now = heat;
        expected = heat;
      }
      circuit.endsWith(b, now, h);
      rooms.setHeat(b, now);
      worst = Math.max(worst, Math.abs(now - expected) / airCapacity[model.branchRoom(b)]);
    }
    heatSteadyFor =
        worst > 0 ? h * Math.cbrt(12 * HELD_HEAT_ERROR / (worst * h)) : Double.POSITIVE_INFINITY;
  }

  private void goForward(double h, double stop) {
    time += h;
    steps++;
    lastLength = h;
    check();
    // Multiples of the shortest step are kept exact, so that events are met exactly.
    if (Math.abs(time - stop) < 1e-6) {
      time = stop + 0.0;
    }
  }

  /** Ends the run where a temperature is none that the house can have. */
  private void check() {
    for (int r = 0; r < airCapacity.length; r++) {
      double air = rooms.air(r);
      double star = rooms.star(r);
      boolean airAllowed = span.allowsRoom(r, air);
      if (!airAllowed || !span.allowsRoom(r, star)) {
        String room = "room '" + model.house().rooms().get(r).name() + "', ";
        throw span.outside(room + (airAllowed ? "surfaces" : "air"), airAllowed ? star : air, time);
      }
    }
    for (int b = 0; b < model.branches(); b++) {
      double leaving = circuit.emitters()[b].meanReturn();
      if (!span.allowsWater(leaving) || !Double.isFinite(circuit.heat(b))) {
        throw span.outside("water leaving " + branchNames.get(b), leaving, time);
      }
    }
    double flow = trial.flowTemperature();
    if (circuit.totalFlow() > 0 && !span.allowsWater(flow)) {
      throw span.outside("water leaving the source", flow, time);
    }
    if (!span.allowsWater(circuit.returnTemperature())) {
      throw span.outside("water coming back to the source", circuit.returnTemperature(), time);
    }
  }

  private void beginRecording() {
    sums.beginRecording();
    recorder.begin(time, conditions.want());
  }

  private void record() {
    recorder.record(
        time,
        lastLength,
        conditions.want(),
        call.called(),
        trial.flowSetPoint(),
        trial.flowTemperature(),
        starts());
  }

  /**
   * First instant from 0 on at which a heated room's programme is at its day value [s]; not a
   * number if none is within the run.
   */
  public double firstCall() {
    double first = Double.POSITIVE_INFINITY;
    for (int b = 0; b < model.branches(); b++) {
      first = Math.min(first, firstCall(model.branchRoom(b)));
    }
    return first <= settings.length() ? first : Double.NaN;
  }

  /** When heat is first called for in one room [s]; after the run's end if not within it. */
  double firstCall(int room) {
    return conditions.firstDay(room, settings.length());
  }

  /** Instant to which the run has come [s]. */
  double time() {
    return time;
  }

  /** Length of the last step [s]. */
  double lastLength() {
    return lastLength;
  }

  /**
   * Steps on to an instant, recording nothing.
   *
   * @param end [s]
   */
  public void goOnTo(double end) {
    goOnTo(end, () -> {});
  }

  /** Temperature of the water that enters an emitter, its mean over the last step [°C]. */
  public double entering(int branch) {
    return circuit.inlet(branch);
  }

  /** Temperature of the water that leaves an emitter, its mean over the last step [°C]. */
  public double leaving(int branch) {
    return circuit.emitters()[branch].meanReturn();
  }

  /**
   * Temperature of an emitter's face now [°C].
   *
   * @param branch which
   * @param share where along its run, from where the water comes in [-]
   */
  public double face(int branch, double share) {
    return circuit.emitters()[branch].face(share);
  }

  /** Temperature of the water that goes into the mains, its mean over the last step [°C]. */
  public double flowTemperature() {
    return trial.flowTemperature();
  }

  /** Mean output of an emitter over the last step [W]. */
  public double heat(int branch) {
    return circuit.heat(branch);
  }

  /** Flow through a branch over the last step [kg/s]. */
  public double massFlow(int branch) {
    return circuit.network().flow(branch);
  }

  /** Air temperature of a room now [°C]. */
  public double air(int room) {
    return rooms.air(room);
  }

  /** Operative temperature of a room now [°C]. */
  double operative(int room) {
    return rooms.operative(room);
  }

  /** What was recorded. */
  public Trace trace() {
    return recorder.trace();
  }

  /** Temperatures along the emitters that were kept. */
  public List<Profile> profiles() {
    return profiles.profiles();
  }

  /** Number of steps taken. */
  public int steps() {
    return steps;
  }

  /** Of these, steps that came to no agreement however short they were made. */
  public int stepsUnagreed() {
    return trial.unagreed();
  }

  /** Source starts within the recording. */
  public int starts() {
    return sums.starts();
  }

  /** What was added up. */
  RunSums sums() {
    return sums;
  }

  /** Shortest complete firing [s]; infinite if there was none. */
  public double shortestRun() {
    return source.shortestRun();
  }

  /** Where the heat went. */
  public EnergyLedger ledger() {
    return sums.ledger();
  }
}
