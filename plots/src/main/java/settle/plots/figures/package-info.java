/**
 * What commands answer, written once: figures with their names in a document, headings, units and
 * digits, and the studies that set them in order with words, lists and charts. Text, JSON and page
 * are made from studies and know neither physics nor commands. Compiled to JavaScript, too.
 */
package settle.plots.figures;
