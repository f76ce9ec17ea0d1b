/**
 * What a run looks like outside: the summary in words, the JSON document, the table of traces.
 * Figures arrive in SI units and leave in those of the trade; nothing is computed here beyond that
 * and the difference of two figures.
 */
package settle.cli.output;
