package settle.sim.study;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.PlainPlate;
import settle.sim.fabric.Window;
import settle.sim.measure.BetterGlazing;
import settle.sim.measure.LargerEmitter;
import settle.sim.measure.LessAirChange;
import settle.sim.measure.LongerSkirting;
import settle.sim.measure.Measure.Kind;
import settle.sim.measure.RicherProfile;
import settle.sim.room.Room;

/**
 * What could be fitted in a cold room, or sealed.
 *
 * @param as the house and what was found of it
 */
record RoomLadders(Case as) {

  /** Least air change a dwelling should have [1/h]; EN 12831:2003 Table D.6, from memory. */
  private static final double LEAST_AIR_CHANGE = 0.5;

  /** Best glazing that is looked for [W/(m² K)]; triple, common practice, no source. */
  private static final double BEST_GLAZING = 0.8;

  /** How many times its output a richer profile may give [-]; common practice, no source. */
  private static final double RICHEST = 2;

  /**
   * How many times a plain face of its height a profile may give [-]: beyond it its output is
   * doubted anyway.
   */
  private static final double MOST_PLATES = 2.5;

  /** Emissivity of common paint. */
  private static final double PAINT = 0.9;

  /**
   * How many times its output an emitter in the same place may give [-]: two panels with two
   * convectors give some three times a single panel; common practice, no source.
   */
  private static final double LARGEST_EMITTER = 3;

  /** Longest radiator made [m]; common practice, no source. */
  private static final double LONGEST_RADIATOR = 3;

  /** Finest that lengths and glazing are bought [m], [W/(m² K)]. */
  private static final double TENTH = 0.1;

  private Room room(String name) {
    return as.house().rooms().get(as.house().roomIndex(name));
  }

  private Emitter emitter(int branch) {
    return as.branch(branch).emitter();
  }

  List<Ladder> airChange(String room) {
    double from = room(room).airChangesPerHour();
    return from > LEAST_AIR_CHANGE
        ? Ladder.rising(
            Kind.AIR_CHANGE,
            room,
            from,
            0.05,
            LEAST_AIR_CHANGE,
            to -> new LessAirChange(room, from, to))
        : List.of();
  }

  List<Ladder> glazing(String room) {
    double from =
        room(room).windows().stream()
            .filter(BetterGlazing::isGlazed)
            .mapToDouble(Window::uValue)
            .max()
            .orElse(0);
    return from > BEST_GLAZING
        ? Ladder.rising(
            Kind.WINDOW, room, from, TENTH, BEST_GLAZING, to -> new BetterGlazing(room, from, to))
        : List.of();
  }

  private List<Emitter.Run> skirting(String room) {
    return as.branchesOf(room).mapToObj(b -> emitter(b).run()).flatMap(Optional::stream).toList();
  }

  List<Ladder> profile(String room) {
    List<Emitter.Run> skirting = skirting(room);
    double from =
        skirting.stream().mapToDouble(Emitter.Run::outputPerMetre).min().orElse(Double.NaN);
    double limit =
        Math.floor(skirting.stream().mapToDouble(RoomLadders::richest).max().orElse(0) / 5) * 5;
    return from < limit
        ? Ladder.rising(Kind.PROFILE, room, from, 5, limit, to -> new RicherProfile(room, from, to))
        : List.of();
  }

  /** Most that a profile of the same height may give [W/m]. */
  private static double richest(Emitter.Run run) {
    double plates = MOST_PLATES * PlainPlate.outputPerMetre(run.faceHeight(), PAINT, 70, 20);
    return Math.min(RICHEST * run.outputPerMetre(), plates);
  }

  /** The longest run of the room, as far as there is free wall. */
  List<Ladder> length(String room) {
    double whole = skirting(room).stream().mapToDouble(Emitter.Run::length).sum();
    double limit = Math.floor(room(room).freeWall() * 10 + 1e-6) / 10;
    Optional<Integer> longest =
        as.branchesOf(room)
            .filter(b -> emitter(b).run().isPresent())
            .boxed()
            .max(Comparator.comparingDouble(this::runLength));
    if (longest.isEmpty() || whole >= limit) {
      return List.of();
    }
    int branch = longest.get();
    double run = runLength(branch);
    double others = whole - run;
    return Ladder.rising(
        Kind.LENGTH,
        room,
        Ladder.rungs(
            run, TENTH, limit - others, to -> new LongerSkirting(room, branch, run, to, others)),
        limit);
  }

  private double runLength(int branch) {
    return emitter(branch).run().map(Emitter.Run::length).orElse(0.0);
  }

  /** The largest of those of the room's emitters that stand in one place. */
  List<Ladder> largerEmitter(String room) {
    return as.branchesOf(room)
        .filter(b -> emitter(b).run().isEmpty())
        .boxed()
        .max(Comparator.comparingDouble(b -> emitter(b).ratedOutput()))
        .map(b -> larger(room, b))
        .orElse(List.of());
  }

  private List<Ladder> larger(String room, int branch) {
    Emitter now = emitter(branch);
    double from = now.ratedOutput();
    if (now.length().isEmpty()) {
      return Ladder.rising(
          Kind.RADIATOR,
          room,
          from,
          50,
          LARGEST_EMITTER * from,
          to -> new LargerEmitter(room, branch, now.noun(), from, to, Double.NaN));
    }
    double length = now.length().getAsDouble();
    double longest = Math.min(LARGEST_EMITTER * length, LONGEST_RADIATOR);
    return length < longest
        ? Ladder.rising(
            Kind.RADIATOR,
            room,
            Ladder.rungs(
                length,
                TENTH,
                longest,
                to ->
                    new LargerEmitter(
                        room, branch, now.noun(), from, now.ofLength(to).ratedOutput(), to)),
            now.ofLength(longest).ratedOutput())
        : List.of();
  }
}
