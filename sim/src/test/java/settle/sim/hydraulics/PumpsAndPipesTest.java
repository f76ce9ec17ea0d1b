package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;

/** Circulators, pipes and what they cannot be, by hand. */
class PumpsAndPipesTest {

  private static final double DENSITY = 988;
  private static final double VISCOSITY = 0.000547;

  @Test
  void aConstantPumpHoldsItsHead() {
    ConstantPump pump = new ConstantPump(20_000, 0.3);
    assertThat(pump.head(0.2, DENSITY)).isEqualTo(20_000);
    assertThat(pump.slope(0.2, DENSITY)).isZero();
  }

  /** 30 kPa at 0.5 l/s, half of it without flow: 15 kPa per 0.5 l/s between. */
  @Test
  void aProportionalPumpLiftsWithItsFlow() {
    ProportionalPump pump = new ProportionalPump(30_000, 5e-4, 0.3);
    assertThat(pump.head(0, 1000)).isEqualTo(15_000);
    assertThat(pump.head(0.25, 1000)).isCloseTo(22_500, within(1e-9));
    assertThat(pump.head(0.5, 1000)).isCloseTo(30_000, within(1e-9));
    assertThat(pump.head(2, 1000)).isEqualTo(30_000);
    assertThat(pump.slope(0.25, 1000)).isCloseTo(15_000 / 0.5, within(1e-6));
    assertThat(pump.slope(0.6, 1000)).isZero();
    assertThat(pump.head(0.2, 800)).as("by volume").isCloseTo(22_500, within(1e-9));
  }

  /** Kv 2 takes 25 kPa at 1 m³/h of 1000 kg/m³: of 30 kPa there are 5 left, falling on. */
  @Test
  void whatIsInSeriesTakesPartOfTheHead() {
    Pump left = new ThrottledPump(new ConstantPump(30_000, 0.3), 2);
    assertThat(left.head(0, 1000)).isEqualTo(30_000);
    assertThat(left.head(1000 / 3600.0, 1000)).isCloseTo(5000, within(1e-6));
    assertThat(left.slope(1000 / 3600.0, 1000)).isCloseTo(-2 * 25_000 * 3.6, within(1e-6));
    assertThat(left.setTo(40_000).head(1000 / 3600.0, 1000)).isCloseTo(15_000, within(1e-6));
    assertThat(left.mostHead()).isEqualTo(30_000);
  }

  @Test
  void aCurveKeepsItsFiguresToItself() {
    double[] flows = {0, 5e-4};
    double[] heads = {40_000, 0};
    CurvePump pump = new CurvePump(flows, heads, 0.3);
    flows[1] = 1;
    heads[0] = 1;
    assertThat(pump.head(0.25, 1000)).isCloseTo(20_000, within(1e-9));
    assertThat(pump.slope(0.25, 1000)).isCloseTo(-40_000 / 0.5, within(1e-6));
  }

