package settle.scenarios.house;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Loops;

/**
 * Joins emitters to loops: 'after' names the one whose return feeds another. An emitter may be
 * named before it is written, so this comes when all of an arrangement are read.
 */
final class LoopReader {

  private final List<Section> sections = new ArrayList<>();
  private final List<Optional<Value>> named = new ArrayList<>();

  /**
   * Notes the next emitter of the arrangement.
   *
   * @param own its keys
   */
  void note(Section own) {
    sections.add(own);
    named.add(own.value(ArrangementKeys.AFTER));
  }

  /**
   * Joins them.
   *
   * @param read the emitters in order, each with its by-pass if it has one
   */
  List<Branch> join(List<Branch> read) {
    if (named.stream().noneMatch(Optional::isPresent)) {
      return read;
    }
    Arrangement all = new Arrangement("", read, false);
    int[] after = positions(all);
    refuseTwice(after, all.branchNames());
    cutRings(after, read);
    List<Branch> joined = new ArrayList<>();
    for (int b = 0; b < after.length; b++) {
      Branch branch = read.get(b);
      int first = b;
      while (after[first] >= 0) {
        first = after[first];
      }
      joined.add(
          after[b] < 0
              ? branch
              : branch
                  .in(new InLoop(after[b], branch.loop().byPass()))
                  .fedFrom(read.get(first).fedFrom()));
    }
    remark(joined);
    return joined;
  }

  /** Which emitter each comes after; -1 for none. */
  private int[] positions(Arrangement all) {
    Set<String> rooms = new LinkedHashSet<>();
    all.branches().forEach(b -> rooms.add(b.room()));
    List<String> full = all.branchNames();
    int[] after = new int[sections.size()];
    Arrays.fill(after, -1);
    for (int b = 0; b < after.length; b++) {
      if (named.get(b).isEmpty()) {
        continue;
      }
      Value value = named.get(b).get();
      String name = value.words();
      if (full.contains(name)) {
        after[b] = full.indexOf(name);
      } else if (!rooms.contains(name)) {
        Set<String> valid = new LinkedHashSet<>(rooms);
        valid.addAll(full);
        value.unknownValue("emitter or room that has one", name, valid);
      } else {
        after[b] = inRoom(value, name, all);
      }
    }
    return after;
  }

  private static int inRoom(Value value, String room, Arrangement all) {
    int found = -1;
    List<String> names = new ArrayList<>();
    for (int b = 0; b < all.branches().size(); b++) {
      if (all.branches().get(b).room().equals(room)) {
        found = b;
        names.add(all.branchNames().get(b));
      }
    }
    if (names.size() > 1) {
      value.problem(
          "found '"
              + room
              + "', which has several emitters; write one of '"
              + String.join("', '", names)
              + "'");
      return -1;
    }
    return found;
  }

  /** Water that leaves an emitter goes on to one other. */
  private void refuseTwice(int[] after, List<String> names) {
    for (int b = 0; b < after.length; b++) {
      for (int a = 0; a < b && after[b] >= 0; a++) {
        if (after[a] == after[b]) {
          value(b)
              .problem(
                  "the water of '"
                      + value(b).words()
                      + "' goes on to '"
                      + names.get(a)
                      + "' already; a loop passes one emitter after the other");
          after[b] = -1;
        }
      }
    }
  }

  private void cutRings(int[] after, List<Branch> read) {
    for (int b = 0; b < after.length; b++) {
      int steps = 0;
      for (int at = after[b]; at >= 0 && at != b && steps <= after.length; at = after[at]) {
        steps++;
        if (after[at] == b) {
          ring(b, "'" + read.get(after[b]).room() + "' comes after it in turn");
          after[b] = -1;
          break;
        }
      }
      if (after[b] == b) {
        ring(b, "it comes after itself");
        after[b] = -1;
      }
    }
  }

  private void ring(int b, String how) {
    value(b)
        .problem(how + "; one of a loop must be fed from mains or the source: leave out 'after'");
  }

  private Value value(int b) {
    return named.get(b).orElseThrow();
  }

  /** Says of each loop what all of its emitters share. */
  private void remark(List<Branch> joined) {
    Arrangement all = new Arrangement("", joined, false);
    Loops loops = all.loops();
    for (int b = 0; b < joined.size(); b++) {
      if (loops.after(b) >= 0 || loops.next(b) < 0) {
        continue;
      }
      List<String> way = new ArrayList<>();
      List<String> stops = new ArrayList<>();
      for (int member : loops.members(b)) {
        Branch branch = joined.get(member);
        way.add(all.place(member));
        if (branch.loop().byPass().isEmpty() && branch.valve().hasHead()) {
          stops.add(all.place(member));
        }
      }
      String reason =
          stops.isEmpty()
              ? "one flow for all, the water of one feeding the next"
              : "one flow for all: the valve in "
                  + String.join(", or in ", stops)
                  + " throttles the whole loop, and shuts it";
      sections.get(b).noteDefault("loop", String.join(", then ", way), reason);
    }
  }
}
