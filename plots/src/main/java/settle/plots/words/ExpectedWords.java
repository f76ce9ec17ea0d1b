package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import settle.sim.commissioning.CommissioningPlan;
import settle.sim.commissioning.ExpectedReadings.Place;
import settle.sim.commissioning.Point;
import settle.sim.commissioning.ReadingSpreads;

/**
 * What a thermometer should read on commissioning day, and how.
 *
 * @param plan with it
 */
public record ExpectedWords(CommissioningPlan plan) {

  /** Standard deviations that a tolerance stands for: 19 of 20 readings of a sound house. */
  private static final double TOLERANCE = 2;

  public static final String SCALE =
      "Turns open from shut, by the table of a typical 15 mm lockshield: where yours has a table of Kv, go by that.";

  public static final String HOW =
      "Return: clamp on bare metal of the pipe that leaves, insulated over. Far end: on the face, at the end of the run farthest from its"
          + " valve; with two tubes a warm return does not prove a hot far end. Air: in the middle of the room, 1 m high, out of the sun."
          + " ± holds 19 of 20 readings of a house as it was designed: instrument, weather, U-values, ratings, settings, time."
          + " Fill readings.csv and ask settle accept what is outside.";

  public static final List<String> HAND_OVER =
      List.of(
          "Heads on, set as above. 0 shuts; * or the snowflake is frost: use it, not 0, in a room that may freeze.",
          "Normal: a room settling half a degree to one and a half above the knob when little heat is needed; ticking as the run warms and cools.",
          "Not normal: gurgling (vent the far end), a far end cold while its start is hot, pressure that falls.",
          "Programme and curve explained; filling valve, isolators and this sheet shown and left.");

  /** A line of the form: values with their tolerance, empty where nothing is read. */
  public record Line(String place, List<String> values) {}

  /** One of the checks that come first. */
  public record Check(String what, String expected) {

    /** In a line. */
    public String said() {
      return say("{} {} °C.", what, expected);
    }
  }

  /** When is read, and how the house is then. */
  public String when() {
    return say(
        "Once, {} after the start from cold (before 45 min the front is passing and readings mislead): heads open or off, {} outdoors, rooms and water at {} at the start.",
        Quantities.duration(plan.day().readAfter()),
        Quantities.setting(plan.day().outdoor()),
        Quantities.setting(plan.day().start()));
  }

  /** The readings that tell most. */
  public List<Check> first() {
    ReadingSpreads spreads = plan.spreads();
    List<Check> checks = new ArrayList<>();
    for (int p : spreads.telling()) {
      Point point = spreads.points().get(p);
      checks.add(
          switch (point.kind()) {
            case FLOW -> new Check("flow at the source", value(plan.readings().flow(), point));
            case AIR ->
                new Check(
                    say("{}: air", plan.house().rooms().get(point.which()).name()),
                    value(air(point.which()), point));
            case FAR_END ->
                new Check(
                    say("{}: far end of the run", place(point.which()).name()),
                    value(place(point.which()).farEnd().orElseThrow(), point));
            case RETURN, INLET ->
                new Check(
                    say("{}: return, clamp", place(point.which()).name()),
                    value(place(point.which()).back(), point));
          });
    }
    return checks;
  }

  private Place place(int branch) {
    return plan.readings().places().stream()
        .filter(p -> p.branch() == branch)
        .findFirst()
        .orElseThrow();
  }

  private double air(int room) {
    String name = plan.house().rooms().get(room).name();
    return plan.readings().places().stream()
        .filter(p -> p.room().equals(name))
        .mapToDouble(Place::air)
        .findFirst()
        .orElseThrow();
  }

  private String value(double expected, Point point) {
    return value(expected, spread(point.kind(), point.which()));
  }

  private double spread(Point.Kind kind, int which) {
    return plan.spreads().at(kind, which);
  }

  private static String value(double expected, double spread) {
    return say(
        "{} ± {}",
        Quantities.number(expected, 0),
        Quantities.number(Math.max(1, Math.ceil(TOLERANCE * spread)), 0));
  }

  /** Tolerance of a reading [K]. */
  public double tolerance(Point.Kind kind, int which) {
    return TOLERANCE * spread(kind, which);
  }

  /** The form, the source first; air once a room. */
  public List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line(
            "flow at the source",
            List.of(value(plan.readings().flow(), spread(Point.Kind.FLOW, 0)), "", "")));
    List<String> aired = new ArrayList<>();
    for (Place place : plan.readings().places()) {
      int room = plan.house().roomIndex(place.room());
      OptionalDouble far = place.farEnd();
      lines.add(
          new Line(
              place.name(),
              List.of(
                  value(place.back(), spread(Point.Kind.RETURN, place.branch())),
                  far.isPresent()
                      ? value(far.getAsDouble(), spread(Point.Kind.FAR_END, place.branch()))
                      : "",
                  aired.contains(place.room())
                      ? ""
                      : value(place.air(), spread(Point.Kind.AIR, room)))));
      aired.add(place.room());
    }
    return lines;
  }
}
