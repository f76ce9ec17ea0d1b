package settle.sim.engine;

import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.MainColumn;
import settle.sim.recording.Recorder;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.RoomStepper;
import settle.sim.source.SourceStepper;
import settle.sim.units.Times;
import settle.sim.valve.ValveStepper;

/** Writes down what a run has come to after each step. */
final class RunRecorder {

  /** Runs up to this long are kept step by step [s]. */
  private static final double KEPT = 14 * Times.DAY;

  /** Of longer ones the first days, whose warm-up is looked at closely [s]. */
  private static final double KEPT_AT_FIRST = 3 * Times.DAY;

  /**
   * Interval of a row afterwards [s]: short against a room's hours; a season is then some 60 000
   * rows instead of a million.
   */
  private static final double ROW = 300;

  private final HouseModel model;
  private final House house;
  private final RoomStepper roomStepper;
  private final WaterCircuit circuit;
  private final ValveStepper valves;
  private final SourceStepper source;
  private final int rooms;
  private final int branches;
  private final int mains;

  /** Flow that a by-pass of the source's own keeps through the pump [kg/s]. */
  private final double leastThroughPump;

  private final Recorder recorder;

  /** From when on steps are joined to rows [s]; infinite in a run that is short enough to keep. */
  private final double joinedFrom;

  private final double[] lastWant;

  RunRecorder(HouseModel model, RunSettings settings, Steppers parts) {
    this.model = model;
    roomStepper = parts.rooms();
    circuit = parts.circuit();
    valves = parts.valves();
    source = parts.source();
    house = model.house();
    rooms = house.rooms().size();
    branches = model.branches();
    mains = house.distribution().mains().size();
    joinedFrom = settings.length() > KEPT ? KEPT_AT_FIRST : Double.POSITIVE_INFINITY;
    lastWant = new double[rooms];
    leastThroughPump = model.leastThroughPump();
    recorder =
        new Recorder(
            model.roomNames(), model.branchNames(), model.mainNames(), expectedRows(settings));
  }

  /** More than most runs take, and what a long one takes where nothing keeps its rows apart. */
  private static int expectedRows(RunSettings settings) {
    double length = settings.length();
    double kept = length > KEPT ? KEPT_AT_FIRST : length;
    return (int) (kept / settings.longestStep() * 4 + (length - kept) / ROW) + 1000;
  }

  /** The row before the first step: states only. */
  void begin(double time, double[] want) {
    recorder.begin(time);
    recorder.clear();
    recordRooms(want);
    recordHouse(HouseColumn.STARTS, 0);
    for (int b = 0; b < branches; b++) {
      recordBranch(BranchColumn.SENSED, b, valves.element(b));
      recordBranch(BranchColumn.FAR_END, b, circuit.emitters()[b].face(1));
    }
  }

  /**
   * A row after a step.
   *
   * @param time at its end [s]
   * @param length of it [s]
   * @param want of each room [°C]
   * @param called whether heat was called for
   * @param setPoint flow temperature asked of the source [°C]
   * @param flow mean temperature of the water that went into the mains [°C]
   * @param starts of the source since the recording began
   */
  void record(
      double time,
      double length,
      double[] want,
      boolean called,
      double setPoint,
      double flow,
      int starts) {
    recorder.begin(time);
    recordRooms(want);
    recordHeats(length);
    recordBranches();
    recordMains();
    recordWater(length, flow);
    recordSource(length, setPoint, starts);
    recordHouse(HouseColumn.OUTDOOR, house.weather().meanOutdoor(time - length, time));
    recordHouse(HouseColumn.CALL, called ? 1 : 0);
    if (time > joinedFrom) {
      recorder.join(asBefore(want), ROW);
    }
  }

  private void recordHeats(double length) {
    for (int r = 0; r < rooms; r++) {
      recorder.set(Trace.index(RoomColumn.HEAT, r), 0);
      recorder.set(Trace.index(RoomColumn.PIPE_HEAT, r), circuit.pipeHeat(r) / length);
    }
    for (int b = 0; b < branches; b++) {
      recorder.add(Trace.index(RoomColumn.HEAT, model.branchRoom(b)), circuit.heat(b));
    }
  }

