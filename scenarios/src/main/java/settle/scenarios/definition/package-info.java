/**
 * Things described once and used by name, whatever they are: what is said of each, where it stands,
 * and how it is found. The catalogue and a scenario describe them in the same keys.
 */
package settle.scenarios.definition;
