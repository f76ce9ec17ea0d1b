/**
 * What heats the room: emission from a heated path, and what a plain heated face can give at most.
 *
 * <p>Water moves along a path of length L with heat capacity per metre C' (water and metal at one
 * temperature):
 *
 * <pre>
 *   C' dT/dt + m c dT/dx = - K' max(T - Tref, 0)^n
 * </pre>
 *
 * <p>{@link settle.sim.emitter.EmissionLaw} holds the calibration of K' at the rating point of EN
 * 442 and the exact solutions of that equation (steady along the path, and standing still in time).
 * {@link settle.sim.emitter.PlainPlate} says what natural convection and radiation from a plain
 * face or a bare tube amount to, for judging a declared output; {@link settle.sim.emitter.Air}
 * holds the air properties it needs.
 */
package settle.sim.emitter;
