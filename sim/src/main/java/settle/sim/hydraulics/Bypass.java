package settle.sim.hydraulics;

import settle.sim.units.Range;

/**
 * An automatic (differential pressure) bypass between flow and return: shut up to its set pressure,
 * from there opening in proportion, fully open a band above.
 *
 * @param fedFrom name of the mains at whose end it sits; null at the source
 * @param setPressure differential pressure at which it begins to open [Pa]
 * @param band from there to fully open [Pa]
 * @param kv flow coefficient fully open [m³/h at 1 bar]
 */
public record Bypass(String fedFrom, double setPressure, double band, double kv) {

  public Bypass {
    Range.positive("set pressure of the bypass", setPressure, "Pa");
    Range.positive("band of the bypass", band, "Pa");
    Range.positive("Kv of the bypass", kv, "m³/h");
  }
}
