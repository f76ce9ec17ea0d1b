/**
 * From the keys of a scenario to the records of {@link settle.sim.house.House}, section by section:
 * site and weather, rooms, arrangements, plant and run. What is left out takes its default here,
 * and checks that need more than one key are made here.
 */
package settle.scenarios.house;
