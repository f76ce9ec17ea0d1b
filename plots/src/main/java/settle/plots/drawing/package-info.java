/** A drawing that is made once and written both as vector graphics with real text and as pixels. */
package settle.plots.drawing;
