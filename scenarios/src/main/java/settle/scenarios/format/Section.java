package settle.scenarios.format;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import settle.scenarios.document.Node;
import settle.scenarios.document.Position;

/**
 * Keys with values, read against their table: unknown keys, missing keys and keys that exclude each
 * other are noted when it is made, values when they are asked for. A key left out takes its
 * default, and that is noted too.
 */
public final class Section {

  /** Between the keys of a path. */
  static final String SEPARATOR = " / ";

  private final Value self;
  private final Node.Mapping mapping;
  private final Table table;
  private final Findings findings;

  /** Whether the keys could be read at all; where not, that is noted and nothing more need be. */
  private final boolean sound;

  Section(Value self, Node node, Table table, Findings findings) {
    this.self = self;
    this.table = table;
    this.findings = findings;
    if (node instanceof Node.Mapping keys) {
      this.mapping = keys;
      this.sound = true;
      checkKeys();
    } else {
      this.mapping = new Node.Mapping(List.of(), self.keyPosition());
      this.sound = false;
      if (node != null) {
        self.problem(
            "found "
                + node.found()
                + ", expected keys such as "
                + String.join(", ", first(table.names())));
      }
    }
  }

  /** The section of a key that is left out: all its defaults apply. */
  private Section(Value self, Table table, Findings findings) {
    this.self = self;
    this.table = table;
    this.findings = findings;
    this.mapping = new Node.Mapping(List.of(), self.keyPosition());
    this.sound = true;
    checkKeys();
  }

  private static List<String> first(List<String> names) {
    return names.subList(0, Math.min(4, names.size()));
  }

  private void checkKeys() {
    for (Node.Entry entry : mapping.entries()) {
      if (table.key(entry.key()).isEmpty()) {
        findings.problem(
            entry.keyPosition(),
            prefixed(
                "unknown key '"
                    + shown(entry.key())
                    + "'"
                    + NearestName.hint(entry.key(), table.names())));
      }
    }
    for (Key key : table.keys()) {
      if (key.required() && !has(key)) {
        lacks(key);
      }
    }
    for (Table.Alternatives group : table.alternatives()) {
      List<Key> written = new ArrayList<>();
      for (Key key : group.keys()) {
        if (has(key)) {
          written.add(key);
        }
      }
      if (written.isEmpty() && group.required()) {
        List<String> names = new ArrayList<>();
        group.keys().forEach(k -> names.add("'" + k.name() + "'"));
        findings.problem(self.keyPosition(), prefixed("lacks one of " + String.join(", ", names)));
      } else if (written.size() > 1) {
        findings.problem(
            at(written.get(1)),
            prefixed(
                "'"
                    + written.get(0).name()
                    + "' and '"
                    + written.get(1).name()
                    + "' exclude each other; write one"));
      }
    }
  }

  private static String shown(String key) {
    return new Node.Text(key, true, Position.START).found();
  }

  /** The path of keys that leads here. */
  public String where() {
    return self.where();
  }

  /** Where the section's own key begins. */
  public Position position() {
    return self.keyPosition();
  }

  /** Notes a mistake in the section as a whole. */
  public void problem(String message) {
    findings.problem(self.keyPosition(), prefixed(message));
  }

  /** Notes that a key is missing, with what its value should look like. */
  public void lacks(Key key) {
    String expected =
        key.form() instanceof Form.Quantity quantity
            ? "expected " + quantity.dimension().expected()
            : key.about();
    problem("lacks '" + key.name() + "', " + expected);
  }

  /** Notes a doubt about the section as a whole. */
  public void warn(String message) {
    findings.warn(self.keyPosition(), prefixed(message));
  }

  /** Whether the section could be read as keys with values. */
  public boolean isSound() {
    return sound;
  }

  /**
   * The value of a key as typed, for a key that decides which others there are; empty where it is
   * left out.
   */
  public String variant(String key) {
    return mapping.entry(key).map(e -> e.value().found()).orElse("");
  }

  /** Whether a key is written. */
  public boolean has(Key key) {
    return mapping.entry(key.name()).isPresent();
  }

  /** The value of a key. */
  public Optional<Value> value(Key key) {
    return mapping.entry(key.name()).map(self::child);
  }

