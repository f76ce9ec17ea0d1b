/**
 * Commissioning day: what a thermometer should read on a house that is as it was designed, what it
 * would read with something wrong, and what is likely to be wrong where it reads otherwise.
 */
package settle.sim.commissioning;
