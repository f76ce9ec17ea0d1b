/**
 * How answers are printed: a study as text and as a JSON document, the table of traces, lists.
 * Figures arrive in SI units and leave in those of the trade; nothing is computed here beyond that
 * and the difference of two figures.
 */
package settle.cli.output;