  /** A number in SI. Left out: the key's default, noted; a stand-in where it is required. */
  public double number(Key key) {
    Form.Quantity form = (Form.Quantity) key.form();
    Optional<Value> value = value(key);
    if (value.isPresent()) {
      return value.get().number(form);
    }
    if (key.fallback().isEmpty()) {
      return Value.standIn(form);
    }
    note(key, key.fallback());
    return key.fallbackNumber();
  }

  /** A number in SI. Left out: a value that was worked out, noted with the key's reason. */
  public double number(Key key, double workedOut) {
    return number(key, workedOut, key.reason());
  }

  /** A number in SI whose reason, where it is left out, depends on what else is written. */
  public double number(Key key, double workedOut, String reason) {
    Form.Quantity form = (Form.Quantity) key.form();
    Optional<Value> value = value(key);
    if (value.isPresent()) {
      return value.get().number(form);
    }
    noteDefault(key.name(), form.dimension().show(workedOut), reason);
    return workedOut;
  }

  /** A number in SI, if it is written. */
  public OptionalDouble numberIfWritten(Key key) {
    Optional<Value> value = value(key);
    return value.isPresent()
        ? OptionalDouble.of(value.get().number((Form.Quantity) key.form()))
        : OptionalDouble.empty();
  }

  /** One of a few words. Left out: the default, noted. */
  public String choice(Key key) {
    Optional<Value> value = value(key);
    if (value.isPresent()) {
      return value.get().choice((Form.Choice) key.form());
    }
    return noted(key);
  }

  /** The name of one of some things. Left out: the default, noted; else the stand-in. */
  public String name(Key key, Collection<String> names, String standIn) {
    Optional<Value> value = value(key);
    if (value.isPresent()) {
      return value.get().reference((Form.Reference) key.form(), names, standIn);
    }
    return key.fallback().isEmpty() ? standIn : noted(key);
  }

  /** Yes or no. Left out: the default, noted. */
  public boolean yesNo(Key key) {
    Optional<Value> value = value(key);
    return value.isPresent() ? value.get().yesNo() : Form.YesNo.YES.contains(noted(key));
  }

  /** Words. Left out: the default, noted. */
  public String words(Key key) {
    Optional<Value> value = value(key);
    return value.isPresent() ? value.get().words() : noted(key);
  }

  /** Words. Left out: the other words, not noted. */
  public String words(Key key, String otherwise) {
    return value(key).map(Value::words).orElse(otherwise);
  }

  /** A time of day [s since midnight]. Left out: the default, noted. */
  public double timeOfDay(Key key) {
    Optional<Value> value = value(key);
    if (value.isEmpty()) {
      note(key, key.fallback());
    }
    return value.map(Value::timeOfDay).orElse(key.fallbackNumber());
  }

  /** The section under a key; where it is left out, one without keys, whose defaults apply. */
  public Section section(Key key) {
    Table below = ((Form.Keys) key.form()).table();
    return value(key)
        .map(v -> v.section(below))
        .orElseGet(
            () ->
                new Section(
                    new Value(path(key), mapping, self.keyPosition(), findings), below, findings));
  }

  /** The items under a key, none where it is left out; one value may stand alone. */
  public List<Value> several(Key key) {
    return value(key).map(Value::several).orElse(List.of());
  }

  /** The named values under a key, none where it is left out. */
  public Map<String, Value> named(Key key) {
    return value(key).map(v -> v.named(((Form.Named) key.form()).kind())).orElse(Map.of());
  }

  /** Notes that a key was left out and what was taken. */
  public void note(Key key, String taken) {
    if (sound) {
      findings.defaultUsed(self.where(), key.name(), taken, key.reason());
    }
  }

  /** Notes a value that was worked out for something that has no key of its own. */
  public void noteDefault(String what, String taken, String reason) {
    if (sound) {
      findings.defaultUsed(self.where(), what, taken, reason);
    }
  }

  private String noted(Key key) {
    note(key, key.fallback());
    return key.fallback();
  }

  private Position at(Key key) {
    return mapping.entry(key.name()).orElseThrow().keyPosition();
  }

  private String path(Key key) {
    return self.where().isEmpty() ? key.name() : self.where() + SEPARATOR + key.name();
  }

  private String prefixed(String message) {
    return self.where().isEmpty() ? message : self.where() + ": " + message;
  }
}
