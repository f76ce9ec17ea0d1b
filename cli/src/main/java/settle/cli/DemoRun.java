package settle.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.LessonJson;
import settle.cli.output.LessonText;
import settle.plots.chart.Chart;
import settle.plots.chart.ChartFiles;
import settle.plots.chart.LessonChart;
import settle.plots.report.Handout;
import settle.plots.words.Lesson;
import settle.scenarios.demo.ReadyMade;
import settle.sim.demo.Demonstration;

/** Lists demonstrations, or runs them, prints and writes what they show. */
final class DemoRun {

  private final Path folder;
  private final boolean json;
  private final boolean quiet;
  private final PrintWriter out;
  private final Progress progress;

  /**
   * @param folder where to write files; null for none
   */
  DemoRun(CommandSpec command, Path folder, boolean json, boolean quiet) {
    this.folder = folder;
    this.json = json;
    this.quiet = quiet;
    out = command.commandLine().getOut();
    Settle settle = (Settle) command.parent().userObject();
    progress = new Progress(command.commandLine().getErr(), settle.terminal() && !quiet);
  }

  void list(List<ReadyMade> all) {
    List<Demonstration> demonstrations = all.stream().map(ReadyMade::demonstration).toList();
    if (json) {
      out.print(LessonJson.list(demonstrations, Version.number()));
    } else if (!quiet) {
      out.print(LessonText.list(demonstrations));
    }
    out.flush();
  }

  void execute(List<ReadyMade> wanted) throws Failure {
    List<Lesson> lessons;
    try (progress) {
      progress.stage("running " + names(wanted));
      lessons = wanted.parallelStream().map(d -> new Lesson(d.run())).toList();
      if (folder != null) {
        progress.stage("writing " + folder);
        write(wanted, lessons);
      }
    }
    if (json) {
      out.print(LessonJson.write(lessons, Version.number()));
    } else if (!quiet) {
      out.print(LessonText.write(lessons));
    }
    out.flush();
  }

  private void write(List<ReadyMade> wanted, List<Lesson> lessons) throws Failure {
    List<Chart> charts = lessons.parallelStream().map(LessonChart::of).toList();
    try (OutputFolder output = new OutputFolder(folder)) {
      for (Map.Entry<String, byte[]> file : ChartFiles.of(charts).entrySet()) {
        Files.write(output.file("plots/" + file.getKey()), file.getValue());
      }
      for (ReadyMade demonstration : wanted) {
        String name = demonstration.demonstration().name();
        output.write("scenarios/" + name + "-before.yaml", demonstration.before());
        output.write("scenarios/" + name + "-after.yaml", demonstration.after());
      }
      output.write("report.html", Handout.html(lessons, charts, Version.number()));
      output.write("summary.txt", LessonText.write(lessons));
      output.write("summary.json", LessonJson.write(lessons, Version.number()));
      output.publish();
    } catch (IOException e) {
      throw Talk.unwritable(e, folder);
    }
  }

  private static String names(List<ReadyMade> wanted) {
    return wanted.stream().map(d -> d.demonstration().name()).collect(Collectors.joining(", "));
  }
}
