package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** tune, as a script sees it. */
class TuneCommandTest {

  @TempDir Path folder;

  private static CommandLineRun tune(Path scenario, Object... more) {
    Object[] args = new Object[more.length + 4];
    args[0] = "tune";
    args[1] = scenario;
    args[2] = "--samples";
    args[3] = "8";
    System.arraycopy(more, 0, args, 4, more.length);
    return CommandLineRun.of(args);
  }

  @Test
  void aRoomThatSettlesTooWarmHasItsHeadTurnedDown() throws IOException {
    CommandLineRun run = tune(Scenarios.warm(folder), "--only", "knobs", "--sure", "50", "--full");
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replaceAll(" *\\n *", " "))
        .contains(
            "What to set: skirting",
            "1 of 1 setting changes; every aim is met in runs of a usual, a mild and",
            "living room, head  3 (20 °C)",
            "Energy a day, usual day",
            "of 8 houses drawn over the spreads",
            "none one mark away from the answer is")
        .doesNotContain("flow temperature", "bjective");
  }

  @Test
  void anAimThatCannotBeMetIsNamedWithByHowMuch() throws IOException {
    Path scenario = Scenarios.cold(folder);
    CommandLineRun answer = tune(scenario, "--only", "knobs");
    assertThat(answer.status()).isZero();
    assertThat(answer.out())
        .contains("3 aims are still missed.", "Missed with the best settings")
        .containsPattern(
            "- living room is \\d+\\.\\d K below want at −3 °C without set-back, \\d+\\.\\d K more")
        .containsPattern("- living room is \\d+\\.\\d K below want on a usual day")
        .containsPattern("- living room is \\d+\\.\\d K below want on a mild day");
    assertThat(tune(scenario, "--only", "knobs", "--strict").status()).isEqualTo(1);
    assertThat(tune(Scenarios.warm(folder), "--only", "knobs", "--strict").status()).isZero();
  }

  @Test
  void whatIsWrittenDiffersInNothingButTheSettings() throws IOException {
    Path scenario = Scenarios.warm(folder);
    Path tuned = folder.resolve("tuned.yaml");
    assertThat(tune(scenario, "--only", "knobs", "--sure", "50", "--write", tuned).status())
        .isZero();
    String text = Files.readString(tuned);
    assertThat(text).contains("lockshield: 0.2 m³/h, set: ");
    assertThat(text.replaceFirst(", set: [0-9.]+ °C", "")).isEqualTo(Files.readString(scenario));
    assertThat(CommandLineRun.of("check", tuned).out()).contains("nothing wrong");
    // Tuned once more, there is nothing left to change.
    assertThat(tune(tuned, "--only", "knobs", "--sure", "50").out())
        .contains("every setting is as good");
  }

  @Test
  void nothingIsOverwrittenWithoutBeingTold() throws IOException {
    Path scenario = Scenarios.warm(folder);
    String before = Files.readString(scenario);
    CommandLineRun run = tune(scenario, "--only", "knobs", "--sure", "50", "--write", scenario);
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).contains("exists; --force overwrites it");
    assertThat(scenario).content().isEqualTo(before);
    assertThat(
            tune(scenario, "--only", "knobs", "--sure", "50", "--write", scenario, "--force")
                .status())
        .isZero();
    assertThat(scenario).content().isNotEqualTo(before).contains("set: ");
  }

  @Test
  void jsonIsOneDocumentAndNothingElse() throws IOException {
    Path out = folder.resolve("answer");
    CommandLineRun run =
        tune(Scenarios.warm(folder), "--only", "knobs,curve", "--json", "--out", out);
    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("{")
        .endsWith("}\n")
        .contains(
            "\"command\" : \"tune\"",
            "\"arrangement\" : \"skirting\"",
            "\"meetsAims\" : true",
            "\"name\" : \"flow temperature\"",
            "\"group\" : \"knobs\"",
            "\"unit\" : \"°C\"",
            "\"ending\" : \"converged\"",
            "\"mildDay\" : {",
            "\"dearerPerDay\" : ",
            "\"fivePercentDearerBelowBy\" : ",
            "\"usualDay\" : {",
            "\"houses\" : 8");
    assertThat(out.resolve("summary.json")).content().isEqualTo(run.out());
    assertThat(out.resolve("summary.txt")).content().contains("living room, head");
    assertThat(out.resolve("report.html"))
        .content()
        .startsWith("<!DOCTYPE html>")
        .contains("What to set", "living room, head", "<svg", "a mild and the coldest")
        .doesNotContain("<img", "<script", "<link", "{{");
    assertThat(out.resolve("plots/mild-day.svg")).content().contains("living room");
    assertThat(out.resolve("plots/usual-day.svg")).content().contains("living room");
    assertThat(out.resolve("plots/coldest-day.png")).isNotEmptyFile();
    assertThat(out.resolve("plots/flow-temperature.svg")).content().contains("lowest that holds");
    assertThat(out.resolve("plots/flatness.svg")).content().contains("less than 5 % dearer");
    assertThat(out.resolve("plots/over-spreads.svg")).content().contains("held up to here");
  }

  @Test
  void aWrongGroupOrArrangementIsAnsweredWithWhatThereIs() throws IOException {
    Path scenario = Scenarios.warm(folder);
    CommandLineRun group = tune(scenario, "--only", "knob");
    assertThat(group.status()).isEqualTo(2);
    assertThat(group.err()).contains("found 'knob', expected knobs, curve", "nearest");
    CommandLineRun arrangement = tune(scenario, "--arrangement", "radiator");
    assertThat(arrangement.status()).isEqualTo(2);
    assertThat(arrangement.err()).contains("no arrangement 'radiator'");
    assertThat(CommandLineRun.of("tune", scenario, "--samples", "0").status()).isEqualTo(2);
  }
}
