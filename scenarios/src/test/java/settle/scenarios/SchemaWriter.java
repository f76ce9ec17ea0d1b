package settle.scenarios;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.definition.Definitions;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.house.ScenarioFormat;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.Unit;

/**
 * Writes the JSON Schema of a scenario from the tables of the format. Structure, keys, units and
 * choices come out whole; what needs the meaning of the values (limits of quantities, names of
 * things the scenario defines, sums of areas) is the reader's alone.
 */
final class SchemaWriter {

  private static final String NUMBER = "[-+\\u2212]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?";
  private static final String TIME = "([01]?\\d|2[0-4]):[0-5]\\d";

  private final ObjectMapper json = new ObjectMapper();
  private final Definitions catalogue = Catalogue.builtIn();
  private final ObjectNode definitions = json.createObjectNode();

  ObjectNode schema() {
    ObjectNode root = json.createObjectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "settle scenario");
    root.setAll(table(ScenarioFormat.BUILT_IN.table()));
    root.set("$defs", definitions);
    return root;
  }

  private ObjectNode table(Table table) {
    ObjectNode node = json.createObjectNode();
    node.put("type", "object");
    node.put("description", table.about());
    ObjectNode properties = node.putObject("properties");
    ArrayNode required = json.createArrayNode();
    for (Key key : table.keys()) {
      ObjectNode property = form(key.form());
      property.put("description", description(key));
      properties.set(key.name(), property);
      if (key.required()) {
        required.add(key.name());
      }
    }
    node.put("additionalProperties", false);
    if (!required.isEmpty()) {
      node.set("required", required);
    }
    if (!table.alternatives().isEmpty()) {
      ArrayNode all = node.putArray("allOf");
      for (Table.Alternatives group : table.alternatives()) {
        all.add(alternatives(group));
      }
    }
    return node;
  }

  /** A section is written once, under what it describes. */
  private ObjectNode reference(Table table) {
    String name = table.about().replaceAll("[^A-Za-z0-9]+", "-");
    if (!definitions.has(name)) {
      definitions.putObject(name);
      definitions.set(name, table(table));
    }
    return json.createObjectNode().put("$ref", "#/$defs/" + name);
  }

  private static String description(Key key) {
    if (!key.fallback().isEmpty()) {
      return key.about() + ". Left out: " + key.fallback() + " (" + key.reason() + ")";
    }
    return key.reason().isEmpty() ? key.about() : key.about() + ". Left out: " + key.reason();
  }

  private ObjectNode alternatives(Table.Alternatives group) {
    ObjectNode node = json.createObjectNode();
    ArrayNode one = node.putArray("oneOf");
    ObjectNode none = json.createObjectNode();
    ArrayNode any = none.putObject("not").putArray("anyOf");
    for (Key key : group.keys()) {
      one.addObject().putArray("required").add(key.name());
      any.addObject().putArray("required").add(key.name());
    }
    if (!group.required()) {
      one.add(none);
    }
    return node;
  }

  private ObjectNode form(Form form) {
    if (form instanceof Form.Quantity quantity) {
      return quantity(quantity);
    } else if (form instanceof Form.EitherQuantity either) {
      ObjectNode node = json.createObjectNode();
      node.putArray("anyOf").add(form(either.usual())).add(form(either.other()));
      return node;
    } else if (form instanceof Form.Words) {
      return text(".*\\S.*");
    } else if (form instanceof Form.Choice choice) {
      return oneOfWords(choice.words());
    } else if (form instanceof Form.YesNo) {
      ObjectNode node = oneOfWords(List.of("yes", "no"));
      ((ArrayNode) node.get("enum")).add(true).add(false);
      return node;
    } else if (form instanceof Form.Reference reference) {
      return reference(reference.kind());
    } else if (form instanceof Form.Size) {
      return text(product(3));
    } else if (form instanceof Form.Area) {
      return text("(" + quantityPattern(Dimension.AREA) + "|" + product(2) + ")");
    } else if (form instanceof Form.Beyond) {
      ObjectNode node = json.createObjectNode();
      ArrayNode any = node.putArray("anyOf");
      any.add(oneOfWords(Form.Beyond.WORDS));
      any.add(text(quantityPattern(Dimension.TEMPERATURE)));
      any.add(text("[^-+.\\u2212\\d].*"));
      return node;
    } else if (form instanceof Form.TimeOfDay) {
      return text(TIME);
    } else if (form instanceof Form.Span) {
      return text(TIME + "\\s*(-|–|to)\\s*" + TIME);
    } else if (form instanceof Form.Day) {
      return text("\\d{4}-\\d{2}-\\d{2}");
    } else if (form instanceof Form.Keys keys) {
      return reference(keys.table());
    } else if (form instanceof Form.Variants variants) {
      return variants(variants);
    } else if (form instanceof Form.Named named) {
      ObjectNode node = json.createObjectNode();
      node.put("type", "object");
      node.set("additionalProperties", form(named.each()));
      return node;
    } else if (form instanceof Form.Several several) {
      ObjectNode node = json.createObjectNode();
      ArrayNode any = node.putArray("anyOf");
      any.add(form(several.each()));
      ObjectNode list = any.addObject();
      list.put("type", "array");
      list.put("minItems", 1);
      list.set("items", form(several.each()));
      return node;
    } else if (form instanceof Form.Either either) {
      ObjectNode node = json.createObjectNode();
      node.putArray("anyOf").add(form(either.plain())).add(form(either.keys()));
      return node;
    }
    throw new AssertionError("no schema for " + form);
  }

  private ObjectNode variants(Form.Variants form) {
    ObjectNode node = json.createObjectNode();
    ArrayNode one = node.putArray("oneOf");
    for (Map.Entry<String, Table> variant : form.tables().entrySet()) {
      ObjectNode table = table(variant.getValue());
      ((ObjectNode) table.get("properties").get(form.discriminator()))
          .removeAll()
          .put("const", variant.getKey());
      one.add(table);
    }
    return node;
  }

  private ObjectNode quantity(Form.Quantity form) {
    ObjectNode pattern = text(quantityPattern(form.dimension()));
    if (!form.dimension().allowsBareNumber()) {
      return pattern;
    }
    ObjectNode node = json.createObjectNode();
    node.putArray("anyOf").add(json.createObjectNode().put("type", "number")).add(pattern);
    return node;
  }

  private ObjectNode text(String pattern) {
    return json.createObjectNode()
        .put("type", "string")
        .put("pattern", "^\\s*" + pattern + "\\s*$");
  }

  private static String product(int count) {
    String length = NUMBER + "\\s*(" + unitPattern(Dimension.LENGTH) + ")";
    return "(" + length + "?\\s*[x×]\\s*){" + (count - 1) + "}" + length;
  }

  private static String quantityPattern(Dimension dimension) {
    return NUMBER + "\\s*(" + unitPattern(dimension) + ")";
  }

  /**
   * Every spelling of a dimension's units: figures for powers, and fillers between letters that do
   * not matter.
   */
  private static String unitPattern(Dimension dimension) {
    return dimension.units().stream().map(SchemaWriter::spellings).collect(Collectors.joining("|"));
  }

  private static String spellings(Unit unit) {
    StringBuilder all = new StringBuilder(spelling(unit.symbol()));
    unit.otherSpellings().forEach(s -> all.append('|').append(spelling(s)));
    return all.toString();
  }

  private static String spelling(String symbol) {
    return symbol
        .chars()
        .mapToObj(
            c ->
                switch (c) {
                  case '²' -> "[²2]";
                  case '³' -> "[³3]";
                  case '°' -> "(°|º|deg)";
                  default -> String.valueOf((char) c);
                })
        .collect(Collectors.joining("[ ·.*()^]*"))
        .concat(symbol.length() > 1 ? "\\)?" : "");
  }

  private ObjectNode oneOfWords(Collection<String> words) {
    ObjectNode node = json.createObjectNode();
    ArrayNode values = node.putArray("enum");
    words.forEach(values::add);
    return node;
  }

  /** A name: the catalogue's are offered, the scenario's own are allowed. */
  private ObjectNode reference(String kind) {
    Collection<String> names =
        ScenarioFormat.BUILT_IN.sections().stream()
            .filter(s -> s.thing().equals(kind))
            .<Collection<String>>map(s -> catalogue.of(s).keySet())
            .findFirst()
            .orElse(List.of());
    ObjectNode name = json.createObjectNode().put("type", "string");
    if (names.isEmpty()) {
      return name;
    }
    ObjectNode node = json.createObjectNode();
    node.putArray("anyOf").add(oneOfWords(names)).add(name);
    return node;
  }

  String text(JsonNode schema) throws Exception {
    return json.writerWithDefaultPrettyPrinter().writeValueAsString(schema) + "\n";
  }
}
