package settle.sim.tuning;

import java.math.BigDecimal;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/**
 * One thing that can be set on a plant, as a number in SI. Each knows how finely it can be set by
 * hand and how far a search may take it; both are common practice, no source.
 */
public sealed interface Setting {

  /** With what it is tuned. */
  Group group();

  /** What it is set to. */
  double of(Plant plant);

  /** The plant with it set otherwise. */
  Plant with(Plant plant, double value);

  /** How finely and how far it goes on a plant. */
  Range range(Plant plant);

  /**
   * How finely and how far a setting goes, in its unit.
   *
   * @param finest smallest change that can be set by hand, in decimal digits
   * @param stride a change that is worth a look: the unit in which a search measures
   * @param lowest lowest value a search may take
   * @param highest highest value a search may take
   */
  record Range(String finest, double stride, double lowest, double highest) {}

  /** Smallest change that can be set by hand. */
  default double finest(Plant plant) {
    return Double.parseDouble(range(plant).finest());
  }

  /** The unit in which a search measures. */
  default double stride(Plant plant) {
    return range(plant).stride();
  }

  /** Lowest value a search may take. */
  default double lowest(Plant plant) {
    return range(plant).lowest();
  }

  /** Highest value a search may take. */
  default double highest(Plant plant) {
    return range(plant).highest();
  }

  /**
   * The nearest value that can be set by hand, within the limits: a multiple of {@link #finest},
   * written in few decimals, so that a file which holds it says the very same number.
   */
  default double settable(Plant plant, double value) {
    double held = Math.min(Math.max(value, lowest(plant)), highest(plant));
    BigDecimal step = new BigDecimal(range(plant).finest());
    long steps = Math.round(held / step.doubleValue());
    while (steps * step.doubleValue() > highest(plant) + 1e-9) {
      steps--;
    }
    while (steps * step.doubleValue() < lowest(plant) - 1e-9) {
      steps++;
    }
    return step.multiply(BigDecimal.valueOf(steps)).doubleValue();
  }

  /** Set-point of a room's heads [°C]; several heads in a room move together. */
  record Head(String room) implements Setting {

    /** How far from want a head's set-point may be taken [K]. */
    private static final double REACH = 4;

    @Override
    public Group group() {
      return Group.KNOBS;
    }

    @Override
    public double of(Plant plant) {
      return plant.arrangement().branches().stream()
          .filter(b -> b.room().equals(room) && hasHead(b.valve()))
          .mapToDouble(b -> setPoint(b.valve()))
          .findFirst()
          .orElseThrow();
    }

    @Override
    public Plant with(Plant plant, double value) {
      double by = value - of(plant);
      return plant.withRoom(room, b -> hasHead(b.valve()) ? b.withValve(b.valve().raised(by)) : b);
    }

    /** Whether a valve has something to set. */
    public static boolean hasHead(Valve valve) {
      return !(valve instanceof FixedOpening);
    }

    /** What a valve is set to [°C]; not a number where it has nothing to set. */
    public static double setPoint(Valve valve) {
      if (valve instanceof WaxValve wax) {
        return wax.setPoint();
      }
      if (valve instanceof OnOffActuator actuator) {
        return actuator.setPoint();
      }
      return valve instanceof MotorHead motor ? motor.setPoint() : Double.NaN;
    }

    @Override
    public Range range(Plant plant) {
      return new Range("0.5", 1, want(plant) - REACH, want(plant) + REACH);
    }

    private double want(Plant plant) {
      House house = plant.house();
      return house.rooms().get(house.roomIndex(room)).want().maximum();
    }
  }

  /** Flow temperature asked of the source, where no weather compensation sets it [°C]. */
  record FlowTemperature() implements Setting {

    @Override
    public Group group() {
      return Group.CURVE;
    }

    @Override
    public double of(Plant plant) {
      return plant.house().source().flowSetPoint();
    }

    @Override
    public Plant with(Plant plant, double value) {
      return plant.with(plant.house().withSource(plant.house().source().setTo(value)));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("1", 4, 25, Math.min(80, plant.house().source().highestFlow()));
    }
  }

  /** Slope of the weather compensation [K/K]. */
  record CurveSlope() implements Setting {

    @Override
    public Group group() {
      return Group.CURVE;
    }

    @Override
    public double of(Plant plant) {
      return curve(plant).slope();
    }

    @Override
    public Plant with(Plant plant, double value) {
      FlowCurve c = curve(plant);
      return withCurve(
          plant, new FlowCurve(value, c.shift(), c.lowest(), c.highest(), c.roomInfluence()));
    }

    static FlowCurve curve(Plant plant) {
      return plant.house().control().flowCurve().orElseThrow();
    }

    static Plant withCurve(Plant plant, FlowCurve curve) {
      return plant.with(plant.house().withControl(plant.house().control().withFlowCurve(curve)));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("0.05", 0.2, 0.2, 3);
    }
  }

  /** Parallel shift of the weather compensation [K]. */
  record CurveShift() implements Setting {

