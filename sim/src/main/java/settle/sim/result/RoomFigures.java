package settle.sim.result;

import java.util.OptionalDouble;

/**
 * What a run says of one room.
 *
 * @param name the room
 * @param want day want-temperature [°C]: the highest of its programme
 * @param warmUp time from the first call for heat until the operative temperature first comes
 *     within tolerance of want [s]; empty if never
 * @param overshoot largest operative temperature above the want in force, after warm-up within its
 *     period [K]; 0 if never above
 * @param undershoot how far below the day want the room is when a set-back ends [K], largest; 0
 *     without set-back
 * @param lastDay where it has come to in the end
 * @param shortfall degree-hours below want less tolerance from the first call for heat on, the
 *     first warm-up counted [K h]
 * @param shortfallOnceWarm of it, what comes after the first warm-up [K h]; 0 if it never warms up
 * @param valveSwing peak-to-peak operative temperature over the last hour of the last day period
 *     [K]
 * @param heat what warmed it
 */
public record RoomFigures(
    String name,
    double want,
    OptionalDouble warmUp,
    double overshoot,
    double undershoot,
    LastDay lastDay,
    double shortfall,
    double shortfallOnceWarm,
    double valveSwing,
    Heat heat) {

  /**
   * What warms a room over the recording.
   *
   * @param rated rated output (75/65/20) of its emitters [W]
   * @param peak largest step-mean output of its emitters [W]
   * @param emitted heat given by its emitters [J]
   * @param piped heat given by the pipes that lie in it [J]
   */
  public record Heat(double rated, double peak, double emitted, double piped) {

    /** From emitters and pipes [J]. */
    public double whole() {
      return emitted + piped;
    }
  }

  /** Whether it has an emitter. */
  public boolean isHeated() {
    return heat.rated > 0;
  }

  /**
   * Want less where the room settles, or less its mean of the last day where it does not [K]: above
   * zero for a room below its want. Not a number if nothing is wanted that day.
   */
  public double droop() {
    return lastDay.wanted() ? want - lastDay.operative() : Double.NaN;
  }
}
