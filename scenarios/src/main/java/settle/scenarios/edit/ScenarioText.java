package settle.scenarios.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The text of a scenario, of which single values can be changed. What is written once and meant
 * twice, by anchor and alias, is written out where a change concerns only one of the two.
 */
final class ScenarioText {

  private String text;
  private Part root;

  /**
   * @param text a well-formed document of keys with values
   */
  ScenarioText(String text) {
    set(text);
  }

  private void set(String changed) {
    text = changed;
    root = PartReader.read(changed);
  }

  /** The text as it now is. */
  String text() {
    return text;
  }

  /** Whether something is written under a path of keys; a number picks an item of a list. */
  boolean has(List<Object> path) {
    Part part = root;
    for (Object step : path) {
      Optional<Part> next = below(target(part), step);
      if (next.isEmpty()) {
        return false;
      }
      part = next.get();
    }
    return true;
  }

  /** How many items stand under a path: none where nothing does, one where it is no list. */
  int count(List<Object> path) {
    Part part = root;
    for (Object step : path) {
      Optional<Part> next = below(target(part), step);
      if (next.isEmpty()) {
        return 0;
      }
      part = next.get();
    }
    return target(part) instanceof Part.Items items ? items.items().size() : 1;
  }

  /**
   * Writes a value under a path of keys: in place of the one that is there, in place of a key that
   * it excludes, or as a new key after those that are there.
   *
   * @param path keys from the top, the last a key; a number picks an item of a list, or a value
   *     that stands alone instead of a list
   * @param value as it is to stand there
   * @param rival key that it takes the place of; empty for none
   */
  void put(List<Object> path, String value, String rival) {
    separate(path);
    Part part = root;
    for (int i = 0; i < path.size(); i++) {
      Optional<Part> next = below(part, path.get(i));
      if (next.isEmpty()) {
        insert((Part.Keys) part, path.subList(i, path.size()), value, rival);
        return;
      }
      part = next.get();
    }
    replace(part.from(), part.to(), part.from() == part.to() ? " " + value : value);
  }

  private static Optional<Part> below(Part part, Object step) {
    if (step instanceof Integer item) {
      if (part instanceof Part.Items items) {
        return Optional.of(items.items().get(item));
      }
      return Optional.of(part);
    }
    return part instanceof Part.Keys keys
        ? keys.entry((String) step).map(Part.Entry::value)
        : Optional.empty();
  }

  private void replace(int from, int to, String by) {
    set(text.substring(0, from) + by + text.substring(to));
  }

  private void insert(Part.Keys keys, List<Object> path, String value, String rival) {
    Optional<Part.Entry> excluded =
        rival.isEmpty() || path.size() > 1 ? Optional.empty() : keys.entry(rival);
    if (excluded.isPresent()) {
      replace(excluded.get().key().from(), excluded.get().value().to(), path.get(0) + ": " + value);
      return;
    }
    if (keys.flow()) {
      boolean empty = keys.entries().isEmpty();
      int at = empty ? keys.to() - 1 : last(keys).value().to();
      replace(at, at, (empty ? "" : ", ") + flow(path, value));
      return;
    }
    int at = keys.to();
    while (at < text.length() && text.charAt(at) != '\n' && text.charAt(at) != '\r') {
      at++;
    }
    String indent = " ".repeat(column(keys.entries().get(0).key().from()));
    replace(at, at, lineEnd() + indent + block(path, value, indent));
  }

  private static Part.Entry last(Part.Keys keys) {
    return keys.entries().get(keys.entries().size() - 1);
  }

  /** The outermost key on a line of its own, the rest in braces. */
  private String block(List<Object> path, String value, String indent) {
    if (path.size() == 1) {
      return path.get(0) + ": " + value;
    }
    return path.get(0)
        + ":"
        + lineEnd()
        + indent
        + "  "
        + flow(path.subList(1, path.size()), value);
  }

  private static String flow(List<Object> path, String value) {
    String inner = value;
    for (int i = path.size() - 1; i > 0; i--) {
      inner = "{" + path.get(i) + ": " + inner + "}";
    }
    return path.get(0) + ": " + inner;
  }

