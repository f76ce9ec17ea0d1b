package settle.scenarios.finding;

/**
 * A value the scenario left out.
 *
 * @param where the section, such as {@code rooms / kitchen}; several names where all took the same
 * @param key the key left out
 * @param value the value taken, with its unit
 * @param reason its source, or that it is common practice
 */
public record DefaultUsed(String where, String key, String value, String reason) {}
