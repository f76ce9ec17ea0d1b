package settle.plots.chart;

import java.util.ArrayList;
import java.util.List;
import settle.plots.words.Comparison;
import settle.plots.words.TuningWords;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.tuning.Day;
import settle.sim.tuning.Tuning;

/** The charts of a tuning: found and tuned in one picture, how flat, how it fares. */
public final class TuningCharts {

  private final Tuning tuning;
  private final TuningWords words;

  private TuningCharts(Tuning tuning) {
    this.tuning = tuning;
    words = new TuningWords(tuning);
  }

  /**
   * All of them.
   *
   * @param tuning what was found
   */
  public static List<Chart> of(Tuning tuning) {
    TuningCharts charts = new TuningCharts(tuning);
    List<Chart> all = new ArrayList<>();
    all.add(
        charts.rooms(
            "usual-day",
            "Rooms on a usual day, found and tuned",
            tuning.before().usual(),
            tuning.after().usual()));
    all.add(
        charts.rooms(
            "coldest-day",
            "Rooms on the coldest day, found and tuned",
            tuning.before().coldest(),
            tuning.after().coldest()));
    return all;
  }

  private Chart rooms(String name, String title, Day before, Day after) {
    Comparison comparison = compared(before, after);
    TimeWindow window = TimeWindow.whole(comparison.results().get(0));
    return new Chart(
        name, title, words.headline(), new RoomTemperatures(comparison, window, false).draw(title));
  }

  /** Found and tuned as if they were two arrangements. */
  private Comparison compared(Day before, Day after) {
    House house = tuning.found().house();
    return new Comparison(
        house, List.of(named("found", before.run()), named("tuned", after.run())));
  }

  private static RunResult named(String name, RunResult run) {
    Arrangement as = run.arrangement();
    return new RunResult(
        new Arrangement(name, as.branches(), as.balanced()),
        run.trace(),
        run.rooms(),
        run.plant(),
        run.balance(),
        run.ledger(),
        run.profiles(),
        run.firstCall(),
        run.keepsUp(),
        run.steps(),
        run.warnings());
  }
}
