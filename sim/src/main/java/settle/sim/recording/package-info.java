/** What a run writes down: columns of numbers, one row per step. */
package settle.sim.recording;
