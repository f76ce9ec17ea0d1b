package settle.scenarios.quantity;

/**
 * One unit of a dimension.
 *
 * @param symbol as it is written in a scenario and printed, such as {@code W/m²K}; empty for a bare
 *     number
 * @param inSi one of it in SI units (temperatures: degrees Celsius)
 */
public record Unit(String symbol, double inSi) {}
