/** Valves: keys, types and what is doubtful about where they are set. */
package settle.scenarios.valve;
