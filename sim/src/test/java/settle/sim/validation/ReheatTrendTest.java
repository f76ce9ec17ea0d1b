package settle.sim.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * The trends of the reheat factors of EN 12831, which need no figure: less with time, more with
 * drop.
 */
class ReheatTrendTest {

  @Test
  void extraHeatFallsWithTimeAndRisesWithTheDrop() {
    for (int drop = 1; drop <= 3; drop++) {
      for (int hours = 2; hours <= 8; hours++) {
        assertThat(ReheatRows.reheat(hours, drop)).isLessThan(ReheatRows.reheat(hours - 1, drop));
      }
    }
    for (int hours = 1; hours <= 4; hours++) {
      double one = ReheatRows.reheat(hours, 1);
      assertThat(one).isPositive();
      assertThat(ReheatRows.reheat(hours, 3)).isEqualTo(3 * one, within(1e-6));
    }
  }
}
