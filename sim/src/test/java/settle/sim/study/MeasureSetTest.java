package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.measure.Balanced;
import settle.sim.measure.HeadsRaised;
import settle.sim.measure.LockshieldsTurned;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.measure.PumpRaised;

/** What may stand together in a set of measures. */
class MeasureSetTest {

  private static final Measure HALL = new HeadsRaised("hall", 19, 21);
  private static final Measure ATTIC = new HeadsRaised("attic", 19, 21);
  private static final Measure PUMP = new PumpRaised(20_000, 30_000);
  private static final Measure BALANCE = new Balanced(0.4, 1);
  private static final Measure OPENED =
      new LockshieldsTurned(
          Kind.LOCKSHIELD, List.of(new LockshieldsTurned.Turn(0, "hall", 1, 1.5)));

  private static MeasureSet set(Measure... measures) {
    return new MeasureSet(List.of(measures));
  }

  @Test
  void oneOfAKindForARoomAndInOrderOfEffort() {
    Measure warmer = new HeadsRaised("hall", 19, 22);
    assertThat(set(PUMP).with(HALL).with(ATTIC).with(warmer).measures())
        .containsExactly(ATTIC, warmer, PUMP);
  }

  @Test
  void whatConcernsTheWholeHouseConcernsEveryRoom() {
    MeasureSet set = set(HALL, ATTIC, PUMP);
    assertThat(set.without(Kind.HEADS, "hall").measures()).containsExactly(ATTIC, PUMP);
    assertThat(set.of(Kind.PUMP, "hall")).contains(PUMP);
    assertThat(set.without(Kind.PUMP, "hall").measures()).containsExactly(HALL, ATTIC);
  }

  @Test
  void aBalanceAndLockshieldsTurnedByHandExcludeEachOther() {
    assertThat(set(BALANCE).excludes(Kind.LOCKSHIELD)).isTrue();
    assertThat(set(BALANCE).excludes(Kind.THROTTLE)).isTrue();
    assertThat(set(BALANCE).excludes(Kind.BALANCE)).isTrue();
    assertThat(set(OPENED).excludes(Kind.BALANCE)).isTrue();
    assertThat(set(OPENED).excludes(Kind.THROTTLE)).isFalse();
    assertThat(set(HALL, PUMP).excludes(Kind.BALANCE)).isFalse();
  }
}
