/** How much skirting each room needs, and whether there is wall for it. */
package settle.sim.sizing;
