package settle.scenarios.house;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import settle.scenarios.control.ControlSection;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.ClockText;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.room.RoomDraft;
import settle.scenarios.room.RoomKeys;
import settle.scenarios.weather.SiteSection;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.units.Times;

/**
 * Parts of a scenario that are sound each by itself and cannot all be meant: what one asks for,
 * another keeps from happening, and a run would not say so.
 */
final class Doubts {

  private static final String[] DAYS = {
    "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"
  };

  private final House house;
  private final Section root;
  private final Key source;
  private final Map<String, RoomDraft> rooms;
  private final Set<String> heated;

  /**
   * @param house the house, sound by itself
   * @param root the top of the file
   * @param source the key of the source
   * @param rooms the rooms as they were read, by name
   */
  Doubts(House house, Section root, Key source, Map<String, RoomDraft> rooms) {
    this.house = house;
    this.root = root;
    this.source = source;
    this.rooms = rooms;
    heated =
        house.arrangements().stream()
            .flatMap(a -> a.branches().stream())
            .map(Branch::room)
            .collect(Collectors.toSet());
  }

  void note() {
    rooms.values().forEach(this::doubtEmitter);
    doubtFlowTemperature();
    doubtDesignOutdoor();
    doubtReferenceRoom();
    for (RoomDraft room : rooms.values()) {
      if (heated.contains(room.name) && room.heated()) {
        doubtHours(room);
        doubtSetback(room);
      }
    }
  }

  private void doubtEmitter(RoomDraft room) {
    if (!room.heated()) {
      for (Key key : List.of(RoomKeys.WANT, RoomKeys.PROGRAMME)) {
        room.section.value(key).ifPresent(v -> v.warn("has no effect where 'heated: no' stands"));
      }
    } else if (!heated.contains(room.name)) {
      room.section.warn(
          "is wanted at "
              + Dimension.TEMPERATURE.show(room.wantOverTime.maximum())
              + ", but no arrangement has an emitter in it; add one, or say 'heated: no'");
    }
  }

  private void doubtFlowTemperature() {
    double hottest =
        house.control().flowCurve().map(FlowCurve::highest).orElse(house.source().flowSetPoint());
    for (String room : heated) {
      double want = rooms.get(room).wantOverTime.maximum();
      if (rooms.get(room).heated() && hottest <= want) {
        root.section(source)
            .warn(
                "water of at most "
                    + Dimension.TEMPERATURE.show(hottest)
                    + " cannot warm '"
                    + room
                    + "' to "
                    + Dimension.TEMPERATURE.show(want));
        return;
      }
    }
  }

  private void doubtDesignOutdoor() {
    double coolest =
        heated.stream()
            .mapToDouble(r -> rooms.get(r).wantOverTime.maximum())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    if (house.designOutdoor() >= coolest) {
      String message =
          Dimension.TEMPERATURE.show(house.designOutdoor())
              + " is not below what any room is wanted at: there is nothing to heat for";
      root.section(ScenarioFormat.SITE)
          .value(SiteSection.DESIGN_OUTDOOR)
          .ifPresent(v -> v.warn(message));
    }
  }

  /** Whatever measures in a room that nothing heats asks for heat for ever, or never. */
  private void doubtReferenceRoom() {
    if (!house.control().usesReferenceRoom()) {
      return;
    }
    String reference = house.control().referenceRoom();
    for (Arrangement arrangement : house.arrangements()) {
      if (arrangement.branches().stream().noneMatch(b -> b.room().equals(reference))) {
        Section control = root.section(ScenarioFormat.CONTROL);
        String message =
            "'"
                + arrangement.name()
                + "' has no emitter in '"
                + reference
                + "', the room that source and thermostat go by";
        control
            .value(ControlSection.REFERENCE_ROOM)
            .ifPresentOrElse(v -> v.warn(message), () -> control.warn(message));
      }
    }
  }

