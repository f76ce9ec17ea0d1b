package settle.plots.words;

import settle.sim.demo.Reading;
import settle.sim.house.WaterProperties;

/**
 * How people read what a demonstration shows: unit, sensible digits, a few words.
 *
 * @param reading what is read
 * @param water the water in the house, by which flows are given in litres
 */
public record ReadingWords(Reading reading, WaterProperties water) {

  /** What it is measured in. */
  public Unit measure() {
    return switch (reading) {
      case ROOM_TEMPERATURE,
          HIGHEST_TEMPERATURE,
          LOWEST_TEMPERATURE,
          EMITTER_RETURN,
          FAR_END,
          RETURN ->
          Unit.CELSIUS;
      case SWING -> Unit.KELVIN;
      case WARM_UP -> Unit.MINUTES;
      case FLOW, LARGEST_FLOW, MAINS_FLOW -> Unit.LITRES_PER_HOUR;
      case OPENING, CALL, DEAD_END -> Unit.SHARE;
      case PRESSURE -> Unit.KILOPASCALS;
      case OUTPUT, PUMP_POWER -> Unit.WATTS;
      case SOURCE_HEAT -> Unit.KILOWATT_HOURS;
    };
  }

  /** Symbol of the number that {@link #scaled} gives. */
  public String unit() {
    return measure().symbol();
  }

  /** Unit of what its course is drawn in. */
  public String axisUnit() {
    return reading.ofRoom() ? "°C" : unit();
  }

  /** A value in SI, converted to its unit in a document. */
  public double written(double value) {
    return measure()
        .written(measure() == Unit.LITRES_PER_HOUR ? water.litresPerHour(value) : value);
  }

  /** A value in the trade's unit instead of SI, a share in per cent. */
  public double scaled(double value) {
    return measure() == Unit.SHARE ? 100 * value : written(value);
  }

  /** A value with its unit. */
  public String value(double value) {
    return switch (reading) {
      case WARM_UP -> Double.isNaN(value) ? "never" : Quantities.duration(value);
      case FLOW, LARGEST_FLOW, MAINS_FLOW, OUTPUT, OPENING, CALL, DEAD_END ->
          Quantities.number(scaled(value), 0) + " " + unit();
      default -> Quantities.number(scaled(value), 1) + " " + unit();
    };
  }

  /** How far two values are apart as they are printed, with the unit of a difference. */
  public String difference(double one, double other) {
    return switch (reading) {
      case ROOM_TEMPERATURE,
          HIGHEST_TEMPERATURE,
          LOWEST_TEMPERATURE,
          EMITTER_RETURN,
          FAR_END,
          RETURN ->
          Quantities.difference(Math.abs(tenths(one) - tenths(other)));
      default -> value(Math.abs(one - other));
    };
  }

  private static double tenths(double value) {
    return Math.rint(10 * value) / 10;
  }

  /** What a curve of it shows. */
  public static String course(Reading reading) {
    return switch (reading) {
      case ROOM_TEMPERATURE, HIGHEST_TEMPERATURE, LOWEST_TEMPERATURE, SWING, WARM_UP ->
          "room temperature";
      case FLOW, LARGEST_FLOW -> "flow of water";
      case OPENING -> "valve opening";
      case EMITTER_RETURN -> "return temperature";
      case FAR_END -> "surface at the far end";
      case OUTPUT -> "heat given";
      case PRESSURE -> "pressure across valve, emitter and lockshield";
      case RETURN -> "return temperature at the source";
      case MAINS_FLOW, DEAD_END -> "flow through the pump";
      case PUMP_POWER -> "electricity of the pump";
      case SOURCE_HEAT -> "heat from the source";
      case CALL -> "call for heat";
    };
  }

  /** The figure as it stands beside its curve. */
  public String beside(double value) {
    return switch (reading) {
      case HIGHEST_TEMPERATURE -> "up to " + value(value);
      case LOWEST_TEMPERATURE -> "down to " + value(value);
      case SWING -> "swings " + value(value);
      case WARM_UP -> Double.isNaN(value) ? "never warm" : value(value);
      case LARGEST_FLOW -> "at most " + value(value);
      default -> value(value);
    };
  }
}
