package settle.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import settle.plots.figures.RunFigures;
import settle.sim.atrest.SettledHouse;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.result.RunResult;
import settle.sim.study.Holding;
import settle.sim.units.Times;

/**
 * Figures of a house by name: a few dozen at rest, and all there are of the first day of its run.
 */
final class DayFigures {

  private static final double DAY = Times.DAY;

  private final Map<String, Double> figures = new LinkedHashMap<>();

  private DayFigures() {}

  /** The figures of every arrangement; not a number where there is none. */
  static Map<String, Double> of(House house) {
    DayFigures all = new DayFigures();
    for (Arrangement arrangement : house.arrangements()) {
      all.atRest(arrangement.name() + " at rest: ", house, arrangement);
    }
    House day = firstDay(house);
    new RunFigures(day, runs(day, Told.NOBODY), List.of()).write(new Numbers("run", all::put));
    return all.figures;
  }

  /** The house with a run of one day. */
  static House firstDay(House house) {
    RunSettings run = house.run();
    return house.withRun(
        new RunSettings(
            run.startTemperature(),
            run.leadIn(),
            Math.min(run.length(), DAY),
            run.shortestStep(),
            run.longestStep(),
            run.profileTimes()));
  }

  /**
   * A run of every arrangement.
   *
   * @param told hears how much of it is done
   */
  static List<RunResult> runs(House house, Told told) {
    List<RunResult> runs = new ArrayList<>();
    int count = house.arrangements().size();
    for (Arrangement arrangement : house.arrangements()) {
      double before = runs.size();
      runs.add(Simulation.run(house, arrangement, share -> told.share((before + share) / count)));
    }
    return runs;
  }

  private void atRest(String prefix, House house, Arrangement arrangement) {
    SettledHouse settled =
        new Holding(house, arrangement).settled(house.designOutdoor()).asControlled();
    put(prefix + "flow temperature", settled.flowTemperature());
    put(prefix + "return temperature", settled.returnTemperature());
    put(prefix + "flow", settled.totalFlow());
    put(prefix + "source heat", settled.sourceHeat());
    put(prefix + "heat lost", settled.outsideLoss());
    for (int i = 0; i < house.rooms().size(); i++) {
      String room = prefix + house.rooms().get(i).name() + ", ";
      put(room + "air", settled.air(i));
      put(room + "operative", settled.operative(i));
      put(room + "lowest", settled.lowest(i));
      put(room + "highest", settled.highest(i));
      put(room + "pipe heat", settled.pipeHeat(i));
    }
    for (int i = 0; i < arrangement.branches().size(); i++) {
      String branch = prefix + "branch " + i + ", ";
      put(branch + "heat", settled.heat(i));
      put(branch + "flow", settled.massFlow(i));
      put(branch + "opening", settled.opening(i));
    }
  }

  private void put(String name, double value) {
    if (figures.put(name, value) != null) {
      throw new IllegalArgumentException("two figures are named '" + name + "'");
    }
  }
}
