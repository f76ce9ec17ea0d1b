/**
 * The commands: they read a scenario, have it run, and print or write what came out. Nothing here
 * computes.
 */
package settle.cli;
