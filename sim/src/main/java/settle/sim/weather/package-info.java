/** Outdoor temperature and sun over time, with exact means over a step. */
package settle.sim.weather;
