package settle.sim.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import settle.sim.atrest.FullOutput;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;

/**
 * Looks for what would let cold rooms be held.
 *
 * <p>Rung by rung a measure is looked for at rest, where it costs little, corrected by what the run
 * of the house as it is says the rest is off; the rung found is carried out on a copy and judged by
 * runs, and where those say that it is not enough, the correction is brought up to date and a
 * further rung taken.
 */
final class RemedySearch {

  private static final double MARGIN = Remedy.MARGIN;

  /** Warmer than needed by more than this, a measure that does less is looked for [K]. */
  private static final double AMPLE = 0.3;

  /**
   * How near to being cold a room may come at rest without a run in that weather [K], how far apart
   * such runs are at least [K], and how many there are at most.
   */
  private static final double CLOSE = 0.3;

  private static final double APART = 2;
  private static final int CLOSER = 4;

  /** Changed houses judged for each kind and room. */
  private static final int TRIES = 3;

  /** Of the cold rooms, how many are looked at one by one: the coldest. */
  private static final int ROOMS = 3;

  /** Weathers in which rooms are looked at at rest, the worst. */
  private static final int WEATHERS = 3;

  /** Sets judged before a search for one is given up, and measures in a set. */
  private static final int SETS = 8;

  private static final int SET_SIZE = 10;

  /**
   * How much of what a room lacks a measure has to bring for it to be taken into a set though
   * another brings more [-].
   */
  private static final double WORTHWHILE = 0.25;

  /** How short at rest a set may fall and still be judged by a run [K]. */
  private static final double DOUBT = 0.3;

  /** How much more than the source has the house must take for the source to be short [-]. */
  private static final double WEAK = 1.005;

  private final House house;
  private final String name;
  private final Judgement before;
  private final List<String> cold;
  private int judged;

  /**
   * @param house the house
   * @param name its arrangement
   * @param before what was found of it by runs
   */
  RemedySearch(House house, String name, Judgement before) {
    this.house = house;
    this.name = name;
    this.before = before;
    cold =
        before.judged().stream().filter(r -> !r.holds()).map(Judgement.RoomJudged::room).toList();
  }

  /** Everything: measures by themselves, then the least set. */
  Remedies search() {
    if (cold.isEmpty()) {
      return Remedies.NONE;
    }
    List<String> coldest =
        before.judged().stream()
            .filter(r -> !r.holds())
            .sorted(Comparator.comparingDouble(r -> -r.shortfall()))
            .limit(ROOMS)
            .map(Judgement.RoomJudged::room)
            .toList();
    List<Ladder> ladders =
        Ladder.of(house, name, coldest, before, EnumSet.complementOf(EnumSet.of(Kind.PREHEAT)));
    Corrected rest = new Corrected(house, before);
    List<Remedy> tried = new ArrayList<>();
    alternatives(ladders).forEach((what, several) -> tried.add(best(rest, several)));
    tried.sort(Comparator.comparing((Remedy r) -> !r.suffices()).thenComparing(Remedy::kind));
    Optional<Remedies.Cure> cure = single(tried).or(() -> set(rest));
    Set<Kind> kinds = new TreeSet<>();
    ladders.forEach(l -> kinds.add(l.kind()));
    int most = TRIES * (ladders.size()) + SETS + SET_SIZE;
    return new Remedies(
        tried, cure, outOfReach(), List.copyOf(kinds), sourceIsShort(), judged, most);
  }

  /** Ladders of one kind for one room are several ways of doing the same. */
  private static Map<String, List<Ladder>> alternatives(List<Ladder> ladders) {
    Map<String, List<Ladder>> groups = new LinkedHashMap<>();
    for (Ladder ladder : ladders) {
      groups
          .computeIfAbsent(ladder.kind() + "|" + ladder.room(), k -> new ArrayList<>())
          .add(ladder);
    }
    return groups;
  }

  /** Of several ways the one that suffices with the coolest water, or else helps most. */
  private Remedy best(Corrected rest, List<Ladder> several) {
    Remedy best = null;
    for (Ladder ladder : several) {
      Remedy remedy = climbed(rest, ladder);
      if (best == null || better(remedy, best)) {
        best = remedy;
      }
    }
    return best;
  }

