package settle.sim.engine;

import java.util.List;
import settle.sim.control.CallForHeat;
import settle.sim.control.Control;
import settle.sim.control.Timetable;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.BranchFlow;
import settle.sim.hydraulics.Pump;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Recorder;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.EnergyLedger;
import settle.sim.result.Profile;
import settle.sim.room.Room;
import settle.sim.room.RoomStepper;
import settle.sim.source.SourceStepper;
import settle.sim.valve.ValveStepper;
import settle.sim.weather.Weather;

/**
 * One run of a house: its state, and the stages of a step.
 *
 * <p>The order of the stages, and why: the controls decide first, on what they have seen; valves
 * and flows follow, since flow needs no temperature of this step; source and emitters are brought
 * into agreement with each other and with the rooms' mean temperatures; the links between rooms
 * then settle; only then does every state move. What valves sense is the mean the rooms really had.
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

  private static final int MOST_ROUNDS = 12;

  /**
   * Agreement asked of the opening held with the one the head really takes, as a share of it [-].
   */
  private static final double OPENING_AGREEMENT = 0.003;

  private static final int MOST_CORRECTIONS = 3;

  // Model
  private final HouseModel model;
  private final House house;
  private final RunSettings settings;
  private final int rooms;
  private final int branches;
  private final double specificHeat;
  private final double[] dayWant;
  private final double[] solarAperture;
  private final double[] airCapacity;
  private final double overRun;
  private final int referenceRoom;

  // State
  private final RoomStepper roomStepper;
  private final EmitterStepper[] emitters;
  private final BranchFlow[] flows;
  private final ValveStepper valves;
  private final SourceStepper source;
  private final CallForHeat callForHeat;
  private final StepLadder ladder;
  private double time;
  private double nextEvent;
  private double pumpUntil;
  private boolean called;
  private boolean pumping;
  private int steps;

  // Quadrature over the run [J]
  private final double storedAtStart;
  private final double waterStoredAtStart;
  private final double sourceStoredAtStart;
  private double sourceHeat;
  private double sourceLoss;
  private double emitted;

  // Scratch of one step
  private final double[] want;
  private final double[] convective;
  private final double[] radiant;
  private final double[] massFlow;
  private final double[] valveDrop;
  private final double[] heat;
  private final double[] reference;
  private double totalFlow;
  private double flowTemperature;
  private double returnTemperature;

  private int startsBeforeRecording;
  private final ProfileKeeper profiles;
  private Recorder recorder;

  /**
   * @param model the prepared house
   * @param settings start, length and steps
   */
  public HouseRun(HouseModel model, RunSettings settings) {
    this.model = model;
    this.settings = settings;
    house = model.house;
    rooms = house.rooms().size();
    branches = model.branchRoom.length;
    specificHeat = house.water().specificHeat();
    double start = settings.startTemperature();
    roomStepper = new RoomStepper(model.fabric, start);
    emitters = model.emitterSteppers(start);
    flows = model.branchFlows();
    valves = model.valveStepper(start);
    source = model.sourceStepper(start);
    ladder = new StepLadder(settings.shortestStep(), settings.longestStep());
    roomStepper.prepare(ladder.lengths());
    Control control = house.control();
    referenceRoom =
        control.setback() == Control.Setback.SOURCE ? house.roomIndex(control.referenceRoom()) : 0;
    callForHeat = new CallForHeat(control, house.rooms().get(referenceRoom).want());
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
    massFlow = new double[branches];
    valveDrop = new double[branches];
    heat = new double[branches];
    reference = new double[branches];
    time = -settings.leadIn();
    pumpUntil = Double.NEGATIVE_INFINITY;
    flowTemperature = start;
    returnTemperature = start;
    profiles =
        new ProfileKeeper(
            model.arrangement.branches(), firstCall(), settings.profileTimes(), settings.length());
    storedAtStart = roomStepper.stored();
    waterStoredAtStart = waterStored();
    sourceStoredAtStart = source.stored();
    atEvent();
  }

  /**
   * Runs from start to end.
   *
   * @throws ArithmeticException if a temperature stops being a number; the message names room and
   *     time
   */
  public void run() {
    recorder =
        new Recorder(
            model.roomNames(),
            model.branchNames(),
            model.mainNames(),
            (int) (settings.length() / settings.longestStep() * 4) + 1000);
    if (time >= 0) {
      beginRecording();
    }
    double end = settings.length();
    while (time < end - 1e-6) {
      if (time >= nextEvent - 1e-6) {
        atEvent();
      }
      double stop = Math.min(nextEvent, time < -1e-6 ? Math.min(0, end) : end);
      step(Math.min(stop, profiles.nextMark()));
      if (Math.abs(time) < 1e-6) {
        beginRecording();
      } else if (time > 0) {
        record();
      }
      profiles.keepDue(time, emitters);
    }
  }

  /**
   * Events: programmes, gains and weather that jump. Steps begin short where a head's set-point
   * moves; rooms take a jump of gains or weather exactly.
   */
  private void atEvent() {
    nextEvent = house.weather().nextBreak(time);
    for (int r = 0; r < rooms; r++) {
      Room room = house.rooms().get(r);
      double wanted = room.want().valueAt(time);
      if (wanted != want[r]) {
        want[r] = wanted;
        ladder.reset();
      }
      convective[r] = room.convectiveGain().valueAt(time);
      radiant[r] = room.radiantGain().valueAt(time);
      nextEvent = Math.min(nextEvent, room.want().nextChange(time));
      nextEvent = Math.min(nextEvent, room.convectiveGain().nextChange(time));
      nextEvent = Math.min(nextEvent, room.radiantGain().nextChange(time));
    }
    if (house.control().setback() == Control.Setback.HEADS) {
      for (int b = 0; b < branches; b++) {
        int r = model.branchRoom[b];
        valves.shiftSetPoint(b, want[r] - dayWant[r]);
      }
    }
  }

  private void step(double stop) {
    decideCall();
    double until = stop;
    if (!called && pumping) {
      until = Math.min(until, Math.max(pumpUntil, time + 1e-3));
    }
    double steady =
        Math.min(Math.min(valves.steadyFor(HEAD_TRAVEL), source.steadyFor()), heatSteadyFor);
    int level = ladder.next(steady, until - time);
    double h = level >= 0 ? ladder.lengths()[level] : until - time;

    weatherAndGains(h);
    if (level >= 0) {
      roomStepper.beginPrepared(level);
    } else {
      roomStepper.begin(h);
    }
    flows(valves.lookAhead(h, valveDrop));
    agree(h);
    roomStepper.settleLinks();
    for (int k = 0; feel(h) > OPENING_AGREEMENT && k < MOST_CORRECTIONS; k++) {
      flows(valves.correct());
      agree(h);
      roomStepper.settleLinks();
    }
    if (valves.accept(h)) {
      ladder.reset();
    }
    roomStepper.finish();
    double taken = 0;
    double heatRate = 0;
    for (int b = 0; b < branches; b++) {
      taken += massFlow[b] * specificHeat * h * (flowTemperature - emitters[b].meanReturn());
      emitted += heat[b] * h;
      double now = emitters[b].emissionNow();
      roomStepper.setHeat(b, now);
      heatRate = Math.max(heatRate, Math.abs(now - heat[b]) / airCapacity[model.branchRoom[b]]);
      emitters[b].accept();
    }
    // Heat that moves evenly by dQ over a step, held at its mean, leaves the air off by dQ h / (12
    // C_a).
    heatSteadyFor =
        heatRate > 0 ? Math.sqrt(6 * HELD_HEAT_ERROR * h / heatRate) : Double.POSITIVE_INFINITY;
    source.accept(taken);
    sourceHeat += source.heatMade();
    sourceLoss += source.loss();
    time += h;
    steps++;
    // Multiples of the shortest step are kept exact, so that events are met exactly.
    if (Math.abs(time - stop) < 1e-6) {
      time = stop + 0.0;
    }
    lastLength = h;
  }

  private double lastLength;
  private double heatSteadyFor = Double.POSITIVE_INFINITY;

  private void decideCall() {
    boolean before = called;
    called = callForHeat.update(time, operative(referenceRoom));
    if (before && !called) {
      pumpUntil = time + overRun;
    }
    pumping = called || time < pumpUntil - 1e-6;
    if (before != called) {
      ladder.reset();
    }
  }

  private void weatherAndGains(double h) {
    Weather weather = house.weather();
    roomStepper.setOutdoor(weather.meanOutdoor(time, time + h));
    double sun = weather.meanIrradiance(time, time + h);
    for (int r = 0; r < rooms; r++) {
      roomStepper.setGains(r, convective[r], radiant[r] + solarAperture[r] * sun);
    }
  }

  /**
   * Tries all heads with the rooms' mean temperatures; returns how far the worst opening is from
   * the one held [-].
   */
  private double feel(double h) {
    double worst = 0;
    for (int b = 0; b < branches; b++) {
      int r = model.branchRoom[b];
      double air = roomStepper.settledAir(r);
      double operative = (air + roomStepper.settledStar(r)) / 2;
      double off = valves.feel(b, h, air, operative, massFlow[b], flowTemperature, valveDrop[b]);
      worst = Math.max(worst, off);
    }
    return worst;
  }

  private void flows(double[] kv) {
    totalFlow = 0;
    double head = pumping ? house.distribution().pump().head(0, house.water().density()) : 0;
    for (int b = 0; b < branches; b++) {
      massFlow[b] = flows[b].solve(kv[b], head);
      valveDrop[b] = flows[b].valveDrop();
      totalFlow += massFlow[b];
    }
  }

  /**
   * Brings flow temperature, emitters and the rooms' mean temperatures into agreement: T_f =
   * source(T_ret(T_f)), by the secant method; the rooms follow at the same time, their influence
   * being some hundred times weaker.
   */
  private void agree(double h) {
    double capacityFlow = totalFlow * specificHeat;
    double guess = source.attempt(h, capacityFlow, returnTemperature, called);
    double lastGuess = Double.NaN;
    double lastResidual = Double.NaN;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double moved = emit(h, guess);
      double answer = source.attempt(h, capacityFlow, returnTemperature, called);
      flowTemperature = guess;
      double residual = answer - guess;
      if (Math.abs(residual) < FLOW_AGREEMENT && moved < REFERENCE_AGREEMENT) {
        break;
      }
      double slope = (residual - lastResidual) / (guess - lastGuess);
      lastGuess = guess;
      lastResidual = residual;
      guess = slope < -1e-3 && slope > -5 ? guess - residual / slope : answer;
    }
  }

  /**
   * Tries all emitters with a flow temperature; sets their heats and the return temperature.
   *
   * @return largest change of a reference temperature that follows from the heats [K]
   */
  private double emit(double h, double flow) {
    double moved = 0;
    double returning = 0;
    for (int b = 0; b < branches; b++) {
      int r = model.branchRoom[b];
      double f = model.radiantFraction[b];
      reference[b] = f * roomStepper.meanStar(r) + (1 - f) * roomStepper.meanAir(r);
    }
    for (int b = 0; b < branches; b++) {
      emitters[b].attempt(h, massFlow[b] * specificHeat, flow, reference[b]);
      double now = emitters[b].emitted() / h;
      double rise = roomStepper.referenceRise(b, model.radiantFraction[b]);
      moved = Math.max(moved, Math.abs(rise * (now - roomStepper.heat(b))));
      heat[b] = now;
      roomStepper.setHeat(b, now);
      returning += massFlow[b] * emitters[b].meanReturn();
    }
    if (totalFlow > 0) {
      returnTemperature = returning / totalFlow;
    }
    return moved;
  }

  private double operative(int room) {
    return (roomStepper.air(room) + roomStepper.star(room)) / 2;
  }

  private void beginRecording() {
    startsBeforeRecording = source.starts();
    recorder.begin(time);
    recorder.clear();
    recordRooms();
    recorder.set(Trace.index(HouseColumn.STARTS), 0);
    for (int b = 0; b < branches; b++) {
      recorder.set(Trace.index(BranchColumn.SENSED, b, rooms), valves.element(b));
    }
  }

  private void recordRooms() {
    for (int r = 0; r < rooms; r++) {
      double air = roomStepper.air(r);
      double star = roomStepper.star(r);
      if (Double.isNaN(air)) {
        throw new ArithmeticException(
            "room '" + house.rooms().get(r).name() + "': no temperature at " + time + " s");
      }
      recorder.set(Trace.index(RoomColumn.AIR, r), air);
      recorder.set(Trace.index(RoomColumn.RADIANT, r), star);
      recorder.set(Trace.index(RoomColumn.OPERATIVE, r), (air + star) / 2);
      recorder.set(Trace.index(RoomColumn.WANT, r), want[r]);
    }
  }

  private void record() {
    recorder.begin(time);
    recordRooms();
    for (int r = 0; r < rooms; r++) {
      recorder.set(Trace.index(RoomColumn.HEAT, r), 0);
    }
    for (int b = 0; b < branches; b++) {
      recorder.add(Trace.index(RoomColumn.HEAT, model.branchRoom[b]), heat[b]);
      recorder.set(Trace.index(BranchColumn.MASS_FLOW, b, rooms), massFlow[b]);
      boolean flowing = massFlow[b] > 0;
      recorder.set(
          Trace.index(BranchColumn.INLET, b, rooms), flowing ? flowTemperature : Double.NaN);
      recorder.set(
          Trace.index(BranchColumn.RETURN, b, rooms),
          flowing ? emitters[b].meanReturn() : Double.NaN);
      recorder.set(Trace.index(BranchColumn.HEAT, b, rooms), heat[b]);
      recorder.set(Trace.index(BranchColumn.SENSED, b, rooms), valves.element(b));
      recorder.set(Trace.index(BranchColumn.OPENING, b, rooms), valves.opening(b));
      recorder.set(
          Trace.index(BranchColumn.PRESSURE, b, rooms),
          pumping ? house.distribution().pump().head(0, house.water().density()) : 0);
    }
    recorder.set(
        Trace.index(HouseColumn.OUTDOOR), house.weather().meanOutdoor(time - lastLength, time));
    boolean flowing = totalFlow > 0;
    recorder.set(Trace.index(HouseColumn.FLOW), flowing ? flowTemperature : Double.NaN);
    recorder.set(Trace.index(HouseColumn.RETURN), flowing ? returnTemperature : Double.NaN);
    recorder.set(Trace.index(HouseColumn.MASS_FLOW), totalFlow);
    recorder.set(Trace.index(HouseColumn.SOURCE_HEAT), source.heatMade() / lastLength);
    recorder.set(Trace.index(HouseColumn.SOURCE_INPUT), source.input() / lastLength);
    recorder.set(Trace.index(HouseColumn.CALL), called ? 1 : 0);
    recorder.set(Trace.index(HouseColumn.SET_POINT), house.source().flowSetPoint());
    recorder.set(Trace.index(HouseColumn.SOURCE_FLOW), flowing ? flowTemperature : Double.NaN);
    recorder.set(Trace.index(HouseColumn.BACKUP_HEAT), source.backupHeat() / lastLength);
    recorder.set(Trace.index(HouseColumn.STARTS), starts());
    Pump pump = house.distribution().pump();
    double head = pumping ? pump.head(totalFlow, house.water().density()) : 0;
    recorder.set(Trace.index(HouseColumn.PUMP_HEAD), head);
    recorder.set(
        Trace.index(HouseColumn.PUMP_POWER),
        head * totalFlow / house.water().density() / pump.efficiency());
    recorder.set(Trace.index(HouseColumn.BYPASS_FLOW), 0);
    recorder.set(Trace.index(HouseColumn.PIPE_LOSS), 0);
  }

  /**
   * First instant from 0 on at which a heated room's programme is at its day value [s]; not a
   * number if none is within the run.
   */
  public double firstCall() {
    double first = Double.POSITIVE_INFINITY;
    for (int b = 0; b < branches; b++) {
      first = Math.min(first, firstCall(model.branchRoom[b]));
    }
    return first <= settings.length() ? first : Double.NaN;
  }

  /** The same for one room; infinite if never. */
  double firstCall(int room) {
    Timetable programme = house.rooms().get(room).want();
    double t = 0;
    while (t <= settings.length() && programme.valueAt(t) < dayWant[room]) {
      t = programme.nextChange(t);
    }
    return t;
  }

  private double waterStored() {
    double sum = 0;
    for (EmitterStepper emitter : emitters) {
      sum += emitter.stored();
    }
    return sum;
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

  /** Source starts within the recording. */
  public int starts() {
    return source.starts() - startsBeforeRecording;
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
        0,
        0,
        roomStepper.stored() - storedAtStart,
        waterStored() - waterStoredAtStart,
        source.stored() - sourceStoredAtStart,
        emitted);
  }
}
