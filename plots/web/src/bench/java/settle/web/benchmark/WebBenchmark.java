package settle.web.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Measures cases in WebAssembly and JavaScript under node and on this virtual machine, by turns,
 * all of them warm, and prints a table. Processor time of one thread; the least round counts.
 */
public final class WebBenchmark {

  /** Repetitions before any that count: fewer leave compilers at work. */
  private static final int WARM_UP = 100;

  /** Enough of them, even so [ms]: what takes long goes through the same code many times. */
  private static final double LONG_WARM_UP = 10_000;

  private static final int ROUNDS = 9;

  /** How long a round takes at least [ms]: well over what clocks resolve. */
  private static final double ROUND = 200;

  /** What the three may differ by, as a share: they do the same, or are not worth comparing. */
  private static final double SAME = 1e-9;

  private static final Path EXAMPLES = Path.of(System.getProperty("settle.examples"));

  private WebBenchmark() {}

  /**
   * What is done.
   *
   * @param name as {@link WebCases} knows it
   * @param title in the table
   * @param file scenario, or empty
   */
  private record Case(String name, String title, String file) {}

  private static final List<Case> CASES =
      List.of(
          new Case("rest", "eight rooms at rest", ""),
          new Case("day", "whole wet system, one day", ""),
          new Case(
              "verdict",
              "verdict of the mid-terrace, two arrangements, without odds",
              EXAMPLES.resolve("mid-terrace.yaml").toString()));

  /**
   * What a number of repetitions came to.
   *
   * @param milliseconds of processor time
   * @param figure that came of it
   */
  private record Taken(double milliseconds, double figure) {}

  /** Something that runs cases. */
  private interface Machine {

    void prepare(Case theCase) throws IOException;

    Taken repeat(int times) throws IOException;
  }

  /** This virtual machine. */
  private static final class Own implements Machine {

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    @Override
    public void prepare(Case theCase) throws IOException {
      WebCases.prepare(
          theCase.name, theCase.file.isEmpty() ? "" : Files.readString(Path.of(theCase.file)));
    }

    @Override
    public Taken repeat(int times) {
      long from = THREADS.getCurrentThreadCpuTime();
      double figure = WebCases.repeat(times);
      return new Taken((THREADS.getCurrentThreadCpuTime() - from) / 1e6, figure);
    }
  }

  /** Node, with one of the two scripts. */
  private static final class Node implements Machine, AutoCloseable {

    private final Process process;
    private final Writer to;
    private final BufferedReader from;

    Node(String script) throws IOException {
      process =
          new ProcessBuilder(
                  System.getProperty("settle.node"),
                  System.getProperty("settle.measure"),
                  System.getProperty("settle.scripts") + "/" + script,
                  System.getProperty("settle.wasm.runtime"))
              .redirectError(ProcessBuilder.Redirect.INHERIT)
              .start();
      to = process.outputWriter(StandardCharsets.UTF_8);
      from = process.inputReader(StandardCharsets.UTF_8);
    }

    private String ask(String what) throws IOException {
      to.write(what + "\n");
      to.flush();
      String answer = from.readLine();
      if (answer == null) {
        throw new IOException("node ended: is it version 22 or newer?");
      }
      return answer;
    }

    @Override
    public void prepare(Case theCase) throws IOException {
      ask("prepare\t" + theCase.name + "\t" + theCase.file);
    }

    @Override
    public Taken repeat(int times) throws IOException {
      String[] parts = ask("repeat\t" + times).split("\t");
      return new Taken(Double.parseDouble(parts[0]) / 1e3, Double.parseDouble(parts[1]));
    }

    @Override
    public void close() {
      process.destroy();
    }
  }

  /**
   * @param arguments names of cases; none for all
   * @throws IOException if node does not answer
   */
  public static void main(String[] arguments) throws IOException {
    StringBuilder table = new StringBuilder();
    for (Case theCase : CASES) {
      if (arguments.length == 0 || List.of(arguments).contains(theCase.name)) {
        table.append(row(theCase));
      }
    }
    System.out.printf(
        "%n| one thread, warm | virtual machine | WebAssembly | | JavaScript | |%n"
            + "| --- | ---: | ---: | ---: | ---: | ---: |%n%s",
        table);
  }

  private static String row(Case theCase) throws IOException {
    try (Node webAssembly = new Node("settle.wasm");
        Node javaScript = new Node("settle.js")) {
      double[] least = least(theCase, List.of(new Own(), webAssembly, javaScript));
      return String.format(
          Locale.ROOT,
          "| %s | %.2f ms | %.2f ms | × %.2f | %.2f ms | × %.2f |%n",
          theCase.title,
          least[0],
          least[1],
          least[1] / least[0],
          least[2],
          least[2] / least[0]);
    }
  }

  /** The last of many. */
  private static Taken warm(Machine machine) throws IOException {
    Taken last = machine.repeat(1);
    double sum = last.milliseconds;
    for (int i = 1; i < WARM_UP && sum < LONG_WARM_UP; i++) {
      last = machine.repeat(1);
      sum += last.milliseconds;
    }
    return last;
  }

  /** Least time of each machine for doing it once [ms]. */
  private static double[] least(Case theCase, List<Machine> machines) throws IOException {
    List<Double> figures = new ArrayList<>();
    int[] times = new int[machines.size()];
    double[] least = new double[machines.size()];
    for (int m = 0; m < machines.size(); m++) {
      machines.get(m).prepare(theCase);
      Taken few = warm(machines.get(m));
      times[m] = (int) Math.ceil(ROUND / few.milliseconds);
      least[m] = Double.POSITIVE_INFINITY;
      figures.add(few.figure);
    }
    for (double figure : figures) {
      if (!(Math.abs(figure - figures.get(0)) <= SAME * Math.abs(figures.get(0)))) {
        throw new IllegalStateException(theCase.title + " is not the same: " + figures);
      }
    }
    for (int round = 0; round < ROUNDS; round++) {
      for (int m = 0; m < least.length; m++) {
        double once = machines.get(m).repeat(times[m]).milliseconds / times[m];
        least[m] = Math.min(least[m], once);
      }
    }
    return least;
  }
}
