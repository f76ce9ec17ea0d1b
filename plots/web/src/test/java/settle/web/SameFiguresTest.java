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
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program as WebAssembly and as JavaScript, run by node, against the same classes on the
 * virtual machine.
 */
class SameFiguresTest {

  /**
   * Largest difference as a share of the figure, or in its unit where it is below one. Both compute
   * in doubles; only sine, exponential and their like may differ in the last place, and a step that
   * is accepted by one and not by the other would show as far more.
   */
  private static final double TOLERANCE = 1e-9;

  /** Asks one thing about one scenario. */
  private static final String ASK =
      """
      const fs = require('fs');
      const [script, runtime, what, file, name] = process.argv.slice(1);
      const load = async () => {
        if (!script.endsWith('.wasm')) return require(script);
        require(runtime);
        return (await TeaVM.wasmGC.load(fs.readFileSync(script))).exports;
      };
      load().then((page) => process.stdout.write(page[what](fs.readFileSync(file, 'utf8'), name, () => {})));
      """;

  /** Node's first version that runs WebAssembly with a garbage collector. */
  private static final int COLLECTS = 22;

  private static final String NODE = System.getProperty("settle.node");

  /** What it is compiled to. */
  private enum Compiled {
    WEB_ASSEMBLY("settle.wasm"),
    JAVA_SCRIPT("settle.script");

    private final String property;

    Compiled(String property) {
      this.property = property;
    }

    private String script() {
      return Path.of(System.getProperty(property)).toAbsolutePath().toString();
    }
  }

  @BeforeAll
  static void nodeIsNewEnough() throws IOException {
    Process node = new ProcessBuilder(NODE, "--version").start();
    String version = new String(node.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(Integer.parseInt(version.strip().replaceAll("^v(\\d+).*", "$1")))
        .as("%s is version %s: -Dsettle.node=FILE names another", NODE, version.strip())
        .isGreaterThanOrEqualTo(COLLECTS);
  }

  /** A process that hangs fails instead [min]. */
  private static final int LONGEST = 10;

  @TempDir Path folder;

  private static Path example(String name) {
    return Path.of("..", "..", "scenarios", "examples", name + ".yaml");
  }

  private String from(Compiled compiled, String what, Path file)
      throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Process node =
        new ProcessBuilder(
                NODE,
                "-e",
                ASK,
                compiled.script(),
                System.getProperty("settle.wasm.runtime"),
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
  void figuresAreThoseOfTheVirtualMachine(String name) throws Exception {
    Path file = example(name);
    Map<String, Double> here =
        figures(Page.figures(Files.readString(file), file.getFileName().toString()));
    assertThat(here.size()).isGreaterThan(30);
    for (Compiled compiled : Compiled.values()) {
      Map<String, Double> there = figures(from(compiled, "figures", file));
      assertThat(there.keySet()).isEqualTo(here.keySet());
      double largest = 0;
      for (Map.Entry<String, Double> figure : here.entrySet()) {
        double apart = apart(figure.getValue(), there.get(figure.getKey()));
        largest = Math.max(largest, apart);
        assertThat(apart)
            .as(
                "%s: %s here, %s in %s",
                figure.getKey(), figure.getValue(), there.get(figure.getKey()), compiled)
            .isLessThanOrEqualTo(TOLERANCE);
      }
      System.out.printf(
          "%s, %s: %d figures, largest difference %.1e of a figure%n",
          name, compiled, here.size(), largest);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"single-room", "mid-terrace", "insulated-house"})
  void theSameIsSaidOfADay(String name) throws Exception {
    Path file = example(name);
    String here = Page.day(Files.readString(file), file.getFileName().toString());
    for (Compiled compiled : Compiled.values()) {
      assertThat(from(compiled, "day", file)).as(compiled.toString()).isEqualTo(here);
    }
  }

  /**
   * A point of a line that is as good as in the way of its neighbours may be drawn here or there.
   */
  @Test
  void theSamePicturesAreDrawn() throws Exception {
    Path file = example("mid-terrace");
    String here =
        Page.dayPictures(Files.readString(file), file.getFileName().toString(), Told.NOBODY);
    for (Compiled compiled : Compiled.values()) {
      assertThat(words(from(compiled, "dayPictures", file)))
          .as(compiled.toString())
          .isEqualTo(words(here))
          .hasSizeGreaterThan(300);
    }
  }

  private static List<String> words(String svg) {
    return Pattern.compile("<text[^>]*>[^<]*")
        .matcher(svg.replace("\\u003c", "<"))
        .results()
        .map(r -> r.group())
        .toList();
  }

  @Test
  void theVerdictIsTheSame() throws Exception {
    Path file = example("single-room");
    String here = Page.confirm(Files.readString(file), file.getFileName().toString(), Told.NOBODY);
    for (Compiled compiled : Compiled.values()) {
      assertThat(from(compiled, "confirm", file)).as(compiled.toString()).isEqualTo(here);
    }
  }
}
