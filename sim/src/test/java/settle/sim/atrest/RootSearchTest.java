package settle.sim.atrest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RootSearchTest {

  private final RootSearch search = new RootSearch();
  private int asked;

  @ParameterizedTest
  @ValueSource(doubles = {0.1, 1, 3, 9.9})
  void itFindsTheRootOfASteepAndOfAFlatFunction(double root) {
    for (DoubleUnaryOperator f :
        new DoubleUnaryOperator[] {
          x -> root - x,
          x -> Math.pow(root - x, 3),
          x -> Math.atan(1e6 * (root - x)),
          x -> Math.exp(root) - Math.exp(x)
        }) {
      boolean found =
          search.between(f, 0, f.applyAsDouble(0), 10, f.applyAsDouble(10), 1e-9, 1e-12);
      assertThat(found).isTrue();
      // A cube is within 1e-12 of 0 a ten-thousandth away from its root.
      assertThat(search.root()).isCloseTo(root, within(1.1e-4));
    }
  }

  /**
   * Asked again where it stands, a house may answer otherwise by a rounding, or by minus nothing.
   */
  @Test
  void aRootThatLiesAtAnEndIsNotLostByARounding() {
    double[] ends = {0.0, -0.0, 1e-13, -1e-13};
    for (double end : ends) {
      assertThat(search.between(x -> -x - 1, 0, end, 10, -11, 1e-9, 1e-9)).isTrue();
      assertThat(search.root()).isZero();
    }
  }

  @Test
  void withoutARootItSaysSoAndGivesTheNearerEnd() {
    assertThat(search.between(x -> x + 1, 0, 1, 10, 11, 1e-9, 1e-9)).isFalse();
    assertThat(search.root()).isZero();
    assertThat(search.residual()).isEqualTo(1);
  }

  @Test
  void aJumpIsHalvedDownToItsPlace() {
    asked = 0;
    boolean found =
        search.between(
            x -> {
              asked++;
              return x < Math.PI ? 1 : -1;
            },
            0,
            1,
            10,
            -1,
            1e-9,
            1e-12);
    assertThat(found).isTrue();
    assertThat(search.root()).isCloseTo(Math.PI, within(1e-8));
    assertThat(asked).isLessThan(45);
  }
}
