/** How warm people feel: ISO 7730. */
package settle.sim.comfort;
