/**
 * Water as a substance: liquid properties for heating systems ({@link settle.sim.water.Water}) and
 * the saturation line ({@link settle.sim.water.Saturation}).
 */
package settle.sim.water;
