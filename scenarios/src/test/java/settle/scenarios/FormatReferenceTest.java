package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.house.ScenarioFormat;

/** The reference of the format, {@code FORMAT.md}, follows from the format's tables. */
class FormatReferenceTest {

  private static final Path PUBLISHED = Path.of("FORMAT.md");

  private final Map<String, Table> sections = new LinkedHashMap<>();

  /**
   * After a change of the format: {@code mvn -pl scenarios -am test -Dtest=FormatReferenceTest
   * -Dformat.write=true}.
   */
  @Test
  void thePublishedReferenceIsTheOneThatFollowsFromTheFormat() throws Exception {
    String expected = reference();
    if (Boolean.getBoolean("format.write")) {
      Files.writeString(PUBLISHED, expected);
    }
    assertThat(Files.readString(PUBLISHED)).isEqualTo(expected);
  }

  private String reference() {
    StringBuilder text =
        new StringBuilder(
            """
            # The scenario format

            A scenario is a YAML file, UTF-8. Values carry their unit; powers may be typed as figures and degrees as letters
            (`m2`, `W/m2K`, `degC`); decimals take a point. Only keys marked **required** must be there; the last column says what
            is taken for the others and where it comes from. `settle check FILE` lists what a file left out. The same rules for
            editors: `src/main/resources/settle/scenarios/scenario.schema.json`.

            This page is written from the tables that the reader uses.
            """);
    walk("top of the file", ScenarioFormat.BUILT_IN.table());
    sections.forEach((path, table) -> write(text, path, table));
    return text.toString();
  }

  private void walk(String path, Table table) {
    if (sections.containsValue(table)) {
      return;
    }
    sections.put(path, table);
    for (Key key : table.keys()) {
      String prefix = path.equals("top of the file") ? "" : path + " / ";
      walk(prefix + key.name(), key.form());
    }
  }

  private void walk(String path, Form form) {
    if (form instanceof Form.Keys keys) {
      walk(path, keys.table());
    } else if (form instanceof Form.Variants variants) {
      variants
          .tables()
          .forEach(
              (kind, table) ->
                  walk(path + " (" + variants.discriminator() + ": " + kind + ")", table));
    } else if (form instanceof Form.Named named) {
      walk(path + " / NAME", named.each());
    } else if (form instanceof Form.Several several) {
      walk(path, several.each());
    } else if (form instanceof Form.Either either) {
      walk(path, either.plain());
      walk(path, either.keys());
    }
  }

  private static void write(StringBuilder text, String path, Table table) {
    text.append("\n## ").append(path).append("\n\n").append(capital(table.about())).append(".\n");
    for (Table.Alternatives group : table.alternatives()) {
      text.append(group.required() ? "\nExactly one of " : "\nAt most one of ")
          .append(
              group.keys().stream()
                  .map(k -> "`" + k.name() + "`")
                  .collect(Collectors.joining(", ")))
          .append(".\n");
    }
    text.append("\n| key | value | meaning | left out |\n| --- | --- | --- | --- |\n");
    for (Key key : table.keys()) {
      String leftOut = key.required() ? "**required**" : key.reason();
      if (!key.fallback().isEmpty()) {
        leftOut = key.fallback() + " (" + key.reason() + ")";
      }
      text.append(
          "| `%s` | %s | %s | %s |\n"
              .formatted(key.name(), value(key.form()), key.about(), leftOut));
    }
  }

  private static String value(Form form) {
    if (form instanceof Form.Quantity quantity) {
      String units =
          quantity.dimension().units().stream()
              .map(u -> u.symbol().isEmpty() ? "no unit" : u.symbol())
              .collect(Collectors.joining(", "));
      return quantity.dimension().article().replaceFirst("^an? ", "") + " (" + units + ")";
    } else if (form instanceof Form.EitherQuantity either) {
      return value(either.usual()) + "; or " + value(either.other());
    } else if (form instanceof Form.Words) {
      return "words";
    } else if (form instanceof Form.Choice choice) {
      return String.join(", ", choice.words());
    } else if (form instanceof Form.YesNo) {
      return "yes or no";
    } else if (form instanceof Form.Reference reference) {
      return (reference.kind().startsWith("e") ? "name of an " : "name of a ") + reference.kind();
    } else if (form instanceof Form.Size) {
      return "4.2 x 3.6 x 2.4 m";
    } else if (form instanceof Form.Area) {
      return "18 m² or 4.2 x 2.4 m";
    } else if (form instanceof Form.Beyond) {
      return String.join(", ", Form.Beyond.WORDS) + ", 12 °C, or a room";
    } else if (form instanceof Form.TimeOfDay) {
      return "06:30";
    } else if (form instanceof Form.Span) {
      return "06:30-09:00";
    } else if (form instanceof Form.Day) {
      return "2026-01-15";
    } else if (form instanceof Form.Keys || form instanceof Form.Variants) {
      return "keys";
    } else if (form instanceof Form.Named named) {
      return "each " + named.kind() + " by name: " + value(named.each());
    } else if (form instanceof Form.Several several) {
      return value(several.each()) + "; one or a list";
    } else if (form instanceof Form.Either either) {
      return value(either.plain()) + "; or " + value(either.keys());
    }
    throw new AssertionError("no words for " + form);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
