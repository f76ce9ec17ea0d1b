/**
 * The scenario format: {@link settle.scenarios.ScenarioReader} turns a text into a {@link
 * settle.sim.house.House}, or says what is wrong with it.
 *
 * <p>The way a scenario takes, one package each: from a file, where it stands in one ({@link
 * settle.scenarios.file}); text to keys and texts with positions ({@link
 * settle.scenarios.document}); texts to quantities ({@link settle.scenarios.quantity}); keys held
 * against the tables of the format ({@link settle.scenarios.format}); names to the things they
 * stand for ({@link settle.scenarios.catalogue}); all of it to the house ({@link
 * settle.scenarios.house}).
 */
package settle.scenarios;
