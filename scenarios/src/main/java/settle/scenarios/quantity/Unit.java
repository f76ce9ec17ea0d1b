package settle.scenarios.quantity;

import java.util.List;

/**
 * One unit of a dimension.
 *
 * @param symbol as it is written in a scenario and printed, such as {@code W/m²K}; empty for a bare
 *     number
 * @param inSi one of it in SI units (temperatures: degrees Celsius)
 * @param otherSpellings what else it may be called
 */
public record Unit(String symbol, double inSi, List<String> otherSpellings) {}
