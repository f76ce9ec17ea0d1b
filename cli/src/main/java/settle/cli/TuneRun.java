package settle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import settle.plots.figures.TuningFigures;
import settle.plots.gallery.TuningCharts;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.edit.TunedScenario;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.scenarios.house.ScenarioFormat;
import settle.sim.house.House;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;

/** Tunes one of a scenario's arrangements. */
final class TuneRun {

  /**
   * What is asked for besides the options of every command.
   *
   * @param arrangement which one; null for the first
   * @param tuning what is asked of it
   * @param write where the tuned scenario goes; null for nowhere
   * @param force whether that may be a file that exists
   */
  record Request(String arrangement, Tuning.Request tuning, Path write, boolean force) {}

  private final CommandSpec command;
  private final StudyRun run;
  private final Request request;

  TuneRun(CommandSpec command, CommonOptions options, Request request) {
    this.command = command;
    run = new StudyRun(command, options);
    this.request = request;
  }

  /**
   * Tunes, and prints and writes what was found.
   *
   * @return whether the aims are met
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  boolean execute() throws Failure {
    return run.execute(this::answer);
  }

  private StudyRun.Answer answer(String text, Scenario scenario, Progress progress) throws Failure {
    refuseToOverwrite();
    House house = scenario.house();
    Plant found = new Plant(house, ScenarioFile.arrangement(house, request.arrangement()));
    Tuning tuning =
        Tuning.of(found, request.tuning(), Processors.ALL, stage -> progress.stage(words(stage)));
    if (request.write() != null) {
      progress.stage("writing " + request.write());
      writeScenario(text, tuning);
    }
    return new StudyRun.Answer(
        new TuningFigures(tuning).study(notes(scenario, tuning)),
        tuning.after().meetsAims(),
        () -> TuningCharts.of(tuning),
        null);
  }

  private static String words(Tuning.Stage stage) {
    return switch (stage) {
      case START -> "working out where to start";
      case SEARCH -> "searching by simulation";
      case FLATNESS -> "finding how much each setting matters";
      case SPREADS -> "trying the settings over the spreads";
    };
  }

  private static List<String> notes(Scenario scenario, Tuning tuning) {
    List<String> notes = new ArrayList<>();
    boolean shared =
        tuning.changes().stream().anyMatch(c -> c.moved() && !(belongsToArrangement(c.setting())));
    if (shared && scenario.house().arrangements().size() > 1) {
      notes.add(
          "all arrangements of the scenario share source, pump and control: what is tuned of them"
              + " here applies to the others too");
    }
    scenario.warnings().stream().map(Finding::toString).forEach(notes::add);
    return notes;
  }

  private static boolean belongsToArrangement(Setting setting) {
    return setting.kind() == Setting.Kind.HEAD || setting.kind() == Setting.Kind.LOCKSHIELD_TURNS;
  }

  private void refuseToOverwrite() throws Failure {
    if (request.write() != null) {
      try {
        WholeFile.require(request.write(), request.force());
      } catch (IOException e) {
        throw unwritable(e);
      }
    }
  }

  private Failure unwritable(IOException e) {
    return new Failure(
        ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, request.write()), e);
  }

  /** Writes the tuned text once it has been read back and says what was found. */
  private void writeScenario(String typed, Tuning tuning) throws Failure {
    List<Setting> moved =
        tuning.changes().stream().filter(Tuning.Change::moved).map(Tuning.Change::setting).toList();
    ScenarioFormat format = Settle.of(command).format();
    try {
      String text = TunedScenario.write(typed, tuning.tuned(), moved, format);
      House back = ScenarioFiles.read(text, request.write(), format).house();
      Plant plant =
          new Plant(back, ScenarioFile.arrangement(back, tuning.found().arrangement().name()));
      for (Setting setting : moved) {
        if (setting.of(plant) != setting.of(tuning.tuned())) {
          throw new IllegalStateException(setting + " was not written as it was found");
        }
      }
      WholeFile.write(request.write(), text);
    } catch (ScenarioException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, e.problems().stream().map(Finding::toString).toList(), e);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }
}
