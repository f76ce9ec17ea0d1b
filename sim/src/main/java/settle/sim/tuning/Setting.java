package settle.sim.tuning;

import java.math.BigDecimal;
import java.util.stream.DoubleStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import settle.sim.control.FlowCurve;
import settle.sim.control.OptimumStart;
import settle.sim.control.Thermostat;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Pump;
import settle.sim.valve.KnobScale;
import settle.sim.valve.Valve;

/**
 * One thing that can be set on a plant, as a number in SI. Each knows the values that can be set by
 * hand, and how far a search may take it; both are common practice, no source.
 */
public sealed interface Setting {

  /** What there is to set, and in which unit of SI. */
  enum Kind {
    HEAD("°C"),
    FLOW_TEMPERATURE("°C"),
    CURVE_SLOPE("K/K"),
    CURVE_SHIFT("K"),
    START_LEAD("s"),
    LOCKSHIELD_TURNS("turns"),
    PUMP_HEAD("Pa"),
    THERMOSTAT_DIFFERENTIAL("K"),
    MOTOR_GAIN("1/K"),
    MOTOR_INTEGRAL_TIME("s");

    private final String unit;

    Kind(String unit) {
      this.unit = unit;
    }

    /** Its symbol. */
    public String unit() {
      return unit;
    }
  }

  /** What it is. */
  Kind kind();

  /** Room or place that it belongs to; empty for what the house has once. */
  default String where() {
    return "";
  }

  /** Position of the branch that it belongs to. */
  default int branch() {
    throw new IllegalStateException(kind() + " belongs to no branch");
  }

  /** Whether what is turned is the knob of a thermostatic valve. */
  default boolean turnsKnob(Plant plant) {
    return false;
  }

  /** With what it is tuned. */
  Group group();

  /** What it is set to. */
  double of(Plant plant);

  /** The plant with it set otherwise. */
  Plant with(Plant plant, double value);

  /**
   * The values that can be set by hand, ascending, as far as a search may go: in few decimals, so
   * that a file which holds one says the very same number.
   */
  double[] marks(Plant plant);

  /** A change that is worth a look, in marks: a search begins with it. */
  int stride(Plant plant);

  /** Lowest value that a search may take. */
  default double lowest(Plant plant) {
    return marks(plant)[0];
  }

  /** Highest value that a search may take. */
  default double highest(Plant plant) {
    double[] marks = marks(plant);
    return marks[marks.length - 1];
  }

  /** The nearest value that can be set by hand; of two as near, the lower. */
  default double settable(Plant plant, double value) {
    double[] marks = marks(plant);
    double nearest = marks[0];
    for (double mark : marks) {
      // A hair's breadth of rounding decides nothing.
      if (Math.abs(mark - value) < Math.abs(nearest - value) - 1e-9) {
        nearest = mark;
      }
    }
    return nearest;
  }

  /** Whether a value is one that can be set by hand. */
  default boolean onMark(Plant plant, double value) {
    return Math.abs(settable(plant, value) - value) < 1e-9;
  }

  /** Multiples of a step given in decimal digits, from one limit to the other. */
  private static double[] every(String step, double lowest, double highest) {
    BigDecimal by = new BigDecimal(step);
    long first = (long) Math.ceil(lowest / by.doubleValue() - 1e-9);
    long last = Math.max((long) Math.floor(highest / by.doubleValue() + 1e-9), first);
    return LongStream.rangeClosed(first, last)
        .mapToDouble(n -> by.multiply(BigDecimal.valueOf(n)).doubleValue())
        .toArray();
  }

  /** Set-point of a room's heads [°C]; several heads in a room move together. */
  record Head(String room) implements Setting {

    /** How far from want a head's set-point may be taken [K]. */
    private static final double REACH = 4;

    @Override
    public Kind kind() {
      return Kind.HEAD;
    }

    @Override
    public String where() {
      return room;
    }

