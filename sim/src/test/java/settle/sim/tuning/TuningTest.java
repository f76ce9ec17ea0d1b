package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.source.IdealSource;
import settle.sim.tuning.Tuning.Change;

/** A tuning of a whole house. */
class TuningTest {

  private static final Tuning.Request KNOBS = new Tuning.Request(Set.of(Group.KNOBS), 0.8, 16);

  /** Two rooms, the head of the first too high. */
  private static Plant tooWarm(double by) {
    House house =
        SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 0);
    Arrangement given = house.arrangements().get(0);
    Plant plant = new Plant(house, given);
    Setting head = new Setting.Head(given.branches().get(0).room());
    return head.with(plant, head.of(plant) + by);
  }

  @Test
  void aHeadThatIsTooHighComesDownAndTheRoomWithIt() {
    Plant found = tooWarm(3);
    Tuning tuning = Tuning.of(found, KNOBS, stage -> {});
    Change head = tuning.changes().get(0);
    assertThat(head.after()).isLessThan(head.before());
    assertThat(tuning.after().usual().deviation()).isLessThan(tuning.before().usual().deviation());
    assertThat(tuning.after().usual().input()).isLessThan(tuning.before().usual().input());
    assertThat(tuning.after().objective().total()).isLessThan(tuning.before().objective().total());
    // In the coldest weather the emitters are too small for whatever the heads are set to.
    assertThat(tuning.after().missed())
        .allSatisfy(aim -> assertThat(aim.kind()).isEqualTo(Aim.Kind.HELD));
    assertThat(tuning.after().missed().size()).isEqualTo(tuning.before().missed().size());
  }

  @Test
  void neverWorseThanFound() {
    for (Group group : EnumSet.of(Group.CURVE, Group.KNOBS)) {
      Tuning tuning = Tuning.of(tooWarm(0), new Tuning.Request(Set.of(group), 0.8, 8), stage -> {});
      assertThat(tuning.after().objective().total())
          .isLessThanOrEqualTo(tuning.before().objective().total() * (1 + Search.WORTHWHILE));
    }
  }

  @Test
  void theSameOnAnyNumberOfThreads() throws ExecutionException, InterruptedException {
    assertThat(onThreads(1)).isEqualTo(onThreads(3));
  }

  private static String onThreads(int threads) throws ExecutionException, InterruptedException {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      Tuning tuning = pool.submit(() -> Tuning.of(tooWarm(2), KNOBS, stage -> {})).get();
      return tuning.changes()
          + " "
          + tuning.flatness()
          + " "
          + tuning.after().objective()
          + " "
          + tuning.after().spreads().outcomes();
    } finally {
      pool.shutdown();
    }
  }
}