  /** A room that is wanted warm while the source rests. */
  private void doubtHours(RoomDraft room) {
    Control control = house.control();
    RoomDraft reference = rooms.get(control.referenceRoom());
    if (control.setback() == Control.Setback.HEADS
        || room == reference
        || room.setUp()
        || reference.setUp()) {
      return;
    }
    Timetable want = room.wantOverTime;
    Timetable followed = reference.wantOverTime;
    for (double[] span : spans(want, followed)) {
      boolean wanted = want.valueAt(span[0]) >= want.maximum();
      if (wanted && followed.valueAt(span[0]) < followed.maximum()) {
        double until = span[1] - lead(span[1], followed);
        if (until > span[0] + 60) {
          at(room)
              .accept(
                  "wants "
                      + Dimension.TEMPERATURE.show(want.maximum())
                      + " at "
                      + shown(span[0], until)
                      + ", when the source rests: 'set back by' follows the programme of '"
                      + reference.name
                      + "'");
          return;
        }
      }
    }
  }

  /** How early heating may begin for a period of the reference room that starts then [s]. */
  private double lead(double start, Timetable followed) {
    if (followed.valueAt(start) < followed.maximum()) {
      return 0;
    }
    return house.control().optimumStart().longest();
  }

  /** A setback that nothing carries out. */
  private void doubtSetback(RoomDraft room) {
    Control control = house.control();
    if (room.wantOverTime.isConstant() || room.setUp()) {
      return;
    }
    if (control.setback() == Control.Setback.HEADS) {
      for (Arrangement arrangement : house.arrangements()) {
        boolean byHand =
            arrangement.branches().stream()
                .filter(b -> b.room().equals(room.name))
                .anyMatch(b -> !b.valve().hasHead());
        boolean stopped =
            control.thermostat().isFitted() && control.referenceRoom().equals(room.name);
        if (byHand && !stopped) {
          at(room)
              .accept(
                  "is not set back in '"
                      + arrangement.name()
                      + "': heads are to do it, and its valve has none");
          return;
        }
      }
      return;
    }
    RoomDraft reference = rooms.get(control.referenceRoom());
    if (reference.setUp()) {
      return;
    }
    Timetable want = room.wantOverTime;
    Timetable followed = reference.wantOverTime;
    for (double[] span : spans(want, followed)) {
      boolean setBack = want.valueAt(span[0]) < want.maximum();
      if (setBack && followed.valueAt(span[0]) >= followed.maximum()) {
        at(room)
            .accept(
                "its set-back at "
                    + shown(span[0], span[1])
                    + " is carried out by nothing: the source follows '"
                    + reference.name
                    + "', and heads stay where they are unless 'set back by: heads'");
        return;
      }
    }
  }

  private Consumer<String> at(RoomDraft room) {
    Optional<Value> programme = room.section.value(RoomKeys.PROGRAMME);
    return programme.isPresent() ? programme.get()::warn : room.section::warn;
  }

  /** Stretches of a week in which neither of two timetables changes [s]. */
  private static double[][] spans(Timetable a, Timetable b) {
    double week = DAYS.length * Times.DAY;
    TreeSet<Double> times = new TreeSet<>();
    times.add(0.0);
    times.add(week);
    for (Timetable table : new Timetable[] {a, b}) {
      for (double t = table.nextChange(0); t < week; t = table.nextChange(t)) {
        times.add(t);
      }
    }
    Double[] ends = times.toArray(Double[]::new);
    double[][] spans = new double[ends.length - 1][];
    for (int i = 0; i < spans.length; i++) {
      spans[i] = new double[] {ends[i], ends[i + 1]};
    }
    return spans;
  }

  private String shown(double from, double to) {
    boolean weekly =
        rooms.values().stream().map(r -> r.wantOverTime).anyMatch(t -> differsByDay(t));
    String day = weekly ? " on " + DAYS[(int) (from / Times.DAY)] : "";
    return ClockText.show(from % Times.DAY) + "-" + ClockText.show(to % Times.DAY) + day;
  }

  private static boolean differsByDay(Timetable table) {
    for (double[] span : spans(table, table)) {
      if (table.valueAt(span[0]) != table.valueAt(span[0] + Times.DAY)) {
        return true;
      }
    }
    return false;
  }
}