    @Override
    public Group group() {
      return Group.KNOBS;
    }

    @Override
    public double of(Plant plant) {
      return plant.arrangement().branches().stream()
          .filter(b -> b.room().equals(room) && b.valve().hasHead())
          .mapToDouble(b -> b.valve().setPoint())
          .findFirst()
          .orElseThrow();
    }

    @Override
    public Plant with(Plant plant, double value) {
      double by = value - of(plant);
      return plant.withRoom(room, b -> b.valve().hasHead() ? b.withValve(b.valve().raised(by)) : b);
    }

    /**
     * Where the knob of a thermostatic valve has a number or one of three strokes between two; an
     * electric head is set in halves of a degree.
     */
    @Override
    public double[] marks(Plant plant) {
      double want = want(plant);
      double[] marks =
          turnsKnob(plant)
              ? KnobScale.marks(want - REACH, want + REACH)
              : every("0.5", want - REACH, want + REACH);
      return marks.length > 0 ? marks : new double[] {of(plant)};
    }

    @Override
    public int stride(Plant plant) {
      return turnsKnob(plant) ? 1 : 2;
    }

    @Override
    public boolean turnsKnob(Plant plant) {
      return plant.arrangement().branches().stream()
          .filter(b -> b.room().equals(room) && b.valve().hasHead())
          .allMatch(b -> b.valve().thermostatic());
    }

    private double want(Plant plant) {
      House house = plant.house();
      return house.rooms().get(house.roomIndex(room)).want().maximum();
    }
  }

  /** Flow temperature asked of the source, where no weather compensation sets it [°C]. */
  record FlowTemperature() implements Setting {

    @Override
    public Kind kind() {
      return Kind.FLOW_TEMPERATURE;
    }

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
    public double[] marks(Plant plant) {
      return every("1", 25, Math.min(80, plant.house().source().highestFlow()));
    }

    @Override
    public int stride(Plant plant) {
      return 4;
    }
  }

  /** Slope of the weather compensation [K/K]. */
  record CurveSlope() implements Setting {

    @Override
    public Kind kind() {
      return Kind.CURVE_SLOPE;
    }

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
    public double[] marks(Plant plant) {
      return every("0.05", 0.2, 3);
    }

    @Override
    public int stride(Plant plant) {
      return 4;
    }
  }

  /** Parallel shift of the weather compensation [K]. */
  record CurveShift() implements Setting {

    @Override
    public Kind kind() {
      return Kind.CURVE_SHIFT;
    }

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
    public double[] marks(Plant plant) {
      return every("1", -10, 20);
    }

    @Override
    public int stride(Plant plant) {
      return 3;
    }
  }

  /**
   * How long before each period heating begins [s]; a plant that has no such lead begins with it.
   */
  record StartLead() implements Setting {

    @Override
    public Kind kind() {
      return Kind.START_LEAD;
    }

    @Override
    public Group group() {
      return Group.PREHEAT;
    }

    @Override
    public double of(Plant plant) {
      return plant.house().control().optimumStart().lead();
    }

    @Override
    public Plant with(Plant plant, double value) {
      boolean always = plant.house().control().optimumStart() instanceof OptimumStart.Fixed;
      OptimumStart start =
          value > 0 || always ? new OptimumStart.Fixed(value) : new OptimumStart.None();
      return plant.with(plant.house().withOptimumStart(start));
    }

    @Override
    public double[] marks(Plant plant) {
      return every("300", 0, 4 * 3600.0);
    }

    @Override
    public int stride(Plant plant) {
      return 6;
    }
  }

  /**
   * Opening of the lockshield of a branch [turns].
   *
   * @param branch which
   * @param place what that branch is called
   */
  record LockshieldTurns(int branch, String place) implements Setting {

    /** Less than that blocks up and sets badly [turns]. */
    private static final double LEAST = 0.25;

