/** A survey of a house, one row a room, and the scenario that is made of it. */
package settle.scenarios.survey;
