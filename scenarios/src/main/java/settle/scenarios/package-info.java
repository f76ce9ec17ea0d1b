/**
 * The scenario format: {@link settle.scenarios.ScenarioReader} turns a text into a {@link
 * settle.sim.house.House}, or says what is wrong with it.
 *
 * <p>The way a scenario takes, one package each: from a file, where it stands in one ({@link
 * settle.scenarios.file}); text to keys and texts with positions ({@link
 * settle.scenarios.document}); texts to quantities ({@link settle.scenarios.quantity}); keys held
 * against tables ({@link settle.scenarios.format}); names to the things they stand for ({@link
 * settle.scenarios.definition}, {@link settle.scenarios.catalogue}).
 *
 * <p>What the format says of one subject, its keys, its reader and its doubts, stands in one
 * package: {@link settle.scenarios.fabric}, {@link settle.scenarios.room}, {@link
 * settle.scenarios.emitter}, {@link settle.scenarios.valve}, {@link settle.scenarios.pipes}, {@link
 * settle.scenarios.source}, {@link settle.scenarios.control}, {@link settle.scenarios.weather}; all
 * of it together is {@link settle.scenarios.house}.
 */
package settle.scenarios;
