package settle.sim.demo;

/**
 * A figure that a demonstration shows, before and after.
 *
 * @param key name by which its sentence refers to it
 * @param words what it is, the beginning of a row in a table
 * @param reading what is read off the run
 * @param room which room it is about; empty for the house as a whole
 * @param emitter which of that room's emitters, counted from 0
 * @param drawn whether its course is drawn
 */
public record Figure(
    String key, String words, Reading reading, String room, int emitter, boolean drawn) {}
