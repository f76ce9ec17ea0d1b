package settle.sim.validation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Asserts every row of the validation table and keeps {@code sim/VALIDATION.md} true. Run with
 * {@code -Dvalidation.write=true} to rewrite that file.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ValidationTest {

  /** What needs the rows of all groups at once; left out where single groups are asked for. */
  private static final String WHOLE_TABLE = "whole-table";

  /** Groups whose rows take seconds. */
  private static final String DAYS = "days";

  private final List<RowGroup> groups =
      List.of(
          new EmitterRows(),
          new PlainFaceRows(),
          new FilmRows(),
          new FabricRows(),
          new ConductionRows(),
          new HeatLossRows(),
          new WaterRows(),
          new HydraulicsRows(),
          new NetworkRows(),
          new LoopRows(),
          new FlueGasRows(),
          new ReferenceSolutionRows(),
          new SteppedFabricRows(),
          new SteppedRoomRows(),
          new LeafRows(),
          new GroundRows(),
          new BackStripRows(),
          new SteppedEmitterRows(),
          new ValveRows(),
          new BenchRows(),
          new ControlRows(),
          new ReheatRows(),
          new SetbackRows(),
          new BoilerRows(),
          new CondensingRows(),
          new LocalComfortRows(),
          new HeatPumpRows(),
          new BufferRows(),
          new SeasonRows(),
          new WeatherRows(),
          new ComfortRows(),
          new OddsRows(),
          new TuningRows());

  /** Rows of the groups asked for so far: a group asked about alone works out its own only. */
  private final Map<RowGroup, List<Row>> rows = new HashMap<>();

  private List<Row> rowsOf(RowGroup group) {
    return rows.computeIfAbsent(group, RowGroup::rows);
  }

  Stream<Named<RowGroup>> ofMoments() {
    return named(group -> !group.takesDays());
  }

  Stream<Named<RowGroup>> ofDays() {
    return named(RowGroup::takesDays);
  }

  private Stream<Named<RowGroup>> named(Predicate<RowGroup> which) {
    return groups.stream().filter(which).map(group -> Named.of(group.title(), group));
  }

  @ParameterizedTest
  @MethodSource("ofMoments")
  void everyRowHolds(RowGroup group) {
    assertRowsHold(group);
  }

  @ParameterizedTest
  @MethodSource("ofDays")
  @Tag(DAYS)
  void everyRowOfDaysHolds(RowGroup group) {
    assertRowsHold(group);
  }

  private void assertRowsHold(RowGroup group) {
    assertThat(rowsOf(group)).isNotEmpty();
    assertThat(rowsOf(group).stream().filter(row -> !row.isAsStated())).isEmpty();
  }

  @Test
  @Tag(WHOLE_TABLE)
  void everyExpectedColumnOfEveryDataFileIsAsserted() throws IOException, URISyntaxException {
    groups.forEach(this::rowsOf);
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
              groups.stream().map(group -> group.getClass().getSimpleName() + ".class").toList());
    }
  }

  @Test
  @Tag(WHOLE_TABLE)
  void everySourceIsUsed() {
    Map<Source, Integer> count = rowsBySource();
    assertThat(count.keySet()).containsExactly(Source.values());
  }

  @Test
  @Tag(WHOLE_TABLE)
  void theCheckedInTableIsCurrent() throws IOException {
    Path file = Path.of(System.getProperty("basedir", "."), "VALIDATION.md");
    Map<RowGroup, List<Row>> all = new LinkedHashMap<>();
    groups.forEach(group -> all.put(group, rowsOf(group)));
    String table = new ValidationTable(all).text();
    if (Boolean.getBoolean("validation.write")) {
      Files.writeString(file, table);
    }
    assertThat(Files.readString(file))
        .as("rewrite it with: mvn -pl sim test -Dvalidation.write=true")
        .isEqualTo(table);
  }

  private Map<Source, Integer> rowsBySource() {
    Map<Source, Integer> count = new EnumMap<>(Source.class);
    groups.forEach(
        group -> rowsOf(group).forEach(row -> count.merge(row.source(), 1, Integer::sum)));
    return count;
  }
}
