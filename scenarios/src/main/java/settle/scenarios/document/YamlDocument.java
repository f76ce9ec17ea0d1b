package settle.scenarios.document;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds a document from YAML text.
 *
 * <p>It listens to the parser's events instead of taking its node tree: a stack of its own instead
 * of recursion makes nesting without end an ordinary message, and aliases are counted at the size
 * they unfold to before anyone walks them.
 */
public final class YamlDocument {

  /** Deepest nesting [levels]; a scenario needs about ten. */
  private static final int DEEPEST = 40;

  /** Most values after aliases are unfolded; a house of fifty rooms needs about ten thousand. */
  private static final int MOST_VALUES = 100_000;

  /** Most duplicate keys that are worth listing. */
  private static final int MOST_FAULTS = 100;

  private final Deque<Open> open = new ArrayDeque<>();
  private final Map<Anchor, Sized> anchored = new HashMap<>();
  private final List<DocumentException.Fault> faults = new ArrayList<>();
  private Sized root;

  private YamlDocument() {}

  /** A finished part and the number of values in it, aliases unfolded. */
  private record Sized(Node node, long values) {}

  /** A list or mapping whose end has not come yet. */
  private static final class Open {
    final Position position;
    final Optional<Anchor> anchor;
    final boolean mapping;
    final List<Node> items = new ArrayList<>();
    final List<Node.Entry> entries = new ArrayList<>();
    final Map<String, Position> keys = new HashMap<>();
    Node.Text key;
    long values = 1;

    Open(Position position, Optional<Anchor> anchor, boolean mapping) {
      this.position = position;
      this.anchor = anchor;
      this.mapping = mapping;
    }
  }

  /**
   * Reads the one document in a text.
   *
   * @param text YAML
   * @return its root
   * @throws DocumentException where the text is not well formed
   */
  public static Node parse(String text) throws DocumentException {
    YamlDocument document = new YamlDocument();
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();
    try {
      Iterator<Event> events = new Parse(settings).parseString(text).iterator();
      while (events.hasNext()) {
        document.take(events.next());
      }
    } catch (MarkedYamlEngineException e) {
      throw malformed(e, text);
    } catch (YamlEngineException e) {
      throw new DocumentException(
          Position.START, "is not well-formed YAML: " + oneLine(e.getMessage()));
    }
    if (!document.faults.isEmpty()) {
      throw new DocumentException(document.faults);
    }
    if (document.root == null) {
      throw new DocumentException(Position.START, "has no content, only comments");
    }
    return document.root.node();
  }

  private void take(Event event) throws DocumentException {
    Position position = position(event.getStartMark());
    switch (event.getEventId()) {
      case Scalar -> {
        ScalarEvent scalar = (ScalarEvent) event;
        Node.Text text =
            new Node.Text(PlainText.of(scalar.getValue()), !scalar.isPlain(), position);
        close(new Sized(text, 1), scalar.getAnchor(), position);
      }
      case Alias -> {
        Sized target = anchored.get(((AliasEvent) event).getAlias());
        if (target == null) {
          throw new DocumentException(
              position,
              "the alias *"
                  + ((AliasEvent) event).getAlias()
                  + " stands for nothing finished above it");
        }
        close(target, Optional.empty(), position);
      }
      case SequenceStart, MappingStart -> {
        if (open.size() >= DEEPEST) {
          throw new DocumentException(position, "is nested more than " + DEEPEST + " levels deep");
        }
        open.push(
            new Open(
                position,
                ((NodeEvent) event).getAnchor(),
                event.getEventId() == Event.ID.MappingStart));
      }
      case SequenceEnd, MappingEnd -> {
        Open done = open.pop();
        Node node =
            done.mapping
                ? new Node.Mapping(List.copyOf(done.entries), done.position)
                : new Node.Items(List.copyOf(done.items), done.position);
        close(new Sized(node, done.values), done.anchor, done.position);
      }
      case DocumentStart -> {
        if (root != null) {
          throw new DocumentException(
              position, "a second document begins here; a scenario is one document");
        }
      }
      default -> {
        // stream and document ends, and comments, carry nothing
      }
    }
  }

  /** Hands a finished part to what it stands in. */
  private void close(Sized part, Optional<Anchor> anchor, Position position)
      throws DocumentException {
    anchor.ifPresent(name -> anchored.put(name, part));
    if (open.isEmpty()) {
      root = part;
      return;
    }
    Open parent = open.peek();
    parent.values += part.values();
    if (parent.values > MOST_VALUES) {
      throw new DocumentException(
          position, "unfolds to more than " + MOST_VALUES + " values; write fewer aliases");
    }
    if (!parent.mapping) {
      parent.items.add(part.node());
    } else if (parent.key == null) {
      if (!(part.node() instanceof Node.Text key)) {
        throw new DocumentException(
            position,
            "found "
                + part.node().found()
                + " as a key, expected a word; quote a name that has brackets");
      }
      parent.key = new Node.Text(key.text(), key.quoted(), position);
    } else {
      Node.Text key = parent.key;
      Position first = parent.keys.putIfAbsent(key.text(), key.position());
      if (first == null) {
        parent.entries.add(new Node.Entry(key.text(), key.position(), part.node()));
      } else if (faults.size() < MOST_FAULTS) {
        faults.add(
            new DocumentException.Fault(
                key.position(),
                "the key '"
                    + key.found()
                    + "' is written twice; the first is in line "
                    + first.line()));
      }
      parent.key = null;
    }
  }

  private static Position position(Optional<Mark> mark) {
    return mark.map(m -> new Position(m.getLine() + 1, m.getColumn() + 1)).orElse(Position.START);
  }

  private static DocumentException malformed(MarkedYamlEngineException e, String text) {
    Position position = position(e.getProblemMark());
    if (e.getProblem() != null && e.getProblem().contains("TAB")) {
      return new DocumentException(position, "found a tab; indent with spaces");
    }
    String[] lines = text.split("\n", -1);
    if (position.line() <= lines.length) {
      // The parser stumbles over a tab in ways that do not name it: an indentation that starts with
      // one is the cause.
      String line = lines[position.line() - 1];
      int tab = line.indexOf('\t');
      if (tab >= 0 && line.substring(0, tab).isBlank()) {
        return new DocumentException(
            new Position(position.line(), tab + 1), "found a tab; indent with spaces");
      }
    }
    String context = e.getContext() == null ? "" : oneLine(e.getContext()) + ": ";
    return new DocumentException(
        position,
        "is not well-formed YAML: "
            + context
            + oneLine(e.getProblem() == null ? e.getMessage() : e.getProblem()));
  }

  private static String oneLine(String message) {
    return PlainText.line(message);
  }
}
