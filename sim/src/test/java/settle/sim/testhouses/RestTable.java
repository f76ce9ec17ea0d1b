package settle.sim.testhouses;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Prints rest against run over many drawn houses: {@code RestTable FROM COUNT [all]}. */
public final class RestTable {

  private RestTable() {}

  /** Measures and prints. */
  public static void main(String[] arguments) {
    long from = Long.parseLong(arguments[0]);
    int count = Integer.parseInt(arguments[1]);
    boolean all = arguments.length > 2;
    List<RestAgainstRun> done = new ArrayList<>();
    for (long seed = from; seed < from + count; seed++) {
      PlausibleHouse house = PlausibleHouse.of(seed);
      long before = System.nanoTime();
      try {
        RestAgainstRun pair = RestAgainstRun.of(house);
        done.add(pair);
        double took = (System.nanoTime() - before) / 1e9;
        if (all || (pair.status().holds() && pair.off() > 0.05) || pair.outside() > 0.05) {
          System.out.printf(Locale.ROOT, "%s %.1f s%n", pair, took);
        }
      } catch (RuntimeException e) {
        System.out.println(house + " | " + e);
        e.printStackTrace(System.out);
      }
    }
    System.out.println(done.size() + " of " + count);
  }
}
