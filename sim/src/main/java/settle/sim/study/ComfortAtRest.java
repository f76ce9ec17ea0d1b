package settle.sim.study;

import settle.sim.comfort.Comfort;

/**
 * Comfort in a room that has settled in design weather, as controlled.
 *
 * @param room its name
 * @param comfort of people who sit in it
 */
public record ComfortAtRest(String room, Comfort comfort) {}
