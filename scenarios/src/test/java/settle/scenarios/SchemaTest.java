package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import settle.scenarios.document.Node;
import settle.scenarios.document.YamlDocument;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.house.ScenarioFormat;

/** The published JSON Schema says the same as the reader. */
class SchemaTest {

  private static final Path PUBLISHED =
      Path.of("src/main/resources/settle/scenarios/scenario.schema.json");

  private static final JsonSchema SCHEMA = load();

  private static JsonSchema load() {
    try {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(Files.readString(PUBLISHED));
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  static List<Path> examples() throws Exception {
    return ExamplesTest.examples();
  }

  /**
   * After a change of the format: {@code mvn -pl scenarios -am test -Dtest=SchemaTest
   * -Dschema.write=true}.
   */
  @Test
  void thePublishedFileIsTheOneThatFollowsFromTheFormat() throws Exception {
    SchemaWriter writer = new SchemaWriter();
    String expected = writer.text(writer.schema());
    if (Boolean.getBoolean("schema.write")) {
      Files.writeString(PUBLISHED, expected);
    }
    assertThat(Files.readString(PUBLISHED)).isEqualTo(expected);
  }

  @ParameterizedTest
  @MethodSource("examples")
  void everyExampleIsAccepted(Path example) throws Exception {
    assertThat(validate(Files.readString(example))).isEmpty();
  }

  /**
   * Every key that the reader asks for somewhere is in the schema, and no other: counted by the
   * walk of both.
   */
  @Test
  void itKnowsTheReadersKeys() throws Exception {
    Set<String> readers = new TreeSet<>();
    collect(ScenarioFormat.BUILT_IN.table(), "", readers);
    Set<String> schemas = new TreeSet<>();
    JsonNode root = new ObjectMapper().readTree(Files.readString(PUBLISHED));
    collect(root, root, "", schemas);
    assertThat(schemas).containsExactlyInAnyOrderElementsOf(readers);
    assertThat(schemas).contains("/rooms/*/surfaces/openings/area", "/emitters/*/face height");
  }

  /** What the reader refuses for its structure, keys, units or words, the schema refuses too. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title: One room | titel: One room",
        "air change: 0.7 /h | air chang: 0.7 /h",
        "air change: 0.7 /h | air change: 0.7",
        "air change: 0.7 /h | air change: 0.7 m",
        "air change: 0.7 /h | air change: 0,7 /h",
        "air change: 0.7 /h | air change: .nan",
        "air change: 0.7 /h | air change:",
        "4.5 x 3.8 x 2.4 m | 4.5 x 3.8 m",
        "size: 4.5 x 3.8 x 2.4 m | floor: 17 m²",
        "wall: outdoors | floor: ground, wall: outdoors",
        "area: 4.5 x 2.4 m | area: 4.5 m",
        "construction: cavity wall filled | construction: [cavity wall filled]",
        "fixed flow: 55 °C | fixed flow: 55 °C, boiler: condensing boiler 18 kW",
        "source: {fixed flow: 55 °C} | aims: {tolerance: 0.5 K}",
        "length: 24 h | length: 24 K",
        "lockshield: 0.2 m³/h | lockshield: 0.2 m³/h, lockshield turns: 1",
      })
  void whatIsBrokenIsRejected(String find, String replace) throws Exception {
    String sound =
        Files.readString(Path.of("examples/single-room.yaml"))
            .replace("source:\n  fixed flow: 55 °C", "source: {fixed flow: 55 °C}");
    assertThat(sound).contains(find);
    assertThat(validate(sound)).isEmpty();
    assertThat(validate(sound.replace(find, replace))).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.7 /h | 0.7 1/h",
        "0.7 /h | 0.7 ach",
        "0.7 /h | 0.7 h^-1",
        "55 °C | 55 degC",
        "55 °C | 55 C",
        "24 h | 1 d",
        "24 h | 24 hours",
        "0.2 m³/h | 0.2 m3/h",
        "0.2 m³/h | 0.2",
        "-3 °C | −3 °C",
        "1.8 x 1.2 m | 1.8 m x 120 cm",
      })
  void plainSpellingsAreAcceptedByBoth(String find, String replace) throws Exception {
    String text = Files.readString(Path.of("examples/single-room.yaml"));
    String changed = replace == null ? text : text.replace(find, replace);
    assertThat(validate(changed)).isEmpty();
    Path file = Files.createTempFile("settle", ".yaml");
    Files.writeString(file, changed);
    assertThat(ScenarioFiles.read(file).house()).isNotNull();
    Files.delete(file);
  }

  private static Set<ValidationMessage> validate(String yaml) throws Exception {
    return SCHEMA.validate(json(YamlDocument.parse(yaml)));
  }

  /**
   * As an editor sees it: plain texts that look like numbers are numbers, true and false are
   * booleans, those that look like nothing are null.
   */
  private static JsonNode json(Node node) {
    JsonNodeFactory factory = JsonNodeFactory.instance;
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = factory.objectNode();
      mapping.entries().forEach(e -> object.set(e.key(), json(e.value())));
      return object;
    } else if (node instanceof Node.Items items) {
      ArrayNode array = factory.arrayNode();
      items.items().forEach(i -> array.add(json(i)));
      return array;
    }
    Node.Text text = (Node.Text) node;
    if (text.isEmpty()) {
      return factory.nullNode();
    }
    if (!text.quoted() && text.text().matches("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?")) {
      return factory.numberNode(Double.parseDouble(text.text()));
    }
    if (!text.quoted() && text.text().matches("true|false")) {
      return factory.booleanNode(Boolean.parseBoolean(text.text()));
    }
    return factory.textNode(text.text());
  }

  private static void collect(Table table, String path, Set<String> keys) {
    for (Key key : table.keys()) {
      keys.add(path + "/" + key.name());
      collect(key.form(), path + "/" + key.name(), keys);
    }
  }

  private static void collect(Form form, String path, Set<String> keys) {
    if (form instanceof Form.Keys below) {
      collect(below.table(), path, keys);
    } else if (form instanceof Form.Variants variants) {
      variants.tables().values().forEach(t -> collect(t, path, keys));
    } else if (form instanceof Form.Named named) {
      collect(named.each(), path + "/*", keys);
    } else if (form instanceof Form.Several several) {
      collect(several.each(), path, keys);
    } else if (form instanceof Form.Either either) {
      collect(either.plain(), path, keys);
      collect(either.keys(), path, keys);
    }
  }

  private static void collect(JsonNode root, JsonNode schema, String path, Set<String> keys) {
    if (schema.has("$ref")) {
      collect(root, root.at(schema.get("$ref").asText().substring(1)), path, keys);
    }
    schema
        .path("properties")
        .fields()
        .forEachRemaining(
            p -> {
              keys.add(path + "/" + p.getKey());
              collect(root, p.getValue(), path + "/" + p.getKey(), keys);
            });
    if (schema.path("additionalProperties").isObject()) {
      collect(root, schema.get("additionalProperties"), path + "/*", keys);
    }
    if (schema.has("items")) {
      collect(root, schema.get("items"), path, keys);
    }
    List<JsonNode> choices = new ArrayList<>();
    schema.path("anyOf").forEach(choices::add);
    schema.path("oneOf").forEach(choices::add);
    choices.forEach(c -> collect(root, c, path, keys));
  }
}
