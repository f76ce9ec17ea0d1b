package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The choice of a step's length: doubling when calm, below the shortest only for agreement. */
class StepLadderTest {

  private static final double CALM = 1e9;

  private static double length(StepLadder ladder, int level) {
    return level >= 0 ? ladder.lengths()[level] : Double.NaN;
  }

  @Test
  void doublesFromTheShortestToTheLongest() {
    StepLadder ladder = new StepLadder(10, 640);
    double expected = 10;
    for (int k = 0; k < 9; k++) {
      assertThat(length(ladder, ladder.next(CALM, CALM))).isEqualTo(expected);
      expected = Math.min(2 * expected, 640);
    }
    ladder.reset();
    assertThat(length(ladder, ladder.next(CALM, CALM))).isEqualTo(10);
  }

  @Test
  void goesNoLowerThanTheShortestForAccuracy() {
    StepLadder ladder = new StepLadder(10, 640);
    assertThat(length(ladder, ladder.next(1e-3, CALM))).isEqualTo(10);
  }

  @Test
  void endsAtAnEventWithALengthOfItsOwn() {
    StepLadder ladder = new StepLadder(10, 640);
    assertThat(ladder.next(CALM, 7)).isEqualTo(-1);
    assertThat(length(ladder, ladder.next(CALM, CALM))).isEqualTo(20);
  }

  @Test
  void goesFarBelowTheShortestForAgreementAndDoublesBackUp() {
    StepLadder ladder = new StepLadder(10, 640);
    ladder.next(CALM, CALM);
    double h = 10;
    int halvings = 0;
    for (int level = ladder.shorter(h / 2); level >= 0; level = ladder.shorter(h / 2)) {
      assertThat(ladder.lengths()[level]).isEqualTo(h / 2);
      h = ladder.lengths()[level];
      halvings++;
    }
    assertThat(halvings).isGreaterThanOrEqualTo(6);
    double before = 0;
    while (h < 640) {
      before = h;
      h = length(ladder, ladder.next(CALM, CALM));
      assertThat(h).isGreaterThan(before).isLessThanOrEqualTo(2 * before * 1.0000001);
    }
  }

  @Test
  void takesTheLongestThatEndsInTime() {
    StepLadder ladder = new StepLadder(10, 640);
    assertThat(ladder.lengths()[ladder.shorter(130)]).isEqualTo(120);
    assertThat(length(ladder, ladder.next(CALM, CALM))).isEqualTo(240);
  }
}
