package settle.cli.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.Node;
import settle.scenarios.document.YamlDocument;

/**
 * A scenario that can be changed: keys with values, which may stand twice, lists and texts. It is
 * written in braces and quotes, so that whatever a text holds stays one text.
 */
final class Tree {

  final List<String> keys = new ArrayList<>();
  final List<Tree> values = new ArrayList<>();
  final Kind kind;
  String text;

  enum Kind {
    KEYS,
    LIST,
    TEXT
  }

  private Tree(Kind kind, String text) {
    this.kind = kind;
    this.text = text;
  }

  static Tree of(String yaml) {
    try {
      return of(YamlDocument.parse(yaml));
    } catch (DocumentException e) {
      throw new IllegalArgumentException(yaml, e);
    }
  }

  private static Tree of(Node node) {
    if (node instanceof Node.Mapping mapping) {
      Tree tree = keys();
      mapping.entries().forEach(e -> tree.add(e.key(), of(e.value())));
      return tree;
    }
    if (node instanceof Node.Items items) {
      Tree tree = new Tree(Kind.LIST, "");
      items.items().forEach(item -> tree.values.add(of(item)));
      return tree;
    }
    return text(((Node.Text) node).text());
  }

  static Tree keys() {
    return new Tree(Kind.KEYS, "");
  }

  static Tree list(List<Tree> items) {
    Tree tree = new Tree(Kind.LIST, "");
    tree.values.addAll(items);
    return tree;
  }

  static Tree text(String text) {
    return new Tree(Kind.TEXT, text);
  }

  Tree copy() {
    Tree copy = new Tree(kind, text);
    copy.keys.addAll(keys);
    values.forEach(v -> copy.values.add(v.copy()));
    return copy;
  }

  Tree add(String key, Tree value) {
    keys.add(key);
    values.add(value);
    return this;
  }

  Optional<Tree> at(String key) {
    int i = kind == Kind.KEYS ? keys.indexOf(key) : -1;
    return i < 0 ? Optional.empty() : Optional.of(values.get(i));
  }

  void put(String key, Tree value) {
    int i = keys.indexOf(key);
    if (i < 0) {
      add(key, value);
    } else {
      values.set(i, value);
    }
  }

  void remove(int i) {
    values.remove(i);
    if (kind == Kind.KEYS) {
      keys.remove(i);
    }
  }

  void remove(String key) {
    int i = keys.indexOf(key);
    if (i >= 0) {
      remove(i);
    }
  }

  /** This part and all below it. */
  List<Tree> all() {
    List<Tree> all = new ArrayList<>();
    collect(all);
    return all;
  }

  private void collect(List<Tree> all) {
    all.add(this);
    values.forEach(v -> v.collect(all));
  }

  /** Puts another name in place of one, wherever it is a key or a value. */
  void rename(String from, String to) {
    for (Tree part : all()) {
      part.keys.replaceAll(k -> k.equals(from) ? to : k);
      if (part.kind == Kind.TEXT && part.text.equals(from)) {
        part.text = to;
      }
    }
  }

  String yaml() {
    StringBuilder out = new StringBuilder();
    if (kind == Kind.KEYS) {
      for (int i = 0; i < keys.size(); i++) {
        quote(out, keys.get(i));
        out.append(": ");
        values.get(i).write(out);
        out.append('\n');
      }
    } else {
      write(out);
    }
    return out.toString();
  }

  private void write(StringBuilder out) {
    if (kind == Kind.TEXT) {
      quote(out, text);
      return;
    }
    out.append(kind == Kind.KEYS ? '{' : '[');
    for (int i = 0; i < values.size(); i++) {
      out.append(i == 0 ? "" : ", ");
      if (kind == Kind.KEYS) {
        quote(out, keys.get(i));
        out.append(": ");
      }
      values.get(i).write(out);
    }
    out.append(kind == Kind.KEYS ? '}' : ']');
  }

  private static void quote(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ' || c > '~') {
        out.append(String.format("\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
