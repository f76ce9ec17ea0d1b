/**
 * What the program costs in a browser's engine. Not part of the check: run by hand, with {@code mvn
 * -q -Dquick -Pweb,bench -pl plots/web -am verify -DskipTests}.
 *
 * <p>{@link settle.web.benchmark.WebCases} is compiled to WebAssembly and to JavaScript; {@link
 * settle.web.benchmark.WebBenchmark} has node run both and runs the same classes itself, by turns.
 */
package settle.web.benchmark;
