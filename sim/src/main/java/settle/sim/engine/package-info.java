/**
 * How a prepared house is run: one step after another, short after a switch, long in between.
 *
 * <p>{@link settle.sim.engine.HouseRun} owns the parts of a house and lets them go on by what
 * {@link settle.sim.engine.StepTrial} found to agree; {@link settle.sim.engine.Conditions} are what
 * weather, gains and programmes give, {@link settle.sim.engine.CallForHeat} what the controls make
 * of it. {@link settle.sim.engine.Simulation} runs a house and has its figures read; {@link
 * settle.sim.engine.HeldRun} runs it in weather that stays as it is until it rests or repeats.
 *
 * <table>
 * <caption>Stages of a step, and what each costs and assumes</caption>
 * <tr><td>call for heat</td><td>decided on what was seen at the step's start</td></tr>
 * <tr><td>heads, flows</td><td>openings the heads are about to take, then the flow of each branch</td></tr>
 * <tr><td>source, emitters</td><td>brought into agreement by the secant method, each tried from its accepted state</td></tr>
 * <tr><td>links between rooms</td><td>implicit in their mean temperatures</td></tr>
 * <tr><td>heads again</td><td>with what they really felt; where the opening comes out otherwise, once more from the flows</td></tr>
 * <tr><td>rooms</td><td>exact for heats held at their mean</td></tr>
 * </table>
 */
package settle.sim.engine;
