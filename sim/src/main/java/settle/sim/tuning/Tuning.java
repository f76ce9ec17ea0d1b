package settle.sim.tuning;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import settle.sim.engine.HeldRun;
import settle.sim.house.Aims;
import settle.sim.house.House;
import settle.sim.result.RoomFigures;
import settle.sim.study.EuropeanSeason;
import settle.sim.study.Season;
import settle.sim.study.Workers;
import settle.sim.tuning.Grid.Choice;
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
 * @param search how the search went
 * @param prices what is weighed against the cost of energy
 */
public record Tuning(
    Plant found,
    Plant tuned,
    List<Change> changes,
    Performance before,
    Performance after,
    List<Flatness> flatness,
    Searched search,
    Prices prices) {

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
   * @param onMark whether it can be set by hand as it is tuned: it may be left as it was found, on
   *     no mark
   */
  public record Change(
      Setting setting,
      double before,
      double workedOut,
      double after,
      Reason reason,
      boolean onMark) {

    /** Whether there is anything to do. */
    public boolean moved() {
      return before != after;
    }
  }

  /**
   * How a search went.
   *
   * @param converged whether nothing a mark away from the answer is better; if not, it tried as
   *     many choices of settings as it may
   * @param trials how many choices of settings were tried
   * @param starts how many starts were followed
   */
  public record Searched(boolean converged, int trials, int starts) {}

  /**
   * What is weighed against the cost of energy.
   *
   * @param kelvin 1 K from want all day in every room [currency/d]
   * @param change a setting that is touched [currency/d]
   */
  public record Prices(double kelvin, double change) {}

  /**
   * What a plant does.
   *
   * @param usual a usual day
   * @param mild a mild day
   * @param coldest the coldest day
   * @param season a season at rest; empty where it is too mild for one
   * @param aims what is asked on each of these days, with what comes of it
   * @param spreads how it fares in the houses it may be
   * @param worth what the search made small, by its parts
   */
  public record Performance(
      Spell usual,
      Spell mild,
      Spell coldest,
      Optional<Season.Year> season,
      List<Aim> aims,
      OverSpreads spreads,
      Worth worth) {

    public Performance {
      aims = List.copyOf(aims);
    }

    /** Whether every aim is met in the house as stated. */
    public boolean meetsAims() {
      return aims.stream().allMatch(Aim::met);
    }

    /** What a room has in the coldest weather, without set-back and gains [°C]. */
    public double heldInColdest(RoomFigures room) {
      return aims.stream()
          .filter(aim -> aim.kind() == Aim.Kind.HELD && aim.when() == Aim.When.COLDEST)
          .filter(aim -> aim.room().equals(room.name()))
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
   * @param workers who tries choices and houses; the answer is the same whoever does
   * @param progress told what is being done
   * @throws ArithmeticException if a model could not be solved
   */
  public static Tuning of(Plant found, Request request, Workers workers, Consumer<Stage> progress) {
    Climate climate = Climate.of(found.house().designOutdoor());
    List<Setting> settings = Settings.of(found, request.groups());
    progress.accept(Stage.START);
    List<Setting> water = settings.stream().filter(s -> s.group() == Group.LOCKSHIELDS).toList();
    List<Setting> others = settings.stream().filter(s -> s.group() != Group.LOCKSHIELDS).toList();
    StartValues balance = StartValues.workedOut(found, water, climate.usual());
    Trial trial = new Trial(found, balance.plant(), climate, request.sure(), workers);
    Grid grid = new Grid(found, settings);
    Tried tried = new Tried(grid, trial, workers);
    Choice balanced = grid.of(balance.plant());
    tried.of(List.of(balanced));
    StartValues start = StartValues.workedOut(grid.plant(tried.best()), others, climate.usual());
    Choice worked = grid.of(start.plant());
    for (int i = 0; i < settings.size(); i++) {
      if (water.contains(settings.get(i))) {
        worked = worked.with(i, balanced.at().get(i));
      }
    }
    progress.accept(Stage.SEARCH);
    List<Integer> searched = searched(settings);
    Search search = new Search(grid, tried, searched, new Moves(grid, climate.usual()));
    Search.Ending ending = search.from(new Starts(grid, grid.asFound(), worked).tryAll(tried));
    progress.accept(Stage.FLATNESS);
    Choice best;
    List<Flatness> flatness;
    do {
      best = tried.best();
      double before = tried.least();
      flatness = Flatness.of(grid, tried, searched);
      if (tried.least() < before * (1 - Search.ENOUGH)) {
        ending = search.goOn();
      }
    } while (!tried.best().equals(best));
    Plant tuned = grid.plant(best);
    Map<Setting, Reason> reasons = new HashMap<>(start.reasons());
    reasons.putAll(balance.reasons());
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < settings.size(); i++) {
      Setting setting = settings.get(i);
      changes.add(
          new Change(
              setting,
              setting.of(found),
              grid.value(worked, i),
              setting.of(tuned),
              reasons.get(setting),
              setting.onMark(tuned, setting.of(tuned))));
    }
    progress.accept(Stage.SPREADS);
    int houses = request.houses();
    Worth asFound = tried.worth(grid.asFound());
    Worth asTuned = tried.worth();
    List<Performance> performances =
        workers.all(
            List.of(
                () -> performance(found, asFound, climate, houses, workers),
                () -> performance(tuned, asTuned, climate, houses, workers)));
    return new Tuning(
        found,
        tuned,
        changes,
        performances.get(0),
        performances.get(1),
        flatness,
        new Searched(ending == Search.Ending.CONVERGED, tried.count(), search.followed()),
        new Prices(trial.priceOfKelvin(), trial.priceOfChange()));
  }

  /**
   * What a search may change: gains beyond the rule's look well only where nothing is ever
   * disturbed, so they are as found or by the rule.
   */
  private static List<Integer> searched(List<Setting> settings) {
    return IntStream.range(0, settings.size())
        .filter(i -> settings.get(i).group() != Group.GAINS)
        .boxed()
        .toList();
  }

  private static Performance performance(
      Plant plant, Worth worth, Climate climate, int houses, Workers workers) {
    House house = plant.house();
    Aims asked = house.aims();
    Spell usual = Spell.of(plant, climate.usual());
    Spell mild = Spell.of(plant, climate.mild());
    Spell coldest = Spell.of(plant, house.designOutdoor());
    List<Aim> aims =
        new ArrayList<>(
            Aim.held(plant, HeldRun.of(house, plant.arrangement(), house.designOutdoor())));
    aims.addAll(Aim.ofDay(Aim.When.USUAL, usual, asked));
    aims.addAll(Aim.ofDay(Aim.When.MILD, mild, asked));
    aims.addAll(Aim.ofColdest(coldest, asked));
    Optional<Season.Year> season =
        house.designOutdoor() < EuropeanSeason.NO_LOAD
            ? Optional.of(Season.of(house, plant.arrangement()).asControlled())
            : Optional.empty();
    return new Performance(
        usual, mild, coldest, season, aims, OverSpreads.of(plant, houses, workers), worth);
  }
}
