/**
 * Heat through walls, floors and ceilings: layers, the steady U-value (ISO 6946) and the exact
 * answer of a layered element to a sine (ISO 13786), which is also what the stepped fabric is held
 * against.
 *
 * <p>Layers are always listed from inside to outside.
 */
package settle.sim.fabric;
