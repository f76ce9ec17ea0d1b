/**
 * Questions beyond a single run: whether arrangements are a fair pair, estimating the numerical
 * error.
 */
package settle.sim.study;
