package settle.scenarios.catalogue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Position;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.format.DefinitionKeys;
import settle.scenarios.format.Findings;
import settle.scenarios.format.Value;

/** The built-in definitions. */
public final class Catalogue {

  /** Stand-ins for names that could not be found, so that reading can go on and find more. */
  public static final String ANY_MATERIAL = "brick";

  public static final String ANY_CONSTRUCTION = "solid brick wall";
  public static final String ANY_GLAZING = "double glazing";
  public static final String ANY_EMITTER = "type 22 600 mm";
  public static final String ANY_PIPE = "15 mm copper";
  public static final String ANY_VALVE = "thermostatic valve";
  public static final String ANY_BOILER = "condensing boiler 18 kW";

  /** What closes a room towards rooms as warm, where the scenario does not say. */
  public static final String INNER_WALL = "stud partition";

  public static final String INNER_FLOOR = "timber intermediate floor";

  private static final List<String> FILES = List.of("fabric.yaml", "emitters.yaml", "plant.yaml");

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
    Definitions all = new Definitions();
    for (String file : FILES) {
      Findings findings = new Findings(file);
      try {
        Value root = new Value("", YamlDocument.parse(resource(file)), Position.START, findings);
        all = DefinitionsReader.read(root.section(DefinitionKeys.CATALOGUE_TABLE), all);
      } catch (DocumentException e) {
        throw new IllegalStateException(file + ": " + e.getMessage(), e);
      }
      if (findings.problemCount() > 0) {
        throw new IllegalStateException(findings.problems().get(0).toString());
      }
    }
    return all;
  }

  private static String resource(String file) {
    try (InputStream in = Catalogue.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
