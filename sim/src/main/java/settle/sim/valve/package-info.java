/**
 * Thermostatic valves: lag, sensing, play and capacity curve.
 *
 * <pre>
 *   lag       tau dT_b/dt = T_sense - T_b
 *   sensing   T_sense = T_loc + b (T_water - 50 °C) + bias
 *   play      u stays within w/2 of T_b
 *   capacity  K_v = clamp(K_v,nom (T_set + X_p - u)/X_p, 0, K_vs)
 * </pre>
 *
 * <p>Terms and limits are those of EN 215. {@link settle.sim.valve.CapacityCurve} holds the laws,
 * {@link settle.sim.valve.ValveStepper} steps the valves of a house.
 */
package settle.sim.valve;
