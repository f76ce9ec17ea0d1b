package settle.sim.control;

import java.util.List;
import settle.sim.units.Range;

/**
 * Weather compensation: T_set = clamp(20 + shift + slope (20 - T_e) + influence (want - T_room)),
 * all in °C and K.
 *
 * @param slope rise of the flow temperature per kelvin that it is colder outdoors [K/K]
 * @param shift parallel shift [K]
 * @param lowest limit [°C]
 * @param highest limit [°C]
 * @param roomInfluence rise of the flow temperature per kelvin the reference room lacks [K/K]; 0
 *     for none
 */
public record FlowCurve(
    double slope, double shift, double lowest, double highest, double roomInfluence) {

  /** Outdoor and flow temperature at which every curve without shift begins [°C]. */
  public static final double FOOT = 20;

  public FlowCurve {
    Range.notNegative("slope of the weather compensation", slope, "K/K");
    Range.notNegative("room influence", roomInfluence, "K/K");
    if (!(lowest <= highest)) {
      throw new IllegalArgumentException(
          "lowest flow temperature " + lowest + " °C must not be above highest, " + highest);
    }
  }

  /** This curve with another slope [K/K]. */
  public FlowCurve withSlope(double other) {
    return new FlowCurve(other, shift, lowest, highest, roomInfluence);
  }

  /** This curve with another shift [K]. */
  public FlowCurve withShift(double other) {
    return new FlowCurve(slope, other, lowest, highest, roomInfluence);
  }

  /** Outdoor temperatures at which it meets its limits, the room at want [°C]. */
  public List<Double> bends() {
    return slope > 0
        ? List.of(FOOT - (highest - FOOT - shift) / slope, FOOT - (lowest - FOOT - shift) / slope)
        : List.of();
  }

  /**
   * Flow temperature asked for [°C].
   *
   * @param outdoor outdoor temperature [°C]
   * @param roomShort how far the reference room is below want [K]
   */
  public double setPoint(double outdoor, double roomShort) {
    double straight = FOOT + shift + slope * (FOOT - outdoor) + roomInfluence * roomShort;
    return Math.min(Math.max(straight, lowest), highest);
  }
}
