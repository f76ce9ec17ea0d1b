/**
 * What results mean, in sentences: the verdict on a run, which of several settles better, the
 * cautions. Charts, report and terminal summary take their words from here, so that all say the
 * same.
 */
package settle.plots.words;
