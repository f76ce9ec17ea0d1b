/**
 * The house at rest, solved and not run: where rooms, water and valves settle while weather, gains
 * and controls stay as they are; the flows that design weather asks for; the balance that brings
 * them.
 *
 * <p>{@link settle.sim.atrest.SettledHouse} chooses the flow temperature that controls and source
 * bring about; {@code RestSweep} finds rooms, emitters and flows on water of one temperature. Every
 * search ends in a {@link settle.sim.atrest.RestStatus}. {@link settle.sim.atrest.Balancing} sets
 * lockshields and pump for {@link settle.sim.atrest.DesignFlows}.
 */
package settle.sim.atrest;
