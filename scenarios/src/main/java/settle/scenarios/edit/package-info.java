/**
 * Changes single values in the text of a scenario and leaves every other character as it was typed:
 * order, comments, spelling.
 */
package settle.scenarios.edit;
