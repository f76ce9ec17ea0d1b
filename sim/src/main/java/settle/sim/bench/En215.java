package settle.sim.bench;

import java.util.Optional;

/**
 * Performance figures that EN 215 (thermostatic radiator valves, 2004 with A1:2006, and 2019)
 * limits. The standard itself was not at hand: names and limits are from memory, clause numbers are
 * not given for that reason.
 */
public enum En215 {
  /** C: closing against opening curve at nominal flow [K]; the limit also stands in trade text. */
  HYSTERESIS("C", 1.0),
  /** W: shift for water 30 K hotter [K]; limit for a head with its sensor built in. */
  WATER_TEMPERATURE("W", 1.5),
  /** D: shift from 10 kPa to the highest differential pressure, commonly 60 kPa [K]. */
  DIFFERENTIAL_PRESSURE("D", 1.0),
  /** Z: time to the stated share of the change after a jump [s]. */
  RESPONSE_TIME("Z", 2400),
  /** Shift with static pressure [K]: nothing in the model depends on static pressure. */
  STATIC_PRESSURE("", 1.0);

  private final String symbol;
  private final double limit;

  En215(String symbol, double limit) {
    this.symbol = symbol;
    this.limit = limit;
  }

  /** Its symbol; empty where none is known. */
  public String symbol() {
    return symbol;
  }

  /** The most allowed [K], the response time [s]. */
  public double limit() {
    return limit;
  }

  /**
   * A figure of a valve beside its limit.
   *
   * @param figure which
   * @param value as the rig read it [K] or [s]; empty where the model has nothing to read
   */
  public record Reading(En215 figure, Optional<Double> value) {

    /** Whether it was read and keeps the limit. */
    public boolean isWithin() {
      return value.isPresent() && value.get() <= figure.limit + 1e-9;
    }
  }
}
