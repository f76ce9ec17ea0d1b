/**
 * What throttles a branch: thermostatic valves, on/off actuators, motor heads, fixed openings.
 *
 * <p>The head of a thermostatic valve:
 *
 * <pre>
 *   lag       tau dT_b/dt = T_sense - T_b
 *   sensing   T_sense = T_loc + b (T_water - 50 °C) + bias
 *   play      u stays within w/2 of T_b
 *   capacity  K_v = clamp(K_v,nom (T_set + X_p - u)/X_p, 0, K_vs)
 * </pre>
 *
 * <p>Terms and limits of thermostatic valves are those of EN 215, their laws in {@link
 * settle.sim.valve.CapacityCurve}. {@link settle.sim.valve.ValveStepper} steps the valves of a
 * house, one drive a valve: wax, actuator or motor.
 */
package settle.sim.valve;
