package settle.cli.golden;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The JSON document in an approved record. That the program gives it today is held by {@link
 * GoldenRecordTest}, so that others read here what they would have to find out anew.
 */
public record ApprovedAnswer(Object value) {

  private static final String BEGIN = "---- summary.json\n";
  private static final String END = "\n}\n";

  /**
   * What one command gave.
   *
   * @param name of the record, without its ending
   */
  public static ApprovedAnswer of(String name) throws IOException {
    String json = text(name);
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return new ApprovedAnswer(value(parser));
    }
  }

  /** Its text. */
  public static String text(String name) throws IOException {
    String record = Files.readString(GoldenRecordTest.APPROVED.resolve(name + ".txt"));
    int from = record.indexOf(BEGIN) + BEGIN.length();
    return record.substring(from, record.indexOf(END, from) + END.length());
  }

  private static Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> {
        Map<String, Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
          String name = parser.currentName();
          parser.nextToken();
          fields.put(name, value(parser));
        }
        yield fields;
      }
      case START_ARRAY -> {
        List<Object> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          elements.add(value(parser));
        }
        yield elements;
      }
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NULL -> null;
      default -> parser.getText();
    };
  }

  /** What is in fields within fields. */
  public ApprovedAnswer at(String... names) {
    Object found = value;
    for (String name : names) {
      if (!(found instanceof Map<?, ?> fields) || !fields.containsKey(name)) {
        throw new AssertionError("no " + name + " in " + found);
      }
      found = fields.get(name);
    }
    return new ApprovedAnswer(found);
  }

  /** Its elements. */
  public List<ApprovedAnswer> all() {
    return ((List<?>) value).stream().map(ApprovedAnswer::new).toList();
  }

  public double number() {
    return (double) value;
  }

  public String words() {
    return (String) value;
  }

  public boolean yes() {
    return (boolean) value;
  }
}
