/**
 * Rooms, their walls and their programmes: keys and reader, and where emitters go along the walls.
 */
package settle.scenarios.room;
