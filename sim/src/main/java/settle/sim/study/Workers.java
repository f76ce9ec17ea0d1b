package settle.sim.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * Whoever carries out pieces of work that do not depend on each other. A study lists the pieces;
 * how many are under way at a time is decided outside, where it is known what the machine has. Each
 * answer has its own place, so that their number changes nothing.
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
   * @param count how many there are
   * @param piece what the one at a position comes to, 0 for the first
   * @return what each came to, in their order
   * @throws RuntimeException as the first piece that threw one did, once all are done
   */
  default <T> List<T> all(int count, IntFunction<T> piece) {
    List<T> results = new ArrayList<>(Collections.nCopies(count, null));
    RuntimeException[] troubles = new RuntimeException[count];
    each(
        count,
        i -> {
          try {
            results.set(i, piece.apply(i));
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

  /** The same piece of work for each of several things. */
  default <A, T> List<T> all(List<A> things, Function<A, T> piece) {
    return all(things.size(), i -> piece.apply(things.get(i)));
  }

  /** Pieces of work of different kinds. */
  default <T> List<T> all(List<Supplier<T>> pieces) {
    return all(pieces, Supplier::get);
  }

  /**
   * Carries out two pieces of work.
   *
   * @param then makes one thing of what they came to
   */
  default <A, B, R> R both(Supplier<A> one, Supplier<B> other, BiFunction<A, B, R> then) {
    AtomicReference<A> first = new AtomicReference<>();
    AtomicReference<B> second = new AtomicReference<>();
    List<Runnable> pieces = List.of(() -> first.set(one.get()), () -> second.set(other.get()));
    all(
        pieces,
        piece -> {
          piece.run();
          return piece;
        });
    return then.apply(first.get(), second.get());
  }
}
