package settle.scenarios.definition;

import java.util.AbstractMap;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Things by name, in the order in which they were put, each read when it is first asked for: a
 * scenario uses a dozen of the catalogue's hundred, and start-up time is seen by everyone.
 *
 * @param <T> what is on it
 */
final class Shelf<T> extends AbstractMap<String, T> {

  private final Map<String, Supplier<T>> unread = new LinkedHashMap<>();
  private final Map<String, T> read = new HashMap<>();

  Shelf() {}

  /** Everything that another one holds, still unread where it is unread there. */
  Shelf(Shelf<T> other) {
    for (String name : other.unread.keySet()) {
      unread.put(name, () -> other.get(name));
    }
  }

  void putUnread(String name, Supplier<T> thing) {
    unread.put(name, thing);
  }

  @Override
  public T put(String name, T thing) {
    unread.put(name, () -> thing);
    return read.put(name, thing);
  }

  @Override
  public synchronized T get(Object name) {
    T thing = read.get(name);
    if (thing == null && unread.containsKey(name)) {
      thing = unread.get(name).get();
      read.put((String) name, thing);
    }
    return thing;
  }

  @Override
  public boolean containsKey(Object name) {
    return unread.containsKey(name);
  }

  @Override
  public int size() {
    return unread.size();
  }

  @Override
  public Set<String> keySet() {
    return Collections.unmodifiableSet(unread.keySet());
  }

  @Override
  public Set<Entry<String, T>> entrySet() {
    Map<String, T> all = new LinkedHashMap<>();
    for (String name : unread.keySet()) {
      all.put(name, get(name));
    }
    return Collections.unmodifiableMap(all).entrySet();
  }
}
