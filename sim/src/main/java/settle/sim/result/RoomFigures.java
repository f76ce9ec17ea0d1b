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
 * @param droop settled operative temperature less want [K]
 * @param settledOperative operative temperature at which the room settles, outdoors held at the
 *     last day's mean [°C]
 * @param settledAir air temperature there [°C]
 * @param shortfall degree-hours below want less tolerance, after the first warm-up or, if it never
 *     warmed up, from the first call [K h]
 * @param valveSwing peak-to-peak operative temperature over the last hour of the last day period
 *     [K]
 * @param emitterPeak largest step-mean output of its emitters [W]
 * @param heat heat given by its emitters over the recording [J]
 * @param ratedOutput rated output (75/65/20) of its emitters [W]
 */
public record RoomFigures(
    String name,
    double want,
    OptionalDouble warmUp,
    double overshoot,
    double undershoot,
    double droop,
    double settledOperative,
    double settledAir,
    double shortfall,
    double valveSwing,
    double emitterPeak,
    double heat,
    double ratedOutput) {}
