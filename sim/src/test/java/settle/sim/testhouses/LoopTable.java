package settle.sim.testhouses;

import java.util.stream.LongStream;

/** Prints rest against run for houses with loops; {@code LoopTable FIRST COUNT [one-pipe]}. */
final class LoopTable {

  private LoopTable() {}

  public static void main(String[] arguments) {
    long first = Long.parseLong(arguments[0]);
    long count = Long.parseLong(arguments[1]);
    boolean passedBy = arguments.length > 2;
    int[] sums = new int[3];
    LongStream.range(first, first + count)
        .forEach(
            seed -> {
              RestAgainstRun pair;
              try {
                pair = RestAgainstRun.of(LoopedHouse.of(seed, passedBy));
              } catch (ArithmeticException e) {
                System.out.println("!!! house " + seed + " | " + e.getMessage());
                return;
              }
              boolean off = pair.disagreement() > settle.sim.atrest.RestStatus.HOLDS_WITHIN;
              sums[pair.status().holds() ? 0 : pair.range() ? 1 : 2]++;
              System.out.println((off ? "!!! " : "    ") + pair);
            });
    System.out.println("holds " + sums[0] + ", play " + sums[1] + ", other " + sums[2]);
  }
}
