/** What a house is made of and how it is heated, as its user wrote it down: immutable records. */
package settle.sim.house;
