/**
 * The pictures there are: each class makes of results what a chart or a drawing shows, and nothing
 * of how it looks. Nothing here needs a screen.
 */
package settle.plots.gallery;
