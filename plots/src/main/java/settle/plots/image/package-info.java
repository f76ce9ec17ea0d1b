/** Pictures as files of pixels, and all that needs Java's own graphics. */
package settle.plots.image;
