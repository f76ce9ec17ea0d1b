/**
 * What runs, answers and commands cost, in processor time: beside an earlier build, and runs of
 * rooms on an ideal source beside a general integrator on the same continuous model. Not part of
 * the check: run by hand, with {@code mvn -q -Dquick -Pbench -pl cli -am verify -DskipTests}.
 *
 * <p>{@link settle.cli.benchmark.BenchmarkTable} measures case by case, both builds by turns, each
 * in a virtual machine of its own, and prints tables that go into DEVELOPERS.md as they are.
 */
package settle.cli.benchmark;
