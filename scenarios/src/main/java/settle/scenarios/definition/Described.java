package settle.scenarios.definition;

/**
 * What is said about a defined thing.
 *
 * @param name its name
 * @param about what it is, in a line; may be empty
 * @param source where its figures come from; may be empty
 */
public record Described(String name, String about, String source) {}
