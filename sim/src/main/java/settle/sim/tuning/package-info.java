/**
 * Finds the settings of a plant that is built: knobs, weather compensation, start time,
 * lockshields, thermostat, gains of motor heads.
 *
 * <pre>
 *   Settings       what there is to set, each setting as finely as it can be set by hand
 *   StartValues    where the search begins, each with its reason: the house at rest, the least
 *                  weather compensation, a balance, a warm-up, SIMC on an identified step
 *   Trial          what a choice of settings is worth: a usual day lived through, and the coldest
 *                  weather with a Reserve for what is not quite known
 *   Search         the best settings by Commons Math, put on what can be set
 *   Flatness       how far each may be off before it costs 5 % more
 *   OverSpreads    how the settings fare in the houses it may be
 *   Tuning         all of it
 * </pre>
 *
 * <p>Nothing is random: the same house gives the same settings, on any number of threads.
 */
package settle.sim.tuning;
