/**
 * Boilers, heat pumps and ideal sources, and the vessel beside them: keys, types, reader and
 * doubts.
 */
package settle.scenarios.source;
