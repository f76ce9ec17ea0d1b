package settle.scenarios.room;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import settle.scenarios.format.Form.Several;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.Fixing;
import settle.sim.fabric.Surface;
import settle.sim.room.Wall;

/**
 * Where the emitters of an arrangement go along the walls of one room, and whether there is room
 * for them.
 *
 * <p>A run that names its walls fills them in that order. One that names none begins at the first
 * wall to outdoors that is free and goes on round the room, or, where the order is not known, along
 * the other outside walls and then the inner ones.
 */
public final class WallRuns {

  /** What 'fixed to' says where there is no outside wall behind. */
  private static final String INNER_WALL = "inner wall";

  public static final Key FIXED_TO =
      Key.optional(
              "fixed to",
              new Several(new Words()),
              "name of the wall behind it, or 'inner wall'; where skirting goes round corners a list,"
                  + " in the order of the run")
          .orElse("outside walls first, then round the room in the order of 'walls'");

  /** Runs in one room up to which every group of them is looked at together. */
  private static final int LOOKED_AT = 8;

  /** Length that is nobody's concern [m]. */
  private static final double ROUNDING = 0.005;

  private record Run(Section own, double length, Set<String> walls, boolean named) {}

  private final RoomDraft room;
  private final Map<String, Wall> walls = new LinkedHashMap<>();
  private final Set<String> outside = new LinkedHashSet<>();
  private final Map<String, Double> used = new LinkedHashMap<>();
  private final List<Run> runs = new ArrayList<>();

  /**
   * @param room the room, its walls closed
   */
  public WallRuns(RoomDraft room) {
    this.room = room;
    for (Wall wall : room.feet.walls()) {
      walls.put(wall.name(), wall);
    }
    for (Surface surface : room.outsideWalls()) {
      outside.add(surface.name());
    }
  }

  /** Walls that 'fixed to' names; none where it is left out. */
  public List<String> named(Section from) {
    List<String> names = new ArrayList<>();
    Set<String> valid = new LinkedHashSet<>(walls.keySet());
    valid.addAll(outside);
    valid.add(INNER_WALL);
    for (Value item : from.several(FIXED_TO)) {
      String name = item.words();
      if (!valid.contains(name)) {
        item.unknownValue("wall of '" + room.name + "'", name, valid);
      } else if (names.contains(name)) {
        item.problem("names '" + name + "' twice");
      } else {
        names.add(name);
      }
    }
    if (room.feet.inOrder()) {
      doubtCorners(from, names);
    }
    return names;
  }

  private void doubtCorners(Section from, List<String> names) {
    List<String> round = List.copyOf(walls.keySet());
    for (int i = 1; i < names.size(); i++) {
      int a = round.indexOf(names.get(i - 1));
      int b = round.indexOf(names.get(i));
      int apart = Math.abs(a - b);
      if (a >= 0 && b >= 0 && apart != 1 && apart != round.size() - 1) {
        warnAt(
            from,
            "'"
                + names.get(i - 1)
                + "' and '"
                + names.get(i)
                + "' do not meet; name the walls between them, or make it two runs");
      }
    }
  }

  private static void warnAt(Section from, String message) {
    Optional<Value> fixedTo = from.value(FIXED_TO);
    if (fixedTo.isPresent()) {
      fixedTo.get().warn(message);
    } else {
      from.warn(message);
    }
  }

  /** The wall a radiator is fixed to: the one named, else the first to outdoors, if any. */
  public List<Fixing> hang(Section from, List<String> named) {
    if (named.size() > 1) {
      from.value(FIXED_TO)
          .ifPresent(
              v -> v.problem("found several walls, expected the one the radiator is fixed to"));
    }
    if (named.isEmpty()) {
      return outside.isEmpty() ? List.of() : Fixing.outside(outside.iterator().next());
    }
    String wall = named.get(0);
    return List.of(new Fixing(wall, 1, outside.contains(wall)));
  }

