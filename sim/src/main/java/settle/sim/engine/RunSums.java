package settle.sim.engine;

import settle.sim.result.EnergyLedger;
import settle.sim.room.RoomStepper;
import settle.sim.source.Firing;
import settle.sim.source.SourceStepper;

/**
 * What a run adds up: heat since its beginning, and what the source did since the recording began.
 */
final class RunSums {

  private final RoomStepper rooms;
  private final WaterCircuit circuit;
  private final SourceStepper source;

  // Heat since the beginning [J]
  private double storedAtStart;
  private final double waterStoredAtStart;
  private final double sourceStoredAtStart;
  private double sourceHeat;
  private double sourceLoss;
  private double pipeLoss;
  private double pipeHeat;
  private double emitted;

  // The source since the recording began
  private int startsBefore;
  private int defrostsBefore;
  private double timeAtMinimum;
  private double timeBlocked;
  private double timeOutsideMap;
  private final Firing firing = new Firing();

  RunSums(Steppers parts) {
    rooms = parts.rooms();
    circuit = parts.circuit();
    source = parts.source();
    fabricBegins();
    waterStoredAtStart = circuit.stored();
    sourceStoredAtStart = source.stored();
  }

  /** Lets air and fabric begin with what they now hold. */
  void fabricBegins() {
    storedAtStart = rooms.stored();
  }

  /** Counts what the source does from now on. */
  void beginRecording() {
    startsBefore = source.starts();
    defrostsBefore = source.defrosts();
    timeAtMinimum = 0;
    timeBlocked = 0;
    timeOutsideMap = 0;
    firing.clear();
  }

  /** Adds what an emitter gave over a step [J]. */
  void addEmitted(double heat) {
    emitted += heat;
  }

  /** Adds what pipes gave over the step that was tried last. */
  void addPipes() {
    pipeHeat += circuit.pipeHeat();
    pipeLoss += circuit.outsideLoss();
  }

  /** Adds what the source did over the step it accepted last. */
  void addSource() {
    sourceHeat += source.heatMade();
    sourceLoss += source.loss();
    timeAtMinimum += source.timeAtMinimum();
    timeBlocked += source.timeBlocked();
    timeOutsideMap += source.timeOutsideMap();
    Firing step = source.firing();
    if (step != null) {
      firing.add(step);
    }
  }

  /** Source starts within the recording. */
  int starts() {
    return source.starts() - startsBefore;
  }

  /** Defrosts within the recording. */
  int defrosts() {
    return source.defrosts() - defrostsBefore;
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

  /** What the burner did within the recording; nothing if there is none. */
  Firing firing() {
    return firing;
  }

  /** Where the heat went since the beginning. */
  EnergyLedger ledger() {
    return new EnergyLedger(
        sourceHeat,
        rooms.gains(),
        rooms.outdoorLoss(),
        rooms.heldLoss(),
        sourceLoss,
        pipeLoss,
        pipeHeat,
        rooms.stored() - storedAtStart,
        circuit.stored() - waterStoredAtStart,
        source.stored() - sourceStoredAtStart,
        emitted);
  }
}
