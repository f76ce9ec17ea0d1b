package settle.sim.tuning;

/**
 * One thing that can be set on a plant, as a number in SI. Each knows the values that can be set by
 * hand, and how far a search may take it; both are common practice, no source.
 */
public interface Setting {

  /** What there is to set. */
  enum Kind {
    HEAD(Group.KNOBS, "°C", 2),
    FLOW_TEMPERATURE(Group.CURVE, "°C", 4),
    CURVE_SLOPE(Group.CURVE, "K/K", 4),
    CURVE_SHIFT(Group.CURVE, "K", 3),
    START_LEAD(Group.PREHEAT, "s", 6),
    LOCKSHIELD_TURNS(Group.LOCKSHIELDS, "turns", 2),
    PUMP_HEAD(Group.LOCKSHIELDS, "Pa", 1),
    THERMOSTAT_DIFFERENTIAL(Group.THERMOSTAT, "K", 3),
    MOTOR_GAIN(Group.GAINS, "1/K", 4),
    MOTOR_INTEGRAL_TIME(Group.GAINS, "s", 4);

    private final Group group;
    private final String unit;
    private final int stride;

    Kind(Group group, String unit, int stride) {
      this.group = group;
      this.unit = unit;
      this.stride = stride;
    }

    /** Symbol of its unit, one of SI. */
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
  default Group group() {
    return kind().group;
  }

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
  default int stride(Plant plant) {
    return kind().stride;
  }

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
}
