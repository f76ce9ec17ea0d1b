package settle.sim.source;

/**
 * Steps a boiler: C dT_f/dt = P - m c (T_f - T_ret) - G_loss (T_f - 20 °C).
 *
 * <p>While firing, the controller asks for the power that takes T_f to set-point with its time
 * constant, P = C (T_set - T_f)/tau_c + m c (T_f - T_ret) + losses: what a PI controller does whose
 * integral time equals the boiler's own. P is held within P_min..P_max. With P held at P_min the
 * flow rises; at set-point + band the burner goes out, and lights again at set-point - band, the
 * anti-cycle time past. Every stretch between two such changes is linear and is advanced exactly,
 * so that starts and stops fall where they belong however long the step.
 */
public final class BoilerStepper implements SourceStepper {

  private static final double SURROUNDINGS = 20;

  /**
   * Step that follows a cycling burner [s]: a burner cycle is hardly shorter than the anti-cycle
   * time of some minutes.
   */
  private static final double CYCLING_STEP = 40;

  /** How long after a change of the burner steps stay short [s]. */
  private static final double CYCLING_MEMORY = 1200;

  private static final int MOST_STRETCHES = 10_000;

  private final Boiler boiler;
  private final double capacity;

  // State
  private double flowTemperature;
  private boolean firing;
  private double setPoint;
  private double sinceOff;
  private double sinceOn;
  private double sinceChange;
  private int starts;
  private double shortestRun = Double.POSITIVE_INFINITY;
  private double made;
  private double input;
  private double loss;
  private double atMinimum;

  // Attempt
  private double nextTemperature;
  private boolean nextFiring;
  private double nextSinceOff;
  private double nextSinceOn;
  private double nextSinceChange;
  private int nextStarts;
  private double nextShortest;
  private double nextMade;
  private double nextInput;
  private double nextLoss;
  private double nextTaken;
  private double nextAtMinimum;

  /**
   * @param boiler its parameters
   * @param startTemperature of its water and metal [°C]
   */
  public BoilerStepper(Boiler boiler, double startTemperature) {
    this.boiler = boiler;
    capacity = boiler.thermalMass();
    flowTemperature = startTemperature;
    setPoint = boiler.flowSetPoint();
    sinceOff = boiler.antiCycleTime();
    sinceChange = Double.POSITIVE_INFINITY;
  }

  @Override
  public void begin(double outdoor, double flowAsked) {
    setPoint = flowAsked;
  }