  @Test
  void noPumpWithoutHeadOrOfMoreThanAllItsPower() {
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertThatThrownBy(() -> new ConstantPump(bad, 0.3)).hasMessageContaining("head");
      assertThatThrownBy(() -> new ProportionalPump(bad, 1e-4, 0.3)).hasMessageContaining("head");
      assertThatThrownBy(() -> new ProportionalPump(9000, bad, 0.3)).hasMessageContaining("flow");
    }
    double[] flows = {0, 1e-3};
    double[] heads = {9000, 0};
    for (double bad : new double[] {0, 1.01}) {
      assertThatThrownBy(() -> new ConstantPump(9000, bad)).hasMessageContaining("efficiency");
      assertThatThrownBy(() -> new ProportionalPump(9000, 1e-4, bad))
          .hasMessageContaining("efficiency");
      assertThatThrownBy(() -> new CurvePump(flows, heads, bad)).hasMessageContaining("efficiency");
    }
  }

  @Test
  void aCurveFallsFromPointToPoint() {
    double[][][] wrong = {
      {{0}, {9000}},
      {{0, 1e-3}, {9000, 5000, 0}},
      {{0, 0}, {9000, 0}},
      {{0, 1e-3}, {9000, 9000}},
      {{-1e-4, 1e-3}, {9000, 0}},
      {{0, 1e-3}, {9000, -1}}
    };
    for (double[][] curve : wrong) {
      assertThatThrownBy(() -> new CurvePump(curve[0], curve[1], 0.3))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("curve");
    }
  }

  /** 13.6 mm: 1.4527 cm²; 20 m hold 2.905 l. */
  @Test
  void aPipeHoldsItsCrossSectionTimesItsLength() {
    Pipe pipe = new Pipe("pipe", 0.0136, 1.5e-6, 20, 4, 700, 0.5);
    assertThat(pipe.area()).isCloseTo(1.4527e-4, within(1e-8));
    assertThat(pipe.waterVolume()).isCloseTo(2.9053e-3, within(1e-7));
    assertThat(pipe.delays()).isTrue();
    assertThat(new Pipe("none", 0.0136, 1.5e-6, 0, 4, 700, 0.5).delays()).isFalse();
    Pipe quick = Pipe.withoutDelay("quick", 0.0136, 1.5e-6, 20, 4);
    assertThat(quick.delays()).isFalse();
    assertThat(quick.length()).isEqualTo(20);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 1, 0, 700, 0.5, bore",
    "0.01, -1, 1, 0, 700, 0.5, roughness",
    "0.01, 0, -1, 0, 700, 0.5, length",
    "0.01, 0, 1, -1, 700, 0.5, fittings",
    "0.01, 0, 1, 0, -1, 0, heat capacity",
    "0.01, 0, 1, 0, 700, -1, loss coefficient",
    "0.01, 0, 1, 0, 0, 0.5, loses heat"
  })
  void noPipeBeyondWhatPipesAre(
      double bore,
      double roughness,
      double length,
      double fittings,
      double capacity,
      double loss,
      String what) {
    assertThatThrownBy(() -> new Pipe("p", bore, roughness, length, fittings, capacity, loss))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(what);
  }

  @Test
  void mainsHaveLengthAndComeFromElsewhere() {
    Pipe pipe = Pipe.withoutDelay("main", 0.02, 0, 5, 0);
    assertThat(new Main("a", "b", pipe, null, 60).surroundings()).isEqualTo(60);
    assertThatThrownBy(() -> new Main("a", "a", pipe, null, 15)).hasMessageContaining("'a'");
    assertThatThrownBy(() -> new Main("a", null, pipe, null, 61))
        .hasMessageContaining("surroundings");
    Pipe none = Pipe.withoutDelay("none", 0.02, 0, 0, 0);
    assertThatThrownBy(() -> new Main("a", null, none, null, 15)).hasMessageContaining("length");
  }

  @Test
  void aPipeRunsInARoomOrOutsideThem() {
    assertThat(PipePlace.in("hall").room()).isEqualTo("hall");
    assertThat(PipePlace.outside(12)).isEqualTo(new PipePlace(null, 12));
    assertThatThrownBy(() -> PipePlace.outside(-51)).hasMessageContaining("surroundings");
  }

  @Test
  void noBypassOrLockshieldBelowNothing() {
    for (double bad : new double[] {0, -1, Double.NaN}) {
      assertThatThrownBy(() -> new Bypass(null, bad, 1000, 1)).hasMessageContaining("pressure");
      assertThatThrownBy(() -> new Bypass(null, 1000, bad, 1)).hasMessageContaining("band");
      assertThatThrownBy(() -> new Bypass(null, 1000, 1000, bad)).hasMessageContaining("Kv");
    }
    for (double bad : new double[] {-1, Double.NaN}) {
      assertThatThrownBy(() -> new Lockshield("l", bad, 1)).hasMessageContaining("'l'");
      assertThatThrownBy(() -> new Lockshield("l", 1, bad)).hasMessageContaining("'l'");
    }
    assertThat(new Lockshield("l", 0, 0).kv()).isZero();
  }

  @Test
  void aBalanceKeepsItsLists() {
    Notice tooFast = Notice.about("hall", Code.NOISY_BRANCH, 1.5);
    List<Notice> notices = new ArrayList<>(List.of(tooFast));
    Balance balance = new Balance(true, 0, 1, 2, List.of(), notices);
    notices.clear();
    assertThat(balance.notices()).containsExactly(tooFast);
  }

  @Test
  void noTubeWallLessThanNothingAndNoLossThroughNone() {
    assertThatThrownBy(() -> PipeLoss.perMetre(0.015, 0.015, 380, 0, 0.035, 10))
        .hasMessageContaining("wall");
    assertThatThrownBy(() -> PipeLoss.perMetre(0.0136, 0.015, 380, -0.01, 0.035, 10))
        .hasMessageContaining("insulation");
  }

  /** Laminar, between and turbulent: Darcy and Weisbach, and the slope by central differences. */
  @ParameterizedTest
  @ValueSource(doubles = {50, 800, 1990, 2010, 2600, 3900, 4100, 9000, 60_000})
  void aPipeTakesItsFrictionAndItsFittings(double reynolds) {
    Pipe pipe = Pipe.withoutDelay("pipe", 0.0136, 1.5e-5, 12, 7);
    double m = reynolds / Friction.reynolds(1, 0.0136, VISCOSITY);
    PipeResistance resistance = new PipeResistance(pipe, DENSITY, VISCOSITY);
    resistance.at(m);
    double v = m / DENSITY / pipe.area();
    double factor = Friction.darcyFactor(reynolds, 1.5e-5 / 0.0136);
    double expected = (7 + factor * 12 / 0.0136) * DENSITY * v * v / 2;
    assertThat(resistance.drop()).isCloseTo(expected, within(1e-9 * expected));
    double slope = resistance.slope();
    resistance.at(m * (1 + 1e-5));
    double above = resistance.drop();
    resistance.at(m * (1 - 1e-5));
    assertThat(slope).isCloseTo((above - resistance.drop()) / (2e-5 * m), within(1e-6 * slope));
  }

  /** Shut below its set pressure, in proportion over its band, then as a fixed opening. */
  @ParameterizedTest
  @CsvSource({"19000, 0", "21000, 0.2", "24000, 0.8", "25000, 1", "40000, 1"})
  void aBypassOpensInProportion(double pressure, double opening) {
    Bypass bypass = new Bypass(null, 20_000, 5000, 2);
    NetworkFlow network =
        new NetworkFlow(
            new ConstantPump(pressure, 0.3), List.of(), bypass, List.of(), DENSITY, VISCOSITY);
    network.solve(new double[0], true);
    // Kv 2: 2 m³/h at 1 bar of water of 1000 kg/m³.
    double open = 2 * Math.sqrt(pressure / 1e5 * 1000 / DENSITY) * DENSITY / 3600;
    assertThat(network.bypassFlow()).isCloseTo(opening * open, within(1e-9));
    assertThat(network.totalFlow()).isEqualTo(network.bypassFlow());
    assertThat(network.head()).isEqualTo(pressure);
  }

  @Test
  void noBranchOfMainsThatAreNot() {
    Bypass bypass = new Bypass("attic", 20_000, 5000, 2);
    assertThatThrownBy(
            () ->
                new NetworkFlow(
                    new ConstantPump(9000, 0.3), List.of(), bypass, List.of(), DENSITY, VISCOSITY))
        .hasMessageContaining("'attic'");
  }
}