  private void recordBranches() {
    NetworkFlow network = circuit.network();
    for (int b = 0; b < branches; b++) {
      boolean flowing = network.flow(b) > 0;
      double leaving = circuit.emitters()[b].meanReturn();
      recordBranch(BranchColumn.MASS_FLOW, b, network.flow(b));
      recordBranch(BranchColumn.INLET, b, flowing ? circuit.inlet(b) : Double.NaN);
      recordBranch(BranchColumn.RETURN, b, flowing ? leaving : Double.NaN);
      recordBranch(BranchColumn.HEAT, b, circuit.heat(b));
      recordBranch(BranchColumn.SENSED, b, valves.element(b));
      recordBranch(BranchColumn.OPENING, b, valves.opening(b));
      recordBranch(BranchColumn.PRESSURE, b, network.branchPressure(b));
      recordBranch(BranchColumn.FAR_END, b, circuit.emitters()[b].face(1));
    }
  }

  private void recordMains() {
    NetworkFlow network = circuit.network();
    for (int i = 0; i < mains; i++) {
      boolean flowing = network.mainFlow(i) > 0;
      recordMain(MainColumn.MASS_FLOW, i, network.mainFlow(i));
      recordMain(MainColumn.FLOW, i, flowing ? circuit.arriving(i) : Double.NaN);
      recordMain(MainColumn.RETURN, i, flowing ? circuit.returning(i) : Double.NaN);
      recordMain(MainColumn.PRESSURE, i, network.mainPressure(i));
    }
  }

  /** The water where it leaves the source for the mains, and the pump. */
  private void recordWater(double length, double flow) {
    NetworkFlow network = circuit.network();
    double total = circuit.totalFlow();
    recordHouse(HouseColumn.FLOW, total > 0 ? flow : Double.NaN);
    recordHouse(HouseColumn.RETURN, total > 0 ? circuit.returnTemperature() : Double.NaN);
    recordHouse(HouseColumn.MASS_FLOW, total);
    recordHouse(HouseColumn.PUMP_HEAD, pumpHead(network.head(), total));
    recordHouse(HouseColumn.PUMP_POWER, pumpPower(network.head(), total));
    recordHouse(HouseColumn.BYPASS_FLOW, network.bypassFlow());
    recordHouse(HouseColumn.PIPE_LOSS, (circuit.pipeHeat() + circuit.outsideLoss()) / length);
  }

  /** What the pump makes, the source's own drop included [Pa]. */
  private double pumpHead(double left, double total) {
    double density = house.water().density();
    return left + house.distribution().pumpPlace().drop(total, density);
  }

  private double pumpPower(double head, double total) {
    if (head == 0) {
      return 0;
    }
    Distribution pipes = house.distribution();
    double through = Math.max(total, leastThroughPump);
    return pipes.pumpPlace().power(pipes.pump(), head, through, house.water().density());
  }

  private void recordSource(double length, double setPoint, int starts) {
    recordHouse(HouseColumn.SET_POINT, setPoint);
    recordHouse(HouseColumn.SOURCE_HEAT, source.heatMade() / length);
    recordHouse(HouseColumn.SOURCE_INPUT, source.input() / length);
    boolean flowing = circuit.totalFlow() > 0;
    recordHouse(HouseColumn.SOURCE_FLOW, flowing ? source.leaving() : Double.NaN);
    recordHouse(HouseColumn.SOURCE_RETURN, flowing ? source.entering() : Double.NaN);
    recordHouse(HouseColumn.BACKUP_HEAT, source.backupHeat() / length);
    recordHouse(HouseColumn.STARTS, starts);
  }

  /** Whether want is what it was: a row has one want. */
  private boolean asBefore(double[] want) {
    boolean same = true;
    for (int r = 0; r < rooms; r++) {
      same &= want[r] == lastWant[r];
      lastWant[r] = want[r];
    }
    return same;
  }

  private void recordHouse(HouseColumn column, double value) {
    recorder.set(Trace.index(column), value);
  }

  private void recordBranch(BranchColumn column, int branch, double value) {
    recorder.set(Trace.index(column, branch, rooms), value);
  }

  private void recordMain(MainColumn column, int main, double value) {
    recorder.set(Trace.index(column, main, rooms, branches), value);
  }

  private void recordRooms(double[] want) {
    for (int r = 0; r < rooms; r++) {
      double air = roomStepper.air(r);
      double star = roomStepper.star(r);
      recorder.set(Trace.index(RoomColumn.AIR, r), air);
      recorder.set(Trace.index(RoomColumn.RADIANT, r), star);
      recorder.set(Trace.index(RoomColumn.OPERATIVE, r), roomStepper.operative(r));
      recorder.set(Trace.index(RoomColumn.WANT, r), want[r]);
    }
  }

  /** What was written down. */
  Trace trace() {
    return recorder.trace();
  }
}
