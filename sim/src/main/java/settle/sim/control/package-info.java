/** Programmes over time and how they act on the plant. */
package settle.sim.control;
