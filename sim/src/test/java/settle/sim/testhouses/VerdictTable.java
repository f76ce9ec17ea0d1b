package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Prints how many answers plain runs contradict over many drawn houses: {@code VerdictTable FIRST
 * COUNT}, seeds from FIRST on; with {@code all} behind, a line for every house and not only for
 * those of which something is contradicted.
 */
public final class VerdictTable {

  private final List<VerdictAgainstRun> done = new ArrayList<>();

  private VerdictTable() {}

  /** Asks and prints. */
  public static void main(String[] arguments) {
    VerdictTable table = new VerdictTable();
    long first = Long.parseLong(arguments[0]);
    for (long seed = first; seed < first + Integer.parseInt(arguments[1]); seed++) {
      table.ask(seed, arguments.length > 2);
    }
    table.print();
  }

  private void ask(long seed, boolean all) {
    PlausibleHouse house = PlausibleHouse.of(seed);
    try {
      VerdictAgainstRun pair = VerdictAgainstRun.of(house);
      done.add(pair);
      boolean wrong =
          !pair.contradictions().isEmpty() || !pair.judgement().disagreements().isEmpty();
      if (all || wrong) {
        System.out.println((wrong ? "! " : "  ") + pair);
      }
    } catch (ArithmeticException e) {
      System.out.println("! " + house + " | " + e.getMessage());
    }
  }

  private void print() {
    System.out.printf(
        Locale.ROOT,
        "%n%-28s %6s | %5s %6s | %5s %6s | %8s | %7s | %7s %5s%n",
        "",
        "houses",
        "yes",
        "wrong",
        "no",
        "wrong",
        "rooms wr.",
        "at rest",
        "runs",
        "s");
    row("all", done);
    rows("source", p -> p.drawn().source());
    rows("control", p -> p.drawn().control());
    rows("valves", p -> p.drawn().valves());
    System.out.printf(
        Locale.ROOT,
        "%nhouses of which the rest claims otherwise than a run: %d%n",
        count(done, p -> !p.judgement().disagreements().isEmpty()));
  }

  private void rows(String what, Function<VerdictAgainstRun, String> kind) {
    Map<String, List<VerdictAgainstRun>> kinds = new TreeMap<>();
    for (VerdictAgainstRun pair : done) {
      kinds.computeIfAbsent(kind.apply(pair), k -> new ArrayList<>()).add(pair);
    }
    System.out.println(what);
    kinds.forEach((k, v) -> row("  " + k, v));
  }

  private static void row(String name, List<VerdictAgainstRun> pairs) {
    List<VerdictAgainstRun> yes = pairs.stream().filter(p -> p.judgement().holds()).toList();
    List<VerdictAgainstRun> no = pairs.stream().filter(p -> !p.judgement().holds()).toList();
    System.out.printf(
        Locale.ROOT,
        "%-28s %6d | %5d %6d | %5d %6d | %8d | %7d | %7.1f %5.2f%n",
        name,
        pairs.size(),
        yes.size(),
        count(yes, VerdictAgainstRun::isContradicted),
        no.size(),
        count(no, VerdictAgainstRun::isContradicted),
        pairs.stream().mapToInt(p -> p.contradictions().size()).sum(),
        count(pairs, p -> !p.judgement().confirmedByRun()),
        pairs.stream().mapToInt(p -> p.judgement().runs().size()).average().orElse(0),
        pairs.stream().mapToDouble(VerdictAgainstRun::time).average().orElse(0));
  }

  private static long count(List<VerdictAgainstRun> pairs, Predicate<VerdictAgainstRun> which) {
    return pairs.stream().filter(which).count();
  }
}
