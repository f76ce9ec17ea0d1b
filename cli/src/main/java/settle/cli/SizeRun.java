package settle.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.DoubleStream;
import picocli.CommandLine.Model.CommandSpec;
import settle.plots.figures.SizeStudy;
import settle.plots.gallery.SizePicture;
import settle.scenarios.Scenario;
import settle.scenarios.emitter.EmitterKinds;
import settle.scenarios.emitter.EmitterType;
import settle.scenarios.finding.Finding;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.sizing.Profile;
import settle.sim.sizing.SizedProfile;
import settle.sim.sizing.Sizing;
import settle.sim.study.Holding;

/** Sizes every profile for one arrangement. */
final class SizeRun {

  private static final double[] USUAL = {35, 40, 45, 50, 55, 60, 65, 70, 75};

  /** How far from the one asked for the usual ones are worth a column [K]. */
  private static final double APART = 2;

  private final StudyRun run;

  /**
   * @param command what is carried out
   * @param options its common options
   */
  SizeRun(CommandSpec command, CommonOptions options) {
    run = new StudyRun(command, options);
  }

  /**
   * Sizes, and prints and writes what was found.
   *
   * @param arrangement whose places and pipes; null for the first with skirting
   * @param flows flow temperatures besides the one asked for [°C]; null for the usual ones
   * @return whether a profile of the arrangement fits
   * @throws Failure if the scenario is wrong or has no such arrangement, a model cannot be solved,
   *     or a file cannot be written
   */
  boolean execute(String arrangement, List<Double> flows) throws Failure {
    return run.execute(
        (text, scenario, progress) -> answer(scenario, arrangement, flows, progress));
  }

  private static StudyRun.Answer answer(
      Scenario scenario, String arrangement, List<Double> flows, Progress progress) throws Failure {
    House house = scenario.house();
    Arrangement chosen = ScenarioFile.withSkirting(house, arrangement);
    Sizing sizing = new Sizing(house, chosen);
    if (!sizing.hasRooms()) {
      throw new Failure(
          ExitStatus.WRONG_INPUT,
          "arrangement '" + chosen.name() + "' has no open emitter, so there is nothing to size",
          null);
    }
    double asked = new Holding(house, chosen).asked(house.designOutdoor());
    double[] all = flows(asked, flows);
    int position = DoubleStream.of(all).boxed().toList().indexOf(asked);
    progress.stage("sizing skirting of " + chosen.name());
    List<SizedProfile> profiles =
        new ArrayList<>(
            Processors.ALL.all(
                profiles(scenario).stream()
                    .<Supplier<SizedProfile>>map(p -> () -> sizing.of(p, all))
                    .toList()));
    profiles.sort(Comparator.comparing(p -> !p.used()));
    SizeStudy study =
        new SizeStudy(
            house,
            chosen.name(),
            profiles,
            sizing.laid(profiles),
            position,
            scenario.warnings().stream().map(Finding::toString).toList());
    return new StudyRun.Answer(
        study.study(), study.fits(), () -> new SizePicture(profiles, asked).all(), null);
  }

  private static double[] flows(double asked, List<Double> named) {
    DoubleStream others =
        named == null
            ? DoubleStream.of(USUAL).filter(flow -> Math.abs(flow - asked) >= APART)
            : named.stream().mapToDouble(Double::doubleValue);
    return DoubleStream.concat(DoubleStream.of(asked), others).distinct().sorted().toArray();
  }

  private static List<Profile> profiles(Scenario scenario) {
    return scenario.known().of(EmitterKinds.SECTION).values().stream()
        .filter(type -> type.soldByLength() && type.runsAlongWalls())
        .map(SizeRun::profile)
        .toList();
  }

  private static Profile profile(EmitterType type) {
    return new Profile(
        type.described().name(),
        (length, like) -> type.placed(length, like.backFraction(), like.fixedTo()));
  }
}
