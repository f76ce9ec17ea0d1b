package settle.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import settle.plots.figures.AcceptStudy;
import settle.plots.gallery.ReadingsPicture;
import settle.plots.words.AcceptWords;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.scenarios.readings.Readings;
import settle.sim.atrest.Balancing;
import settle.sim.commissioning.CommissioningDay;
import settle.sim.commissioning.CommissioningSpreads;
import settle.sim.commissioning.Diagnosis;
import settle.sim.commissioning.Diagnostician;
import settle.sim.commissioning.ExpectedReadings;
import settle.sim.commissioning.Point;
import settle.sim.commissioning.ReadingModel;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/** Weighs what was read on commissioning day. */
final class AcceptRun {

  /** What the day was like, from what readings say of it. */
  @FunctionalInterface
  interface Day {
    CommissioningDay of(OptionalDouble outdoor, OptionalDouble start);
  }

  private final StudyRun run;

  /**
   * @param command what is carried out
   * @param options its common options
   */
  AcceptRun(CommandSpec command, CommonOptions options) {
    run = new StudyRun(command, options);
  }

  /**
   * Reads readings, weighs them, and prints and writes what they say.
   *
   * @param readings where they stand
   * @param arrangement which one; null for the first with skirting
   * @param day what the day was like
   * @return whether the house is as designed
   * @throws Failure if scenario or readings are wrong, there is no such arrangement, a model cannot
   *     be solved, or a file cannot be written
   */
  boolean execute(Path readings, String arrangement, Day day) throws Failure {
    return run.execute(
        (text, scenario, progress) -> answer(scenario, readings, arrangement, day, progress));
  }

  private static StudyRun.Answer answer(
      Scenario scenario, Path file, String arrangement, Day day, Progress progress) throws Failure {
    House house = scenario.house();
    Arrangement chosen = ScenarioFile.withSkirting(house, arrangement);
    Readings readings = readings(file, house, chosen);
    CommissioningDay that = day.of(readings.outdoor(), readings.start());
    HouseModel asRun = Balancing.asRun(house, chosen);
    List<Point> points = points(asRun, that, readings);
    progress.stage("commissioning " + chosen.name() + " with all that may be wrong");
    ReadingModel model =
        ReadingModel.of(
            asRun, that, points, CommissioningSpreads.BELIEVED, Processors.ALL, progress::share);
    Diagnosis diagnosis = Diagnostician.ask(model, values(points, readings), readings.looks());
    List<String> doubts = new ArrayList<>();
    scenario.warnings().stream().map(Finding::toString).forEach(doubts::add);
    readings.doubts().stream().map(Finding::toString).forEach(doubts::add);
    boolean looked = !readings.looks().isEmpty();
    AcceptStudy study = new AcceptStudy(house.title(), model, diagnosis, that, looked, doubts);
    AcceptWords words = new AcceptWords(model, diagnosis, that, looked);
    return new StudyRun.Answer(
        study.study(),
        study.accepted(),
        () -> new ReadingsPicture(words, diagnosis.readings()).all(),
        null);
  }

  private static Readings readings(Path file, House house, Arrangement arrangement) throws Failure {
    try {
      return ScenarioFiles.readings(file, house, arrangement);
    } catch (ScenarioException e) {
      throw ScenarioFile.wrong(e);
    }
  }

  /** All that may be read, at the minute at which its row was. */
  private static List<Point> points(HouseModel asRun, CommissioningDay day, Readings readings) {
    return ExpectedReadings.possible(asRun, day.readAfter()).stream()
        .map(
            point ->
                readings.taken().stream()
                    .filter(t -> t.kind() == point.kind() && t.which() == point.which())
                    .findFirst()
                    .map(t -> new Point(t.kind(), t.which(), t.after().orElse(point.time())))
                    .orElse(point))
        .toList();
  }

  private static double[] values(List<Point> points, Readings readings) {
    double[] values = new double[points.size()];
    Arrays.fill(values, Double.NaN);
    for (Readings.Taken taken : readings.taken()) {
      for (int p = 0; p < values.length; p++) {
        if (points.get(p).kind() == taken.kind() && points.get(p).which() == taken.which()) {
          values[p] = taken.value();
        }
      }
    }
    return values;
  }
}
