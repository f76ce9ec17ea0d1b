/**
 * Where the heat comes from.
 *
 * <p>{@link settle.sim.source.Source} says what a source is, {@link
 * settle.sim.source.SourceStepper} how it is stepped. Boiler and heat pump are one mixed node of
 * water and metal whose controller modulates, {@link settle.sim.source.ControlledWater}; they
 * differ in when they start and stop and in what heat costs. {@link
 * settle.sim.source.BufferedSource} puts a vessel between any of them and the mains; {@link
 * settle.sim.source.WaterNeeded} says how much water would be enough. {@link
 * settle.sim.source.FlueGas} says what a gas boiler can give at most and below which temperature
 * its flue gas condenses.
 */
package settle.sim.source;
