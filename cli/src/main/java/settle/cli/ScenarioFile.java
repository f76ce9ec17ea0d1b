package settle.cli;

import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import settle.scenarios.Scenario;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.scenarios.format.NearestName;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/** Reads the scenario a command was given. */
final class ScenarioFile {

  private ScenarioFile() {}

  /**
   * Reads it.
   *
   * @throws Failure with a message for everything that is wrong with it
   */
  static Scenario read(CommandSpec command, Path file) throws Failure {
    return read(command, text(file), file);
  }

  /**
   * Its text as typed: read once, since a pipe can be read no oftener.
   *
   * @throws Failure if it cannot be read
   */
  static String text(Path file) throws Failure {
    try {
      return ScenarioFiles.text(file);
    } catch (ScenarioException e) {
      throw wrong(e);
    }
  }

  /**
   * Reads it from its text.
   *
   * @throws Failure with a message for everything that is wrong with it
   */
  static Scenario read(CommandSpec command, String text, Path file) throws Failure {
    try {
      return ScenarioFiles.read(text, file, Settle.of(command).format());
    } catch (ScenarioException e) {
      throw wrong(e);
    }
  }

  /** A file that is wrong, with everything that is. */
  static Failure wrong(ScenarioException e) {
    return new Failure(
        ExitStatus.WRONG_INPUT, e.problems().stream().map(Finding::toString).toList(), e);
  }

  /**
   * One of a house's arrangements.
   *
   * @param name which; null for the first
   * @throws Failure if there is none of that name
   */
  static Arrangement arrangement(House house, String name) throws Failure {
    List<Arrangement> known = house.arrangements();
    if (name == null) {
      return known.get(0);
    }
    List<String> names = known.stream().map(Arrangement::name).toList();
    int index = names.indexOf(name);
    if (index < 0) {
      throw new Failure(
          ExitStatus.WRONG_INPUT,
          "the scenario has no arrangement '" + name + "'" + NearestName.hint(name, names),
          null);
    }
    return known.get(index);
  }

  /**
   * One of a house's arrangements.
   *
   * @param name which; null for the first with skirting, else the first
   * @throws Failure if there is none of that name
   */
  static Arrangement withSkirting(House house, String name) throws Failure {
    return name == null
        ? house.arrangements().stream()
            .filter(a -> a.branches().stream().anyMatch(b -> b.emitter().run().isPresent()))
            .findFirst()
            .orElse(house.arrangements().get(0))
        : arrangement(house, name);
  }
}
