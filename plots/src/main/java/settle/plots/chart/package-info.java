/**
 * What a chart is: {@link settle.plots.chart.Chart} and the panels, axes and {@link
 * settle.plots.chart.Mark marks} it consists of, as data in the units of its axes. {@link
 * settle.plots.chart.ChartDrawing} draws all of them. Nothing here needs a screen, so that a page
 * in a browser can draw them too.
 */
package settle.plots.chart;
