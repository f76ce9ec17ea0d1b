package settle.scenarios.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import settle.scenarios.definition.DefinitionSection;
import settle.scenarios.definition.Definitions;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Value;
import settle.scenarios.house.ScenarioFormat;

/** The built-in definitions. */
public final class Catalogue {

  /** Its files, beside this class. */
  public static final List<String> FILES = List.of("fabric.yaml", "emitters.yaml", "plant.yaml");

  private static final List<DefinitionSection<?>> SECTIONS = ScenarioFormat.BUILT_IN.sections();

  private Catalogue() {}

  /** Read when it is first asked for, once: it never changes. */
  private static final class Read {
    static final Definitions ALL = read();
  }

  /**
   * The catalogue.
   *
   * @return its definitions, always the same
   */
  public static Definitions builtIn() {
    return Read.ALL;
  }

  private static Definitions read() {
    Definitions all = new Definitions(SECTIONS);
    for (String file : FILES) {
      cut(resource(file), all);
    }
    return all;
  }

  /**
   * Cuts a file into its definitions without reading them. The files are ordinary YAML, laid out
   * one way: sections at the margin, names two spaces in, no aliases from one definition to
   * another. A test reads them whole and compares.
   */
  private static void cut(String text, Definitions all) {
    String section = "";
    StringBuilder definition = new StringBuilder();
    for (String line : text.split("\n")) {
      boolean heading = startsAt(0, line);
      if (heading || startsAt(2, line)) {
        add(section, definition.toString(), all);
        definition.setLength(0);
      }
      if (heading) {
        section = line.strip().replace(":", "");
      } else {
        definition.append(line).append('\n');
      }
    }
    add(section, definition.toString(), all);
  }

  private static boolean startsAt(int indent, String line) {
    return line.length() > indent
        && line.substring(0, indent).isBlank()
        && line.charAt(indent) != ' '
        && line.charAt(indent) != '#';
  }

  private static void add(String section, String definition, Definitions all) {
    if (!startsAt(2, definition)) {
      return; // comments before the first
    }
    String name = definition.substring(0, definition.indexOf(':')).strip();
    DefinitionSection<?> of =
        SECTIONS.stream().filter(s -> s.name().equals(section)).findFirst().orElseThrow();
    all.addUnread(of, name, () -> parsed(section, definition).named(name).get(name));
  }

  private static Value parsed(String section, String definition) {
    try {
      return new Value(
          section, YamlDocument.parse(definition), Position.START, new Findings(section));
    } catch (DocumentException e) {
      throw new IllegalStateException(section + ": " + e.getMessage(), e);
    }
  }

  static String resource(String file) {
    try (InputStream in = Catalogue.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
