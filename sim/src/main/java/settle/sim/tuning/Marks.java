package settle.sim.tuning;

import java.math.BigDecimal;
import java.util.stream.LongStream;

/** Values that can be set by hand. */
final class Marks {

  private Marks() {}

  /** Multiples of a step given in decimal digits, from one limit to the other. */
  static double[] every(String step, double lowest, double highest) {
    BigDecimal by = new BigDecimal(step);
    long first = (long) Math.ceil(lowest / by.doubleValue() - 1e-9);
    long last = Math.max((long) Math.floor(highest / by.doubleValue() + 1e-9), first);
    return LongStream.rangeClosed(first, last)
        .mapToDouble(n -> by.multiply(BigDecimal.valueOf(n)).doubleValue())
        .toArray();
  }
}
