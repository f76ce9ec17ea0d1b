/** What was read on commissioning day: a table as a spreadsheet writes it. */
package settle.scenarios.readings;
