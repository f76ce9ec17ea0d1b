package settle.scenarios.definition;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import settle.scenarios.format.Form;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.format.Value;

/**
 * A section of things described once and used by name: in a scenario, and in the built-in
 * catalogue, which is written in the same keys. It is known by its name; a format with further
 * kinds has another section of that name.
 *
 * @param thing what messages call one of them
 * @param key the section's key
 * @param standIn name of the one that stands in where a name could not be found, so that reading
 *     can go on and find more
 * @param open holds a description against its table
 * @param reader reads it
 * @param <T> how they are described
 */
public record DefinitionSection<T extends Defined>(
    String thing, Key key, String standIn, Function<Value, Section> open, Reader<T> reader) {

  private static final Key ABOUT = Key.optional("about", new Form.Words(), "what it is, in a line");
  private static final Key SOURCE =
      Key.optional("source", new Form.Words(), "where the figures come from");

  /**
   * Reads one description.
   *
   * @param <T> how it is described
   */
  @FunctionalInterface
  public interface Reader<T> {

    /**
     * Reads it.
     *
     * @param described its name, and what it says of itself
     * @param section its keys
     * @param known what can be used by name
     */
    T read(Described described, Section section, Definitions known);
  }

  /** A section of things that are all of one kind. */
  public static <T extends Defined> DefinitionSection<T> of(
      String name, String thing, String standIn, Table keys, Reader<T> reader) {
    Form.Keys form = new Form.Keys(keys.and(ABOUT, SOURCE));
    return new DefinitionSection<>(
        thing, key(name, thing, form), standIn, v -> v.section(form.table()), reader);
  }

  /** A section of things of several kinds. */
  public static <T extends Defined> DefinitionSection<T> of(
      String name, String thing, String standIn, List<? extends Kind<T, ?>> kinds) {
    Map<String, Reader<T>> readers = new LinkedHashMap<>();
    Map<String, String> meanings = new LinkedHashMap<>();
    for (Kind<T, ?> kind : kinds) {
      readers.put(kind.word(), kind.reader());
      meanings.put(kind.word(), kind.meaning());
    }
    Key word = Key.variant(Key.KIND, meanings);
    Map<String, Table> tables = new LinkedHashMap<>();
    kinds.forEach(k -> tables.put(k.word(), k.table().headed(word).and(ABOUT, SOURCE)));
    Form.Variants form = new Form.Variants(Key.KIND, tables);
    Reader<T> first = kinds.get(0).reader();
    return new DefinitionSection<>(
        thing,
        key(name, thing, form),
        standIn,
        v -> v.section(form),
        (described, s, known) ->
            readers.getOrDefault(s.variant(Key.KIND), first).read(described, s, known));
  }

  private static Key key(String name, String thing, Form each) {
    return Key.optional(
        name, new Form.Named(thing, each), "your own, besides those of the catalogue");
  }

  /** Its name, as it is written. */
  public String name() {
    return key.name();
  }

  /** Reads what stands under a name. */
  T read(String name, Value value, Definitions known) {
    Section s = open.apply(value);
    return reader.read(new Described(name, s.words(ABOUT, ""), s.words(SOURCE, "")), s, known);
  }
}
