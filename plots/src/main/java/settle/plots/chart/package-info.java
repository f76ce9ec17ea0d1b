/**
 * The charts. {@link settle.plots.chart.HouseTheme} says how all of them look; {@link
 * settle.plots.chart.Panel} draws one plot with its axes; each chart class only says which results
 * go where.
 */
package settle.plots.chart;
