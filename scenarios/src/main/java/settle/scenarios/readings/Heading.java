package settle.scenarios.readings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import settle.sim.commissioning.Point;

/** What a column of readings may hold. */
enum Heading {
  /** Whose readings they are. */
  PLACE(null, "room", "place", "emitter", "where", "name"),
  /** What enters an emitter. */
  INLET(Point.Kind.INLET, "inlet", "in", "flow in", "flow pipe", "supply"),
  /** What leaves it. */
  RETURN(Point.Kind.RETURN, "return", "return at the clamp", "back", "out", "return pipe"),
  /** The face at the far end. */
  FAR_END(Point.Kind.FAR_END, "far end", "end", "surface", "surface at the far end", "face"),
  /** The room's air. */
  AIR(Point.Kind.AIR, "air", "room air", "room temperature"),
  /** What leaves the source. */
  FLOW(Point.Kind.FLOW, "source flow", "source", "source's flow", "boiler flow", "flow"),
  /** Outdoor temperature. */
  OUTDOOR(null, "outdoor", "outdoors", "outside"),
  /** Temperature at the start. */
  START(null, "start", "start temperature", "indoor start"),
  /** When it was read. */
  MINUTES(null, "minutes", "min", "after", "time", "read after"),
  /** What was seen by looking. */
  FOUND(null, "found", "looked", "seen");

  private final Point.Kind kind;
  private final List<String> names;

  Heading(Point.Kind kind, String... names) {
    this.kind = kind;
    this.names = List.of(names);
  }

  /** What a thermometer is held to; empty for what is no reading. */
  Optional<Point.Kind> kind() {
    return Optional.ofNullable(kind);
  }

  /** What it is called first. */
  String title() {
    return names.get(0);
  }

  /** The column that a heading names, units apart. */
  static Optional<Heading> of(String typed) {
    String plain = plain(typed);
    for (Heading heading : values()) {
      if (heading.names.contains(plain)) {
        return Optional.of(heading);
      }
    }
    return Optional.empty();
  }

  /** A heading or a row's name in small letters, without unit and marks. */
  static String plain(String typed) {
    return typed
        .toLowerCase(Locale.ROOT)
        .replace('’', '\'')
        .replaceAll("[\\[(].*?[\\])]", " ")
        .replaceAll("(°|º|deg(rees)?\\.?)\\s*[cf]\\b", " ")
        .replaceAll("[-_/ ]+", " ")
        .strip();
  }

  /** Whether a heading says that its column is in degrees Fahrenheit. */
  static boolean inFahrenheit(String typed) {
    return typed.matches(
        "(?is).*((°|º|deg(rees)?\\.?)\\s*f\\b|fahrenheit|[\\[(]\\s*f\\s*[\\])]).*");
  }
}
