package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** accept, as a script sees it. */
class AcceptCommandTest {

  private static final String TERRACE = "../scenarios/examples/mid-terrace.yaml";

  /** Read in a house like the mid-terrace, with noise, one lockshield nearly shut, one run airy. */
  private static final String TWO_WRONG =
      """
      room,return °C,far end °C,air °C,found
      source flow,70.0
      living room,55.1,42.5,18.8
      dining room,50.1,51.7,19.6
      kitchen,49.4,51.1,18.6
      hall,50.7,52.5,16.9
      front bedroom,37.2,25.2,16.1
      back bedroom,52.0,50.5,18.8
      bathroom,53.5,54.4,23.0
      landing,48.2,47.9,17.5
      """;

  @TempDir Path folder;

  private String readings(String text) throws IOException {
    return Files.writeString(folder.resolve("readings.csv"), text).toString();
  }

  @Test
  void twoFaultsAreExplained() throws IOException {
    Path out = folder.resolve("accepted");
    CommandLineRun run =
        CommandLineRun.of("accept", TERRACE, readings(TWO_WRONG), "--strict", "--out", out);
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains(
            "No: something is not as designed",
            "Two things together explain it better than any one",
            "Front bedroom: too little water",
            "air left in it",
            "press the pin",
            "vent it again");
    assertThat(out.resolve("plots/readings.svg")).exists();
    assertThat(out.resolve("report.html")).content().contains("Readings against what was expected");
    assertThat(out.resolve("summary.json"))
        .content()
        .contains("\"outcome\" : \"wrong\"", "\"accepted\" : false", "\"nextReading\" :");
  }

  @Test
  void whatWasFoundIsTakenAsKnown() throws IOException {
    CommandLineRun run =
        CommandLineRun.of(
            "accept",
            Scenarios.warm(folder),
            readings("room,return,far end,air,found\nliving room,48,30,17,air\n"),
            "--json");
    assertThat(run.status()).isZero();
    assertThat(run.out())
        .contains("\"nothingWrongShare\" : 0.0,", "\"fault\" : \"air left in it\"")
        .doesNotContain("lockshield");
  }

  @Test
  void readingsAsDesignedAreAccepted() throws IOException {
    Path house = Scenarios.warm(folder);
    CommandLineRun expected = CommandLineRun.of("commission", house, "--json", "--start", "12");
    String flow = figure(expected.out(), "sourceFlowC");
    String back = figure(expected.out(), "returnC");
    String air = figure(expected.out(), "airC");
    CommandLineRun run =
        CommandLineRun.of(
            "accept",
            house,
            readings(
                "room;return;air\nsource flow;%s\nstart;12,0\nliving room;%s;%s\n"
                    .formatted(flow, back, air)),
            "--strict");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("skirting. Yes", "12 °C");
  }

  private static String figure(String json, String name) {
    return json.replaceAll("(?s).*?\"" + name + "\" : ([-0-9.]+).*", "$1");
  }

  @Test
  void everyMistakeIsToldAtOnceWithItsPlace() throws IOException {
    CommandLineRun run =
        CommandLineRun.of(
            "accept",
            Scenarios.warm(folder),
            readings(
                "room,return,found\nlivin room,45,\nliving room,hot,perhaps\nliving room,450,\n"));
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err().lines())
        .satisfiesExactly(
            one -> assertThat(one).contains("readings.csv:2:1", "livin room", "'living room'"),
            two -> assertThat(two).contains("readings.csv:3:13", "found 'hot'"),
            three -> assertThat(three).contains("readings.csv:3:17", "found 'perhaps'", "air"),
            four -> assertThat(four).contains("readings.csv:4:13", "−40 to 110 °C"));
  }

  @Test
  void whatIsNoTableIsSaidToBeNone() throws IOException {
    String house = Scenarios.warm(folder).toString();
    assertThat(CommandLineRun.of("accept", house, readings("\n\n")).err()).contains("is empty");
    CommandLineRun words = CommandLineRun.of("accept", house, readings("it was warm everywhere"));
    assertThat(words.status()).isEqualTo(2);
    assertThat(words.err()).contains("no column 'room'");
    CommandLineRun empty =
        CommandLineRun.of("accept", house, readings("room,return\nliving room,\n"));
    assertThat(empty.status()).isEqualTo(2);
    assertThat(empty.err()).contains("no reading in it");
    CommandLineRun missing = CommandLineRun.of("accept", house, folder.resolve("none.csv"));
    assertThat(missing.status()).isEqualTo(2);
    assertThat(missing.err()).contains("none.csv", "no such file");
  }
}
