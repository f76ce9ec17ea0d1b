/** Figures read off a run: the definition of everything that is reported. */
package settle.sim.result;
