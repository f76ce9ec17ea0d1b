package settle.sim.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import settle.sim.atrest.FullOutput;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.House;
import settle.sim.measure.Measure.Kind;

/**
 * Looks for what would let cold rooms be held: each kind of measure by itself, then the least set
 * of them.
 */
final class RemedySearch {

  /** Of the cold rooms, how many are looked at one by one: the coldest. */
  private static final int ROOMS = 3;

  private final Case as;
  private final ChangedHouses changed;
  private final Standard standard;

  /**
   * @param as the house and what was found of it by runs
   */
  RemedySearch(Case as) {
    this.as = as;
    changed = new ChangedHouses(as);
    standard = changed.standard();
  }

  Remedies search() {
    if (standard.cold().isEmpty()) {
      return Remedies.NONE;
    }
    List<String> coldest =
        as.judged().judged().stream()
            .filter(r -> !r.holds())
            .sorted(Judgement.RoomJudged.BY_SHORTFALL.reversed())
            .limit(ROOMS)
            .map(Judgement.RoomJudged::room)
            .toList();
    List<Ladder> ladders =
        Ladders.of(as.house(), as.name(), coldest, as.judged(), EnumSet.allOf(Kind.class));
    CorrectedRest rest = new CorrectedRest(as.holding(), as.house(), as.name(), as.judged());
    List<Remedy> tried = new ArrayList<>();
    alternatives(ladders).forEach(several -> tried.add(best(rest, several)));
    tried.sort(Comparator.comparing((Remedy r) -> !r.suffices()).thenComparing(Remedy::kind));
    Optional<Remedies.Cure> cure = single(tried).or(() -> new LeastSet(changed, rest).search());
    return new Remedies(
        tried,
        cure,
        outOfReach(),
        ladders.stream().map(Ladder::kind).distinct().toList(),
        as.holding().overloadsSource(as.house().designOutdoor()),
        changed.judged(),
        Climb.TRIES * ladders.size() + LeastSet.SETS + LeastSet.SIZE);
  }

  /** Ladders of one kind for one room are several ways of doing the same. */
  private static Iterable<List<Ladder>> alternatives(List<Ladder> ladders) {
    Map<String, List<Ladder>> groups = new LinkedHashMap<>();
    for (Ladder ladder : ladders) {
      groups
          .computeIfAbsent(ladder.kind() + "|" + ladder.room(), k -> new ArrayList<>())
          .add(ladder);
    }
    return groups.values();
  }

  /** Of several ways the one that suffices with the coolest water, or else helps most. */
  private Remedy best(CorrectedRest rest, List<Ladder> several) {
    Remedy best = null;
    for (Ladder ladder : several) {
      Climb climb = new Climb(changed, rest, ladder);
      Remedy remedy = climb.best();
      if (best == null || climb.isBetter(remedy, best)) {
        best = remedy;
      }
    }
    return best;
  }

  private static Optional<Remedies.Cure> single(List<Remedy> tried) {
    return tried.stream()
        .filter(r -> r.suffices() && r.whole())
        .findFirst()
        .map(r -> new Remedies.Cure(List.of(r.measure()), r.effects()));
  }

  /** Cold rooms whose emitters are too small whatever is set. */
  private List<Remedies.OutOfReach> outOfReach() {
    House house = as.house();
    Holding holding = as.holding();
    double flow = Math.min(house.source().highestFlow(), Holding.HOTTEST_FLOW);
    FullOutput full = new FullOutput(holding.model(), flow);
    SettledHouse settled = holding.settled(house.designOutdoor()).at(flow);
    List<Remedies.OutOfReach> rooms = new ArrayList<>();
    for (RoomAnswer room : holding.rooms()) {
      int r = house.roomIndex(room.room());
      double output = full.of(r) + settled.pipeHeat(r);
      if (standard.cold().contains(room.room()) && output < room.load()) {
        rooms.add(new Remedies.OutOfReach(room.room(), flow, output, room.load()));
      }
    }
    return rooms;
  }
}
