package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Tubes, lockshields and pump curves by hand. */
class PartsOfABranchTest {

  /** 15 x 0.7 mm copper: 0.145 l/m, 0.280 kg/m (EN 1057:2006, Table 3, from memory). */
  @Test
  void aMetreOfCopperTube() {
    Tube tube = Tube.copper(0.015, 0.0007);
    assertThat(tube.bore()).isEqualTo(0.0136, within(1e-12));
    assertThat(tube.waterPerMetre()).isEqualTo(0.145e-3, within(0.001e-3));
    assertThat(tube.metalPerMetre()).isEqualTo(0.280, within(0.001));
    assertThat(tube.heatCapacityPerMetre(1000, 4200))
        .isEqualTo(0.145267e-3 * 4.2e6 + 0.27989 * 380, within(0.1));
    assertThatThrownBy(() -> Tube.copper(0.015, 0)).hasMessageContaining("wall");
    assertThatThrownBy(() -> Tube.copper(0.015, 0.0075)).hasMessageContaining("bore");
    assertThatThrownBy(() -> new Tube(0.015, 0.001, 0, 380)).hasMessageContaining("density");
    assertThatThrownBy(() -> new Tube(0.015, 0.001, 8900, 0)).hasMessageContaining("specific");
  }

  private static final LockshieldScale SCALE =
      new LockshieldScale(new double[] {0, 1, 3}, new double[] {0, 0.2, 1.0});

  @Test
  void aLockshieldIsReadBothWays() {
    assertThat(SCALE.atTurns(0.5).kv()).isEqualTo(0.1, within(1e-12));
    assertThat(SCALE.atTurns(1).kv()).isEqualTo(0.2, within(1e-12));
    assertThat(SCALE.atTurns(2).kv()).isEqualTo(0.6, within(1e-12));
    assertThat(SCALE.atTurns(2).turns()).isEqualTo(2);
    assertThat(SCALE.atKv(0.6).turns()).isEqualTo(2, within(1e-12));
    assertThat(SCALE.atKv(0.1).turns()).isEqualTo(0.5, within(1e-12));
    assertThat(SCALE.atKv(0.6).kv()).isEqualTo(0.6);
    assertThat(SCALE.open()).isEqualTo(SCALE.atTurns(3));
    assertThat(SCALE.open().kv()).isEqualTo(1.0);
  }

  @Test
  void aLockshieldEndsWhereItsScaleEnds() {
    assertThat(SCALE.atTurns(7).kv()).isEqualTo(1.0);
    assertThat(SCALE.atKv(5).turns()).isEqualTo(3);
  }

  @Test
  void aScaleRisesFromShut() {
    double[][][] wrong = {
      {{0}, {0}},
      {{0, 1}, {0, 1, 2}},
      {{0.1, 1}, {0, 1}},
      {{0, 1}, {0.1, 1}},
      {{0, 1, 1}, {0, 1, 2}},
      {{0, 1, 2}, {0, 1, 1}}
    };
    for (double[][] scale : wrong) {
      assertThatThrownBy(() -> new LockshieldScale(scale[0], scale[1]))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("lockshield's scale");
    }
  }

  /** The definition of Kv, 1 m³/h at 1 bar and 1000 kg/m³, and what follows from it. */
  @Test
  void flowCoefficients() {
    assertThat(FlowCoefficient.kv(1000 / 3600.0, 1e5, 1000)).isEqualTo(1, within(1e-12));
    assertThat(FlowCoefficient.kv(1000 / 3600.0, 0.25e5, 1000)).isEqualTo(2, within(1e-12));
    assertThat(FlowCoefficient.kv(0.02, 5000, 980))
        .isEqualTo(0.02 / FlowCoefficient.massFlow(5000, 1, 980), within(1e-12));
    assertThat(FlowCoefficient.kv(0.02, 0, 980)).isInfinite();
    assertThat(FlowCoefficient.kv(0.02, -1, 980)).isInfinite();
    assertThat(FlowCoefficient.parallel(0.3, 0.5)).isEqualTo(0.8, within(1e-12));
    assertThat(FlowCoefficient.authority(0.5, 0.5)).isEqualTo(0.5, within(1e-12));
    assertThat(FlowCoefficient.authority(1, 2)).isEqualTo(0.8, within(1e-12));
  }

  @Test
  void aPumpsCurveIsStraightBetweenItsPoints() {
    CurvePump pump =
        new CurvePump(
            new double[] {0.0001, 0.0003, 0.0005}, new double[] {30_000, 20_000, 5_000}, 0.3);
    assertThat(pump.head(0, 1000)).as("held before the first").isEqualTo(30_000);
    assertThat(pump.slope(0, 1000)).isZero();
    assertThat(pump.head(0.2, 1000)).isEqualTo(25_000, within(1e-6));
    assertThat(pump.slope(0.2, 1000)).isEqualTo(-10_000 / 0.2, within(1e-6));
    assertThat(pump.head(0.4, 1000)).isEqualTo(12_500, within(1e-6));
    assertThat(pump.slope(0.4, 1000)).isEqualTo(-15_000 / 0.2, within(1e-6));
    assertThat(pump.head(0.55, 1000)).as("falling on").isEqualTo(1250, within(1e-6));
    assertThat(pump.head(0.9, 1000)).isZero();
    assertThat(pump.slope(0.9, 1000)).isZero();
    assertThat(pump.head(0.4, 800)).as("by volume").isEqualTo(5_000, within(1e-6));
  }
}
