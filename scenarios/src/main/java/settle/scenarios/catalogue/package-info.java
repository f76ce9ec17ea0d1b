/**
 * The built-in catalogue: data files in the scenario format's own keys ({@code catalogue/*.yaml}
 * among the resources), read as a scenario's own definitions are, and their list for people.
 */
package settle.scenarios.catalogue;
