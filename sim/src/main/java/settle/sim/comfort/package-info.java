/**
 * How warm people feel, by ISO 7730: predicted mean vote and share of dissatisfied, operative
 * temperature, draught rating.
 *
 * <p>The model takes a room as one temperature of air and one of radiation, those of its middle,
 * and a body as a whole. It can tell how rooms of other operative temperature, or of other shares
 * of air and radiation, compare. Of warmth at the foot of a wall it can say nothing: warm or cold
 * feet, the rise of the air temperature with height, a warm strip on one side and a cold window on
 * the other, the down-draught that a strip under it meets. For those the standard has criteria of
 * its own (clause 6), which need temperatures place by place, and the rooms here have none. An
 * emitter along the walls may be more comfortable than its figure, or less.
 */
package settle.sim.comfort;
