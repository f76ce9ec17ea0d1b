package settle.cli.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import settle.scenarios.Starter;

/** Many trials in one process, and what came of them. */
final class Campaign {

  /** Longest a trial may take on a busy machine [s]. */
  private static final int PATIENCE = 600;

  private static final Path EXAMPLES = Path.of("..", "scenarios", "examples");

  private Campaign() {}

  static List<String> bases() throws IOException {
    List<String> bases = new ArrayList<>(List.of(Starter.text()));
    try (Stream<Path> files = Files.list(EXAMPLES)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        bases.add(Files.readString(file));
      }
    }
    return bases;
  }

  /**
   * Carries out trials one after the other.
   *
   * @param first seed of the first, those of the others follow
   * @param count how many
   * @param folder for their files
   * @param tried what each came to; null for those that took too long
   */
  static void run(long first, int count, Path folder, List<Trial> tried) throws IOException {
    List<String> bases = bases();
    ExecutorService executor =
        Executors.newCachedThreadPool(
            r -> {
              Thread thread = new Thread(r, "trial");
              thread.setDaemon(true);
              return thread;
            });
    for (long seed = first; seed < first + count; seed++) {
      Trial trial = new Trial(seed, bases);
      tried.add(trial);
      carryOut(trial, executor, Files.createTempDirectory(folder, "t"));
    }
    executor.shutdownNow();
  }

  static void carryOut(Trial trial, ExecutorService executor, Path folder) throws IOException {
    var work =
        executor.submit(
            () -> {
              trial.run(folder);
              return trial;
            });
    try {
      work.get(PATIENCE, TimeUnit.SECONDS);
    } catch (TimeoutException e) {
      trial.faults.add("takes longer than " + PATIENCE + " s");
    } catch (ExecutionException e) {
      trial.faults.add("the trial itself: " + e.getCause());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path path : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }

  /** Counts by status. */
  static Map<Integer, Integer> byStatus(List<Trial> trials) {
    Map<Integer, Integer> counts = new TreeMap<>();
    trials.forEach(t -> counts.merge(t.status, 1, Integer::sum));
    return counts;
  }

  /**
   * By hand: first seed, count, folder in which scenarios that fail are kept.
   *
   * @param args as above
   */
  public static void main(String[] args) throws IOException {
    Path kept = Path.of(args[2]);
    Files.createDirectories(kept);
    Path work = Files.createTempDirectory("fuzz");
    long first = Long.parseLong(args[0]);
    int count = Integer.parseInt(args[1]);
    List<Trial> all = new ArrayList<>();
    for (long seed = first; seed < first + count; seed += 50) {
      List<Trial> some = new ArrayList<>();
      run(seed, (int) Math.min(50, first + count - seed), work, some);
      for (Trial trial : some) {
        if (!trial.faults.isEmpty()) {
          System.out.println(trial);
          Files.writeString(
              kept.resolve(
                  trial.seed + "-" + trial.command + (trial.files ? "-files" : "") + ".yaml"),
              trial.text);
        } else if (trial.seconds > 15) {
          System.out.printf(
              "slow: seed %d %s %.0f s %s%n",
              trial.seed, trial.command, trial.seconds, trial.mutations);
        }
      }
      all.addAll(some);
      System.out.println(seed + 50 + ": " + byStatus(all));
    }
    System.exit(0);
  }
}
