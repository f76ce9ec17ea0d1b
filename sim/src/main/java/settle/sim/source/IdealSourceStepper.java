package settle.sim.source;

/**
 * Steps an ideal source: T_f = min(set-point, T_ret + P_max/(m c)), but never below T_ret; without
 * delay or loss.
 */
public final class IdealSourceStepper implements SourceStepper {

  private final IdealSource source;
  private double setPoint;
  private double made;
  private boolean running;
  private boolean calledNow;
  private double leaving;
  private double entering;
  private int starts;

  /**
   * @param source its parameters
   */
  public IdealSourceStepper(IdealSource source) {
    this.source = source;
    setPoint = source.flowSetPoint();
  }

  @Override
  public void begin(double outdoor, double flowAsked) {
    setPoint = flowAsked;
  }

  @Override
  public double attempt(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    calledNow = called;
    leaving = flowTemperature(capacityFlow, returnTemperature, called);
    entering = capacityFlow > 0 ? returnTemperature : leaving;
    return leaving;
  }

  private double flowTemperature(double capacityFlow, double returnTemperature, boolean called) {
    if (!called || capacityFlow == 0) {
      return called ? setPoint : returnTemperature;
    }
    double reached = Math.min(setPoint, returnTemperature + source.maximumPower() / capacityFlow);
    return Math.max(reached, returnTemperature);
  }

  @Override
  public void accept(double heatTaken) {
    made = heatTaken;
    if (calledNow && !running) {
      starts++;
    }
    running = calledNow;
  }

  @Override
  public double heatMade() {
    return made;
  }

  @Override
  public double backupHeat() {
    return 0;
  }

  @Override
  public double leaving() {
    return leaving;
  }

  @Override
  public double entering() {
    return entering;
  }

  @Override
  public double timeAtMinimum() {
    return 0;
  }

  @Override
  public double timeBlocked() {
    return 0;
  }

  @Override
  public double timeOutsideMap() {
    return 0;
  }

  @Override
  public int defrosts() {
    return 0;
  }

  @Override
  public double input() {
    return made;
  }

  @Override
  public double loss() {
    return 0;
  }

  @Override
  public double stored() {
    return 0;
  }

  @Override
  public int starts() {
    return starts;
  }

  @Override
  public double shortestRun() {
    return Double.POSITIVE_INFINITY;
  }

  @Override
  public double steadyFor() {
    return Double.POSITIVE_INFINITY;
  }
}
