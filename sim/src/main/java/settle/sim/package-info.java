/**
 * The physics of a heated house: what it is made of, how it is stepped, what is read off a run.
 *
 * <p>The way data takes: a house (immutable records) is compiled once into flat arrays, stepped,
 * and recorded as a trace; figures are read off the trace. SI units throughout, degrees Celsius for
 * temperatures, kelvin for differences.
 */
package settle.sim;
