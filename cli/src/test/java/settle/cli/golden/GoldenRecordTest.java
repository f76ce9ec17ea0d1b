package settle.cli.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.demo.Demonstrations;

/**
 * Every command on every example and demonstration gives what was approved. {@code
 * -Dgolden.write=true} writes the record anew; its difference is read before it is committed.
 */
class GoldenRecordTest {

  static final Path APPROVED = Path.of("src", "test", "resources", "settle", "cli", "golden");
  private static final boolean WRITES = Boolean.getBoolean("golden.write");

  private static final List<String> EXAMPLES =
      List.of("single-room", "mid-terrace", "insulated-house", "bungalow", "bakery");
  private static final List<String> COMMANDS =
      List.of(
          "compare",
          "verdict",
          "tune",
          "simulate",
          "size",
          "commission",
          "valve",
          "check",
          "new",
          "catalogue",
          "demo",
          "completion");

  /** Each takes as long as twenty others. */
  private static final Set<String> DEAR =
      Set.of(
          "valve-bungalow",
          "valve-mid-terrace",
          "verdict-bakery",
          "verdict-bungalow",
          "verdict-insulated-house");

  @TempDir Path scratch;

  record Case(String name, List<String> command) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static Case of(String name, String... command) {
    return new Case(name, List.of(command));
  }

  static Stream<Case> cases() {
    List<Case> cases = new ArrayList<>();
    cases.add(of("help", "--help"));
    for (String command : COMMANDS) {
      cases.add(of("help-" + command, command, "--help"));
    }
    cases.add(of("new", "new"));
    cases.add(of("new-survey", "new", "--from", "../scenarios/examples/survey.csv"));
    cases.add(of("new-template", "new", "--template"));
    cases.add(of("completion", "completion"));
    cases.add(of("catalogue", "catalogue"));
    cases.add(of("catalogue-json", "catalogue", "--json"));
    cases.add(of("demo", "demo"));
    for (String demo : Demonstrations.names()) {
      cases.add(of("demo-" + demo, "demo", demo, "--out", GoldenRecord.OUT));
    }
    for (String example : EXAMPLES) {
      String file = "../scenarios/examples/" + example + ".yaml";
      cases.add(of("check-" + example, "check", file));
      cases.add(of("check-json-" + example, "check", file, "--json"));
      cases.add(of("simulate-" + example, "simulate", file, "--out", GoldenRecord.OUT));
      cases.add(of("compare-" + example, "compare", file, "--out", GoldenRecord.OUT));
      cases.add(of("size-" + example, "size", file, "--out", GoldenRecord.OUT));
      cases.add(of("valve-" + example, "valve", file, "--out", GoldenRecord.OUT));
      cases.add(
          of("verdict-" + example, "verdict", file, "--odds", "8", "--out", GoldenRecord.OUT));
    }
    cases.add(
        of(
            "tune-single-room",
            "tune",
            "../scenarios/examples/single-room.yaml",
            "--samples",
            "8",
            "--out",
            GoldenRecord.OUT));
    for (String example : List.of("single-room", "bungalow")) {
      cases.add(
          of(
              "commission-" + example,
              "commission",
              "../scenarios/examples/" + example + ".yaml",
              "--out",
              GoldenRecord.OUT));
    }
    return cases.stream();
  }

  /** The others, and all of them where the record is written. */
  static Stream<Case> usual() {
    return cases().filter(one -> WRITES || !DEAR.contains(one.name()));
  }

  static Stream<Case> dear() {
    return cases().filter(one -> DEAR.contains(one.name()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("usual")
  void whatACommandGivesIsWhatWasApproved(Case one) throws IOException {
    assertApproved(one);
  }

  @Tag("thorough")
  @ParameterizedTest(name = "{0}")
  @MethodSource("dear")
  void soItIsOfLargerHouses(Case one) throws IOException {
    assertApproved(one);
  }

  private void assertApproved(Case one) throws IOException {
    String now = GoldenRecord.of(one.command(), scratch);
    Path approved = APPROVED.resolve(one.name() + ".txt");
    if (WRITES) {
      Files.writeString(approved, now, StandardCharsets.UTF_8);
      return;
    }
    assertThat(approved).as("approved record of %s", one.name()).exists();
    assertThat(GoldenRecord.differences(Files.readString(approved), now)).isEmpty();
  }

  @Test
  void everyRecordBelongsToACommand() throws IOException {
    List<String> known = cases().map(c -> c.name() + ".txt").sorted().toList();
    try (Stream<Path> files = Files.list(APPROVED)) {
      assertThat(files.map(f -> String.valueOf(f.getFileName())).sorted())
          .containsExactlyElementsOf(known);
    }
  }

  @Test
  void whatIsRoundedForAReaderHasToBeTheSame() {
    assertThat(GoldenRecord.differences("settles at 20.4 °C", "settles at 20.5 °C")).hasSize(1);
    assertThat(GoldenRecord.differences("\"heatW\" : 812.4300001", "\"heatW\" : 812.4300002"))
        .isEmpty();
    assertThat(GoldenRecord.differences("\"heatW\" : 812.430001", "\"heatW\" : 812.530001"))
        .hasSize(1);
    assertThat(GoldenRecord.differences("error 3e-14", "error 5e-14")).isEmpty();
    assertThat(GoldenRecord.differences("error 3e-14", "error 3e-4")).hasSize(1);
    assertThat(GoldenRecord.differences("one\ntwo", "one")).hasSize(1);
  }
}