    @Override
    public Kind kind() {
      return Kind.LOCKSHIELD_TURNS;
    }

    @Override
    public String where() {
      return place;
    }

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

    /** Eighths of a turn, beyond the first turn quarters, then halves, up to open. */
    @Override
    public double[] marks(Plant plant) {
      double open = plant.house().distribution().lockshields().open().turns();
      return DoubleStream.concat(
              Stream.of(every("0.125", LEAST, 1), every("0.25", 1.25, 2), every("0.5", 2.5, 20))
                  .flatMapToDouble(DoubleStream::of)
                  .filter(turns -> turns < open),
              DoubleStream.of(open))
          .toArray();
    }

    @Override
    public int stride(Plant plant) {
      return 2;
    }
  }

  /** Head that a pump of constant or proportional pressure is set to [Pa]. */
  record PumpHead() implements Setting {

    /** Least that a circulator can be set to: a metre of water [Pa]. */
    private static final double LEAST = 10_000;

    @Override
    public Kind kind() {
      return Kind.PUMP_HEAD;
    }

    @Override
    public Group group() {
      return Group.LOCKSHIELDS;
    }

    /** Whether a pump has a head to set. */
    static boolean settable(Pump pump) {
      return pump.setHead().isPresent();
    }

    @Override
    public double of(Plant plant) {
      return plant.house().distribution().pump().setHead().orElseThrow();
    }

    @Override
    public Plant with(Plant plant, double value) {
      Pump other = plant.house().distribution().pump().setTo(value);
      return plant.with(
          plant.house().withDistribution(plant.house().distribution().withPump(other)));
    }

    /** By half metres; what more than it is set to the pump could make, a scenario does not say. */
    @Override
    public double[] marks(Plant plant) {
      return every("5000", LEAST, Math.max(of(plant), LEAST));
    }

    @Override
    public int stride(Plant plant) {
      return 1;
    }
  }

  /** Switching differential of an on/off room thermostat [K]. */
  record ThermostatDifferential() implements Setting {

    @Override
    public Kind kind() {
      return Kind.THERMOSTAT_DIFFERENTIAL;
    }

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
    public double[] marks(Plant plant) {
      return every("0.1", 0.1, 2);
    }

    @Override
    public int stride(Plant plant) {
      return 3;
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
    public Kind kind() {
      return Kind.MOTOR_GAIN;
    }

    @Override
    public String where() {
      return room;
    }

    @Override
    public Group group() {
      return Group.GAINS;
    }

    @Override
    public double of(Plant plant) {
      return controller(plant, branch).gain();
    }

    @Override
    public Plant with(Plant plant, double value) {
      double integralTime = controller(plant, branch).integralTime();
      return plant.withBranch(
          branch,
          (Branch b) -> b.withValve(b.valve().tuned(new Valve.Controller(value, integralTime))));
    }

    static Valve.Controller controller(Plant plant, int branch) {
      return plant.arrangement().branches().get(branch).valve().controller().orElseThrow();
    }

    @Override
    public double[] marks(Plant plant) {
      return every("0.05", 0.05, 5);
    }

    @Override
    public int stride(Plant plant) {
      return 4;
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
    public Kind kind() {
      return Kind.MOTOR_INTEGRAL_TIME;
    }

    @Override
    public String where() {
      return room;
    }

    @Override
    public Group group() {
      return Group.GAINS;
    }

    @Override
    public double of(Plant plant) {
      return MotorGain.controller(plant, branch).integralTime();
    }

    @Override
    public Plant with(Plant plant, double value) {
      double gain = MotorGain.controller(plant, branch).gain();
      return plant.withBranch(
          branch, (Branch b) -> b.withValve(b.valve().tuned(new Valve.Controller(gain, value))));
    }

    @Override
    public double[] marks(Plant plant) {
      return every("300", 600, 6 * 3600.0);
    }

    @Override
    public int stride(Plant plant) {
      return 4;
    }
  }
}
