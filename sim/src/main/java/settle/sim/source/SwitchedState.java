package settle.sim.source;

/**
 * What a source that switches on and off carries from step to step, and the sums of its last step.
 */
final class SwitchedState {

  /** Of water and metal at the step's end [°C]. */
  double temperature;

  boolean running;

  /** Time since it started, since it stopped, and since it last changed what it does [s]. */
  double sinceStart;

  double sinceStop;
  double sinceChange = Double.POSITIVE_INFINITY;

  /** How long it did what it did before that change [s]. */
  double phaseBefore = Double.POSITIVE_INFINITY;

  int starts;

  /** [s] */
  double shortestRun = Double.POSITIVE_INFINITY;

  /** Whether it is turned round to free its coil of ice. */
  boolean defrosting;

  /** Compressor time that made the ice now on the coil [s]. */
  double iced;

  /** How long the present defrost has lasted [s]. */
  double defrosted;

  int defrosts;

  // Sums of the step
  /** [s] */
  double length;

  /** Integral of the temperature [K s]. */
  double area;

  /** Rise of the temperature over the step [K]. */
  double rise;

  /** [J] */
  double made;

  double backup;
  double input;
  double taken;
  double loss;

  /** [s] */
  double atMinimum;

  double blocked;
  double outsideMap;

  /** Mean temperature of the water that entered [°C]. */
  double entering;

  /** What a burner did. */
  final Firing firing = new Firing();

  /** Takes over another's state; begins new sums. */
  void continueFrom(SwitchedState other) {
    temperature = other.temperature;
    running = other.running;
    sinceStart = other.sinceStart;
    sinceStop = other.sinceStop;
    sinceChange = other.sinceChange;
    phaseBefore = other.phaseBefore;
    starts = other.starts;
    shortestRun = other.shortestRun;
    defrosting = other.defrosting;
    iced = other.iced;
    defrosted = other.defrosted;
    defrosts = other.defrosts;
    length = 0;
    area = 0;
    rise = 0;
    made = 0;
    backup = 0;
    input = 0;
    taken = 0;
    loss = 0;
    atMinimum = 0;
    blocked = 0;
    outsideMap = 0;
    firing.clear();
  }

  void start() {
    running = true;
    sinceStart = 0;
    starts++;
    change();
  }

  void stop() {
    running = false;
    sinceStop = 0;
    shortestRun = Math.min(shortestRun, sinceStart);
    change();
  }

  /** Notes a change of what it does; two at once count as one. */
  void change() {
    if (sinceChange > 0) {
      phaseBefore = sinceChange;
      sinceChange = 0;
    }
  }

  /** Lets a stretch [s] pass as the water went through it. */
  void pass(ControlledWater water, double stretch) {
    if (running) {
      sinceStart += stretch;
    } else {
      sinceStop += stretch;
    }
    sinceChange += stretch;
    length += stretch;
    area += water.area();
    rise += water.end() - temperature;
    temperature = water.end();
    made += water.heat();
  }
}
