package settle.scenarios.catalogue;

import java.util.ArrayList;
import java.util.List;
import settle.scenarios.definition.Defined;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;

/**
 * The definitions as a list for people: what there is, what it is, its figures, where they come
 * from.
 */
public final class CatalogueListing {

  /**
   * One thing that can be used by name.
   *
   * @param section key of the section that defines such things, such as {@code constructions}
   * @param name the name a scenario uses
   * @param about what it is, in a line
   * @param facts its main figures with units
   * @param source where they come from
   */
  public record Entry(String section, String name, String about, String facts, String source) {}

  private final List<Entry> entries = new ArrayList<>();

  /**
   * Lists definitions.
   *
   * @param definitions what to list
   */
  public CatalogueListing(Definitions definitions) {
    definitions
        .all()
        .forEach((section, things) -> things.values().forEach(thing -> add(section, thing)));
  }

  /** Everything, section by section, in the order of the catalogue. */
  public List<Entry> entries() {
    return List.copyOf(entries);
  }

  private void add(String section, Defined thing) {
    Described d = thing.described();
    entries.add(new Entry(section, d.name(), d.about(), thing.facts(), d.source()));
  }
}
