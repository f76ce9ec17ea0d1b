package settle.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import settle.scenarios.ScenarioException;
import settle.scenarios.edit.RemediedScenario;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
import settle.scenarios.house.ScenarioFormat;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.measure.Measure;
import settle.sim.study.Judgement;
import settle.sim.study.Lift;
import settle.sim.study.Remedies;
import settle.sim.study.Verdict;

/**
 * Writes the house with its remedies: the least set for each arrangement that does not keep up, one
 * after the other, and only if every arrangement of what is read back is held by runs.
 */
final class RemediedFile {

  private final Path file;
  private final boolean force;
  private final ScenarioFormat format;

  /**
   * @param file where to
   * @param force whether a file may be there
   * @param format what a scenario may say
   */
  RemediedFile(Path file, boolean force, ScenarioFormat format) {
    this.file = file;
    this.force = force;
    this.format = format;
  }

  /** Refuses before anything is worked out what could not be written. */
  void require() throws Failure {
    try {
      WholeFile.require(file, force);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /**
   * Writes it if remedies were found.
   *
   * @param typed the scenario's text
   * @param house its house
   * @param verdicts what was found of its arrangements, in their order
   * @param anew finds the verdict on an arrangement of a changed house
   * @return what was written, or why nothing was, in a sentence
   */
  String write(
      String typed,
      House house,
      List<Verdict> verdicts,
      BiFunction<House, Arrangement, Verdict> anew)
      throws Failure {
    String text = typed;
    House changed = house;
    List<String> names = new ArrayList<>();
    for (Verdict verdict : verdicts) {
      String name = verdict.arrangement().name();
      if (verdict.outcome() == Verdict.Outcome.YES) {
        continue;
      }
      // What was changed for one arrangement may have changed source or control of the next.
      Optional<List<Measure>> measures =
          found(names.isEmpty() ? verdict : anew.apply(changed, changed.arrangement(name)));
      if (measures.isEmpty()) {
        return "Nothing was written to "
            + file
            + ": no remedies were found with which '"
            + name
            + "' keeps up.";
      }
      text = RemediedScenario.write(text, changed, name, measures.get(), format);
      for (Measure measure : measures.get()) {
        changed = measure.on(changed, name);
      }
      names.add("'" + name + "'");
    }
    if (names.isEmpty()) {
      return "Nothing was written to " + file + ": nothing is needed.";
    }
    return written(text, names);
  }

  /** What makes it a yes, nothing if it is one; else what holds it as stated. */
  private static Optional<List<Measure>> found(Verdict verdict) {
    if (verdict.outcome() == Verdict.Outcome.YES) {
      return Optional.of(List.of());
    }
    return verdict
        .lift()
        .filter(Lift::enough)
        .map(Lift::measures)
        .or(() -> verdict.remedies().cure().map(Remedies.Cure::measures));
  }

  private String written(String text, List<String> names) throws Failure {
    try {
      House back = ScenarioFiles.read(text, file, format).house();
      for (Arrangement arrangement : back.arrangements()) {
        if (!Judgement.of(back, arrangement).holds()) {
          return "Nothing was written to "
              + file
              + ": with the remedies for "
              + String.join(" and ", names)
              + " '"
              + arrangement.name()
              + "' is not held.";
        }
      }
      WholeFile.write(file, text);
      return "Written to "
          + file
          + ": the house with the remedies for "
          + String.join(" and ", names)
          + ".";
    } catch (ScenarioException e) {
      throw new Failure(
          ExitStatus.COULD_NOT_FINISH, e.problems().stream().map(Finding::toString).toList(), e);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  private Failure unwritable(IOException e) {
    return new Failure(
        ExitStatus.COULD_NOT_FINISH, "cannot write " + FileTrouble.describe(e, file), e);
  }
}
