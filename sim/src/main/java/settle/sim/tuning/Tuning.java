package settle.sim.tuning;

import java.util.ArrayList;
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
   * @param start where the search began
   * @param after as tuned
   * @param reason why it began there
   */
  public record Change(Setting setting, double before, double start, double after, Reason reason) {

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
    // A search leaves lockshields and pump alone: a balance sets them, all or none.
    List<Setting> searched = settings.stream().filter(s -> s.group() != Group.LOCKSHIELDS).toList();
    StartValues start = new StartValues(found, settings, usualOutdoor);
    Trial trial = new Trial(found, start.plant(), usualOutdoor, request.sure());
    ToDoubleFunction<Plant> objective = plant -> trial.worth(plant).total();
    if (searched.size() < settings.size()) {
      StartValues asFound = new StartValues(found, searched, usualOutdoor);
      double balanced = objective.applyAsDouble(start.plant());
      if (objective.applyAsDouble(asFound.plant()) < balanced * (1 + Search.WORTHWHILE)) {
        start = asFound;
      }
    }
    progress.accept(Stage.SEARCH);
    Search search = new Search(found, start.plant(), searched, objective);
    Plant tuned = search.best();
    progress.accept(Stage.FLATNESS);
    List<Flatness> flatness =
        searched.parallelStream()
            .map(setting -> Flatness.of(tuned, setting, objective, search.least()))
            .toList();
    progress.accept(Stage.SPREADS);
    return new Tuning(
        found,
        tuned,
        changes(found, start, tuned, settings),
        performance(found, trial, houses),
        performance(tuned, trial, houses),
        flatness,
        search.trials());
  }

  private static List<Change> changes(
      Plant found, StartValues start, Plant tuned, List<Setting> settings) {
    Map<Setting, Reason> reasons = start.reasons();
    List<Change> changes = new ArrayList<>();
    for (Setting setting : settings) {
      changes.add(
          new Change(
              setting,
              setting.of(found),
              setting.of(start.plant()),
              setting.of(tuned),
              reasons.getOrDefault(setting, new Reason.BalanceIdle())));
    }
    return changes;
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
