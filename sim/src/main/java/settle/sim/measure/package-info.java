/**
 * What can be changed about a house that is not warm enough, each as a value that is printed,
 * written and run alike: whatever is concluded of a {@link settle.sim.measure.Measure} was found of
 * the very house that {@link settle.sim.measure.Measure#on} gives.
 */
package settle.sim.measure;
