package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import settle.sim.atrest.RestStatus;

/**
 * Prints rest against run over many drawn houses: {@code RestTable FIRST COUNT}, seeds from FIRST
 * on; with {@code all} behind, a line for every house and not only for those that disagree.
 */
public final class RestTable {

  private final List<RestAgainstRun> done = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();

  private RestTable() {}

  /** Measures and prints. */
  public static void main(String[] arguments) {
    RestTable table = new RestTable();
    table.measure(
        Long.parseLong(arguments[0]), Integer.parseInt(arguments[1]), arguments.length > 2);
    table.print();
  }

  private void measure(long first, int count, boolean all) {
    for (long seed = first; seed < first + count; seed++) {
      PlausibleHouse house = PlausibleHouse.of(seed);
      try {
        RestAgainstRun pair = RestAgainstRun.of(house);
        done.add(pair);
        if (all || pair.disagreement() > RestStatus.HOLDS_WITHIN) {
          System.out.println(pair);
        }
      } catch (ArithmeticException e) {
        failed.add(house + " | " + e.getMessage());
      }
    }
  }

  private void print() {
    failed.forEach(System.out::println);
    System.out.printf(
        Locale.ROOT,
        "%n%-28s %6s | %6s %7s %7s %6s | %6s %7s | %6s %7s %7s%n",
        "",
        "houses",
        "rests",
        "median",
        "worst",
        ">0.1 K",
        "range",
        "outside",
        "not",
        "median",
        "worst");
    row("all", done);
    rows("source", p -> p.drawn().source());
    rows("control", p -> p.drawn().control());
    rows("valves", p -> p.drawn().valves());
    rows("water", p -> p.drawn().water());
    System.out.println();
    for (RestStatus.Kind kind : RestStatus.Kind.values()) {
      System.out.printf(
          Locale.ROOT,
          "%-28s %6d%n",
          kind,
          done.stream().filter(p -> p.status().has(kind)).count());
    }
    System.out.printf(
        Locale.ROOT,
        "longest rest %.2f s%n",
        done.stream().mapToDouble(RestAgainstRun::restTime).max().orElse(0));
  }

  private void rows(String what, Function<RestAgainstRun, String> kind) {
    Map<String, List<RestAgainstRun>> kinds = new TreeMap<>();
    for (RestAgainstRun pair : done) {
      kinds.computeIfAbsent(kind.apply(pair), k -> new ArrayList<>()).add(pair);
    }
    System.out.println(what);
    kinds.forEach((k, v) -> row("  " + k, v));
  }

  private static void row(String name, List<RestAgainstRun> pairs) {
    double[] rests =
        pairs.stream()
            .filter(p -> p.status().holds())
            .mapToDouble(RestAgainstRun::off)
            .sorted()
            .toArray();
    double[] outside =
        pairs.stream()
            .filter(RestAgainstRun::range)
            .mapToDouble(RestAgainstRun::outside)
            .sorted()
            .toArray();
    double[] not =
        pairs.stream()
            .filter(p -> !p.status().holds() && !p.range())
            .mapToDouble(RestAgainstRun::off)
            .sorted()
            .toArray();
    System.out.printf(
        Locale.ROOT,
        "%-28s %6d | %6d %7.3f %7.3f %6d | %6d %7.3f | %6d %7.3f %7.3f%n",
        name,
        pairs.size(),
        rests.length,
        median(rests),
        worst(rests),
        Arrays.stream(rests).filter(k -> k > 0.1).count(),
        outside.length,
        worst(outside),
        not.length,
        median(not),
        worst(not));
  }

  private static double median(double[] sorted) {
    return sorted.length > 0 ? sorted[sorted.length / 2] : 0;
  }

  private static double worst(double[] sorted) {
    return sorted.length > 0 ? sorted[sorted.length - 1] : 0;
  }
}
