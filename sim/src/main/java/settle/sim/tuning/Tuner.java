package settle.sim.tuning;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import settle.sim.atrest.Balancing;
import settle.sim.engine.HeldRun;
import settle.sim.house.Aims;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.EuropeanSeason;
import settle.sim.study.Season;
import settle.sim.study.Workers;
import settle.sim.tuning.Grid.Choice;

/**
 * Tunes a plant: works out where to begin, searches, asks how flat the answer is, and goes on if
 * that finds something better.
 */
final class Tuner {

  private final Plant found;
  private final Tuning.Request request;
  private final Workers workers;
  private final Climate climate;
  private final List<Setting> settings;
  private final List<Integer> searched;
  private final Grid grid;
  private final Map<Setting, Reason> reasons = new HashMap<>();

  /**
   * @param found the plant as found
   * @param request what is asked
   * @param workers who tries choices and houses
   */
  Tuner(Plant found, Tuning.Request request, Workers workers) {
    this.found = found;
    this.request = request;
    this.workers = workers;
    climate = Climate.of(found.house().designOutdoor());
    settings = Settings.of(found, request.groups());
    grid = new Grid(found, settings);
    // Gains beyond the rule's look well only where nothing is ever disturbed, so they stay as found
    // or by the rule.
    searched =
        IntStream.range(0, settings.size())
            .filter(i -> settings.get(i).group() != Group.GAINS)
            .boxed()
            .toList();
  }

  Tuning tune(Consumer<Tuning.Stage> progress) {
    progress.accept(Tuning.Stage.START);
    StartValues balance = workedOut(found, true);
    Trial first = new Trial(found, balance.plant(), climate, request.sure(), workers);
    Choice balanced = cheapest(first, List.of(grid.asFound(), grid.of(balance.plant())));
    Choice worked = workedOut(grid.of(balance.plant()), balanced);
    Trial trial = first.after(grid.plant(cheapest(first, List.of(balanced, worked))));
    Tried tried = new Tried(grid, trial, workers);
    progress.accept(Tuning.Stage.SEARCH);
    Search search = new Search(grid, tried, searched, new Moves(grid, climate.usual()));
    Search.Ending ending = search.from(new Starts(grid, grid.asFound(), worked).tryAll(tried));
    progress.accept(Tuning.Stage.FLATNESS);
    Choice best;
    List<Flatness> flatness;
    do {
      search.turnBack();
      best = tried.best();
      flatness = Flatness.of(grid, tried, searched);
      if (!tried.best().equals(best)) {
        ending = search.goOn();
      }
    } while (!tried.best().equals(best));
    progress.accept(Tuning.Stage.SPREADS);
    Plant tuned = grid.plant(best);
    List<Tuning.Performance> performances =
        workers.all(
            List.of(
                () -> performance(found, tried.worth(grid.asFound())),
                () -> performance(tuned, tried.worth())));
    return new Tuning(
        found,
        tuned,
        changes(worked, tuned),
        performances.get(0),
        performances.get(1),
        flatness,
        new Tuning.Searched(ending == Search.Ending.CONVERGED, tried.count(), search.followed()),
        new Tuning.Prices(trial.priceOfKelvin(), trial.priceOfChange()));
  }

  /** Works out the settings of the water, or all others, and keeps the reasons. */
  private StartValues workedOut(Plant plant, boolean water) {
    StartValues start =
        StartValues.workedOut(
            plant,
            settings.stream().filter(s -> s.group() == Group.LOCKSHIELDS == water).toList(),
            climate.usual());
    reasons.putAll(start.reasons());
    return start;
  }

  /** The one that seems cheapest. */
  private Choice cheapest(Trial trial, List<Choice> choices) {
    List<Double> totals =
        workers.all(choices, c -> trial.quick(grid.plant(c), grid.changed(c)).total());
    return choices.get(totals.indexOf(Collections.min(totals)));
  }

  /** All worked out: the water as balanced, the rest for what is better, balanced or as found. */
  private Choice workedOut(Choice balanced, Choice better) {
    Choice worked = grid.of(workedOut(grid.plant(better), false).plant());
    for (int i = 0; i < settings.size(); i++) {
      if (settings.get(i).group() == Group.LOCKSHIELDS) {
        worked = worked.with(i, balanced.at().get(i));
      }
    }
    return worked;
  }

  private List<Tuning.Change> changes(Choice worked, Plant tuned) {
    List<Tuning.Change> changes = new ArrayList<>();
    for (int i = 0; i < settings.size(); i++) {
      Setting setting = settings.get(i);
      changes.add(
          new Tuning.Change(
              setting,
              setting.of(found),
              grid.value(worked, i),
              setting.of(tuned),
              reasons.get(setting),
              setting.onMark(tuned, setting.of(tuned))));
    }
    return changes;
  }

  private Tuning.Performance performance(Plant plant, Worth worth) {
    House house = plant.house();
    Aims asked = house.aims();
    HouseModel model = Balancing.asRun(house, plant.arrangement());
    Spell usual = Spell.of(plant, climate.usual(), model);
    Spell mild = Spell.of(plant, climate.mild(), model);
    Spell coldest = Spell.of(plant, house.designOutdoor(), model);
    HeldRun.Day held = HeldRun.of(model, house.designOutdoor(), HeldRun.Asker.EXACT);
    List<Aim> aims = new ArrayList<>(Aim.held(plant, held));
    aims.addAll(Aim.ofDay(Aim.When.USUAL, usual, asked));
    aims.addAll(Aim.ofDay(Aim.When.MILD, mild, asked));
    aims.addAll(Aim.ofColdest(coldest, asked));
    Optional<Season.Year> season =
        house.designOutdoor() < EuropeanSeason.NO_LOAD
            ? Optional.of(Season.of(house, plant.arrangement()).asControlled())
            : Optional.empty();
    return new Tuning.Performance(
        usual,
        mild,
        coldest,
        season,
        aims,
        OverSpreads.of(plant, request.houses(), workers),
        worth);
  }
}
