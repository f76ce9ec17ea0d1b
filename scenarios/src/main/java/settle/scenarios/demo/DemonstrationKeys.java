package settle.scenarios.demo;

import java.util.Arrays;
import java.util.Locale;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.Named;
import settle.scenarios.format.Form.Quantity;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Form.YesNo;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.demo.Reading;
import settle.sim.units.Times;

/** The keys of the index. */
final class DemonstrationKeys {

  private static final Quantity DURATION =
      Quantity.of(Dimension.DURATION, 1, 400 * Times.DAY, "a second to the longest run");

  static final Key WORDS = Key.required("words", new Words(), "what the figure is");
  static final Key READS =
      Key.required(
          "reads",
          new Choice(Arrays.stream(Reading.values()).map(DemonstrationKeys::name).toList()),
          "what is read off the run");
  static final Key ROOM = Key.optional("room", new Words(), "which room");
  static final Key EMITTER =
      Key.optional(
              "emitter",
              Quantity.of(Dimension.NUMBER, 1, 9, "emitters of a room"),
              "which emitter of the room")
          .orElse("1", "the first");
  static final Key DRAWN =
      Key.optional("drawn", new YesNo(), "whether its course is drawn").orElse("no", "only told");
  static final Table FIGURE = Table.of("a figure", WORDS, READS, ROOM, EMITTER, DRAWN);

  static final Key TITLE = Key.required("title", new Words(), "what it is called");
  static final Key ABOUT = Key.required("about", new Words(), "what it teaches");
  static final Key QUESTION = Key.required("question", new Words(), "what it answers");
  static final Key BEFORE = Key.required("before", new Words(), "the first version, in few words");
  static final Key AFTER = Key.required("after", new Words(), "the second version, in few words");
  static final Key CHANGED = Key.required("changed", new Words(), "what was changed");
  static final Key HAPPENED = Key.required("happened", new Words(), "what happened");
  static final Key LOOK_AT = Key.required("look at", new Words(), "what to look at");
  static final Key BEWARE = Key.optional("beware", new Words(), "what could hurt");
  static final Key SHOWN = Key.required("shown", DURATION, "how much of the run's end is drawn");
  static final Key READ = Key.required("read", DURATION, "over how much of it figures are read");
  static final Key FIGURES =
      new Key("figures", new Named("figure", new Keys(FIGURE)), true, "the figures", "", "");
  static final Table DEMONSTRATION =
      Table.of(
          "a demonstration",
          TITLE,
          ABOUT,
          QUESTION,
          BEFORE,
          AFTER,
          CHANGED,
          HAPPENED,
          LOOK_AT,
          BEWARE,
          SHOWN,
          READ,
          FIGURES);

  private DemonstrationKeys() {}

  /** A reading as the index writes it. */
  static String name(Reading reading) {
    return reading.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The reading of a name that was found to be one. */
  static Reading reading(String name) {
    return Reading.valueOf(name.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }
}
