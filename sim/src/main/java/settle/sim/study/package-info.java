/**
 * Questions that take more than one run: comparing arrangements, estimating the numerical error.
 */
package settle.sim.study;
