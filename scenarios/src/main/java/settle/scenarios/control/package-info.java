/** Thermostat, weather compensation, optimum start: keys and reader. */
package settle.scenarios.control;
