package settle.sim.source;

/** A source driven as the engine drives it, with the sums of what it did. */
public final class DrivenSource {

  private final SourceStepper stepper;
  private final double storedAtStart;
  private double time;
  private double made;
  private double backup;
  private double input;
  private double loss;
  private double taken;
  private double atMinimum;
  private double blocked;
  private double outsideMap;
  private double flow;
  private double lowestFlow = Double.POSITIVE_INFINITY;

  /** Drives a stepper from the state it is in. */
  public DrivenSource(SourceStepper stepper) {
    this.stepper = stepper;
    storedAtStart = stepper.stored();
  }

  /** Runs for a time [s] in steps [s] with a flow [W/K] that returns at one temperature [°C]. */
  public void run(
      double length, double step, double capacityFlow, double returnTemperature, boolean called) {
    for (long k = Math.round(length / step); k > 0; k--) {
      flow = stepper.attempt(step, capacityFlow, returnTemperature, called);
      accept(step, capacityFlow * (flow - returnTemperature) * step);
    }
  }

  /**
   * Runs for a time [s] in steps [s], called, with a flow [W/K] from which the same heat [W] is
   * taken at all times.
   */
  public void runAgainst(double load, double length, double step, double capacityFlow) {
    for (long k = Math.round(length / step); k > 0; k--) {
      double returning = flow - load / capacityFlow;
      for (int round = 0; round < 200; round++) {
        flow = stepper.attempt(step, capacityFlow, returning, true);
        double next = flow - load / capacityFlow;
        if (Math.abs(next - returning) < 1e-9) {
          break;
        }
        returning = next;
      }
      accept(step, load * step);
    }
  }

  private void accept(double step, double heatTaken) {
    stepper.accept(heatTaken);
    time += step;
    made += stepper.heatMade();
    backup += stepper.backupHeat();
    input += stepper.input();
    loss += stepper.loss();
    taken += heatTaken;
    atMinimum += stepper.timeAtMinimum();
    blocked += stepper.timeBlocked();
    outsideMap += stepper.timeOutsideMap();
    lowestFlow = Math.min(lowestFlow, flow);
  }

  /** Begins the sums of {@link #runAgainst} from a flow temperature [°C]. */
  public DrivenSource from(double flowTemperature) {
    flow = flowTemperature;
    return this;
  }

  /** What was made and neither lost, taken nor stored [J]. */
  public double imbalance() {
    return made - loss - taken - (stepper.stored() - storedAtStart);
  }

  /** [s] */
  public double time() {
    return time;
  }

  /** [J] */
  public double made() {
    return made;
  }

  /** [J] */
  public double backup() {
    return backup;
  }

  /** [J] */
  public double input() {
    return input;
  }

  /** [J] */
  public double taken() {
    return taken;
  }

  /** [s] */
  public double atMinimum() {
    return atMinimum;
  }

  /** [s] */
  public double blocked() {
    return blocked;
  }

  /** [s] */
  public double outsideMap() {
    return outsideMap;
  }

  /** Mean flow temperature of the last step [°C]. */
  public double flow() {
    return flow;
  }

  /** Lowest step-mean flow temperature [°C]. */
  public double lowestFlow() {
    return lowestFlow;
  }
}