    @Override
    public Group group() {
      return Group.CURVE;
    }

    @Override
    public double of(Plant plant) {
      return CurveSlope.curve(plant).shift();
    }

    @Override
    public Plant with(Plant plant, double value) {
      FlowCurve c = CurveSlope.curve(plant);
      return CurveSlope.withCurve(
          plant, new FlowCurve(c.slope(), value, c.lowest(), c.highest(), c.roomInfluence()));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("1", 3, -10, 20);
    }
  }

  /**
   * How long before each period heating begins [s]; a plant that has no such lead begins with it.
   */
  record StartLead() implements Setting {

    @Override
    public Group group() {
      return Group.PREHEAT;
    }

    @Override
    public double of(Plant plant) {
      return plant.house().control().optimumStart() instanceof OptimumStart.Fixed fixed
          ? fixed.lead()
          : 0;
    }

    @Override
    public Plant with(Plant plant, double value) {
      boolean always = plant.house().control().optimumStart() instanceof OptimumStart.Fixed;
      OptimumStart start =
          value > 0 || always ? new OptimumStart.Fixed(value) : new OptimumStart.None();
      return plant.with(plant.house().withOptimumStart(start));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("300", 1800, 0, 4 * 3600.0);
    }
  }

  /**
   * Opening of the lockshield of a branch [turns].
   *
   * @param branch which
   * @param place what that branch is called
   */
  record LockshieldTurns(int branch, String place) implements Setting {

    @Override
    public Group group() {
      return Group.LOCKSHIELDS;
    }

    @Override
    public double of(Plant plant) {
      return plant.arrangement().branches().get(branch).lockshield().turns();
    }

    @Override
    public Plant with(Plant plant, double value) {
      return plant.withBranch(
          branch,
          (Branch b) ->
              b.withLockshield(plant.house().distribution().lockshields().atTurns(value)));
    }

    @Override
    public Range range(Plant plant) {
      return new Range(
          "0.125", 0.25, 0.125, plant.house().distribution().lockshields().open().turns());
    }
  }

  /** Head of a pump of constant pressure [Pa]. */
  record PumpHead() implements Setting {

    @Override
    public Group group() {
      return Group.LOCKSHIELDS;
    }

    @Override
    public double of(Plant plant) {
      return ((ConstantPump) plant.house().distribution().pump()).head();
    }

    @Override
    public Plant with(Plant plant, double value) {
      ConstantPump as = (ConstantPump) plant.house().distribution().pump();
      return plant.with(
          plant
              .house()
              .withDistribution(
                  plant.house().distribution().withPump(new ConstantPump(value, as.efficiency()))));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("500", 2000, 1000, Math.max(of(plant), 1000));
    }
  }

  /** Switching differential of an on/off room thermostat [K]. */
  record ThermostatDifferential() implements Setting {

    @Override
    public Group group() {
      return Group.THERMOSTAT;
    }

    @Override
    public double of(Plant plant) {
      return onOff(plant).differential();
    }

    static Thermostat.OnOff onOff(Plant plant) {
      return (Thermostat.OnOff) plant.house().control().thermostat();
    }

    @Override
    public Plant with(Plant plant, double value) {
      Thermostat other = new Thermostat.OnOff(value, onOff(plant).timeConstant());
      return plant.with(plant.house().withControl(plant.house().control().withThermostat(other)));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("0.1", 0.3, 0.1, 2);
    }
  }

  /**
   * Gain K_p of a motor head [1/K].
   *
   * @param branch which it sits on
   * @param room of that branch
   */
  record MotorGain(int branch, String room) implements Setting {

    @Override
    public Group group() {
      return Group.GAINS;
    }

    @Override
    public double of(Plant plant) {
      return head(plant, branch).gain();
    }

    @Override
    public Plant with(Plant plant, double value) {
      MotorHead head = head(plant, branch);
      return plant.withBranch(
          branch, (Branch b) -> b.withValve(head.tuned(value, head.integralTime())));
    }

    static MotorHead head(Plant plant, int branch) {
      return (MotorHead) plant.arrangement().branches().get(branch).valve();
    }

    @Override
    public Range range(Plant plant) {
      return new Range("0.05", 0.2, 0.05, 5);
    }
  }

  /**
   * Integral time T_i of a motor head [s].
   *
   * @param branch which it sits on
   * @param room of that branch
   */
  record MotorIntegralTime(int branch, String room) implements Setting {

    @Override
    public Group group() {
      return Group.GAINS;
    }

    @Override
    public double of(Plant plant) {
      return MotorGain.head(plant, branch).integralTime();
    }

    @Override
    public Plant with(Plant plant, double value) {
      MotorHead head = MotorGain.head(plant, branch);
      return plant.withBranch(branch, (Branch b) -> b.withValve(head.tuned(head.gain(), value)));
    }

    @Override
    public Range range(Plant plant) {
      return new Range("300", 1200, 600, 6 * 3600.0);
    }
  }
}
