package settle.sim.notice;

import java.util.Arrays;
import java.util.List;

/**
 * What the reader should know.
 *
 * @param code what it is
 * @param about name of what it is about; empty where the code says it
 * @param numbers as the code has them
 */
public record Notice(Code code, String about, List<Double> numbers) {

  public Notice {
    numbers = List.copyOf(numbers);
  }

  /** A notice about the whole. */
  public static Notice of(Code code, double... numbers) {
    return about("", code, numbers);
  }

  /** A notice about one of its parts. */
  public static Notice about(String what, Code code, double... numbers) {
    return new Notice(code, what, Arrays.stream(numbers).boxed().toList());
  }
}
