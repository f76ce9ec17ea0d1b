package settle.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The script, run by node, against the same classes on the virtual machine. */
class SameFiguresTest {

  /**
   * Largest difference as a share of the figure, or in its unit where it is below one. Both compute
   * in doubles; only sine, exponential and their like may differ in the last place, and a step that
   * is accepted by one and not by the other would show as far more.
   */
  private static final double TOLERANCE = 1e-9;

  private static final Path SCRIPT = Path.of(System.getProperty("settle.script"));

  /** Asks the script one thing about one scenario. */
  private static final String ASK =
      "const fs = require('fs'); const [script, what, file, name] = process.argv.slice(1);"
          + " process.stdout.write(require(script)[what](fs.readFileSync(file, 'utf8'), name));";

  /** A process that hangs fails instead [min]. */
  private static final int LONGEST = 10;

  @TempDir Path folder;

  private static Path example(String name) {
    return Path.of("..", "..", "scenarios", "examples", name + ".yaml");
  }

  private String fromScript(String what, Path file) throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process node =
        new ProcessBuilder(
                "node",
                "-e",
                ASK,
                SCRIPT.toAbsolutePath().toString(),
                what,
                file.toString(),
                file.getFileName().toString())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    if (!node.waitFor(LONGEST, TimeUnit.MINUTES)) {
      node.destroyForcibly();
    }
    assertThat(node.waitFor()).as(Files.readString(err, StandardCharsets.UTF_8)).isZero();
    return Files.readString(out, StandardCharsets.UTF_8);
  }

  private static Map<String, Double> figures(String lines) {
    Map<String, Double> figures = new LinkedHashMap<>();
    for (String line : lines.split("\n")) {
      String[] parts = line.split("\t", -1);
      figures.put(parts[0], Double.valueOf(parts[1]));
    }
    return figures;
  }

  private static double apart(double a, double b) {
    return a == b || (Double.isNaN(a) && Double.isNaN(b))
        ? 0
        : Math.abs(a - b) / Math.max(1, Math.max(Math.abs(a), Math.abs(b)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"single-room", "mid-terrace", "insulated-house"})
  void theScriptGivesTheFiguresOfTheVirtualMachine(String name) throws Exception {
    Path file = example(name);
    Map<String, Double> here =
        figures(Page.figures(Files.readString(file), file.getFileName().toString()));
    Map<String, Double> there = figures(fromScript("figures", file));
    assertThat(there.keySet()).isEqualTo(here.keySet());
    assertThat(here.size()).isGreaterThan(30);
    double largest = 0;
    for (Map.Entry<String, Double> figure : here.entrySet()) {
      double apart = apart(figure.getValue(), there.get(figure.getKey()));
      largest = Math.max(largest, apart);
      assertThat(apart)
          .as(
              "%s: %s here, %s from the script",
              figure.getKey(), figure.getValue(), there.get(figure.getKey()))
          .isLessThanOrEqualTo(TOLERANCE);
    }
    System.out.printf(
        "%s: %d figures, largest difference %.1e of a figure%n", name, here.size(), largest);
  }

  @ParameterizedTest
  @ValueSource(strings = {"single-room", "mid-terrace", "insulated-house"})
  void theScriptSaysTheSameOfADay(String name) throws Exception {
    Path file = example(name);
    assertThat(fromScript("day", file))
        .isEqualTo(Page.day(Files.readString(file), file.getFileName().toString()));
  }

  /**
   * A point of a line that is as good as in the way of its neighbours may be drawn here or there.
   */
  @Test
  void theScriptDrawsTheSamePictures() throws Exception {
    Path file = example("mid-terrace");
    String here = Page.pictures(Files.readString(file), file.getFileName().toString());
    assertThat(words(fromScript("pictures", file))).isEqualTo(words(here)).hasSizeGreaterThan(300);
  }

  private static List<String> words(String svg) {
    return Pattern.compile("<text[^>]*>[^<]*").matcher(svg).results().map(r -> r.group()).toList();
  }

  @Test
  void theScriptGivesTheSameVerdict() throws Exception {
    Path file = example("single-room");
    assertThat(fromScript("verdict", file))
        .isEqualTo(Page.verdict(Files.readString(file), file.getFileName().toString()));
  }
}
