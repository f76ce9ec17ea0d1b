/**
 * Drawings: shapes and words as records, on a {@link settle.plots.drawing.Sketch} while they come
 * about, and written as vector graphics by {@link settle.plots.drawing.SvgWriter}. Nothing here
 * needs a screen, so that a page in a browser can draw them too.
 */
package settle.plots.drawing;
