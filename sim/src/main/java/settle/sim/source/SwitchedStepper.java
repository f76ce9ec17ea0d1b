package settle.sim.source;

/**
 * What the steppers of sources that switch on and off have in common: an accepted state, one being
 * tried, and the steps that follow their switching.
 */
abstract class SwitchedStepper implements SourceStepper {

  /** Step that follows a source that switches [s]: most rest some minutes between two runs. */
  private static final double CYCLING_STEP = 40;

  /**
   * Step that follows one that goes on and off in turn [s], each run and rest at least four times
   * as long: all there is then moves within what the last cycles have been through.
   */
  private static final double STEADY_CYCLING_STEP = 80;

  /** How long after a change steps stay short [s]. */
  private static final double CYCLING_MEMORY = 1200;

  final ControlledWater water;
  private SwitchedState accepted = new SwitchedState();
  private SwitchedState tried = new SwitchedState();

  /** Temperature the water is on its way to, where it switches next [°C]; not a number if none. */
  private double switchesAt = Double.NaN;

  /**
   * @param water its water and metal
   * @param startTemperature of it [°C]
   * @param sinceStop how long it has stood still [s]
   */
  SwitchedStepper(ControlledWater water, double startTemperature, double sinceStop) {
    this.water = water;
    accepted.temperature = startTemperature;
    accepted.sinceStop = sinceStop;
  }

  /** Begins an attempt from the accepted state. */
  final SwitchedState beginAttempt(double capacityFlow, double returnTemperature) {
    water.begin(capacityFlow, returnTemperature);
    tried.continueFrom(accepted);
    return tried;
  }

  /**
   * Ends an attempt.
   *
   * @param nextSwitch temperature at which it switches if the water goes on as it does [°C]; not a
   *     number if none does
   * @return mean flow temperature [°C]
   */
  final double endAttempt(
      double length, double capacityFlow, double returnTemperature, double nextSwitch) {
    double mean = tried.area / tried.length;
    tried.taken = capacityFlow > 0 ? capacityFlow * (mean - returnTemperature) * length : 0;
    tried.loss = water.loss(tried.area, tried.length);
    tried.entering = entering(capacityFlow, returnTemperature, mean);
    switchesAt = nextSwitch;
    return mean;
  }

  /** What enters where so much water [W/K] comes back and leaves at its mean [°C]. */
  double entering(double capacityFlow, double returning, double leaving) {
    return capacityFlow > 0 ? returning : leaving;
  }

  final SwitchedState accepted() {
    return accepted;
  }

  @Override
  public void accept(double heatTaken) {
    SwitchedState last = accepted;
    accepted = tried;
    tried = last;
    accepted.temperature += (accepted.taken - heatTaken) / water.capacity();
  }

  @Override
  public double heatMade() {
    return accepted.made;
  }

  @Override
  public double backupHeat() {
    return accepted.backup;
  }

  @Override
  public double input() {
    return accepted.input;
  }

  @Override
  public double loss() {
    return accepted.loss;
  }

  @Override
  public double stored() {
    return water.capacity() * accepted.temperature;
  }

  @Override
  public double leaving() {
    return accepted.length > 0 ? accepted.area / accepted.length : accepted.temperature;
  }

  @Override
  public double entering() {
    return accepted.length > 0 ? accepted.entering : accepted.temperature;
  }

  @Override
  public double timeAtMinimum() {
    return accepted.atMinimum;
  }

  @Override
  public double timeBlocked() {
    return accepted.blocked;
  }

  @Override
  public double timeOutsideMap() {
    return accepted.outsideMap;
  }

  @Override
  public int starts() {
    return accepted.starts;
  }

  @Override
  public int defrosts() {
    return accepted.defrosts;
  }

  @Override
  public double shortestRun() {
    return accepted.shortestRun;
  }

  /**
   * Short for a while after a change, two to a run or rest at least, and on the way to the next.
   */
  @Override
  public double steadyFor() {
    if (accepted.sinceChange < CYCLING_MEMORY) {
      double phase = accepted.phaseBefore;
      double settled = phase < CYCLING_MEMORY ? Math.min(STEADY_CYCLING_STEP, phase / 4) : 0;
      return Math.max(settled, Math.min(CYCLING_STEP, phase / 2));
    }
    double distance = switchesAt - accepted.temperature;
    if (!(distance * accepted.rise > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(CYCLING_STEP, distance / accepted.rise * accepted.length / 2);
  }
}
