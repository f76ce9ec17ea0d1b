/**
 * Teaching demonstrations: two runs of houses that differ in one thing, and the figures that show
 * what it does. What a demonstration shows is data; nothing here knows any one of them.
 */
package settle.sim.demo;
