/**
 * The validation table: what the code gives against what is known from elsewhere.
 *
 * <p>A {@link settle.sim.validation.Row} states a claim, its source, what is expected and how far
 * off the code may be, and why. {@link settle.sim.validation.RowGroup}s hold the rows of one
 * subject; {@link settle.sim.validation.ValidationTest} asserts every row of every group and
 * renders them all to {@code sim/VALIDATION.md}. Tables of figures are files under {@code
 * src/test/resources/validation} with their provenance on top ({@link
 * settle.sim.validation.DataFile}).
 *
 * <p>To add a row, add one statement to a group:
 *
 * <pre>
 *   Row.claim("Two valves in series")
 *       .source(Source.IEC_60534, "definition of Kv")
 *       .kind(Kind.COMPUTED)
 *       .given("Kv 0.5 and 0.8")
 *       .expects(0.42400, "m3/h", Tolerance.absolute(1e-5, "printed digits"))
 *       .codeGives(() -&gt; FlowCoefficient.series(0.5, 0.8))
 * </pre>
 *
 * <p>then rewrite the table with {@code mvn -pl sim test -Dvalidation.write=true} and read the
 * difference before committing it.
 */
package settle.sim.validation;
