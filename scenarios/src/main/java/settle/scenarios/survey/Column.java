package settle.scenarios.survey;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** A column that a survey may have. */
enum Column {
  ROOM("room", null, "its name", "name", "room name"),
  FLOOR("floor", null, "the storey it is on", "storey", "story", "level"),
  SIZE(
      "size",
      Measure.LENGTH,
      "length x width x height",
      "dimensions",
      "room size",
      "length x width x height"),
  LENGTH("length", Measure.LENGTH, "of the room, instead of size", "room length"),
  WIDTH("width", Measure.LENGTH, "of the room", "room width", "breadth"),
  HEIGHT(
      "height", Measure.LENGTH, "of the room, floor to ceiling", "room height", "ceiling height"),
  AREA("area", Measure.AREA, "of the floor, where sides are not known", "floor area"),
  WANT(
      "want",
      Measure.TEMPERATURE,
      "temperature wanted in it",
      "want temperature",
      "temperature",
      "room temperature",
      "design temperature",
      "inside temperature",
      "indoor temperature"),
  LOSS(
      "loss",
      Measure.HEAT_LOSS,
      "heat loss at want and the design outdoor temperature, ventilation included",
      "heat loss",
      "heat load",
      "heat demand",
      "load"),
  WALLS(
      "free walls",
      Measure.LENGTH,
      "free lengths of its walls in order round the room, clockwise on a plan, with + between; or a column each, wall 1,"
          + " wall 2 and so on",
      "walls",
      "wall",
      "free wall",
      "free wall length",
      "free wall lengths",
      "wall length",
      "wall lengths"),
  RADIATOR(
      "radiator",
      null,
      "type of the existing one, such as 22 or towel rail",
      "radiator type",
      "existing radiator",
      "existing radiator type",
      "rad",
      "rad type",
      "type"),
  RADIATOR_HEIGHT(
      "radiator height", Measure.LENGTH, "its height", "existing radiator height", "rad height"),
  RADIATOR_LENGTH(
      "radiator length",
      Measure.LENGTH,
      "its length",
      "existing radiator length",
      "rad length",
      "radiator width",
      "rad width"),
  OUTDOOR(
      "outdoor",
      Measure.TEMPERATURE,
      "design outdoor temperature, the same in every row",
      "outdoor temperature",
      "design outdoor",
      "design outdoor temperature",
      "outside temperature",
      "outside");

  private final String name;
  private final Measure measure;
  private final String meaning;
  private final List<String> others;

  Column(String name, Measure measure, String meaning, String... others) {
    this.name = name;
    this.measure = measure;
    this.meaning = meaning;
    this.others = List.of(others);
  }

  /** Its usual heading. */
  String heading() {
    return name;
  }

  /** What it holds, in a few words. */
  String meaning() {
    return meaning;
  }

  /** What its cells measure; empty for words. */
  Optional<Measure> measure() {
    return Optional.ofNullable(measure);
  }

  /** All headings that mean some column. */
  static List<String> headings() {
    return Stream.of(values())
        .flatMap(c -> Stream.concat(Stream.of(c.name), c.others.stream()))
        .toList();
  }

  /** The column of a heading, its unit and number taken off. */
  static Optional<Column> of(String heading) {
    String plain = plain(heading);
    return Stream.of(values())
        .filter(c -> c.name.equals(plain) || c.others.contains(plain))
        .findFirst();
  }

  static String plain(String heading) {
    return heading.toLowerCase(Locale.ROOT).replaceAll("[\\s_\\u00A0-]+", " ").strip();
  }
}
