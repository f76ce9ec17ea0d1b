/**
 * What is left at first fix: where each run lies along its walls, how it is cut, what it hangs on
 * and what is bought.
 */
package settle.sim.firstfix;
