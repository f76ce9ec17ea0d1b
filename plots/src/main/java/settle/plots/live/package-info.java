/**
 * A page that answers by itself: one HTML file that holds engine, scenario and everything else it
 * needs, opened from a disk without a network. Nothing here runs in a browser; it puts together
 * what does.
 */
package settle.plots.live;
