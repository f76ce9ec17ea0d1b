package settle.scenarios.edit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.Anchor;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import settle.scenarios.document.PlainText;

/** Finds the characters that each part of a well-formed document takes up. */
final class PartReader {

  private final String text;
  private final Deque<Open> open = new ArrayDeque<>();
  private Part root;
  private int lastCodePoint;
  private int lastIndex;

  private PartReader(String text) {
    this.text = text;
  }

  private static final class Open {
    final int from;
    final String anchor;
    final boolean flow;
    final boolean mapping;
    final List<Part> parts = new ArrayList<>();

    Open(int from, String anchor, boolean flow, boolean mapping) {
      this.from = from;
      this.anchor = anchor;
      this.flow = flow;
      this.mapping = mapping;
    }
  }

  static Part read(String text) {
    PartReader reader = new PartReader(text);
    LoadSettings settings = LoadSettings.builder().setCodePointLimit(Integer.MAX_VALUE).build();
    new Parse(settings).parseString(text).forEach(reader::take);
    return reader.root;
  }

  private void take(Event event) {
    switch (event.getEventId()) {
      case Scalar -> {
        ScalarEvent scalar = (ScalarEvent) event;
        int from = index(event.getStartMark());
        int to = withoutLineEnd(from, index(event.getEndMark()));
        close(new Part.Scalar(from, to, anchor(scalar), PlainText.of(scalar.getValue())));
      }
      case Alias -> {
        String name = ((AliasEvent) event).getAlias().getValue();
        close(new Part.Alias(index(event.getStartMark()), index(event.getEndMark()), name));
      }
      case SequenceStart, MappingStart ->
          open.push(
              new Open(
                  index(event.getStartMark()),
                  anchor((NodeEvent) event),
                  ((CollectionStartEvent) event).isFlow(),
                  event.getEventId() == Event.ID.MappingStart));
      case SequenceEnd, MappingEnd -> {
        Open done = open.pop();
        int to = done.flow ? index(event.getEndMark()) : contentEnd(done);
        close(
            done.mapping
                ? new Part.Keys(done.from, to, done.anchor, done.flow, entries(done.parts))
                : new Part.Items(done.from, to, done.anchor, done.flow, List.copyOf(done.parts)));
      }
      default -> {
        // the stream's and the document's ends carry nothing
      }
    }
  }

  /** The mark of a block's end is where the next thing begins; what it holds ends before. */
  private static int contentEnd(Open block) {
    return block.parts.stream().mapToInt(Part::to).max().orElse(block.from);
  }

  private static List<Part.Entry> entries(List<Part> parts) {
    List<Part.Entry> entries = new ArrayList<>();
    for (int i = 0; i + 1 < parts.size(); i += 2) {
      entries.add(new Part.Entry((Part.Scalar) parts.get(i), parts.get(i + 1)));
    }
    return entries;
  }

  private void close(Part part) {
    if (open.isEmpty()) {
      root = part;
    } else {
      open.peek().parts.add(part);
    }
  }

  /** A block of text ends with its last line's end. */
  private int withoutLineEnd(int from, int to) {
    int end = to;
    while (end > from && Character.isWhitespace(text.charAt(end - 1))) {
      end--;
    }
    return end;
  }

  private static String anchor(NodeEvent event) {
    return event.getAnchor().map(Anchor::getValue).orElse("");
  }

  /**
   * The parser counts code points; marks are near each other, so counting goes on from the last.
   */
  private int index(Optional<Mark> mark) {
    int codePoint = mark.orElseThrow().getIndex();
    lastIndex = text.offsetByCodePoints(lastIndex, codePoint - lastCodePoint);
    lastCodePoint = codePoint;
    return lastIndex;
  }
}
