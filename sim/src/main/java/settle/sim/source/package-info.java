/**
 * Where the heat comes from. {@link settle.sim.source.FlueGas} says what a gas boiler can give at
 * most and below which temperature its flue gas condenses.
 */
package settle.sim.source;
