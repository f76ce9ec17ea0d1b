package settle.sim.tuning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import settle.sim.result.RoomFigures;
import settle.sim.study.ClimateBins;
import settle.sim.study.EuropeanSeason;
import settle.sim.study.Season;
import settle.sim.units.Range;

/**
 * The settings found for a plant, why, and what they do.
 *
 * @param found the plant as found
 * @param tuned the plant with the settings found
 * @param changes every setting that was looked at
 * @param before what the plant does as found
 * @param after what it does tuned
 * @param flatness how far each searched setting may be off
 * @param trials how many choices of settings were tried
 */
public record Tuning(
    Plant found,
    Plant tuned,
    List<Change> changes,
    Performance before,
    Performance after,
    List<Flatness> flatness,
    int trials) {

  public Tuning {
    changes = List.copyOf(changes);
    flatness = List.copyOf(flatness);
  }

  /** What is being done. */
  public enum Stage {
    START,
    SEARCH,
    FLATNESS,
    SPREADS
  }

  /**
   * One setting.
   *
   * @param setting which
   * @param before as found
   * @param workedOut what was worked out before the search
   * @param after as tuned
   * @param reason how that was worked out
   */
  public record Change(
      Setting setting, double before, double workedOut, double after, Reason reason) {

    /** Whether there is anything to do. */
    public boolean moved() {
      return before != after;
    }
  }

  /**
   * What a plant does.
   *
   * @param usual a usual day
   * @param coldest the coldest day
   * @param season a season at rest
   * @param aims what is asked, with what comes of it
   * @param spreads how it fares in the houses it may be
   * @param objective what the search made small, by its parts
   */
  public record Performance(
      Day usual,
      Day coldest,
      Season.Year season,
      List<Aim> aims,
      OverSpreads spreads,
      Worth objective) {

    public Performance {
      aims = List.copyOf(aims);
    }

    /** Whether every aim is met in the house as stated. */
    public boolean meetsAims() {
      return aims.stream().allMatch(Aim::met);
    }

    /** Where a room settles in the coldest weather, without gains [°C]. */
    public double coldestSettled(RoomFigures room) {
      return aims.stream()
          .filter(aim -> aim.kind() == Aim.Kind.HELD && aim.room().equals(room.name()))
          .mapToDouble(aim -> room.want() - aim.value())
          .findFirst()
          .orElseThrow();
    }

    /** The aims that are missed. */
    public List<Aim> missed() {
      return aims.stream().filter(aim -> !aim.met()).toList();
    }
  }

  /**
   * What is asked of a tuning.
   *
   * @param groups what may be changed
   * @param sure share of the houses it may be in which each room is to be held [-]
   * @param houses how many houses the settings are tried in; a power of two is balanced
   */
  public record Request(Set<Group> groups, double sure, int houses) {

    public Request {
      groups = Set.copyOf(groups);
      Range.within("share of houses to be held", sure, 0.5, 0.99, "1");
    }
  }

  /**
   * Tunes a plant.
   *
   * @param found the plant as found
   * @param request what is asked
   * @param progress told what is being done
   * @throws ArithmeticException if a model could not be solved
   */
  public static Tuning of(Plant found, Request request, Consumer<Stage> progress) {
    int houses = request.houses();
    double usualOutdoor = usualOutdoor(found.house().designOutdoor());
    List<Setting> settings = Settings.of(found, request.groups());
    progress.accept(Stage.START);
    List<Setting> water = settings.stream().filter(s -> s.group() == Group.LOCKSHIELDS).toList();
    List<Setting> others = settings.stream().filter(s -> s.group() != Group.LOCKSHIELDS).toList();
    StartValues balance = new StartValues(found, water, usualOutdoor);
    Trial trial = new Trial(found, balance.plant(), usualOutdoor, request.sure());
    ToDoubleFunction<Plant> objective = plant -> trial.worth(plant).total();
    Begun begun = new Begun(found, objective);
    begun.take(water, balance.plant());
    StartValues start = new StartValues(begun.plant, others, usualOutdoor);
    for (Group group : Group.values()) {
      List<Setting> ofGroup = others.stream().filter(s -> s.group() == group).toList();
      begun.take(ofGroup, start.plant());
    }
    progress.accept(Stage.SEARCH);
    // What a rule gives is not for a search: a balance is all or none, and gains beyond the rule's
    // look well only where nothing is ever disturbed.
    List<Setting> searched = others.stream().filter(s -> s.group() != Group.GAINS).toList();
    Search search = new Search(found, begun.plant, searched, objective);
    Plant tuned = search.best();
    boolean balanced = water.stream().anyMatch(s -> s.of(tuned) != s.of(found));
    Map<Setting, Reason> reasons = new HashMap<>(start.reasons());
    balance
        .reasons()
        .forEach((setting, why) -> reasons.put(setting, balanced ? why : new Reason.BalanceIdle()));
    List<Change> changes = new ArrayList<>();
    for (Setting setting : settings) {
      Plant workedOut = setting.group() == Group.LOCKSHIELDS ? balance.plant() : start.plant();
      changes.add(
          new Change(
              setting,
              setting.of(found),
              setting.of(workedOut),
              setting.of(tuned),
              reasons.get(setting)));
    }
    progress.accept(Stage.FLATNESS);
    List<Flatness> flatness =
        searched.parallelStream()
            .map(setting -> Flatness.of(tuned, setting, objective, search.least()))
            .toList();
    progress.accept(Stage.SPREADS);
    return new Tuning(
        found,
        tuned,
        changes,
        performance(found, trial, houses),
        performance(tuned, trial, houses),
        flatness,
        search.trials());
  }

  /** Where a search begins: group by group what was worked out, as far as it is better. */
  private static final class Begun {
    private final ToDoubleFunction<Plant> objective;
    private Plant plant;
    private double least;

    Begun(Plant found, ToDoubleFunction<Plant> objective) {
      this.objective = objective;
      plant = found;
      least = objective.applyAsDouble(found);
    }

    /** Takes some settings from another plant if that is worth it. */
    void take(List<Setting> settings, Plant from) {
      Plant other = plant;
      for (Setting setting : settings) {
        other = setting.with(other, setting.of(from));
      }
      double worth = settings.isEmpty() ? least : objective.applyAsDouble(other);
      if (worth < least * (1 - Search.WORTHWHILE)) {
        least = worth;
        plant = other;
      }
    }
  }

  private static Performance performance(Plant plant, Trial trial, int houses) {
    Day usual = trial.usual(plant);
    Day coldest = trial.coldest(plant);
    return new Performance(
        usual,
        coldest,
        Season.of(plant.house(), plant.arrangement()).asControlled(),
        trial.aims(plant, usual),
        OverSpreads.of(plant, houses),
        trial.worth(plant));
  }

  /**
   * Temperature at which the heating season's heat is made on average [°C]: each bin weighs by its
   * hours and by how far it is below the temperature from which no heat is needed.
   */
  static double usualOutdoor(double designOutdoor) {
    ClimateBins bins = EuropeanSeason.AVERAGE.fittedTo(designOutdoor);
    double sum = 0;
    double weight = 0;
    for (int i = 0; i < bins.outdoor().length; i++) {
      double w = bins.hours()[i] * (EuropeanSeason.NO_LOAD - bins.outdoor()[i]);
      sum += w * bins.outdoor()[i];
      weight += w;
    }
    return sum / weight;
  }
}