  /**
   * Lays a run of skirting. Those that name their walls are to be laid first.
   *
   * @param own its section
   * @param length [m]
   * @param named walls it names
   */
  public List<Fixing> lay(Section own, double length, List<String> named) {
    List<String> way = named.isEmpty() ? asItComes() : expanded(named);
    if (way.isEmpty()) {
      return List.of(new Fixing(INNER_WALL, 1, false));
    }
    runs.add(new Run(own, length, new LinkedHashSet<>(way), !named.isEmpty()));
    double[] part = new double[way.size()];
    double rest = length;
    for (int i = 0; i < part.length && rest > 0; i++) {
      part[i] = Math.min(rest, free(way.get(i)) - used.getOrDefault(way.get(i), 0.0));
      part[i] = Math.max(part[i], 0);
      rest -= part[i];
    }
    if (rest > 0) {
      spread(way, part, length);
    }
    List<Fixing> fixings = new ArrayList<>();
    for (int i = 0; i < part.length; i++) {
      if (part[i] > 0) {
        String wall = way.get(i);
        used.merge(wall, part[i], Double::sum);
        fixings.add(new Fixing(wall, Math.min(part[i] / length, 1), outside.contains(wall)));
      }
    }
    return fixings;
  }

  /** Where there is not the room, a run is on its walls in proportion to what each has free. */
  private void spread(List<String> way, double[] part, double length) {
    double all = 0;
    for (String wall : way) {
      all += free(wall);
    }
    for (int i = 0; i < part.length; i++) {
      part[i] = length * (all > 0 ? free(way.get(i)) / all : 1.0 / part.length);
    }
  }

  private double free(String wall) {
    Wall known = walls.get(wall);
    return known == null ? 0 : known.free();
  }

  /** Some inner wall is each of them that is not named itself. */
  private List<String> expanded(List<String> named) {
    List<String> way = new ArrayList<>();
    for (String name : named) {
      if (!name.equals(INNER_WALL) || walls.containsKey(name)) {
        way.add(name);
        continue;
      }
      for (String wall : walls.keySet()) {
        if (!outside.contains(wall) && !named.contains(wall)) {
          way.add(wall);
        }
      }
    }
    return way;
  }

  private List<String> asItComes() {
    List<String> way = new ArrayList<>(walls.keySet());
    if (room.feet.inOrder()) {
      int first = 0;
      while (first < way.size() && !outside.contains(way.get(first))) {
        first++;
      }
      Collections.rotate(way, first < way.size() ? -first : 0);
      return way;
    }
    List<String> inner = new ArrayList<>(way);
    inner.removeAll(outside);
    way.retainAll(outside);
    way.addAll(inner);
    return way;
  }

  /**
   * Doubts runs that are longer than the walls they have, alone or together.
   *
   * @param emitters the value that holds the room's emitters
   */
  public void doubt(Value emitters) {
    int n = runs.size();
    if (n > LOOKED_AT) {
      doubt(emitters, runs);
      return;
    }
    List<List<Run>> groups = new ArrayList<>();
    for (int mask = 1; mask < 1 << n; mask++) {
      List<Run> group = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        if ((mask >> i & 1) == 1) {
          group.add(runs.get(i));
        }
      }
      groups.add(group);
    }
    groups.sort(Comparator.comparingInt(List::size));
    for (List<Run> group : groups) {
      if (doubt(emitters, group)) {
        return; // what holds of few holds of more
      }
    }
  }

  private boolean doubt(Value emitters, List<Run> group) {
    double length = 0;
    Set<String> along = new LinkedHashSet<>();
    for (Run run : group) {
      length += run.length();
      along.addAll(run.walls());
    }
    double free = along.stream().mapToDouble(this::free).sum();
    if (length <= free + ROUNDING) {
      return false;
    }
    boolean wholeRoom = along.containsAll(walls.keySet());
    String message =
        Dimension.LENGTH.show(length)
            + " of skirting is more than the "
            + Dimension.LENGTH.show(free)
            + (wholeRoom
                ? " of wall that is free in the room"
                : " that is free along '"
                    + String.join("', '", along)
                    + (group.size() == 1
                        ? "'; name every wall it runs along"
                        : "'; name every wall they run along"));
    if (group.size() == 1 && group.get(0).named()) {
      warnAt(group.get(0).own(), message);
    } else {
      emitters.warn(message);
    }
    return true;
  }
}
