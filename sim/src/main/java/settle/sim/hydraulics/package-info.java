/**
 * Water in tubes and valves: friction ({@link settle.sim.hydraulics.Friction}, Darcy-Weisbach with
 * Colebrook-White), the flow coefficient of valves ({@link settle.sim.hydraulics.FlowCoefficient})
 * and what a metre of tube holds ({@link settle.sim.hydraulics.Tube}).
 */
package settle.sim.hydraulics;
