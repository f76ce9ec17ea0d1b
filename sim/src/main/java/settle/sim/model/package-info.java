/** A house with one of its arrangements as run and rest need it: names turned into positions. */
package settle.sim.model;
