/**
 * Finds the settings of a plant that is built: knobs, weather compensation, start time,
 * lockshields, thermostat, gains of motor heads.
 *
 * <pre>
 *   Settings       what there is to set, each setting with its marks
 *   Grid           every choice of them that can be set by hand
 *   StartValues    where to begin, each with its reason: the house at rest, the least weather
 *                  compensation, a balance, a warm-up, SIMC on an identified step
 *   Starts         several starts made of that
 *   Trial          what a choice is worth in money: a Spell of usual, mild and coldest weather lived
 *                  through, and the coldest with a Reserve for what is not quite known
 *   Tried          every choice that was tried, and the best of them
 *   Search         the best there is from several starts, by steps and half steps
 *   Flatness       how far each setting may be off before a day costs 5 % more
 *   OverSpreads    how the settings fare in the houses it may be
 *   Tuning         all of it
 * </pre>
 *
 * <p>Nothing is random: the same house gives the same settings, on any number of threads.
 */
package settle.sim.tuning;
