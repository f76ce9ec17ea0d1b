/**
 * Units and ranges: the few conversions the physics needs, and the checks every parameter passes on
 * construction.
 */
package settle.sim.units;
