/** Where the house stands and what the weather does: keys, reader, and weather from files. */
package settle.scenarios.weather;
