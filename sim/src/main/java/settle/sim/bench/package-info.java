/**
 * A virtual test rig for the valves of a house.
 *
 * <p>First the valve alone: {@link settle.sim.bench.TestRig} holds pressure and water and moves the
 * temperature at its head, as EN 215 does; what is read off are flows, never the valve's declared
 * figures ({@link settle.sim.bench.HysteresisLoop}, {@link settle.sim.bench.StepResponse}, held
 * against {@link settle.sim.bench.En215}). Then the valve in its branch, the network solved ({@link
 * settle.sim.bench.InBranch}); against the load of its room ({@link settle.sim.bench.LoadLine});
 * and in that room while something changes ({@link settle.sim.bench.RoomTest}). {@link
 * settle.sim.bench.ValveBench} does them one after the other.
 */
package settle.sim.bench;
