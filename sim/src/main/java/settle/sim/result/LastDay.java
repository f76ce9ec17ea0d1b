package settle.sim.result;

/**
 * Where a room has come to when a run ends.
 *
 * <p>It settles only where the run shows it: at no instant of the last day is it further than
 * {@link #AGREEMENT} from where the house rests by solving for that day's mean weather, heads
 * standing anywhere in their play, nor further than that from its own mean. In weather, gains and
 * wants that stay as they are all day, the last {@link #LONG_ENOUGH} decide, so that a run of one
 * day from cold may end at rest. A day whose weather or set-back moves the room further has no
 * settled temperature, and neither has a room that a thermostat or an actuator swings: its mean and
 * range stand instead, over the time in which its day value is wanted, from its first warmth on.
 *
 * @param settles whether it settles
 * @param wanted whether its day value is wanted at all within the time looked at
 * @param operative mean operative temperature over the time looked at [°C]: where it settles, if it
 *     does
 * @param air mean air temperature likewise [°C]
 * @param least lowest operative temperature within it [°C]
 * @param most highest [°C]
 * @param drift where nothing changes from outside and it does not settle: how much warmer it is
 *     over the second half of {@link #LONG_ENOUGH} than over the first [K]; 0 otherwise
 * @param emitterHeat mean output of its emitters over it [W]
 * @param pipeHeat mean heat from pipes in the room over it [W]
 */
public record LastDay(
    boolean settles,
    boolean wanted,
    double operative,
    double air,
    double least,
    double most,
    double drift,
    double emitterHeat,
    double pipeHeat) {

  /** How far a run may be from the house at rest and still be said to settle [K]. */
  public static final double AGREEMENT = 0.1;

  /**
   * How long that must last where nothing changes from outside [s]: longer than any cycle of source
   * or thermostat.
   */
  static final double LONG_ENOUGH = 6 * 3600.0;

  /** Whether it was still on its way when the run ended. */
  public boolean drifts() {
    return Math.abs(drift) > AGREEMENT;
  }

  /** Share of the room's heat over this time that came from pipes [-]; 0 where none came at all. */
  public double pipeShare() {
    double all = emitterHeat + pipeHeat;
    return all > 0 ? pipeHeat / all : 0;
  }
}
