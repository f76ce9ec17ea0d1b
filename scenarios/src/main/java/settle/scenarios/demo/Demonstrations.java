package settle.scenarios.demo;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.sim.demo.Demonstration;
import settle.sim.demo.Figure;

/** The demonstrations there are: their index, read, with the scenarios it names. */
public final class Demonstrations {

  private static final String INDEX = "index.yaml";

  private Demonstrations() {}

  /** All of them, in the order in which they are best shown. */
  public static List<ReadyMade> all() {
    Findings findings = new Findings(INDEX);
    List<ReadyMade> all = new ArrayList<>();
    for (Map.Entry<String, Value> entry : index(findings).entrySet()) {
      String name = entry.getKey();
      TwoVersions scenario = new TwoVersions(resource(name + ".yaml"));
      Section s = entry.getValue().section(DemonstrationKeys.DEMONSTRATION);
      all.add(
          new ReadyMade(
              demonstration(name, s, scenario),
              headed(name, "before", scenario.before()),
              headed(name, "after", scenario.after())));
    }
    if (findings.problemCount() > 0) {
      throw new IllegalStateException(findings.problems().toString());
    }
    return all;
  }

  /** Their names, without reading the scenarios. */
  public static List<String> names() {
    return List.copyOf(index(new Findings(INDEX)).keySet());
  }

  private static Map<String, Value> index(Findings findings) {
    try {
      return new Value("", YamlDocument.parse(resource(INDEX)), Position.START, findings)
          .named("demonstration");
    } catch (DocumentException e) {
      throw new IllegalStateException(INDEX + ": " + e.getMessage(), e);
    }
  }

  private static Demonstration demonstration(String name, Section s, TwoVersions scenario) {
    List<Figure> figures = new ArrayList<>();
    s.named(DemonstrationKeys.FIGURES)
        .forEach((key, value) -> figures.add(figure(key, value.section(DemonstrationKeys.FIGURE))));
    return new Demonstration(
        name,
        s.words(DemonstrationKeys.TITLE),
        s.words(DemonstrationKeys.ABOUT),
        new Demonstration.Wording(
            s.words(DemonstrationKeys.QUESTION),
            s.words(DemonstrationKeys.BEFORE),
            s.words(DemonstrationKeys.AFTER),
            s.words(DemonstrationKeys.CHANGED),
            s.words(DemonstrationKeys.HAPPENED),
            s.words(DemonstrationKeys.LOOK_AT),
            s.words(DemonstrationKeys.BEWARE, "")),
        scenario.changes(),
        s.number(DemonstrationKeys.SHOWN),
        s.number(DemonstrationKeys.READ),
        figures);
  }

  private static Figure figure(String key, Section s) {
    return new Figure(
        key,
        s.words(DemonstrationKeys.WORDS),
        DemonstrationKeys.reading(s.choice(DemonstrationKeys.READS)),
        s.words(DemonstrationKeys.ROOM, ""),
        (int) s.number(DemonstrationKeys.EMITTER) - 1,
        s.yesNo(DemonstrationKeys.DRAWN));
  }

  private static String headed(String name, String version, String text) {
    return "# Demonstration '" + name + "', " + version + ".\n" + text;
  }

  private static String resource(String file) {
    try (InputStream in = Demonstrations.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
