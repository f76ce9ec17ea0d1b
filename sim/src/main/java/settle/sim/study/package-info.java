/**
 * Questions beyond a single run: what an arrangement holds at rest and what would let it, how
 * likely that is with all that is uncertain, how soon rooms are warm, what a season takes, whether
 * heat pump or boiler fit, how comfortable it is; whether arrangements are a fair pair; how large
 * the numerical error is.
 *
 * <p>A study that settles or runs many houses is handed the executor that does so.
 */
package settle.sim.study;
