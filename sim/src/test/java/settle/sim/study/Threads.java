package settle.sim.study;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;

/**
 * Workers with threads of their own, which take whatever piece comes next.
 *
 * @param count how many threads
 */
public record Threads(int count) implements Workers {

  @Override
  public void each(int pieces, IntConsumer piece) {
    AtomicInteger next = new AtomicInteger();
    List<Thread> threads =
        IntStream.range(0, count)
            .mapToObj(
                t ->
                    new Thread(
                        () -> {
                          for (int i; (i = next.getAndIncrement()) < pieces; ) {
                            piece.accept(i);
                          }
                        }))
            .toList();
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
