package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** valve, as a script sees it. */
class ValveCommandTest {

  @TempDir Path folder;

  private Path fitted(String valve) throws IOException {
    Path scenario = Scenarios.warm(folder);
    String text = Files.readString(scenario);
    String given = "lockshield: 0.2 m³/h}";
    assertThat(text).contains(given);
    Files.writeString(scenario, text.replace(given, "lockshield: 0.2 m³/h, valve: " + valve + "}"));
    return scenario;
  }

  @Test
  void aBenchKeepsUpWithNothingSoItTakesNoStrict() throws IOException {
    CommandLineRun run = CommandLineRun.of("valve", Scenarios.warm(folder), "--strict");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("unknown option '--strict'");
  }

  @Test
  void theFirstThermostaticValveIsTestedBesideTheLimits() throws IOException {
    CommandLineRun run = CommandLineRun.of("valve", Scenarios.warm(folder), "--full");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    // Sentences are broken where lines end.
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "Valve on the bench: living room, skirting: thermostatic valve",
            "is within every limit of EN 215",
            "from memory",
            "% authority",
            "turned up by 2 K",
            "opening a door (no other room",
            "sun (it has no window)",
            "--arrangement: radiators");
    assertThat(run.out())
        .containsPattern("hysteresis C, at nominal flow +0\\.40 K +1\\.00 K +yes")
        .containsPattern("response time Z, to 63 % +20\\.0 min +40 min +yes")
        .containsPattern("static pressure +not modelled");
  }

  @Test
  void jsonIsOneDocumentWithUnitsInItsNames() throws IOException {
    CommandLineRun run =
        CommandLineRun.of("valve", Scenarios.warm(folder), "--json", "--arrangement", "radiators");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("{")
        .endsWith("}\n")
        .contains(
            "\"command\" : \"valve\"",
            "\"arrangement\" : \"radiators\"",
            "\"hysteresisK\" : 0.4,",
            "\"waterShiftK\" : 0.699,",
            "\"pressureShiftK\" : 0.25",
            "\"timeConstantMinutes\" : 20.0,",
            "\"figure\" : \"static_pressure\"",
            "\"limitFrom\" : \"memory\"",
            "\"authority\" : 0.1",
            "\"crossingC\" : ",
            "\"change\" : \"pump\"",
            "\"doorTo\" : null",
            "\"settledAfterMinutes\" : ");
  }

  @Test
  void outHoldsPicturesForAClassAndAReport() throws IOException {
    Path out = folder.resolve("bench");
    CommandLineRun run =
        CommandLineRun.of("valve", Scenarios.warm(folder), "--quiet", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(run.out()).isEmpty();
    assertThat(out.resolve("summary.txt")).content().contains("In its branch");
    assertThat(out.resolve("summary.json")).content().contains("\"loadLines\"");
    assertThat(out.resolve("plots/hysteresis-loop.svg"))
        .content()
        .contains("hysteresis C = 0.40 K", "S − 2 K", "the stem follows");
    assertThat(out.resolve("plots/response.svg")).content().contains("time constant 20.0 min");
    assertThat(out.resolve("plots/load-line.svg")).content().contains("want 21 °C");
    assertThat(out.resolve("plots/load-line.png")).isNotEmptyFile();
    assertThat(out.resolve("plots/room-tests.png")).isNotEmptyFile();
    assertThat(out.resolve("report.html"))
        .content()
        .containsSubsequence(
            "Valve on the bench: living room",
            "On the rig",
            "Figure of EN 215",
            "In its branch",
            "Against the load of its room",
            "In its room",
            "not a design certificate");
  }

  @Test
  void anActuatorIsShownForWhatItIs() throws IOException {
    CommandLineRun run = CommandLineRun.of("valve", fitted("electrothermal actuator"), "--full");
    assertThat(run.status()).isZero();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "does not apply to this one",
            "hysteresis between opening and shutting",
            "0.50 K",
            "none: it does not throttle",
            "its actuator only")
        .doesNotContain("Figure of EN 215");
  }

  @Test
  void anOpenValveHasNoLoopButARoom() throws IOException {
    Path out = folder.resolve("bench");
    CommandLineRun run = CommandLineRun.of("valve", fitted("open valve"), "--out", out, "--full");
    assertThat(run.status()).isZero();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("flow fully open", "turning the valve (nothing on it", "Against the load");
    assertThat(out.resolve("plots/hysteresis-loop.svg")).doesNotExist();
    assertThat(out.resolve("plots/load-line.svg")).exists();
  }

  @Test
  void anUnknownRoomOrArrangementIsAnsweredWithTheNearest() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun room = CommandLineRun.of("valve", scenario, "--room", "livingroom");
    assertThat(room.status()).isEqualTo(2);
    assertThat(room.out()).isEmpty();
    assertThat(room.err())
        .startsWith("settle: arrangement 'skirting' has no valve in a room 'livingroom'")
        .contains("nearest is 'living room'");
    CommandLineRun arrangement = CommandLineRun.of("valve", scenario, "--arrangement", "radiator");
    assertThat(arrangement.status()).isEqualTo(2);
    assertThat(arrangement.err()).contains("no arrangement 'radiator'", "'radiators'");
  }

  @Test
  void eachOfTwoValvesInARoomCanBeReached() throws IOException {
    Path scenario = Scenarios.warm(folder);
    String one = "{emitter: skirting 140, length: 11.2 m, lockshield: 0.2 m³/h}";
    String text = Files.readString(scenario);
    assertThat(text).contains(one);
    String half = one.replace("11.2", "5");
    Files.writeString(
        scenario,
        text.replace(one, "[%s, %s]".formatted(half, half.replace("}", ", valve: open valve}"))));
    CommandLineRun first = CommandLineRun.of("valve", scenario, "--full");
    assertThat(first.status()).as(first.err()).isZero();
    assertThat(first.out().replaceAll("\\s+", " "))
        .contains("living room, skirting 140 no. 1, skirting: thermostatic valve")
        .contains("--room: living room: skirting 140 no. 2 (open valve)");
    CommandLineRun second =
        CommandLineRun.of("valve", scenario, "--room", "living room: skirting 140 no. 2", "--json");
    assertThat(second.status()).as(second.err()).isZero();
    assertThat(second.out())
        .contains("\"name\" : \"open valve\"", "\"emitter\" : \"skirting 140 no. 2\"");
    CommandLineRun none =
        CommandLineRun.of("valve", scenario, "--room", "living room: skirting 140 no. 3");
    assertThat(none.status()).isEqualTo(2);
    assertThat(none.err()).contains("the nearest is 'living room: skirting 140 no. ");
  }

  @Test
  void noTwoColumnsOfTheTracesShareAHeading() throws IOException {
    Path scenario = Scenarios.warm(folder);
    String one = "{emitter: skirting 140, length: 11.2 m, lockshield: 0.2 m³/h}";
    String text = Files.readString(scenario);
    assertThat(text).contains(one);
    Files.writeString(
        scenario,
        text.replace(one, "[%1$s, %1$s]".formatted(one.replace("11.2", "5")))
            + "distribution: {mains: {'living room: skirting 140 no. 1': {length: 2 m}}}\n");
    Path out = folder.resolve("result");
    CommandLineRun run = CommandLineRun.of("compare", scenario, "--out", out.toString());
    assertThat(run.status()).as(run.err()).isZero();
    String[] headings = Files.readAllLines(out.resolve("traces.csv")).get(0).split(",");
    assertThat(headings).hasSizeGreaterThan(50).doesNotHaveDuplicates();
  }

  @Test
  void aFolderUsedAgainHoldsTheNewAnswerOnly() throws IOException {
    Path scenario = Scenarios.warm(folder);
    String out = folder.resolve("result").toString();
    assertThat(CommandLineRun.of("compare", scenario, "--out", out).status()).isZero();
    Files.writeString(folder.resolve("result/notes.txt"), "mine");
    assertThat(CommandLineRun.of("valve", scenario, "--out", out).status()).isZero();
    Path fresh = folder.resolve("fresh");
    assertThat(CommandLineRun.of("valve", scenario, "--out", fresh.toString()).status()).isZero();
    List<String> again = names(Path.of(out));
    assertThat(again).contains("notes.txt").doesNotContain("traces.csv");
    again.remove("notes.txt");
    assertThat(again).isEqualTo(names(fresh));
  }

  private static List<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.walk(in)) {
      return files
          .filter(Files::isRegularFile)
          .map(f -> in.relativize(f).toString())
          .sorted()
          .collect(Collectors.toCollection(ArrayList::new));
    }
  }
}
