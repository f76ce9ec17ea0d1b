package settle.cli;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import settle.plots.figures.BenchFigures;
import settle.plots.gallery.BenchCharts;
import settle.scenarios.Scenario;
import settle.scenarios.finding.Finding;
import settle.scenarios.format.NearestName;
import settle.sim.bench.BenchFindings;
import settle.sim.bench.Course;
import settle.sim.bench.Disturbance;
import settle.sim.bench.ValveBench;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;

/** Tests one of a scenario's valves. */
final class ValveRun {

  private final StudyRun run;

  ValveRun(CommandSpec command, CommonOptions options) {
    run = new StudyRun(command, options);
  }

  /**
   * Tests the valve, and prints and writes what was found.
   *
   * @param arrangement whose valve; null for the first
   * @param room in which room; null for the first with a thermostatic valve
   * @throws Failure if the scenario is wrong or has nothing of that name, a model cannot be solved,
   *     or a file cannot be written
   */
  void execute(String arrangement, String room) throws Failure {
    run.execute((text, scenario, progress) -> answer(scenario, arrangement, room, progress));
  }

  private static StudyRun.Answer answer(
      Scenario scenario, String arrangement, String room, Progress progress) throws Failure {
    House house = scenario.house();
    Arrangement chosen = ScenarioFile.arrangement(house, arrangement);
    int branch = branch(chosen, room);
    progress.stage("testing the valve of " + chosen.place(branch));
    ValveBench bench = new ValveBench(house, chosen, branch);
    // One run is one thread's work; different runs are not.
    List<Course> courses =
        Stream.of(Disturbance.values())
            .parallel()
            .map(bench::through)
            .flatMap(Optional::stream)
            .toList();
    BenchFindings findings = bench.findings(courses);
    List<String> doubts = scenario.warnings().stream().map(Finding::toString).toList();
    return new StudyRun.Answer(
        new BenchFigures(findings).study(others(house, chosen, branch), doubts),
        true,
        () -> BenchCharts.of(findings),
        null);
  }

  /**
   * Position of the branch asked for: by its own name, or in a room the valve there is most to see
   * of.
   */
  private static int branch(Arrangement arrangement, String room) throws Failure {
    List<Branch> branches = arrangement.branches();
    if (room == null) {
      return ValveBench.mostTelling(branches);
    }
    int[] there =
        IntStream.range(0, branches.size())
            .filter(b -> branches.get(b).room().equals(room))
            .toArray();
    if (there.length == 0) {
      int named = arrangement.branchNames().indexOf(room);
      if (named >= 0) {
        return named;
      }
      Set<String> rooms = new LinkedHashSet<>(branches.stream().map(Branch::room).toList());
      rooms.addAll(arrangement.branchNames());
      throw new Failure(
          ExitStatus.WRONG_INPUT,
          "arrangement '"
              + arrangement.name()
              + "' has no valve in a room '"
              + room
              + "'"
              + NearestName.hint(room, rooms),
          null);
    }
    return there[ValveBench.mostTelling(IntStream.of(there).mapToObj(branches::get).toList())];
  }

  /** What --room takes for a branch: its room, or its own name where the room has several. */
  private static String reachedBy(Arrangement arrangement, int branch) {
    String room = arrangement.branches().get(branch).room();
    return arrangement.place(branch).equals(room) ? room : arrangement.branchNames().get(branch);
  }

  /** The other valves of the arrangement, and the other arrangements. */
  private static List<String> others(House house, Arrangement chosen, int branch) {
    List<String> others = new ArrayList<>();
    List<Branch> branches = chosen.branches();
    String rooms =
        IntStream.range(0, branches.size())
            .filter(b -> b != branch)
            .mapToObj(b -> reachedBy(chosen, b) + " (" + branches.get(b).valve().name() + ")")
            .collect(Collectors.joining(", "));
    if (!rooms.isEmpty()) {
      others.add("--room: " + rooms);
    }
    String arrangements =
        house.arrangements().stream()
            .map(Arrangement::name)
            .filter(name -> !name.equals(chosen.name()))
            .collect(Collectors.joining(", "));
    if (!arrangements.isEmpty()) {
      others.add("--arrangement: " + arrangements);
    }
    return others;
  }
}
