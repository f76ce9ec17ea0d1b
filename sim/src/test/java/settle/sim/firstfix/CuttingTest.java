package settle.sim.firstfix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Profiles cut from as few lengths as can be. */
class CuttingTest {

  @Test
  void whatFirstFitWastesIsFound() {
    // Longest first opens a third bar; 4 + 3 + 3 twice fills two of them.
    Cutting cutting = Cutting.of(List.of(4.0, 4.0, 3.0, 3.0, 3.0, 3.0), 10);
    assertThat(cutting.bars()).hasSize(2);
    assertThat(cutting.fewest()).isTrue();
    assertThat(cutting.left()).isCloseTo(0, within(1e-9));
    Cutting harder = Cutting.of(List.of(6.0, 5.0, 5.0, 4.0, 4.0, 3.0, 3.0), 10);
    assertThat(harder.bars()).hasSize(3);
  }

  @Test
  void everyPieceIsCutOnceAndNoBarIsLongerThanItIs() {
    Random random = new Random(3);
    for (int trial = 0; trial < 200; trial++) {
      double stock = 2 + 2 * random.nextDouble();
      List<Double> pieces = new ArrayList<>();
      for (int i = random.nextInt(14); i >= 0; i--) {
        pieces.add(0.1 + (stock - 0.1) * random.nextDouble());
      }
      Cutting cutting = Cutting.of(pieces, stock);
      List<Double> cut = new ArrayList<>();
      for (List<Double> bar : cutting.bars()) {
        assertThat(bar.stream().mapToDouble(d -> d).sum()).isLessThanOrEqualTo(stock + 1e-4);
        cut.addAll(bar);
      }
      pieces.sort(Comparator.naturalOrder());
      cut.sort(Comparator.naturalOrder());
      assertThat(cut).isEqualTo(pieces);
      assertThat(cutting.fewest()).isTrue();
      assertThat(cutting.bars()).hasSize(byTryingAll(pieces, stock));
    }
  }

  /** Fewest bars by dynamic programming over all subsets: of those left, the most filled last. */
  private static int byTryingAll(List<Double> pieces, double stock) {
    int n = pieces.size();
    double[] inLast = new double[1 << n];
    int[] bars = new int[1 << n];
    for (int set = 1; set < 1 << n; set++) {
      bars[set] = Integer.MAX_VALUE;
      for (int i = 0; i < n; i++) {
        if ((set >> i & 1) == 0) {
          continue;
        }
        int before = set ^ 1 << i;
        boolean joins = bars[before] > 0 && inLast[before] + pieces.get(i) <= stock + 1e-9;
        int count = joins ? bars[before] : bars[before] + 1;
        double last = joins ? inLast[before] + pieces.get(i) : pieces.get(i);
        if (count < bars[set] || (count == bars[set] && last < inLast[set])) {
          bars[set] = count;
          inLast[set] = last;
        }
      }
    }
    return bars[(1 << n) - 1];
  }

  @Test
  void aStraightPartIsPutTogetherWithoutStumps() {
    assertThat(Cutting.pieces(2.5, 3)).containsExactly(2.5);
    assertThat(Cutting.pieces(7, 3)).containsExactly(3.0, 3.0, 1.0);
    List<Double> pieces = Cutting.pieces(3.1, 3);
    assertThat(pieces).hasSize(2);
    assertThat(pieces.get(1)).isCloseTo(Cutting.SHORTEST, within(1e-9));
    assertThat(pieces.stream().mapToDouble(d -> d).sum()).isCloseTo(3.1, within(1e-9));
  }

  @Test
  void nothingIsCutFromNothing() {
    assertThat(Cutting.of(List.of(), 3).bars()).isEmpty();
    assertThat(Cutting.pieces(0, 3)).isEmpty();
  }
}
