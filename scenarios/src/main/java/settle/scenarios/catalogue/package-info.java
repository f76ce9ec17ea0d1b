/**
 * Things described once and used by name: materials, constructions, glazing, emitters, pipes,
 * valves, boilers. The built-in catalogue is data files in the scenario format's own keys ({@code
 * catalogue/*.yaml} among the resources), read by the same {@link
 * settle.scenarios.catalogue.DefinitionsReader} that reads a scenario's own definitions.
 */
package settle.scenarios.catalogue;
