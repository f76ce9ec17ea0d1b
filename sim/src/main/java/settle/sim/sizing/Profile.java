package settle.sim.sizing;

import settle.sim.emitter.Emitter;

/**
 * A profile of skirting that may be cut to any length.
 *
 * @param name what it is called
 * @param cut cuts it
 */
public record Profile(String name, Cut cut) {

  /** Cuts a profile. */
  @FunctionalInterface
  public interface Cut {

    /**
     * A run of it.
     *
     * @param length [m], > 0
     * @param like the emitter whose place it takes: along the same walls
     */
    Emitter of(double length, Emitter like);
  }

  /** Its output at 75/65/20 [W/m]. */
  public double outputPerMetre(Emitter like) {
    return cut.of(1, like).ratedOutput();
  }
}
