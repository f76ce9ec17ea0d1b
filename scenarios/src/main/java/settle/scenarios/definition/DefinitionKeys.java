package settle.scenarios.definition;

import java.util.LinkedHashMap;
import java.util.Map;
import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;

/** What every thing says of itself that is described once and used by name. */
public final class DefinitionKeys {

  public static final Key ABOUT = Key.optional("about", new Words(), "what it is, in a line");
  public static final Key SOURCE =
      Key.optional("source", new Words(), "where the figures come from");

  public static final String KIND = "kind";

  private DefinitionKeys() {}

  public static Key section(String name, String kind, Form each) {
    return Key.optional(name, new Named(kind, each), "your own, besides those of the catalogue");
  }

  public static Map<String, Table> ordered(Object... namesAndTables) {
    Map<String, Table> tables = new LinkedHashMap<>();
    for (int i = 0; i < namesAndTables.length; i += 2) {
      tables.put((String) namesAndTables[i], (Table) namesAndTables[i + 1]);
    }
    return tables;
  }
}
