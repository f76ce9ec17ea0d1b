package settle.sim.source;

import settle.sim.units.Range;

/**
 * A vessel of water between source and mains.
 *
 * @param placement how it is connected
 * @param volume [m³]
 * @param lossCoefficient heat lost to its surroundings [W/K]
 * @param surroundings their temperature [°C]
 * @param sourceFlow flow of the source's own pump [kg/s] where it stands parallel; ignored in
 *     series
 */
public record Buffer(
    Placement placement,
    double volume,
    double lossCoefficient,
    double surroundings,
    double sourceFlow) {

  /** How a buffer is connected. */
  public enum Placement {
    /** In series in the flow, fully mixed. */
    FLOW,
    /** In series in the return, fully mixed: a volumiser as it is usually fitted. */
    RETURN,
    /**
     * Between flow and return, source on one side with a pump of its own, mains on the other: two
     * halves, each mixed; what one side takes more than the other runs through it.
     */
    PARALLEL
  }

  public Buffer {
    Range.positive("volume of the buffer", volume, "m³");
    Range.notNegative("loss coefficient of the buffer", lossCoefficient, "W/K");
    Range.within("surroundings of the buffer", surroundings, -50, 60, "°C");
    if (placement == Placement.PARALLEL) {
      Range.positive("source flow past the buffer", sourceFlow, "kg/s");
    }
  }
}
