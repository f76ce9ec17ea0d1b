/**
 * A scenario file as typed: from bytes to keys, lists and texts that know their line and column.
 * Everything that can be wrong with a file before anyone asks what it means is said here: no such
 * file, too large, not UTF-8, tabs, a key written twice, aliases that unfold without end. What the
 * keys mean is the business of {@link settle.scenarios.reading}.
 */
package settle.scenarios.document;
