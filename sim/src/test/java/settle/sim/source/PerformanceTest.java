package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What declared figures say between and beyond the points they are declared at. */
class PerformanceTest {

  private static final double[] OUTDOORS = {-7, 2, 7};
  private static final double[] FLOWS = {35, 45, 55};

  /** A surface that bilinear cells meet exactly: linear in each direction, with their product. */
  private static double surface(double outdoor, double flow) {
    return 8000 + 120 * outdoor - 30 * flow + 0.5 * outdoor * flow;
  }

  private static double[][] table(double scale) {
    double[][] table = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        table[i][j] = scale * surface(OUTDOORS[i], FLOWS[j]);
      }
    }
    return table;
  }

  private static PerformanceMap map() {
    return new PerformanceMap(OUTDOORS, FLOWS, table(1), table(1e-3));
  }

  @ParameterizedTest
  @CsvSource({"-7, 35", "7, 55", "2, 45", "-4, 38", "-1, 52", "3, 36", "6.5, 54", "2, 50", "0, 45"})
  void aMapIsBilinearBetweenItsPoints(double outdoor, double flow) {
    assertThat(map().capacity(outdoor, flow)).isCloseTo(surface(outdoor, flow), within(1e-9));
    assertThat(map().cop(outdoor, flow)).isCloseTo(1e-3 * surface(outdoor, flow), within(1e-12));
    assertThat(map().covers(outdoor, flow)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"-15, 40, -7, 40", "12, 40, 7, 40", "3, 30, 3, 35", "3, 60, 3, 55", "-9, 70, -7, 55"})
  void aMapHoldsItsEdgeOutside(double outdoor, double flow, double atOutdoor, double atFlow) {
    assertThat(map().capacity(outdoor, flow)).isCloseTo(surface(atOutdoor, atFlow), within(1e-9));
    assertThat(map().cop(outdoor, flow))
        .isCloseTo(1e-3 * surface(atOutdoor, atFlow), within(1e-12));
    assertThat(map().covers(outdoor, flow)).isFalse();
  }

  @Test
  void aLargerUnitHasMoreCapacityAtTheSameCop() {
    PerformanceMap larger = map().scaled(1.5);
    assertThat(larger.capacity(-3, 41)).isCloseTo(1.5 * surface(-3, 41), within(1e-9));
    assertThat(larger.cop(-3, 41)).isEqualTo(map().cop(-3, 41));
    CarnotPerformance carnot = new CarnotPerformance(0.4, 8000, 100).scaled(1.5);
    assertThat(carnot.capacity(-3, 41)).isCloseTo(1.5 * 7000, within(1e-9));
    assertThat(carnot.cop(2, 35)).isCloseTo(0.4 * 308.15 / 33, within(1e-12));
  }

  @Test
  void aMapOfGapsOrWithoutSenseIsRefused() {
    double[][] good = table(1);
    assertThatThrownBy(() -> new PerformanceMap(new double[] {}, FLOWS, good, good))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("outdoor");
    assertThatThrownBy(() -> new PerformanceMap(OUTDOORS, new double[] {35, 35, 55}, good, good))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("flow temperatures must ascend");
    assertThatThrownBy(() -> new PerformanceMap(OUTDOORS, FLOWS, new double[][] {{1, 1, 1}}, good))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 rows");
    assertThatThrownBy(
            () -> new PerformanceMap(OUTDOORS, FLOWS, good, new double[][] {{1}, {1}, {1}}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("3 columns");
    for (boolean capacity : new boolean[] {true, false}) {
      double[][] bad = table(1);
      bad[1][2] = 0;
      assertThatThrownBy(
              () ->
                  new PerformanceMap(OUTDOORS, FLOWS, capacity ? bad : good, capacity ? good : bad))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("2.0/55.0");
    }
  }

  /** COP = eta T_f/(T_f - T_e), by hand: 0.45 x 318.15/47 = 3.046 at -2/45 °C. */
  @Test
  void aShareOfCarnotFallsWithTheLift() {
    CarnotPerformance carnot = new CarnotPerformance(0.45, 9000, 150);
    assertThat(carnot.cop(-2, 45)).isCloseTo(3.0461, within(1e-4));
    assertThat(carnot.cop(7, 35)).isCloseTo(0.45 * 308.15 / 28, within(1e-12));
    // No lift below 5 K: warm air does not make heat for nothing.
    assertThat(carnot.cop(25, 27)).isCloseTo(0.45 * 300.15 / 5, within(1e-12));
    assertThat(carnot.covers(25, 27)).isFalse();
    assertThat(carnot.covers(25, 30)).isTrue();
  }

  @Test
  void itsCapacityIsAStraightLineWithAFloor() {
    CarnotPerformance carnot = new CarnotPerformance(0.45, 9000, 150);
    assertThat(carnot.capacity(7, 35)).isEqualTo(9000);
    assertThat(carnot.capacity(-8, 35)).isEqualTo(6750);
    assertThat(carnot.capacity(12, 35)).isEqualTo(9750);
    // 9000 - 150 x 54 W are a tenth, at -47 °C.
    assertThat(carnot.capacity(-60, 35)).isEqualTo(900);
    assertThat(carnot.covers(-47, 35)).isTrue();
    assertThat(carnot.covers(-47.1, 35)).isFalse();
    assertThatThrownBy(() -> new CarnotPerformance(0, 9000, 150))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CarnotPerformance(0.4, 0, 150))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new CarnotPerformance(0.4, 9000, -1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void theEfficiencyOfABoilerIsATableToo() {
    BoilerEfficiency table =
        new BoilerEfficiency(
            new double[] {30, 50},
            new double[] {0.2, 1},
            new double[][] {{0.98, 0.94}, {0.9, 0.86}},
            55);
    assertThat(table.at(40, 0.6)).isCloseTo(0.92, within(1e-12));
    assertThat(table.at(20, 0.1)).isCloseTo(0.98, within(1e-12));
    assertThat(table.at(80, 1.2)).isCloseTo(0.86, within(1e-12));
    for (double bad : new double[] {0, 1.01}) {
      assertThatThrownBy(
              () ->
                  new BoilerEfficiency(
                      new double[] {30}, new double[] {1}, new double[][] {{bad}}, 55))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("gross");
    }
    assertThat(
            new BoilerEfficiency(new double[] {30}, new double[] {1}, new double[][] {{1}}, 55)
                .at(60, 0.3))
        .isEqualTo(1);
    assertThatThrownBy(
            () -> new BoilerEfficiency(new double[] {30, 20}, new double[] {1}, null, 55))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("return temperatures");
    assertThatThrownBy(
            () -> new BoilerEfficiency(new double[] {30}, new double[] {1, 0.2}, null, 55))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("loads");
    assertThatThrownBy(
            () ->
                new BoilerEfficiency(
                    new double[] {30}, new double[] {1}, new double[][] {{0.9, 0.9}}, 55))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("columns");
  }

  /** Cc 0.9: at half load COP falls by 0.5/(0.9 x 0.5 + 0.1) = 1/1.1. */
  @Test
  void cyclingDegradesTheCop() {
    assertThat(SeasonalPerformance.cycling(4, 0.5)).isCloseTo(4 / 1.1, within(1e-12));
    assertThat(SeasonalPerformance.cycling(4, 1)).isCloseTo(4, within(1e-12));
    assertThat(SeasonalPerformance.cycling(4, 3)).isCloseTo(4, within(1e-12));
  }

  /** Two bins: 2 kW at half of the least 4 kW; 9 kW of which 8 are the compressor's. */
  @Test
  void aSeasonIsTheSumOfItsBins() {
    double mild = 2000 / (4 / 1.1);
    double cold = 8000 / 2.5 + 1000;
    assertThat(SeasonalPerformance.input(2000, 8000, 4000, 4)).isCloseTo(mild, within(1e-9));
    assertThat(SeasonalPerformance.input(9000, 8000, 4000, 2.5)).isCloseTo(cold, within(1e-9));
    assertThat(SeasonalPerformance.backup(9000, 8000)).isEqualTo(1000);
    assertThat(SeasonalPerformance.backup(8000, 9000)).isZero();
    assertThat(
            SeasonalPerformance.scop(
                new double[] {3000, 200},
                new double[] {2000, 9000},
                new double[] {8000, 8000},
                new double[] {4000, 4000},
                new double[] {4, 2.5}))
        .isCloseTo((3000 * 2000 + 200 * 9000) / (3000 * mild + 200 * cold), within(1e-12));
  }
}
