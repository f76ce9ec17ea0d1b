/** The report on paper: one HTML file with everything in it. */
package settle.plots.report;
