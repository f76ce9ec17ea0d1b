/**
 * A scenario as typed: from text to keys, lists and texts that know their line and column.
 * Everything that can be wrong with a text before anyone asks what it means is said here: tabs, a
 * key written twice, aliases that unfold without end. What the keys mean is the business of {@link
 * settle.scenarios.format}.
 */
package settle.scenarios.document;
