/**
 * What a run costs, beside a general integrator on the same continuous model. Not part of the
 * check: run by hand, on one thread, with {@code mvn -q -pl sim -Pbench verify -DskipTests}.
 *
 * <p>{@link settle.sim.benchmark.BenchmarkTable} finds how far engine and integrator are from a tight
 * solution, loosens the integrator until it is no better than the engine, measures both with JMH,
 * case by case, and prints one table.
 */
package settle.sim.benchmark;
