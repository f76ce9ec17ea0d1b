package settle.cli.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Scenarios changed by slips, by programs and on purpose: whatever is asked about them, the answer
 * is an answer. {@code -Dfuzz.trials=5000 -Dfuzz.seed=1} tries more, or others.
 */
class MutatedScenariosTest {

  /** Some seconds of work; what judges a change runs more. */
  private static final int TRIALS = Integer.getInteger("fuzz.trials", 30);

  private static final long SEED = Long.getLong("fuzz.seed", 1);

  @TempDir Path folder;

  @Test
  void everyTrialEndsInAnAnswer() throws IOException {
    List<Trial> trials = new ArrayList<>();
    Campaign.run(SEED, TRIALS, folder, trials);
    List<Trial> failed = trials.stream().filter(t -> !t.faults.isEmpty()).toList();
    Path kept = Files.createDirectories(Path.of("target", "fuzz"));
    for (Trial trial : failed) {
      Files.writeString(kept.resolve(trial.seed + ".yaml"), trial.text);
    }
    assertThat(failed).as("%s; scenarios in %s", Campaign.byStatus(trials), kept).isEmpty();
  }

  /**
   * Scenarios that failed in an earlier trial: command and form of its answer in the file's name.
   */
  @Test
  void whatFailedOnceIsAnswered() throws IOException, URISyntaxException {
    List<Path> files;
    try (Stream<Path> found =
        Files.list(Path.of(MutatedScenariosTest.class.getResource("once-failed").toURI()))) {
      files = found.sorted().toList();
    }
    ExecutorService executor = Executors.newSingleThreadExecutor();
    List<String> failed = new ArrayList<>();
    for (Path file : files) {
      String[] name = file.getFileName().toString().replace(".yaml", "").split("-");
      Trial trial = new Trial(Files.readString(file), name[1], name.length > 2);
      Campaign.carryOut(trial, executor, Files.createTempDirectory(folder, "t"));
      if (!trial.faults.isEmpty()) {
        failed.add(file.getFileName() + ": " + trial);
      }
    }
    executor.shutdownNow();
    assertThat(files).isNotEmpty();
    assertThat(failed).isEmpty();
  }

  @Test
  void aSeedGivesTheSameTrialEveryTime() throws IOException {
    List<String> bases = Campaign.bases();
    for (long seed = 1; seed < 200; seed++) {
      Trial once = new Trial(seed, bases);
      Trial again = new Trial(seed, bases);
      assertThat(again.text).isEqualTo(once.text);
      assertThat(again.command).isEqualTo(once.command);
    }
  }

  /** A judge that finds nothing wrong with anything would let everything pass. */
  @Test
  void whatIsWrongIsFound() {
    assertThat(judged(3, "", "settle: the model cannot be solved: no flows found")).hasSize(1);
    assertThat(judged(3, "", "settle: the model cannot be solved: kitchen after 3 h")).isEmpty();
    assertThat(judged(3, "", "settle: could not finish, by a fault of its own: x kitchen 3 h"))
        .hasSize(1);
    assertThat(judged(2, "", "settle: x\n\tat settle.sim.X")).hasSize(1);
    assertThat(judged(2, "", "")).hasSize(1);
    assertThat(judged(1, "", "settle: no")).isEmpty();
    assertThat(judged(4, "", "settle: no")).hasSize(1);
    assertThat(judged(2, "", "settle: \u001b[31m")).hasSize(1);
    assertThat(judged(0, "{\"flowMeanC\": 40.1, \"heatKWh\": 12}", "")).isEmpty();
    assertThat(judged(0, "{\"flowMeanC\": 1e9}", "")).hasSize(1);
    assertThat(judged(0, "{\"flowMeanC\": -7182}", "")).hasSize(1);
    assertThat(judged(0, "{\"heatKWh\": \"NaN\"}", "")).hasSize(1);
    assertThat(judged(0, "{\"heatKWh\": 1e54}", "")).hasSize(1);
    assertThat(judged(0, "{\"heatKWh\": ", "")).hasSize(1);
  }

  private static List<String> judged(int status, String out, String err) {
    Trial trial = new Trial("", "simulate", false);
    trial.status = status;
    trial.out = out;
    trial.err = err;
    trial.judge(List.of("kitchen"));
    return trial.faults;
  }
}
