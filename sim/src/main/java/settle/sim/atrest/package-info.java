/**
 * The house at rest, solved and not run: where rooms, water and valves settle while weather, gains
 * and controls stay as they are; the flows that design weather asks for; the balance that brings
 * them.
 *
 * <p>{@link settle.sim.atrest.SettledHouse} answers; {@code RestSweep} finds rooms, emitters and
 * flows on water of one temperature, {@code FlowAtRest} and {@code ControlsAtRest} choose that
 * temperature, or the share of the time in which the water has it, {@code RangeAtRest} says how far
 * rooms may be from what was found. Every search ends in a {@link settle.sim.atrest.RestStatus}.
 * {@link settle.sim.atrest.Balancing} sets lockshields and pump for {@link
 * settle.sim.atrest.DesignFlows}.
 */
package settle.sim.atrest;
