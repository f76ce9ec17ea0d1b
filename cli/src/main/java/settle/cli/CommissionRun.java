package settle.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import settle.cli.output.SheetCsv;
import settle.plots.figures.CommissionStudy;
import settle.plots.report.CommissioningSheet;
import settle.plots.report.FirstFixSheet;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.commissioning.CommissioningDay;
import settle.sim.commissioning.CommissioningPlan;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** Makes the sheets of one arrangement. */
final class CommissionRun {

  private final CommonOptions options;
  private final StudyRun run;

  CommissionRun(CommandSpec command, CommonOptions options) {
    this.options = options;
    run = new StudyRun(command, options);
  }

  /**
   * Works them out, and prints and writes them.
   *
   * @param arrangement which one; null for the first with skirting
   * @param day when it is commissioned
   * @throws Failure if the scenario is wrong or has no such arrangement, a model cannot be solved,
   *     or a file cannot be written
   */
  void execute(String arrangement, CommissioningDay day) throws Failure {
    run.execute((text, scenario, progress) -> answer(scenario, arrangement, day, progress));
  }

  private StudyRun.Answer answer(
      Scenario scenario, String arrangement, CommissioningDay day, Progress progress)
      throws Failure {
    House house = scenario.house();
    Arrangement chosen = ScenarioFile.withSkirting(house, arrangement);
    progress.stage("filling, venting and reading " + chosen.name());
    CommissioningPlan plan = CommissioningPlan.of(house, chosen, day);
    CommissionStudy study =
        new CommissionStudy(plan, scenario.warnings().stream().map(Finding::toString).toList());
    return StudyRun.Answer.on(() -> sheets(study), study.study());
  }

  private Map<String, String> sheets(CommissionStudy study) {
    Map<String, String> sheets = new LinkedHashMap<>();
    String scenario = options.file().toString();
    sheets.put("first-fix.html", FirstFixSheet.html(study, scenario, Version.number()));
    sheets.put("commissioning.html", CommissioningSheet.html(study, scenario, Version.number()));
    sheets.put("first-fix.csv", SheetCsv.of(study.firstFixTable()));
    sheets.put("material.csv", SheetCsv.of(study.materialTable()));
    sheets.put("venting.csv", SheetCsv.of(study.ventingTable()));
    sheets.put("readings.csv", SheetCsv.readings(study.places(), study.plan().day()));
    return sheets;
  }
}