  private boolean better(Remedy one, Remedy other) {
    if (one.suffices() && other.suffices()) {
      return one.measure() instanceof Measure.Curve a
          && other.measure() instanceof Measure.Curve b
          && meanFlow(a) < meanFlow(b);
    }
    if (one.status() != other.status()) {
      return one.status().compareTo(other.status()) < 0;
    }
    return worst(one) < worst(other);
  }

  private static double worst(Remedy remedy) {
    return remedy.effects().stream()
        .mapToDouble(Remedy.Effect::shortAfter)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Over the weathers looked at [°C]. */
  private double meanFlow(Measure.Curve curve) {
    return before.weathers().stream()
        .mapToDouble(w -> curve.after().setPoint(w.outdoor(), 0))
        .average()
        .orElseThrow();
  }

  // One measure by itself

  private Remedy climbed(Corrected from, Ladder ladder) {
    List<String> targets = ladder.room().isEmpty() ? cold : List.of(ladder.room());
    List<Measure> rungs = ladder.rises() ? ladder.rungs() : likeliest(from, ladder);
    Corrected rest = from;
    int k = 0;
    boolean seen = true;
    if (ladder.rises()) {
      int first = first(rungs, 0, rest, targets);
      seen = first >= 0;
      k = seen ? first : rungs.size() - 1;
    }
    Remedy best = null;
    int enough = rungs.size();
    int tooLittle = -1;
    for (int n = 0; n < TRIES; n++) {
      Measure measure = rungs.get(k);
      House with = measure.on(house, name);
      Optional<Judgement> after = judge(with, targets);
      Remedy remedy = remedy(ladder, measure, targets, after);
      if (best == null || remedy.suffices() || better(remedy, best)) {
        best = remedy;
      }
      if (!ladder.rises()) {
        if (remedy.suffices() || ++k == rungs.size()) {
          break;
        }
        continue;
      }
      enough = remedy.suffices() ? k : enough;
      tooLittle = remedy.suffices() ? tooLittle : k;
      boolean others = remedy.status() == Remedy.Status.MAKES_OTHERS_COLD;
      boolean ample = remedy.suffices() && worst(remedy) < -AMPLE;
      if (after.isEmpty()
          || others
          || (remedy.suffices() && seen && !ample)
          || enough - tooLittle <= 1
          || tooLittle == rungs.size() - 1) {
        break;
      }
      if (seen || !remedy.suffices()) {
        rest = new Corrected(with, after.get());
        int next = first(rungs, tooLittle + 1, rest, targets);
        k = next >= 0 ? Math.min(next, enough - 1) : Math.min(rungs.size(), enough) - 1;
        if (remedy.suffices() && next >= enough) {
          break;
        }
      } else {
        // The rest did not see it, so the least that suffices is looked for by runs.
        k = (tooLittle + enough) / 2;
      }
    }
    return best;
  }

  /** The first rung from one on that, corrected, holds the targets at rest; -1 if none. */
  private int first(List<Measure> rungs, int from, Corrected rest, List<String> targets) {
    int low = from;
    int high = rungs.size() - 1;
    if (low > high || !holds(rungs.get(high), rest, targets)) {
      return -1;
    }
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holds(rungs.get(middle), rest, targets)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private boolean holds(Measure measure, Corrected rest, List<String> targets) {
    return rest.worst(measure.on(house, name), targets) <= -MARGIN;
  }

  /** Rungs of which none is more than another, the likeliest first. */
  private List<Measure> likeliest(Corrected rest, Ladder ladder) {
    Map<Measure, Double> worst = new LinkedHashMap<>();
    List<String> all = before.rooms().stream().map(Judgement.Asked::name).toList();
    for (Measure rung : ladder.rungs()) {
      worst.put(rung, rest.worst(rung.on(house, name), all));
    }
    return worst.entrySet().stream()
        .sorted(Comparator.comparingDouble(Map.Entry::getValue))
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * Judges a changed house over the season, unless the weather that was worst for some rooms shows
   * one of them cold: then that is all that is known of it.
   */
  private Optional<Judgement> judge(House with, List<String> targets) {
    judged++;
    try {
      Arrangement as = with.arrangement(name);
      Judgement first = Judgement.inOneWeather(with, as, worstFor(targets));
      boolean cold =
          first.judged().stream()
              .anyMatch(r -> targets.contains(r.room()) && r.shortfall() > -MARGIN);
      return Optional.of(cold ? first : confirmed(with, as, targets).and(first.weathers().get(0)));
    } catch (ArithmeticException | MathIllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /**
   * Judged over the season, with runs besides where a room comes near to being cold: a room
   * thermostat, a source that starts and stops, do not go by what runs on both sides show.
   */
  private Judgement confirmed(House with, Arrangement as, List<String> targets) {
    Judgement judgement = Judgement.of(with, as);
    for (int n = 0; n < CLOSER; n++) {
      Judgement known = judgement;
      Optional<Judgement.Weather> near =
          judgement.weathers().stream()
              .filter(w -> !w.byRun() && worst(known, w, targets) > -CLOSE)
              .filter(w -> fromRuns(known, w) > APART)
              .max(Comparator.comparingDouble(w -> worst(known, w, targets)));
      if (near.isEmpty() || !judgement.holds()) {
        break;
      }
      double outdoor = near.get().outdoor();
      Judgement.Weather run = Judgement.inOneWeather(with, as, outdoor).weathers().get(0);
      judgement =
          new Judgement(
              judgement.rooms(),
              judgement.weathers().stream().map(w -> w.outdoor() == outdoor ? run : w).toList());
    }
    return judgement;
  }

  /** Of the rooms that are to be held, and of those that were held all season before. */
  private double worst(Judgement judgement, Judgement.Weather weather, List<String> targets) {
    return IntStream.range(0, weather.shortfall().length)
        .filter(
            r ->
                targets.contains(judgement.rooms().get(r).name()) || before.judged().get(r).holds())
        .mapToDouble(r -> weather.shortfall()[r])
        .max()
        .orElse(Double.NEGATIVE_INFINITY);
  }

  /** How far a weather is from the nearest that was run [K]. */
  private static double fromRuns(Judgement judgement, Judgement.Weather weather) {
    return judgement.runs().stream()
        .mapToDouble(w -> Math.abs(w.outdoor() - weather.outdoor()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** Outdoor temperature in which the worst of some rooms is furthest from being held [°C]. */
  private double worstFor(List<String> targets) {
    return before.judged().stream()
        .filter(r -> targets.contains(r.room()))
        .max(Comparator.comparingDouble(Judgement.RoomJudged::shortfall))
        .orElseThrow()
        .outdoor();
  }

  private Remedy remedy(
      Ladder ladder, Measure measure, List<String> targets, Optional<Judgement> after) {
    if (after.isEmpty()) {
      return new Remedy(
          ladder.room(),
          measure,
          Remedy.Status.NOT_SOLVED,
          ladder.limit(),
          List.of(),
          List.of(),
          false);
    }
    List<Remedy.Effect> effects = effects(targets, after.get());
    List<String> lost = lost(after.get());
    boolean suffice = effects.stream().allMatch(e -> e.shortAfter() <= -MARGIN);
    boolean help =
        effects.stream().anyMatch(e -> e.shortBefore() - e.shortAfter() > Remedy.NOTABLE);
    Remedy.Status status;
    if (suffice) {
      status = lost.isEmpty() ? Remedy.Status.SUFFICES : Remedy.Status.MAKES_OTHERS_COLD;
    } else {
      status = help ? Remedy.Status.HELPS_NOT_ENOUGH : Remedy.Status.NO_HELP;
    }
    return new Remedy(
        ladder.room(),
        measure,
        status,
        ladder.limit(),
        effects,
        lost,
        suffice && lost.isEmpty() && cures(after.get()));
  }

  /** Each room before, in the weather that was worst for it, and after. */
  private List<Remedy.Effect> effects(List<String> targets, Judgement after) {
    List<Remedy.Effect> effects = new ArrayList<>();
    for (int r = 0; r < before.rooms().size(); r++) {
      if (!targets.contains(before.rooms().get(r).name())) {
        continue;
      }
      double need = before.rooms().get(r).need();
      Judgement.Weather then = in(after, before.judged().get(r).outdoor());
      double was = in(before, then.outdoor()).shortfall()[r];
      effects.add(
          new Remedy.Effect(
              before.rooms().get(r).name(),
              then.outdoor(),
              need - was,
              need - then.shortfall()[r],
              was,
              after.judged().get(r).shortfall()));
    }
    return effects;
  }

  /** The weather looked at that is nearest to an outdoor temperature. */
  private static Judgement.Weather in(Judgement judgement, double outdoor) {
    return judgement.weathers().stream()
        .min(Comparator.comparingDouble(w -> Math.abs(w.outdoor() - outdoor)))
        .orElseThrow();
  }

  /** Rooms held before that are no longer, or only by less than the margin. */
  private List<String> lost(Judgement after) {
    return IntStream.range(0, before.rooms().size())
        .filter(r -> before.judged().get(r).holds())
        .filter(r -> after.judged().get(r).shortfall() > allowed(r))
        .mapToObj(r -> before.rooms().get(r).name())
        .toList();
  }

  /** What a room that is held may fall short by: nothing, with a margin if it had one before. */
  private double allowed(int room) {
    return Math.min(Math.max(before.judged().get(room).shortfall() + MARGIN / 5, -MARGIN), 0);
  }

  /** Whether every room is held, the cold ones with a margin, and runs say so. */
  private boolean cures(Judgement after) {
    return after.holds()
        && after.confirmedByRun()
        && lost(after).isEmpty()
        && effects(cold, after).stream().allMatch(e -> e.shortAfter() <= -MARGIN);
  }

  // Several together

  private static Optional<Remedies.Cure> single(List<Remedy> tried) {
    return tried.stream()
        .filter(r -> r.suffices() && r.whole())
        .findFirst()
        .map(r -> new Remedies.Cure(List.of(r.measure()), r.effects()));
  }

  /** Takes measures in order of effort until every room is held, then leaves out what it can. */
  private Optional<Remedies.Cure> set(Corrected from) {
    List<Measure> set = new ArrayList<>();
    Corrected rest = from;
    Judgement known = before;
    for (int n = 0; n < SETS; n++) {
      if (!gather(set, rest, known)) {
        return Optional.empty();
      }
      House with = on(set);
      Optional<Judgement> after = judge(with, cold);
      if (after.isEmpty()) {
        return Optional.empty();
      }
      if (cures(after.get())) {
        return Optional.of(leastOf(set, after.get()));
      }
      known = after.get();
      rest = new Corrected(with, known);
    }
    return Optional.empty();
  }

  private House on(List<Measure> set) {
    House with = house;
    for (Measure measure : set) {
      with = measure.on(with, name);
    }
    return with;
  }

  /** Adds measures until, corrected, every room is held at rest. */
  private boolean gather(List<Measure> set, Corrected rest, Judgement known) {
    for (int n = 0; n < SET_SIZE; n++) {
      House with = on(set);
      double[] shortfall = rest.shortfalls(with);
      int worst = worstRoom(shortfall);
      if (worst < 0) {
        return true;
      }
      Optional<Measure> next = next(set, rest, known, worst, shortfall);
      if (next.isEmpty()) {
        return false;
      }
      set.removeIf(m -> same(m, next.get()));
      set.add(next.get());
      set.sort(Comparator.comparing(Measure::kind));
    }
    return worstRoom(rest.shortfalls(on(set))) < 0;
  }

  private static boolean same(Measure one, Measure other) {
    return one.kind() == other.kind() && one.room().equals(other.room());
  }

  /** The room furthest from what it needs; -1 if every room has it. */
  private int worstRoom(double[] shortfall) {
    int worst = -1;
    double most = 0;
    for (int r = 0; r < shortfall.length; r++) {
      double excess = shortfall[r] - needed(r);
      if (excess > Math.max(most, 1e-9)) {
        most = excess;
        worst = r;
      }
    }
    return worst;
  }

  private double needed(int room) {
    return before.judged().get(room).holds() ? allowed(room) : -MARGIN;
  }

  /**
   * The measure of least effort that lets a room be held and no other be lost, or else brings much
   * of what it lacks.
   */
  private Optional<Measure> next(
      List<Measure> set, Corrected rest, Judgement known, int room, double[] shortfall) {
    String cold = before.rooms().get(room).name();
    Measure partial = null;
    double brought = 0;
    double lacks = shortfall[room] - needed(room);
    for (Kind kind : Kind.values()) {
      if (kind == Kind.PREHEAT || excluded(set, kind)) {
        continue;
      }
      List<Measure> others = set.stream().filter(m -> !isOf(m, kind, cold)).toList();
      Optional<Measure> present = set.stream().filter(m -> isOf(m, kind, cold)).findFirst();
      House without = on(others);
      for (Ladder ladder : Ladder.of(without, name, List.of(cold), known, EnumSet.of(kind))) {
        List<Measure> rungs = ladder.rungs();
        int at = -1;
        int low = 0;
        int high = rungs.size() - 1;
        double[] furthest = rest.shortfalls(rungs.get(high).on(without, name));
        if (ladder.rises() && fits(furthest, shortfall, room)) {
          while (low < high) {
            int middle = (low + high) >>> 1;
            if (held(rest.shortfalls(rungs.get(middle).on(without, name)), room)) {
              high = middle;
            } else {
              low = middle + 1;
            }
          }
          at = allColdOr(rungs, low, without, rest, shortfall);
        } else if (!ladder.rises()) {
          for (int k = 0; k < rungs.size() && at < 0; k++) {
            at = fits(rest.shortfalls(rungs.get(k).on(without, name)), shortfall, room) ? k : -1;
          }
        }
        if (at >= 0) {
          return Optional.of(rungs.get(at));
        }
        double gain = shortfall[room] - furthest[room];
        boolean further = present.isEmpty() || !present.get().equals(ladder.furthest());
        if (ladder.rises()
            && further
            && losesNone(furthest, shortfall)
            && gain > Remedy.NOTABLE
            && (brought < WORTHWHILE * lacks ? gain > brought : false)) {
          partial = ladder.furthest();
          brought = gain;
        }
      }
    }
    return Optional.ofNullable(partial);
  }

  /** A balance sets the very lockshields that the others turn. */
  static boolean excluded(List<Measure> set, Kind kind) {
    Set<Kind> turned = EnumSet.of(Kind.LOCKSHIELD, Kind.THROTTLE);
    return (kind == Kind.BALANCE && set.stream().anyMatch(m -> turned.contains(m.kind())))
        || (turned.contains(kind) && set.stream().anyMatch(m -> m.kind() == Kind.BALANCE))
        || (kind == Kind.BALANCE && set.stream().anyMatch(m -> m.kind() == Kind.BALANCE));
  }

  private static boolean isOf(Measure measure, Kind kind, String room) {
    return measure.kind() == kind && (measure.room().isEmpty() || measure.room().equals(room));
  }

  /** A rung that holds all cold rooms, if there is one from a rung on; else that rung. */
  private int allColdOr(
      List<Measure> rungs, int from, House without, Corrected rest, double[] shortfall) {
    if (!rungs.get(0).room().isEmpty()) {
      return from;
    }
    for (int k = from; k < rungs.size(); k++) {
      double[] with = rest.shortfalls(rungs.get(k).on(without, name));
      if (worstRoom(with) < 0) {
        return k;
      }
      if (!losesNone(with, shortfall)) {
        break;
      }
    }
    return from;
  }

  private boolean held(double[] shortfall, int room) {
    return shortfall[room] <= needed(room);
  }

  private boolean fits(double[] with, double[] without, int room) {
    return held(with, room) && losesNone(with, without);
  }

  /** Whether no room that has what it needs loses it. */
  private boolean losesNone(double[] with, double[] without) {
    for (int r = 0; r < with.length; r++) {
      if (with[r] > needed(r) && with[r] > without[r] + MARGIN / 5) {
        return false;
      }
    }
    return true;
  }

  /** Leaves out, the most effort first, whatever is not needed. */
  private Remedies.Cure leastOf(List<Measure> found, Judgement after) {
    List<Measure> least = found;
    Judgement known = after;
    for (int k = found.size() - 1; k >= 0 && least.size() > 1; k--) {
      Measure spared = found.get(k);
      List<Measure> fewer = least.stream().filter(m -> !m.equals(spared)).toList();
      House with = on(fewer);
      double[] shortfall = new Corrected(on(least), known).shortfalls(with);
      int worst = worstRoom(shortfall);
      if (worst >= 0 && shortfall[worst] - needed(worst) > DOUBT) {
        continue;
      }
      Optional<Judgement> judgement = judge(with, cold);
      if (judgement.isPresent() && cures(judgement.get())) {
        least = fewer;
        known = judgement.get();
      }
    }
    return new Remedies.Cure(least, effects(cold, known));
  }

  /** Whether the house would take more than the source has, at the flow temperature asked for. */
  private boolean sourceIsShort() {
    double outdoor = house.designOutdoor();
    Holding holding = new Holding(house, house.arrangement(name));
    double asked = holding.asked(outdoor);
    double taken = holding.settled(outdoor).at(asked).sourceHeat();
    return taken > house.source().maximumPower(outdoor, asked) * WEAK;
  }

  // Bounds

  private List<Remedies.OutOfReach> outOfReach() {
    Holding holding = new Holding(house, house.arrangement(name));
    double flow = Math.min(house.source().highestFlow(), Holding.HOTTEST_FLOW);
    FullOutput full = new FullOutput(holding.model(), flow);
    SettledHouse settled = holding.settled(house.designOutdoor()).at(flow);
    List<Remedies.OutOfReach> rooms = new ArrayList<>();
    for (Holding.RoomAnswer room : holding.rooms()) {
      int r = house.roomIndex(room.room());
      double output = full.of(r) + settled.pipeHeat(r);
      if (cold.contains(room.room()) && output < room.load()) {
        rooms.add(new Remedies.OutOfReach(room.room(), flow, output, room.load()));
      }
    }
    return rooms;
  }

  /** The house at rest in the weathers that matter, moved as far as a judgement says it is off. */
  private final class Corrected {
    private final double[] outdoor;
    private final double[][] off;

    /**
     * @param of a house
     * @param judgement what was found of it
     */
    Corrected(House of, Judgement judgement) {
      outdoor = weathers(judgement);
      double[][] rest = atRest(of);
      off = new double[outdoor.length][rest[0].length];
      for (int i = 0; i < off.length; i++) {
        double[] found = in(judgement, outdoor[i]).shortfall();
        for (int r = 0; r < off[i].length; r++) {
          off[i][r] = found[r] - rest[i][r];
        }
      }
    }

    private static double[] weathers(Judgement judgement) {
      Set<Double> chosen = new TreeSet<>();
      chosen.add(judgement.weathers().get(0).outdoor());
      judgement.judged().stream()
          .sorted(Comparator.comparingDouble(r -> -r.shortfall()))
          .map(Judgement.RoomJudged::outdoor)
          .distinct()
          .limit(WEATHERS - 1)
          .forEach(chosen::add);
      return chosen.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private double[][] atRest(House of) {
      Holding holding = new Holding(of, of.arrangement(name));
      double[][] shortfall = new double[outdoor.length][];
      for (int i = 0; i < shortfall.length; i++) {
        shortfall[i] = holding.shortfallsOfHeated(outdoor[i]);
      }
      return shortfall;
    }

    /** How far below what counts as held each room is in its worst weather [K]. */
    double[] shortfalls(House changed) {
      double[][] rest = atRest(changed);
      double[] worst = new double[rest[0].length];
      for (int r = 0; r < worst.length; r++) {
        worst[r] = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < rest.length; i++) {
          worst[r] = Math.max(worst[r], rest[i][r] + off[i][r]);
        }
      }
      return worst;
    }

    /** That of the worst of some rooms [K]. */
    double worst(House changed, List<String> rooms) {
      double[] shortfall = shortfalls(changed);
      double worst = Double.NEGATIVE_INFINITY;
      for (int r = 0; r < shortfall.length; r++) {
        if (rooms.contains(before.rooms().get(r).name())) {
          worst = Math.max(worst, shortfall[r]);
        }
      }
      return worst;
    }
  }
}
