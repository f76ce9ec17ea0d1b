package settle.sim.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Whoever carries out pieces of work that do not depend on each other. A study lists the pieces;
 * how many are under way at a time is decided outside, where it is known what the machine has. Each
 * answer has its own place, so that the same comes out whoever works.
 */
@FunctionalInterface
public interface Workers {

  /** One piece after the other, in the calling thread. */
  Workers ONE =
      (count, piece) -> {
        for (int i = 0; i < count; i++) {
          piece.accept(i);
        }
      };

  /**
   * Carries out pieces of work and returns once all are done. A piece may itself hand out work, so
   * whoever waits here must not keep others from working.
   *
   * @param count how many there are
   * @param piece carries out the one at a position, 0 for the first; it throws nothing
   */
  void each(int count, IntConsumer piece);

  /**
   * Carries out pieces of work.
   *
   * @return what each came to, in their order
   * @throws RuntimeException as the first piece in the list that threw one did, once all are done
   */
  default <T> List<T> all(List<Supplier<T>> pieces) {
    List<T> results = new ArrayList<>(Collections.nCopies(pieces.size(), null));
    RuntimeException[] troubles = new RuntimeException[pieces.size()];
    each(
        pieces.size(),
        i -> {
          try {
            results.set(i, pieces.get(i).get());
          } catch (RuntimeException e) {
            // Kept as it is: what passes from thread to thread loses its message on the way.
            troubles[i] = e;
          }
        });
    for (RuntimeException trouble : troubles) {
      if (trouble != null) {
        throw trouble;
      }
    }
    return results;
  }

  /**
   * Carries out two pieces of work.
   *
   * @param then makes one thing of what they came to
   */
  default <A, B, R> R both(Supplier<A> one, Supplier<B> other, BiFunction<A, B, R> then) {
    AtomicReference<A> first = new AtomicReference<>();
    AtomicReference<B> second = new AtomicReference<>();
    all(
        List.of(
            () -> {
              first.set(one.get());
              return first;
            },
            () -> {
              second.set(other.get());
              return second;
            }));
    return then.apply(first.get(), second.get());
  }
}
