package settle.sim.result;

/**
 * The water's temperature along an emitter at one instant.
 *
 * @param branch which branch, by position in the arrangement
 * @param sinceCall time since the first call for heat [s]
 * @param position along the heated path, from the inlet [m] for a perimeter emitter, as a share of
 *     the way [-] for a radiator
 * @param temperature there [°C], same length
 */
public record Profile(int branch, double sinceCall, double[] position, double[] temperature) {}
