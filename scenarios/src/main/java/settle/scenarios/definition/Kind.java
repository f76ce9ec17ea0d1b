package settle.scenarios.definition;

import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.format.Typed;

/**
 * One kind of the things that a section describes, such as a panel among emitters: all that the
 * format knows of it. A kind is registered by a place in the list of its section.
 *
 * @param word what 'kind' says
 * @param meaning the word, with what it means where that does not go without saying
 * @param table its keys, but 'kind' and what every definition has
 * @param reader reads them
 * @param makes whether something was made by this kind
 * @param typed the keys that read back as something that this kind made
 * @param <T> how it is described
 * @param <M> what is made of the description
 */
public record Kind<T extends Defined, M>(
    String word,
    String meaning,
    Table table,
    DefinitionSection.Reader<T> reader,
    Predicate<M> makes,
    Function<M, Typed> typed) {

  /** A kind of which nothing is ever typed anew. */
  public Kind(String word, String meaning, Table table, DefinitionSection.Reader<T> reader) {
    this(word, meaning, table, reader, m -> false, m -> new Typed());
  }

  /** The keys that read back as something, 'kind' among them. */
  public static <M> Typed typed(List<? extends Kind<?, M>> kinds, M thing) {
    for (Kind<?, M> kind : kinds) {
      if (kind.makes.test(thing)) {
        return new Typed().put(Key.KIND, kind.word).putAll(kind.typed.apply(thing));
      }
    }
    throw new IllegalArgumentException("no kind made " + thing);
  }
}
