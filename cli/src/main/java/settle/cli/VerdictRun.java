package settle.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import settle.plots.figures.VerdictStudy;
import settle.plots.gallery.AnswerCharts;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.study.Odds;
import settle.sim.study.Verdict;

/** Asks about every arrangement in a scenario. */
final class VerdictRun {

  private final StudyRun run;
  private final int houses;
  private final Optional<RemediedFile> remedied;

  /** Fixed, so that every call draws the same houses. */
  private static final long SEED = 1;

  /**
   * @param command what is carried out
   * @param options its common options
   * @param houses how many to try; 0 for none
   * @param remedied where the house with its remedies goes; empty for nowhere
   */
  VerdictRun(
      CommandSpec command, CommonOptions options, int houses, Optional<RemediedFile> remedied) {
    run = new StudyRun(command, options);
    this.houses = houses;
    this.remedied = remedied;
  }

  /**
   * Judges every arrangement, and prints and writes the answers.
   *
   * @return whether every arrangement keeps up, be it only just
   * @throws Failure if the scenario is wrong, a model cannot be solved, or a file cannot be written
   */
  boolean execute() throws Failure {
    return run.execute(this::answer);
  }

  private StudyRun.Answer answer(String text, Scenario scenario, Progress progress) throws Failure {
    if (remedied.isPresent()) {
      remedied.get().require();
    }
    House house = scenario.house();
    progress.stage("asking about " + names(house));
    List<Verdict> verdicts = verdicts(house, progress);
    VerdictStudy study =
        new VerdictStudy(
            house,
            verdicts,
            scenario.warnings().stream().map(Finding::toString).toList(),
            written(text, house, verdicts, progress));
    return new StudyRun.Answer(
        study.study(),
        verdicts.stream().allMatch(Verdict::keepsUp),
        () -> AnswerCharts.of(house, verdicts),
        null);
  }

  private Optional<String> written(
      String text, House house, List<Verdict> verdicts, Progress progress) throws Failure {
    if (remedied.isEmpty()) {
      return Optional.empty();
    }
    progress.stage("writing the house with its remedies");
    return Optional.of(remedied.get().write(text, house, verdicts, this::anew));
  }

  private Verdict anew(House house, Arrangement arrangement) {
    Verdict verdict = Verdict.of(house, arrangement, Processors.ALL);
    return houses == 0
        ? verdict
        : verdict.tried(house, Odds.samples(houses), SEED, Processors.ALL, done -> {});
  }

  /** Asks about all arrangements at once, then tries houses, one arrangement after the other. */
  private List<Verdict> verdicts(House house, Progress progress) {
    List<Verdict> verdicts =
        Processors.ALL.all(
            house.arrangements().stream()
                .<Supplier<Verdict>>map(a -> () -> Verdict.of(house, a, Processors.ALL))
                .toList());
    return houses == 0 ? verdicts : tried(house, verdicts, progress);
  }

  private List<Verdict> tried(House house, List<Verdict> verdicts, Progress progress) {
    int each = Odds.samples(houses);
    progress.stage("trying " + each + " houses");
    int all = each * verdicts.size();
    List<Verdict> tried = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      int before = each * tried.size();
      tried.add(
          verdict.tried(
              house,
              each,
              SEED,
              Processors.ALL,
              done -> progress.share((double) (before + done) / all)));
    }
    return tried;
  }

  private static String names(House house) {
    return house.arrangements().stream().map(Arrangement::name).collect(Collectors.joining(", "));
  }
}
