package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.model.HouseModel;

/**
 * What would let rooms be held that are not: measures tried by themselves, and the least set of
 * them, in order of effort, with which every room is held. Whatever is said to suffice was judged
 * by runs of the house as it is then.
 *
 * @param tried what was tried by itself: what suffices first, least effort first
 * @param cure with it every room is held; empty if nothing is needed, or none was found among what
 *     was tried
 * @param outOfReach rooms that no setting holds, since their emitters are too small
 * @param kinds every kind that could be changed on this house, tried alone or together
 * @param sourceIsShort whether the source gives less in design weather than the house would take at
 *     the flow temperature asked for
 * @param judged how many changed houses were judged by runs
 * @param most how many at most would have been
 */
public record Remedies(
    List<Remedy> tried,
    Optional<Cure> cure,
    List<OutOfReach> outOfReach,
    List<Measure.Kind> kinds,
    boolean sourceIsShort,
    int judged,
    int most) {

  /** Nothing is needed. */
  public static final Remedies NONE =
      new Remedies(List.of(), Optional.empty(), List.of(), List.of(), false, 0, 0);

  public Remedies {
    tried = List.copyOf(tried);
    outOfReach = List.copyOf(outOfReach);
    kinds = List.copyOf(kinds);
  }

  /**
   * Measures that together let every room be held all season.
   *
   * @param measures in order of effort; none can be left out
   * @param effects what they give each room that is cold without them
   */
  public record Cure(List<Measure> measures, List<Remedy.Effect> effects) {
    public Cure {
      measures = List.copyOf(measures);
      effects = List.copyOf(effects);
    }

    /** The house with all of them carried out. */
    public House on(House house, String arrangement) {
      return Measure.all(measures, house, arrangement);
    }

    private Cure and(Measure one) {
      return new Cure(new MeasureSet(measures).with(one).measures(), effects);
    }
  }

  /**
   * A room whose emitters are too small whatever is set: a bound, since in a room at want, with
   * every valve open, hotter water than the hottest they would not have.
   *
   * @param room its name
   * @param flow hottest water that source and practice allow [°C]
   * @param output most that its emitters and pipes then give in design weather [W]
   * @param load what it needs then [W]
   */
  public record OutOfReach(String room, double flow, double output, double load) {}

  /**
   * Looks for them.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   * @param judgement what runs say of it
   * @param warmUps how soon its rooms are warm
   * @throws ArithmeticException if the house as it is cannot be solved
   */
  public static Remedies of(
      House house, Arrangement arrangement, Judgement judgement, WarmUps warmUps) {
    return of(new Case(house, arrangement, judgement), warmUps);
  }

  /**
   * As above.
   *
   * @param as the house and what runs say of it
   * @param warmUps how soon its rooms are warm
   * @throws ArithmeticException if the house as it is cannot be solved
   */
  static Remedies of(Case as, WarmUps warmUps) {
    if (as.judged().holds()) {
      return Preheat.of(as.house(), as.arrangement(), warmUps, as.holding().model())
          .map(Remedies::earlier)
          .orElse(NONE);
    }
    Remedies found = new RemedySearch(as).search();
    return found.cure.isEmpty() ? found : found.inTime(as);
  }

  private static Remedies earlier(Remedy start) {
    Optional<Cure> cure =
        start.suffices()
            ? Optional.of(new Cure(List.of(start.measure()), List.of()))
            : Optional.empty();
    return new Remedies(List.of(start), cure, List.of(), List.of(start.kind()), false, 0, 0);
  }

  /** These remedies if rooms are warm in time with the cure, or with it and an earlier start. */
  private Remedies inTime(Case as) {
    House house = as.house();
    if (house.aims().warmUp().isEmpty()) {
      return this;
    }
    House cured = cure.orElseThrow().on(house, as.name());
    Arrangement with = cured.arrangement(as.name());
    HouseModel like = as.holding().model();
    WarmUps warmUps = WarmUps.of(cured, with, like);
    if (!Preheat.isLate(cured, warmUps)) {
      return this;
    }
    Optional<Cure> both =
        Preheat.of(cured, with, warmUps, like)
            .filter(Remedy::suffices)
            .map(start -> cure.get().and(start.measure()));
    List<Measure.Kind> all = new ArrayList<>(kinds);
    all.add(Measure.Kind.PREHEAT);
    return new Remedies(tried, both, outOfReach, all, sourceIsShort, judged, most);
  }

  /** Those that suffice by themselves. */
  public List<Remedy> sufficing() {
    return tried.stream().filter(Remedy::suffices).toList();
  }
}
