/**
 * What results mean, in sentences: the verdict on a run, which of several settles better, the
 * cautions. Studies and charts take their words from here, so that they agree.
 */
package settle.plots.words;
