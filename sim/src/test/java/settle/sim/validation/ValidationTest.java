package settle.sim.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Asserts every row of the validation table and keeps {@code sim/VALIDATION.md} true. Run with
 * {@code -Dvalidation.write=true} to rewrite that file.
 */
class ValidationTest {

  private static final List<RowGroup> GROUPS =
      List.of(
          new EmitterRows(),
          new PlainFaceRows(),
          new FabricRows(),
          new WaterRows(),
          new HydraulicsRows(),
          new NetworkRows(),
          new FlueGasRows(),
          new ReferenceSolutionRows(),
          new SteppedFabricRows(),
          new SteppedRoomRows(),
          new SteppedEmitterRows(),
          new ValveRows(),
          new BenchRows(),
          new ControlRows(),
          new ReheatRows(),
          new BoilerRows(),
          new HeatPumpRows(),
          new BufferRows(),
          new SeasonRows(),
          new WeatherRows(),
          new ComfortRows(),
          new OddsRows(),
          new TuningRows());

  private static final Map<RowGroup, List<Row>> ROWS = rowsOf(GROUPS);

  private static Map<RowGroup, List<Row>> rowsOf(List<RowGroup> groups) {
    Map<RowGroup, List<Row>> rows = new LinkedHashMap<>();
    for (RowGroup group : groups) {
      rows.put(group, group.rows());
    }
    return rows;
  }

  @TestFactory
  Stream<DynamicNode> everyRowHolds() {
    return GROUPS.stream()
        .map(
            group ->
                dynamicContainer(
                    group.title(),
                    ROWS.get(group).stream()
                        .map(
                            row ->
                                dynamicTest(
                                    row.claim() + ", " + row.inputs(),
                                    () -> assertThat(row.holds()).as(row.toString()).isTrue()))));
  }

  @Test
  void everyExpectedColumnOfEveryDataFileIsAsserted() throws IOException, URISyntaxException {
    try (Stream<Path> files =
        Files.list(Path.of(ValidationTest.class.getResource("/validation").toURI()))) {
      assertThat(files.map(file -> file.getFileName().toString()))
          .containsExactlyInAnyOrderElementsOf(DataFile.filesRead());
    }
    assertThat(DataFile.unasserted()).isEmpty();
  }

  @Test
  void everyGroupIsListed() throws IOException, URISyntaxException {
    try (Stream<Path> classes =
        Files.list(Path.of(ValidationTest.class.getResource(".").toURI()))) {
      assertThat(
              classes
                  .map(file -> file.getFileName().toString())
                  .filter(name -> name.endsWith("Rows.class")))
          .containsExactlyInAnyOrderElementsOf(
              GROUPS.stream().map(group -> group.getClass().getSimpleName() + ".class").toList());
    }
  }

  @Test
  void everySourceIsUsed() {
    Map<Source, Integer> count = rowsBySource();
    assertThat(count.keySet()).containsExactly(Source.values());
  }

  @Test
  void theCheckedInTableIsCurrent() throws IOException {
    Path file = Path.of(System.getProperty("basedir", "."), "VALIDATION.md");
    String table = render();
    if (Boolean.getBoolean("validation.write")) {
      Files.writeString(file, table);
    }
    assertThat(Files.readString(file))
        .as("rewrite it with: mvn -pl sim test -Dvalidation.write=true")
        .isEqualTo(table);
  }

  private static Map<Source, Integer> rowsBySource() {
    Map<Source, Integer> count = new EnumMap<>(Source.class);
    ROWS.values().forEach(rows -> rows.forEach(row -> count.merge(row.source(), 1, Integer::sum)));
    return count;
  }

  private static String render() {
    Map<Source, Integer> bySource = rowsBySource();
    Map<Kind, Integer> byKind = new EnumMap<>(Kind.class);
    ROWS.values().forEach(rows -> rows.forEach(row -> byKind.merge(row.kind(), 1, Integer::sum)));
    List<String> lines = new ArrayList<>();
    lines.add("# Validation");
    lines.add("");
    lines.add(
        "What the code gives against what is known from elsewhere. Written by the build from the rows that it asserts;");
    lines.add(
        "`mvn verify` fails when a row does not hold or when this file is out of date. To rewrite it:");
    lines.add("`mvn -pl sim test -Dvalidation.write=true`.");
    lines.add("");
    int total = bySource.values().stream().mapToInt(Integer::intValue).sum();
    lines.add(total + " rows from " + bySource.size() + " sources.");
    lines.add("");
    lines.add("| kind | how the expected value came about | rows |");
    lines.add("| --- | --- | ---: |");
    byKind.forEach(
        (kind, count) ->
            lines.add("| " + kind.word() + " | " + kind.meaning() + " | " + count + " |"));
    lines.add("");
    lines.add(
        "Figures are printed to a tenth of the tolerance or finer; a deviation of 0 is below that.");
    for (RowGroup group : GROUPS) {
      lines.add("");
      lines.add("## " + group.title());
      lines.add("");
      lines.add(
          "| claim | inputs | unit | expected | code gives | deviation | allowed | source | kind |");
      lines.add("| --- | --- | --- | ---: | ---: | ---: | --- | --- | --- |");
      for (Row row : ROWS.get(group)) {
        lines.add(
            "| "
                + String.join(
                    " | ",
                    row.claim(),
                    row.inputs(),
                    row.unit(),
                    row.expectedWords(),
                    row.valueWords(),
                    row.deviationWords(),
                    row.toleranceWords(),
                    row.source().shortName() + ", " + row.place(),
                    row.kind().word())
                + " |");
      }
    }
    lines.add("");
    lines.add("## Sources");
    lines.add("");
    lines.add("| source | what | rows |");
    lines.add("| --- | --- | ---: |");
    bySource.forEach(
        (source, count) ->
            lines.add("| " + source.shortName() + " | " + source.about() + " | " + count + " |"));
    lines.add("");
    return String.join("\n", lines);
  }
}
