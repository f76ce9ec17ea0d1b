package settle.scenarios.edit;

/**
 * One number of a scenario that can be moved by hand while its answer is watched.
 *
 * @param kind what it is
 * @param arrangement name of the arrangement that it belongs to; empty for what the house has once
 * @param room name of the room that it belongs to; empty for what the house has once
 * @param branch position of the branch in its arrangement; -1 where it belongs to none
 * @param label what it is called within its room or house
 * @param value what the scenario says now, in the unit of {@link Kind#unit()}
 * @param least lowest value that can be set by hand
 * @param most highest
 */
public record Lever(
    Kind kind,
    String arrangement,
    String room,
    int branch,
    String label,
    double value,
    double least,
    double most) {

  /** What there is to move. */
  public enum Kind {
    OUTDOOR("°C", 1, 0.5),
    FLOW_TEMPERATURE("°C", 1, 1),
    CURVE_SLOPE("", 1, 0.05),
    CURVE_SHIFT("K", 1, 0.5),
    PUMP_HEAD("kPa", 1000, 1),
    WANT("°C", 1, 0.5),
    HEAD("°C", 1, 0.5),
    LOCKSHIELD_TURNS("turns", 1, 0.125),
    LENGTH("m", 1, 0.1);

    private final String unit;
    private final double inSi;
    private final double step;

    Kind(String unit, double inSi, double step) {
      this.unit = unit;
      this.inSi = inSi;
      this.step = step;
    }

    /** Symbol of its unit; empty for a bare number. */
    public String unit() {
      return unit;
    }

    /** From one value to the next, in its unit. */
    public double step() {
      return step;
    }

    double toSi(double value) {
      return value * inSi;
    }

    double fromSi(double si) {
      return si / inSi;
    }
  }

  /** By what it is known, as long as rooms, arrangements and their order stay. */
  public String id() {
    return kind.name() + "/" + branch + "/" + arrangement + "/" + room;
  }
}
