package settle.scenarios.definition;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;

/**
 * Everything that can be used by name, section by section, in the order in which it was defined.
 */
public final class Definitions {

  private final Map<String, Shelf<Defined>> shelves = new LinkedHashMap<>();

  /** Nothing yet in some sections. */
  public Definitions(List<? extends DefinitionSection<?>> sections) {
    sections.forEach(s -> shelves.put(s.name(), new Shelf<>()));
  }

  /**
   * Reads what a scenario, or a file of the catalogue, defines besides what there is.
   *
   * @param root the top of the file
   * @param sections those it may have
   * @param others what there is already; not modified
   * @return both
   */
  public static Definitions read(
      Section root, List<? extends DefinitionSection<?>> sections, Definitions others) {
    Definitions all = new Definitions(sections);
    others.shelves.forEach((name, shelf) -> all.shelves.put(name, new Shelf<>(shelf)));
    for (DefinitionSection<?> section : sections) {
      Shelf<Defined> shelf = all.shelves.get(section.name());
      root.named(section.key())
          .forEach(
              (name, value) -> {
                if (shelf.containsKey(name)) {
                  value.problem("the catalogue has this name already; choose another");
                } else {
                  shelf.put(name, section.read(name, value, all));
                }
              });
    }
    return all;
  }

  /** Adds one that is read when it is first asked for. */
  public void addUnread(DefinitionSection<?> section, String name, Supplier<Value> value) {
    shelves.get(section.name()).putUnread(name, () -> section.read(name, value.get(), this));
  }

  /** What a section has, by name. */
  @SuppressWarnings("unchecked") // what stands on a shelf was read by the section of its name
  public <T extends Defined> Map<String, T> of(DefinitionSection<T> section) {
    return (Map<String, T>) Collections.unmodifiableMap(shelves.get(section.name()));
  }

  /** Everything, by name of the section and by its own. */
  public Map<String, Map<String, Defined>> all() {
    return Collections.unmodifiableMap(shelves);
  }

  /** What a key names; left out its default, noted; the stand-in where there is none. */
  public <T extends Defined> T named(Section s, Key key, DefinitionSection<T> section) {
    Map<String, T> all = of(section);
    return all.get(s.name(key, all.keySet(), section.standIn()));
  }
}
