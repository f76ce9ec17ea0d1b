package settle.sim.result;

import java.util.Arrays;

/**
 * The water's temperature along an emitter at one instant.
 *
 * @param branch which branch, by position in the arrangement
 * @param sinceCall time since the first call for heat [s]
 * @param position along the water's way, from the inlet [m] for a perimeter emitter, as a share of
 *     the way [-] for a radiator
 * @param temperature there [°C], same length
 */
public record Profile(int branch, double sinceCall, double[] position, double[] temperature) {

  /**
   * The way out, as far as the other end.
   *
   * @param tubes 2 where the water comes back the same way; else this profile is all way out
   */
  public Profile out(int tubes) {
    int points = tubes == 1 ? position.length : (position.length + 1) / 2;
    return new Profile(
        branch, sinceCall, Arrays.copyOf(position, points), Arrays.copyOf(temperature, points));
  }

  /** The way back of water that went out the same way, by how far from the connection it is. */
  public Profile back() {
    int from = (position.length - 1) / 2;
    double[] where = Arrays.copyOfRange(position, from, position.length);
    double end = position[position.length - 1];
    for (int i = 0; i < where.length; i++) {
      where[i] = end - where[i];
    }
    return new Profile(
        branch, sinceCall, where, Arrays.copyOfRange(temperature, from, temperature.length));
  }
}
