/**
 * What reading a scenario has to say besides the house itself: problems, doubts, and the defaults
 * that were used.
 */
package settle.scenarios.finding;
