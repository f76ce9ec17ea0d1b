package settle.scenarios.format;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The keys of a section.
 *
 * @param about what the section describes
 * @param keys its keys
 * @param alternatives groups of keys of which only one may be written
 */
public record Table(String about, List<Key> keys, List<Alternatives> alternatives) {

  /**
   * Keys that exclude each other.
   *
   * @param required whether one must be there
   * @param keys the keys
   */
  public record Alternatives(boolean required, List<Key> keys) {}

  /** A section of independent keys. */
  public static Table of(String about, Key... keys) {
    return new Table(about, List.of(keys), List.of());
  }

  /** This section with one more key before all others. */
  public Table headed(Key first) {
    List<Key> all = new ArrayList<>(List.of(first));
    all.addAll(keys);
    return new Table(about, List.copyOf(all), alternatives);
  }

  /** This section with more independent keys, before those that exclude others. */
  public Table and(Key... more) {
    int independent = keys.size() - alternatives.stream().mapToInt(a -> a.keys().size()).sum();
    List<Key> all = new ArrayList<>(keys);
    all.addAll(independent, List.of(more));
    return new Table(about, List.copyOf(all), alternatives);
  }

  /** This section with more keys, exactly one of which is given. */
  public Table oneOf(Key... choices) {
    return with(new Alternatives(true, List.of(choices)));
  }

  /** This section with more keys, at most one of which is given. */
  public Table atMostOneOf(Key... choices) {
    return with(new Alternatives(false, List.of(choices)));
  }

  private Table with(Alternatives group) {
    List<Key> all = new ArrayList<>(keys);
    all.addAll(group.keys());
    List<Alternatives> groups = new ArrayList<>(alternatives);
    groups.add(group);
    return new Table(about, List.copyOf(all), List.copyOf(groups));
  }

  /** The key of a name. */
  public Optional<Key> key(String name) {
    for (Key key : keys) {
      if (key.name().equals(name)) {
        return Optional.of(key);
      }
    }
    return Optional.empty();
  }

  /** The names of all keys. */
  public List<String> names() {
    List<String> names = new ArrayList<>();
    for (Key key : keys) {
      names.add(key.name());
    }
    return names;
  }
}
