/**
 * Quantities with units as the trade writes them: {@code 18 m²}, {@code 0.8 /h}, {@code 130 W/m}. A
 * closed list of dimensions, each with its units; the only place where a unit of a scenario becomes
 * SI and back.
 */
package settle.scenarios.quantity;
