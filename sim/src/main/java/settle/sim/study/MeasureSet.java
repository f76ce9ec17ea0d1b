package settle.sim.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * Measures that are carried out together, at most one of a kind for a room.
 *
 * @param measures in order of effort
 */
record MeasureSet(List<Measure> measures) {

  private static final Set<Kind> TURNED = EnumSet.of(Kind.LOCKSHIELD, Kind.THROTTLE);

  MeasureSet {
    measures = List.copyOf(measures);
  }

  /** The house with all of them carried out. */
  House on(House house, String arrangement) {
    return Measure.all(measures, house, arrangement);
  }

  /** This set with a measure, in place of one of the same kind for the same room. */
  MeasureSet with(Measure one) {
    List<Measure> more = new ArrayList<>(measures);
    more.removeIf(m -> m.kind() == one.kind() && m.room().equals(one.room()));
    more.add(one);
    more.sort(Comparator.comparing(Measure::kind));
    return new MeasureSet(more);
  }

  /** This set without one of its measures. */
  MeasureSet without(Measure spared) {
    return new MeasureSet(measures.stream().filter(m -> !m.equals(spared)).toList());
  }

  /** This set without what it has of a kind for a room or the whole house. */
  MeasureSet without(Kind kind, String room) {
    return new MeasureSet(measures.stream().filter(m -> !isOf(m, kind, room)).toList());
  }

  /** What it has of a kind for a room or the whole house. */
  Optional<Measure> of(Kind kind, String room) {
    return measures.stream().filter(m -> isOf(m, kind, room)).findFirst();
  }

  private static boolean isOf(Measure measure, Kind kind, String room) {
    return measure.kind() == kind && (measure.room().isEmpty() || measure.room().equals(room));
  }

  private boolean has(Kind kind) {
    return measures.stream().anyMatch(m -> m.kind() == kind);
  }

  /** Whether a kind cannot be added: a balance sets the very lockshields that others turn. */
  boolean excludes(Kind kind) {
    return kind == Kind.BALANCE
        ? has(Kind.BALANCE) || TURNED.stream().anyMatch(this::has)
        : TURNED.contains(kind) && has(Kind.BALANCE);
  }
}
