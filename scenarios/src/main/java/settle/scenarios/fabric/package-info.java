/** Materials, layers, constructions, glazing and doors: keys and types. */
package settle.scenarios.fabric;
