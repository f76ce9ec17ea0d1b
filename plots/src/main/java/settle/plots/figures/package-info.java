/**
 * Every figure of an answer, written once: its name in a document, its heading in a table, its unit
 * and how it is read. Text, JSON and page are made of these lists and know neither physics nor
 * studies. Compiled to JavaScript, too.
 */
package settle.plots.figures;