  private String lineEnd() {
    int first = text.indexOf('\n');
    return first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
  }

  private int column(int at) {
    int start = at;
    while (start > 0 && text.charAt(start - 1) != '\n' && text.charAt(start - 1) != '\r') {
      start--;
    }
    return at - start;
  }

  /** Writes aliases out until nothing along the path is shared. */
  private void separate(List<Object> path) {
    Optional<Part.Alias> shared = sharedAlong(path);
    while (shared.isPresent()) {
      writeOut(shared.get());
      shared = sharedAlong(path);
    }
  }

  private Optional<Part.Alias> sharedAlong(List<Object> path) {
    Part part = root;
    for (int i = 0; i <= path.size(); i++) {
      if (part instanceof Part.Alias alias) {
        return Optional.of(alias);
      }
      if (!part.anchor().isEmpty()) {
        String name = part.anchor();
        Optional<Part.Alias> user =
            aliases(root, new ArrayList<>()).stream()
                .filter(a -> a.name().equals(name))
                .findFirst();
        if (user.isPresent()) {
          return user;
        }
      }
      if (i < path.size()) {
        Optional<Part> next = below(part, path.get(i));
        if (next.isEmpty()) {
          return Optional.empty();
        }
        part = next.get();
      }
    }
    return Optional.empty();
  }

  private static List<Part.Alias> aliases(Part part, List<Part.Alias> into) {
    if (part instanceof Part.Alias alias) {
      into.add(alias);
    } else if (part instanceof Part.Items items) {
      items.items().forEach(item -> aliases(item, into));
    } else if (part instanceof Part.Keys keys) {
      keys.entries().forEach(entry -> aliases(entry.value(), into));
    }
    return into;
  }

  /** What a part stands for. */
  private Part target(Part part) {
    return part instanceof Part.Alias alias ? anchored(root, alias).orElseThrow() : part;
  }

  /** The last part before an alias that has its anchor. */
  private static Optional<Part> anchored(Part part, Part.Alias alias) {
    Optional<Part> found = Optional.empty();
    if (part.anchor().equals(alias.name()) && part.to() <= alias.from()) {
      found = Optional.of(part);
    }
    if (part instanceof Part.Items items) {
      for (Part item : items.items()) {
        found = anchored(item, alias).or(orElse(found));
      }
    } else if (part instanceof Part.Keys keys) {
      for (Part.Entry entry : keys.entries()) {
        found = anchored(entry.value(), alias).or(orElse(found));
      }
    }
    return found;
  }

  private static java.util.function.Supplier<Optional<Part>> orElse(Optional<Part> found) {
    return () -> found;
  }

  /** Puts what an alias stands for in its place. */
  private void writeOut(Part.Alias alias) {
    Part source = target(alias);
    int from = withoutAnchor(source);
    String copy = text.substring(from, source.to());
    boolean block =
        (source instanceof Part.Keys keys && !keys.flow())
            || (source instanceof Part.Items items && !items.flow());
    if (!block) {
      replace(alias.from(), alias.to(), copy);
      return;
    }
    int line = alias.from() - column(alias.from());
    int parent = line;
    while (text.charAt(parent) == ' ' || text.charAt(parent) == '-') {
      parent++;
    }
    int indent = column(from);
    int wanted = Math.max(indent, parent - line + 2);
    String pad = " ".repeat(wanted - indent);
    String lines = (" ".repeat(indent) + copy).replaceAll("(?m)^(?=.)", pad);
    int at = alias.from();
    while (text.charAt(at - 1) == ' ') {
      at--;
    }
    replace(at, alias.to(), lineEnd() + lines);
  }

  private int withoutAnchor(Part part) {
    int from = part.from();
    if (!part.anchor().isEmpty() && text.charAt(from) == '&') {
      from += 1 + part.anchor().length();
      while (Character.isWhitespace(text.charAt(from)) || text.charAt(from) == '#') {
        from = text.charAt(from) == '#' ? text.indexOf('\n', from) : from + 1;
      }
    }
    return from;
  }
}
