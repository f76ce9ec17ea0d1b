/**
 * The teaching demonstrations that ship with the tool: an index of what each shows and says, and
 * one scenario text each, in which what differs before and after stands side by side.
 */
package settle.scenarios.demo;
