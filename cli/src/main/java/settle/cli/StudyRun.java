package settle.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.JsonDocument;
import settle.cli.output.Layout;
import settle.cli.output.StudyText;
import settle.plots.drawing.Picture;
import settle.plots.figures.Study;
import settle.plots.image.PictureFiles;
import settle.plots.report.StudyReport;
import settle.scenarios.Scenario;

/** What every command does alike that answers for a scenario: read, find out, print, write. */
final class StudyRun {

  /**
   * What was found out.
   *
   * @param study all of it
   * @param good whether the answer is yes
   * @param charts draws its pictures
   * @param traces writes what was simulated; null for nothing
   * @param sheets makes files by their names that stand in place of report and pictures; null for
   *     those
   */
  record Answer(
      Study study,
      boolean good,
      Supplier<List<Picture>> charts,
      Traces traces,
      Supplier<Map<String, String>> sheets) {

    Answer(Study study, boolean good, Supplier<List<Picture>> charts, Traces traces) {
      this(study, good, charts, traces, null);
    }

    /** An answer on sheets of its own. */
    static Answer on(Supplier<Map<String, String>> sheets, Study study) {
      return new Answer(study, true, List::of, null, sheets);
    }
  }

  /** Writes columns of what was simulated. */
  @FunctionalInterface
  interface Traces {
    void to(Writer writer) throws IOException;
  }

  /** Work that finds the answer. */
  @FunctionalInterface
  interface Work {

    /**
     * Finds it.
     *
     * @param text the scenario as typed
     * @param scenario what it says
     * @param progress told how far it is
     */
    Answer of(String text, Scenario scenario, Progress progress) throws Failure;
  }

  private final CommandSpec command;
  private final CommonOptions options;

  StudyRun(CommandSpec command, CommonOptions options) {
    this.command = command;
    this.options = options;
  }

  /**
   * Reads the scenario, has the work done, prints and writes the answer.
   *
   * @return whether it is yes
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  @SuppressWarnings(
      "FutureReturnValueIgnored") // preparing only saves time; drawing would fail by itself
  boolean execute(Work work) throws Failure {
    if (options.out() != null) {
      CompletableFuture.runAsync(PictureFiles::prepare);
    }
    String text = ScenarioFile.text(options.file());
    Scenario scenario = ScenarioFile.read(command, text, options.file());
    Talk talk = new Talk(command, options.speech());
    Answer answer;
    String json;
    try (Progress progress = talk.progress()) {
      answer = work.of(text, scenario, progress);
      json =
          JsonDocument.write(
              command.name(), options.file().toString(), Version.number(), answer.study()::write);
      if (options.out() != null) {
        progress.stage("writing " + options.out());
        write(answer, json);
      }
    } catch (ArithmeticException e) {
      throw Talk.unsolvable(e);
    }
    talk.say(json, layout -> StudyText.write(answer.study(), layout));
    return answer.good();
  }

  private void write(Answer answer, String json) throws Failure {
    try (OutputFolder folder = new OutputFolder(options.out())) {
      if (answer.sheets() != null) {
        for (Map.Entry<String, String> sheet : answer.sheets().get().entrySet()) {
          folder.write(sheet.getKey(), sheet.getValue());
        }
        folder.write("summary.txt", StudyText.write(answer.study(), Layout.FILE));
        folder.write("summary.json", json);
        folder.publish();
        return;
      }
      CompletableFuture<List<Picture>> charts = CompletableFuture.supplyAsync(answer.charts());
      CompletableFuture<Map<String, byte[]>> plots = charts.thenApplyAsync(PictureFiles::of);
      if (answer.traces() != null) {
        try (Writer traces =
            Files.newBufferedWriter(folder.file("traces.csv"), StandardCharsets.UTF_8)) {
          answer.traces().to(traces);
        }
      }
      folder.write(
          plots.join(),
          StudyReport.html(
              answer.study(), charts.join(), options.file().toString(), Version.number()),
          StudyText.write(answer.study(), Layout.FILE),
          json);
      folder.publish();
    } catch (IOException e) {
      throw Talk.unwritable(e, options.out());
    }
  }
}
