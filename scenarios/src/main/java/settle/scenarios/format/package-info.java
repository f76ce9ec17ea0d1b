/**
 * What keys, tables and values are: which keys stand where, what form their values take, their
 * limits and defaults. The keys themselves stand with their subjects; reader, JSON Schema and the
 * list of keys in a message all follow from the same tables ({@link
 * settle.scenarios.house.ScenarioFormat}), so that they cannot disagree.
 *
 * <p>{@link settle.scenarios.format.Section} is a part of a file read against its table; everything
 * wrong or doubtful goes to one {@link settle.scenarios.format.Findings}, and reading goes on with
 * a stand-in value, so that one pass finds all mistakes.
 */
package settle.scenarios.format;