  @Override
  public double attempt(
      double length, double capacityFlow, double returnTemperature, boolean called) {
    double temperature = flowTemperature;
    nextFiring = firing;
    nextSinceOff = sinceOff;
    nextSinceOn = sinceOn;
    nextSinceChange = sinceChange;
    nextStarts = starts;
    nextShortest = shortestRun;
    nextMade = 0;
    nextInput = 0;
    nextAtMinimum = 0;
    double lossRate = boiler.standingLoss();
    double pull = (capacityFlow + lossRate) / capacity;
    double rest = (capacityFlow * returnTemperature + lossRate * SURROUNDINGS) / capacity;
    double set = setPoint;
    double low = set - boiler.switchingBand();
    double high = set + boiler.switchingBand();
    double left = length;
    double integral = 0;
    for (int k = 0; left > 1e-9 && k < MOST_STRETCHES; k++) {
      if (nextFiring && (!called || temperature >= high - 1e-9)) {
        nextFiring = false;
        nextSinceOff = 0;
        nextSinceChange = 0;
        nextShortest = Math.min(nextShortest, nextSinceOn);
      } else if (!nextFiring
          && called
          && capacityFlow > 0
          && temperature <= low + 1e-9
          && nextSinceOff >= boiler.antiCycleTime() - 1e-9) {
        nextFiring = true;
        nextSinceOn = 0;
        nextSinceChange = 0;
        nextStarts++;
      }
      // One stretch: dT/dt = a - b T until the next threshold.
      double a = rest;
      double b = pull;
      double limit = left;
      double threshold = Double.NaN;
      double fixedPower = 0;
      boolean modulating = false;
      if (nextFiring) {
        double asked =
            capacity * ((set - temperature) / boiler.controlTime() + pull * temperature - rest);
        // Asked power falls with T where the controller is quicker than the water: slope C (pull -
        // 1/tau_c).
        double slope = capacity * (pull - 1 / boiler.controlTime());
        if (asked > boiler.maximumPower()) {
          fixedPower = boiler.maximumPower();
          threshold = temperature + (boiler.maximumPower() - asked) / slope;
        } else if (asked < boiler.minimumPower()) {
          fixedPower = boiler.minimumPower();
          double modulates = temperature + (boiler.minimumPower() - asked) / slope;
          boolean rising = fixedPower / capacity + rest - pull * temperature > 0;
          boolean onTheWay = (modulates > temperature) == rising;
          threshold = onTheWay && modulates < high ? modulates : high;
        } else {
          modulating = true;
          a = set / boiler.controlTime();
          b = 1 / boiler.controlTime();
          // Where along the way to set-point would a limit be met?
          double atSet = capacity * (pull * set - rest);
          if (atSet > boiler.maximumPower()) {
            threshold = temperature + (boiler.maximumPower() - asked) / slope;
          } else if (atSet < boiler.minimumPower()) {
            threshold = temperature + (boiler.minimumPower() - asked) / slope;
          }
        }
        if (!modulating) {
          a += fixedPower / capacity;
        }
      } else {
        threshold = low;
        if (called && nextSinceOff < boiler.antiCycleTime()) {
          limit = Math.min(limit, boiler.antiCycleTime() - nextSinceOff);
        }
      }
      double stretch = Math.min(limit, timeTo(threshold, temperature, a, b));
      stretch = Math.max(stretch, Math.min(left, 1e-3));
      double settled = b > 0 ? a / b : Double.NaN;
      double end;
      double area;
      if (b * stretch > 1e-12) {
        double decay = Math.exp(-b * stretch);
        end = settled + (temperature - settled) * decay;
        area = settled * stretch + (temperature - settled) * (1 - decay) / b;
      } else {
        end = temperature + a * stretch;
        area = temperature * stretch + a * stretch * stretch / 2;
      }
      if (nextFiring) {
        double heat =
            modulating
                ? capacity * (end - temperature) + capacity * (pull * area - rest * stretch)
                : fixedPower * stretch;
        nextMade += heat;
        double load = heat / stretch / boiler.maximumPower();
        double seen = capacityFlow > 0 ? returnTemperature : temperature;
        nextInput += heat / boiler.efficiency().at(seen, load);
        nextSinceOn += stretch;
        if (!modulating && fixedPower == boiler.minimumPower()) {
          nextAtMinimum += stretch;
        }
      } else {
        nextSinceOff += stretch;
      }
      nextSinceChange += stretch;
      integral += area;
      temperature = end;
      left -= stretch;
    }
    nextTemperature = temperature;
    nextLoss = lossRate * (integral - SURROUNDINGS * length);
    nextTaken = capacityFlow * (integral - returnTemperature * length);
    if (capacityFlow == 0) {
      nextTaken = 0;
    }
    return integral / length;
  }

  /**
   * Time until a linear stretch meets a threshold [s]; infinite if it moves away or never gets
   * there.
   */
  private static double timeTo(double threshold, double from, double a, double b) {
    double speed = a - b * from;
    double distance = threshold - from;
    if (!(Math.abs(distance) > 1e-9) || distance * speed <= 0) {
      return Double.POSITIVE_INFINITY;
    }
    if (b < 1e-15) {
      return distance / speed;
    }
    double ratio = 1 - b * distance / speed;
    return ratio > 0 ? -Math.log(ratio) / b : Double.POSITIVE_INFINITY;
  }

  @Override
  public void accept(double heatTaken) {
    flowTemperature = nextTemperature + (nextTaken - heatTaken) / capacity;
    firing = nextFiring;
    sinceOff = nextSinceOff;
    sinceOn = nextSinceOn;
    sinceChange = nextSinceChange;
    starts = nextStarts;
    shortestRun = nextShortest;
    made = nextMade;
    input = nextInput;
    loss = nextLoss;
    atMinimum = nextAtMinimum;
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
  public double timeAtMinimum() {
    return atMinimum;
  }

  @Override
  public double timeBlocked() {
    return 0;
  }

  @Override
  public int defrosts() {
    return 0;
  }

  @Override
  public double input() {
    return input;
  }

  @Override
  public double loss() {
    return loss;
  }

  @Override
  public double stored() {
    return capacity * flowTemperature;
  }

  @Override
  public int starts() {
    return starts;
  }

  @Override
  public double shortestRun() {
    return shortestRun;
  }

  @Override
  public double steadyFor() {
    return sinceChange < CYCLING_MEMORY ? CYCLING_STEP : Double.POSITIVE_INFINITY;
  }
}
