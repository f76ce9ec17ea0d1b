package settle.sim.demo;

/**
 * A value of the scenario that is one thing before and another after.
 *
 * @param key name of the scenario's key
 * @param where the keys that lead to it
 * @param before its value before, as written; empty if it is not written
 * @param after its value after, likewise
 */
public record Change(String key, String where, String before, String after) {}
