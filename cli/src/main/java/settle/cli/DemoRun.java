package settle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.JsonDocument;
import settle.cli.output.Layout;
import settle.cli.output.LessonText;
import settle.plots.drawing.Picture;
import settle.plots.figures.LessonFigures;
import settle.plots.gallery.LessonChart;
import settle.plots.image.PictureFiles;
import settle.plots.report.Handout;
import settle.plots.words.Lesson;
import settle.scenarios.demo.ReadyMade;
import settle.sim.demo.Demonstration;

/** Lists demonstrations, or runs them, prints and writes what they show. */
final class DemoRun {

  private final Path folder;
  private final Talk talk;

  /**
   * @param folder where to write files; null for none
   */
  DemoRun(CommandSpec command, Path folder, Speech speech) {
    this.folder = folder;
    talk = new Talk(command, speech);
  }

  void list(List<ReadyMade> all) {
    List<Demonstration> demonstrations = all.stream().map(ReadyMade::demonstration).toList();
    talk.say(
        JsonDocument.write(
            "demo", Version.number(), json -> LessonFigures.list(json, demonstrations)),
        layout -> LessonText.list(demonstrations, layout));
  }

  private static String json(List<Lesson> lessons) {
    return JsonDocument.write("demo", Version.number(), d -> LessonFigures.write(d, lessons));
  }

  void execute(List<ReadyMade> wanted) throws Failure {
    String json;
    String summary;
    List<Lesson> lessons;
    try (Progress progress = talk.progress()) {
      progress.stage("running " + names(wanted));
      lessons = wanted.parallelStream().map(d -> new Lesson(d.run())).toList();
      json = json(lessons);
      summary = LessonText.write(lessons, Layout.FILE);
      if (folder != null) {
        progress.stage("writing " + folder);
        write(wanted, lessons, json, summary);
      }
    } catch (ArithmeticException e) {
      throw Talk.unsolvable(e);
    }
    talk.say(json, layout -> LessonText.write(lessons, layout));
  }

  private void write(List<ReadyMade> wanted, List<Lesson> lessons, String json, String summary)
      throws Failure {
    List<Picture> charts = lessons.parallelStream().<Picture>map(LessonChart::of).toList();
    try (OutputFolder output = new OutputFolder(folder)) {
      for (ReadyMade demonstration : wanted) {
        String name = demonstration.demonstration().name();
        output.write("scenarios/" + name + "-before.yaml", demonstration.before());
        output.write("scenarios/" + name + "-after.yaml", demonstration.after());
      }
      String handout = Handout.html(lessons, charts, Version.number());
      output.write(PictureFiles.of(charts), handout, summary, json);
      output.publish();
    } catch (IOException e) {
      throw Talk.unwritable(e, folder);
    }
  }

  private static String names(List<ReadyMade> wanted) {
    return wanted.stream().map(d -> d.demonstration().name()).collect(Collectors.joining(", "));
  }
}
