package settle.sim.engine;

import java.util.List;
import java.util.function.DoubleConsumer;
import settle.sim.control.Control;
import settle.sim.control.PlantControl;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.Trace;
import settle.sim.result.EnergyLedger;
import settle.sim.result.Profile;
import settle.sim.room.HouseFabric;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.source.FlowSearch;
import settle.sim.source.SourceStepper;
import settle.sim.units.Times;
import settle.sim.valve.ValveStepper;
import settle.sim.weather.Weather;

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
  private static final double HELD_HEAT_ERROR = 0.0025;

  /**
   * Agreement asked of the flow temperature between source and emitters [K]; what is left is
   * carried in the source's own heat.
   */
  private static final double FLOW_AGREEMENT = 1e-3;

  /**
   * Agreement asked of each emitter's reference temperature [K]: 0.01 K moves its output by 0.03 %.
   */
  private static final double REFERENCE_AGREEMENT = 0.005;

  /**
   * Agreement asked of the heat the water takes with the heat the source gives it, where much water
   * makes more of it than the flow temperature shows: so much [W], or this share of it [-].
   */
  private static final double HEAT_AGREEMENT = 1;

  private static final double HEAT_AGREEMENT_SHARE = 1e-3;

  /** Rounds after which flow and reference temperatures of a step are given up. */
  private static final int MOST_ROUNDS = 30;

  /**
   * Time constant that slower parts of the fabric are brought to where only the end counts [s]:
   * long against any cycle of valve, thermostat or source, short against a day.
   */
  private static final double HASTENED_LAG = 6 * 3600.0;

  /**
   * How much faster they go at most [-]: slower ones than twelve days begin where they rest anyway.
   */
  private static final double MOST_HASTE = 50;

  /**
   * Agreement asked of the opening held with the one the head really takes, as a share of it [-].
   */
  private static final double OPENING_AGREEMENT = 0.003;

  /** How late after a switching a step ends, so that it surely is one [s]. */
  private static final double MET_WITHIN = 0.1;

  /**
   * How much later each further step may end, of several in a row that were cut at a switching [-]:
   * where things go to and fro about it, steps would else come to nothing.
   */
  private static final double LATER = 2;

  /** Steps without agreement after which none is made shorter than the shortest for it. */
  private static final int MANY = 100;

  /** Corrections after which the openings of a step are given up. */
  private static final int MOST_CORRECTIONS = 8;

  // Model
  private final HouseModel model;
  private final House house;
  private final RunSettings settings;
  private final Fineness fineness;
  private final int rooms;
  private final int branches;

  private final List<String> branchNames;
  private final double[] dayWant;
  private final double[] solarAperture;
  private final double[] airCapacity;
  private final double overRun;
  private final boolean[] watched;
  private final boolean byHeads;
  private final double ownSetPoint;

  // State
  private final RoomStepper roomStepper;
  private final WaterCircuit circuit;
  private final ValveStepper valves;
  private final SourceStepper source;
  private final FlowSearch search = new FlowSearch();
  private final PlantControl control;
  private final StepLadder ladder;
  private final TemperatureSpan span;
  private double time;
  private double nextEvent;
  private HouseModel later;
  private double laterFrom = Double.POSITIVE_INFINITY;
  private double pumpUntil;
  private boolean called;
  private boolean pumping;
  private int steps;
  private int stepsUnagreed;

  // Quadrature over the run [J]
  private double storedAtStart;
  private final double waterStoredAtStart;
  private final double sourceStoredAtStart;
  private double sourceHeat;
  private double sourceLoss;
  private double pipeLoss;
  private double pipeHeat;
  private double emitted;

  // Scratch of one step
  private final double[] want;
  private final double[] carriedOut;
  private final double[] convective;
  private final double[] radiant;
  private final double[] valveDrop;
  private double flowSetPoint;
  private double flowTemperature;

  private int startsBeforeRecording;
  private int defrostsBeforeRecording;
  private double timeAtMinimum;
  private double timeBlocked;
  private double timeOutsideMap;
  private final ProfileKeeper profiles;
  private RunRecorder recorder;

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
   * @param fineness how finely it is reckoned beside what is usual
   */
  HouseRun(HouseModel model, RunSettings settings, Fineness fineness) {
    this.model = model;
    this.fineness = fineness;
    this.settings = settings;
    house = model.house();
    rooms = house.rooms().size();
    branches = model.branches();
    branchNames = model.branchNames();
    double start = settings.startTemperature();
    roomStepper = new RoomStepper(model.fabric(), start, fineness.agreement());
    circuit = new WaterCircuit(model, start, fineness.parcels());
    valves = model.valveStepper(start);
    source = model.sourceStepper(start);
    span = new TemperatureSpan(model, start);
    ladder = new StepLadder(settings.shortestStep(), settings.longestStep());
    roomStepper.prepare(ladder.prepared());
    Control rules = house.control();
    int referenceRoom = rules.usesReferenceRoom() ? house.roomIndex(rules.referenceRoom()) : 0;
    List<Timetable> wants = house.rooms().stream().map(Room::want).toList();
    control = new PlantControl(rules, wants, referenceRoom, house.wantTolerance(), start);
    watched = new boolean[rooms];
    boolean switches = model.arrangement().branches().stream().anyMatch(b -> b.valve().electric());
    for (int r = 0; r < rooms; r++) {
      watched[r] = control.watches(r);
      switches |= watched[r];
    }
    if (switches) {
      roomStepper.makeRoom();
    }
    byHeads = rules.setback() == Control.Setback.HEADS;
    carriedOut = new double[rooms];
    ownSetPoint = house.source().flowSetPoint();
    overRun = house.source().overRunTime();
    dayWant = new double[rooms];
    solarAperture = new double[rooms];
    airCapacity = new double[rooms];
    for (int r = 0; r < rooms; r++) {
      dayWant[r] = house.rooms().get(r).want().maximum();
      airCapacity[r] = house.rooms().get(r).airCapacity();
      solarAperture[r] = house.rooms().get(r).solarAperture();
    }
    want = new double[rooms];
    convective = new double[rooms];
    radiant = new double[rooms];
    valveDrop = new double[branches];
    time = -settings.leadIn();
    pumpUntil = Double.NEGATIVE_INFINITY;
    flowTemperature = start;
    profiles =
        new ProfileKeeper(
            model.arrangement().branches(),
            firstCall(),
            settings.profileTimes(),
            settings.length());
    recorder = newRecorder();
    storedAtStart = roomStepper.stored();
    waterStoredAtStart = circuit.stored();
    sourceStoredAtStart = source.stored();
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
   * @param progress told the share that is done [-]
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
    recorder = newRecorder();
    beginRecording();
    goOnTo(
        end,
        () -> {
          record();
          each.run();
        });
  }

  private RunRecorder newRecorder() {
    return new RunRecorder(model, settings, roomStepper, circuit, valves, source);
  }

  /** Instant to which the run has come [s]. */
  double time() {
    return time;
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
    roomStepper.rest(model.steadyResponse(), outdoor, convective, radiant, heat);
    storedAtStart = roomStepper.stored();
  }

  /**
   * Lets slow parts of the fabric go faster towards where they rest, or at their own pace again.
   */
  void hasten(boolean faster) {
    HouseFabric own = model.fabric();
    span.askNumbersOnly();
    roomStepper.goOnThrough(faster ? own.hastened(HASTENED_LAG, MOST_HASTE) : own);
  }

  /** Air temperature of a room now [°C]. */
  double air(int room) {
    return roomStepper.air(room);
  }

  /** Length of the last step [s]. */
  double lastLength() {
    return lastLength;
  }

  /**
   * Events: programmes, gains and weather that jump. Steps begin short where what is carried out
   * changes; rooms take a jump of gains or weather exactly.
   */
  private void atEvent() {
    if (time >= laterFrom - 1e-6) {
      roomStepper.linkAs(later.fabric());
      span.goOnAs(later.steadyResponse());
      circuit.runThrough(later.networkFlow());
      laterFrom = Double.POSITIVE_INFINITY;
      ladder.reset();
    }
    nextEvent = Math.min(house.weather().nextBreak(time), laterFrom);
    for (int r = 0; r < rooms; r++) {
      Room room = house.rooms().get(r);
      want[r] = room.want().valueAt(time);
      convective[r] = room.convectiveGain().valueAt(time);
      radiant[r] = room.radiantGain().valueAt(time);
      nextEvent = Math.min(nextEvent, room.want().nextChange(time));
      nextEvent = Math.min(nextEvent, room.convectiveGain().nextChange(time));
      nextEvent = Math.min(nextEvent, room.radiantGain().nextChange(time));
    }
  }

  private void step(double stop) {
    decideCall();
    double until = Math.min(stop, control.nextSwitch());
    if (!called && pumping) {
      until = Math.min(until, Math.max(pumpUntil, time + 1e-3));
    }
    double steady =
        Math.min(Math.min(valves.steadyFor(HEAD_TRAVEL), source.steadyFor()), heatSteadyFor);
    steady = Math.min(steady, control.steadyFor());
    double h = takeStep(fineness.steps() * steady, until - time);
    if (valves.accept(h)) {
      ladder.reset();
    }
    roomStepper.finish();
    weatherAtEnd(h);
    double taken = circuit.capacityFlow() * h * (flowTemperature - circuit.returnTemperature());
    double heatRate = 0;
    for (int b = 0; b < branches; b++) {
      double heat = circuit.heat(b);
      emitted += heat * h;
      double now = circuit.emitters()[b].emissionNow(circuit.referenceNow(b, roomStepper));
      // Where the star follows an emitter at once, what that gives now is no better known than its
      // mean, with which the star agrees.
      if (roomStepper.followsAtOnce(b)) {
        now = heat;
      }
      roomStepper.setHeat(b, now);
      heatRate = Math.max(heatRate, Math.abs(now - heat) / airCapacity[model.branchRoom(b)]);
    }
    pipeHeat += circuit.pipeHeat();
    pipeLoss += circuit.outsideLoss();
    circuit.accept();
    // Heat that moves evenly by dQ over a step, held at its mean, leaves the air off by dQ h / (12
    // C_a).
    heatSteadyFor =
        heatRate > 0 ? Math.sqrt(6 * HELD_HEAT_ERROR * h / heatRate) : Double.POSITIVE_INFINITY;
    observe(h);
    source.accept(taken);
    sourceHeat += source.heatMade();
    sourceLoss += source.loss();
    timeAtMinimum += source.timeAtMinimum();
    timeBlocked += source.timeBlocked();
    timeOutsideMap += source.timeOutsideMap();
    time += h;
    steps++;
    check();
    // Multiples of the shortest step are kept exact, so that events are met exactly.
    if (Math.abs(time - stop) < 1e-6) {
      time = stop + 0.0;
    }
    lastLength = h;
  }

  /**
   * Tries steps until one may stay.
   *
   * @param steady for how long nothing will change much [s]
   * @param untilEvent time to the next event [s]
   * @return length of the step that was tried last [s]
   */
  private double takeStep(double steady, double untilEvent) {
    roomStepper.keep();
    circuit.keep();
    for (int b = 0; b < branches; b++) {
      valveDrop[b] = circuit.network().valveDrop(b);
    }
    int level = ladder.next(steady, untilEvent);
    double h = level >= 0 ? ladder.lengths()[level] : asPrepared(untilEvent);
    double late = mayBeLate;
    mayBeLate = MET_WITHIN;
    while (true) {
      boolean agreed = attempt(level, h);
      double longest = agreed ? mayLast(h, late) : h / 2;
      if (h <= longest) {
        return h;
      }
      if (agreed && longest < ladder.shortest()) {
        level = -1;
        h = longest;
        ladder.reset();
        mayBeLate = LATER * late;
      } else {
        int shorter = h > leastStep() ? ladder.shorter(longest) : -1;
        if (shorter < 0) {
          stepsUnagreed += agreed ? 0 : 1;
          return h;
        }
        level = shorter;
        h = ladder.lengths()[level];
      }
      roomStepper.restore();
      circuit.restore();
    }
  }

  /**
   * How long a step that was tried and agrees may last [s]. One across a valve's seat would hold a
   * mean of dry and wet; water reaches the head at once. A long one in which a head takes up its
   * play would hold a mean of still and moving. What switches by temperature or lift does so
   * between two steps.
   *
   * @param h its length [s]
   * @param late how late after a switching it may end [s]
   */
  private double mayLast(double h, double late) {
    double switches = valves.switchesAfter(h);
    if (house.control().interlock()) {
      switches = Math.min(switches, valves.opensOrShutsAfter(h));
    }
    for (int r = 0; r < rooms; r++) {
      if (watched[r]) {
        switches = Math.min(switches, control.switchesAfter(r, h, settledOperative(r)));
      }
    }
    double starts = Math.min(valves.leavesSeatAfter(), valves.longestAcrossPlay());
    double switched = switches + late;
    if (switched < ladder.shortest()) {
      switched = ladder.inParts(switched);
    }
    return Math.min(switched, Math.max(starts, ladder.shortest()));
  }

  /** A length that is whole parts of the shortest step but for rounding [s]; others as they are. */
  private double asPrepared(double length) {
    double parts = ladder.inParts(length);
    return Math.abs(parts - length) < 1e-7 ? parts : length;
  }

  /** Mean operative temperature of a room over the tried step [°C]. */
  private double settledOperative(int room) {
    return (roomStepper.settledAir(room) + roomStepper.settledStar(room)) / 2;
  }

  /**
   * The shortest step that is tried for the sake of agreement [s]; once many came to none, that is
   * no matter of length, and the run is to come to its end.
   */
  private double leastStep() {
    return stepsUnagreed < MANY ? ladder.lengths()[0] : ladder.shortest();
  }

  /** Tries a step; returns whether all that has to agree in it does. */
  private boolean attempt(int level, double h) {
    weatherAndGains(h);
    int prepared = level >= 0 ? level : ladder.positionOf(h);
    if (prepared >= 0) {
      roomStepper.beginPrepared(prepared);
    } else {
      roomStepper.begin(h);
    }
    roomStepper.settleLinks();
    circuit.begin(roomStepper);
    circuit.flows(valves.lookAhead(h, valveDrop), pumping);
    for (int k = 0; k < MOST_CORRECTIONS; k++) {
      boolean agreed = agree(h);
      double off = feel(h);
      if (!agreed || off < fineness.agreement() * OPENING_AGREEMENT) {
        return agreed;
      }
      circuit.flows(valves.correct(), pumping);
    }
    return false;
  }

  private double lastLength;
  private double mayBeLate = MET_WITHIN;
  private double heatSteadyFor = Double.POSITIVE_INFINITY;

  private void decideCall() {
    boolean before = called;
    called = control.decide(time, valves.anyElectricOpen());
    for (int r = 0; r < rooms; r++) {
      if (control.want(r) != carriedOut[r]) {
        carriedOut[r] = control.want(r);
        ladder.reset();
      }
    }
    for (int b = 0; b < branches; b++) {
      if (byHeads || valves.electric(b)) {
        int r = model.branchRoom(b);
        valves.shiftSetPoint(b, carriedOut[r] - dayWant[r]);
      }
    }
    valves.decide();
    if (before && !called) {
      pumpUntil = time + overRun;
    }
    pumping = called || time < pumpUntil - 1e-6;
    if (before != called) {
      ladder.reset();
    }
  }

  /** Lets controls and electric heads see what the rooms have done. */
  private void observe(double h) {
    for (int r = 0; r < rooms; r++) {
      if (watched[r]) {
        control.follow(r, h, settledOperative(r), operative(r));
      }
    }
    for (int b = 0; b < branches; b++) {
      if (valves.electric(b)) {
        int r = model.branchRoom(b);
        valves.see(b, h, roomStepper.air(r), operative(r));
      }
    }
  }

  private void weatherAndGains(double h) {
    Weather weather = house.weather();
    double outdoor = weather.meanOutdoor(time, time + h);
    roomStepper.setOutdoor(outdoor);
    flowSetPoint = control.flowSetPoint(outdoor, ownSetPoint);
    source.begin(outdoor, flowSetPoint);
    double sun = weather.meanIrradiance(time, time + h);
    for (int r = 0; r < rooms; r++) {
      roomStepper.setGains(r, convective[r], radiant[r] + solarAperture[r] * sun);
      span.see(r, convective[r], radiant[r] + solarAperture[r] * sun);
    }
    span.see(outdoor, flowSetPoint, called);
  }

  /**
   * Lets the star see weather as it is at the end of the step: it follows at once, and with the
   * step's mean sun it would lag behind by half a step.
   */
  private void weatherAtEnd(double h) {
    // Just before the end, since what jumps there belongs to the next step.
    double end = time + h * (1 - 1e-9);
    Weather weather = house.weather();
    roomStepper.setOutdoor(weather.outdoorAt(end));
    double sun = weather.irradianceAt(end);
    for (int r = 0; r < rooms; r++) {
      roomStepper.setGains(r, convective[r], radiant[r] + solarAperture[r] * sun);
    }
  }

  /** Ends the run where a temperature is none that the house can have. */
  private void check() {
    for (int r = 0; r < rooms; r++) {
      double air = roomStepper.air(r);
      double star = roomStepper.star(r);
      boolean airAllowed = span.allowsRoom(r, air);
      if (!airAllowed || !span.allowsRoom(r, star)) {
        String room = "room '" + house.rooms().get(r).name() + "', ";
        throw span.outside(room + (airAllowed ? "surfaces" : "air"), airAllowed ? star : air, time);
      }
    }
    boolean flowing = circuit.totalFlow() > 0;
    for (int b = 0; b < branches; b++) {
      double leaving = circuit.emitters()[b].meanReturn();
      if (!span.allowsWater(leaving) || !Double.isFinite(circuit.heat(b))) {
        throw span.outside("water leaving " + branchNames.get(b), leaving, time);
      }
    }
    if (flowing && !span.allowsWater(flowTemperature)) {
      throw span.outside("water leaving the source", flowTemperature, time);
    }
    if (!span.allowsWater(circuit.returnTemperature())) {
      throw span.outside("water coming back to the source", circuit.returnTemperature(), time);
    }
  }

  /**
   * Tries all heads with the rooms' mean temperatures; returns how far the worst opening is from
   * the one held [-].
   */
  private double feel(double h) {
    double worst = 0;
    for (int b = 0; b < branches; b++) {
      int r = model.branchRoom(b);
      double air = roomStepper.settledAir(r);
      double operative = (air + roomStepper.settledStar(r)) / 2;
      double flow = circuit.network().flow(b);
      double drop = circuit.network().valveDrop(b);
      double off = valves.feel(b, h, air, operative, flow, circuit.inlet(b), drop);
      worst = Math.max(worst, off);
    }
    return worst;
  }

  /**
   * Brings flow temperature, emitters and rooms into agreement: T_f = source(T_ret(T_f)); the rooms
   * follow at the same time, their influence mostly being some hundred times weaker.
   *
   * @return whether they agree
   */
  private boolean agree(double h) {
    double capacityFlow = circuit.capacityFlow();
    double guess = source.attempt(h, capacityFlow, circuit.returnTemperature(), called);
    search.begin();
    for (int round = 1; ; round++) {
      circuit.attempt(h, guess);
      double off = circuit.give(roomStepper);
      double returned = circuit.returnTemperature();
      double answer = source.attempt(h, capacityFlow, returned, called);
      flowTemperature = guess;
      double flowOff = Math.abs(answer - guess);
      double allowed =
          HEAT_AGREEMENT + HEAT_AGREEMENT_SHARE * capacityFlow * Math.abs(answer - returned);
      if (off < fineness.agreement() * REFERENCE_AGREEMENT
          && flowOff < fineness.agreement() * FLOW_AGREEMENT
          && flowOff * capacityFlow <= fineness.agreement() * allowed) {
        return circuit.agreed() && source.agreed();
      }
      if (round == MOST_ROUNDS) {
        return false;
      }
      circuit.foresee(round, h, roomStepper);
      guess = search.next(guess, answer);
    }
  }

  /** Operative temperature of a room now [°C]. */
  double operative(int room) {
    return (roomStepper.air(room) + roomStepper.star(room)) / 2;
  }

  private void beginRecording() {
    startsBeforeRecording = source.starts();
    defrostsBeforeRecording = source.defrosts();
    timeAtMinimum = 0;
    timeBlocked = 0;
    timeOutsideMap = 0;
    recorder.begin(time, want);
  }

  private void record() {
    recorder.record(time, lastLength, want, called, flowSetPoint, flowTemperature, starts());
  }

  /**
   * First instant from 0 on at which a heated room's programme is at its day value [s]; not a
   * number if none is within the run.
   */
  public double firstCall() {
    double first = Double.POSITIVE_INFINITY;
    for (int b = 0; b < branches; b++) {
      first = Math.min(first, firstCall(model.branchRoom(b)));
    }
    return first <= settings.length() ? first : Double.NaN;
  }

  /** When heat is first called for in one room [s]; infinite if never. */
  double firstCall(int room) {
    Timetable programme = house.rooms().get(room).want();
    double t = 0;
    while (t <= settings.length() && programme.valueAt(t) < dayWant[room]) {
      t = programme.nextChange(t);
    }
    return t;
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
    return stepsUnagreed;
  }

  /** Source starts within the recording. */
  public int starts() {
    return source.starts() - startsBeforeRecording;
  }

  /** Defrosts within the recording. */
  int defrosts() {
    return source.defrosts() - defrostsBeforeRecording;
  }

  /** Time the source ran at least output within the recording [s]. */
  double timeAtMinimum() {
    return timeAtMinimum;
  }

  /** Time within the recording that too little flow kept the called source from running [s]. */
  double timeBlocked() {
    return timeBlocked;
  }

  /** Running time within the recording that the declared performance does not cover [s]. */
  double timeOutsideMap() {
    return timeOutsideMap;
  }

  /** Shortest complete firing [s]; infinite if there was none. */
  public double shortestRun() {
    return source.shortestRun();
  }

  /** Where the heat went. */
  public EnergyLedger ledger() {
    return new EnergyLedger(
        sourceHeat,
        roomStepper.gains(),
        roomStepper.outdoorLoss(),
        roomStepper.heldLoss(),
        sourceLoss,
        pipeLoss,
        pipeHeat,
        roomStepper.stored() - storedAtStart,
        circuit.stored() - waterStoredAtStart,
        source.stored() - sourceStoredAtStart,
        emitted);
  }
}
