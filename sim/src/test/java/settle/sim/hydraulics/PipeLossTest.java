package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PipeLossTest {

  private static double copper15(double insulation) {
    return PipeLoss.perMetre(
        0.0136, 0.015, 380, insulation, PipeLoss.INSULATION, PipeLoss.INDOOR_SURFACE);
  }

  /** Bare metal: the surface is all there is, pi h D = 0.4712 W/(m K). */
  @Test
  void aBareMetalPipeLosesWhatItsSurfaceGives() {
    assertThat(copper15(0)).isCloseTo(Math.PI * 10 * 0.015, within(1e-4));
  }

  /**
   * 15 mm copper with 13 mm of foam, by hand: ln(41/15)/0.07 = 14.364 m K/W, 1/(10 x 0.041) = 2.439
   * m K/W; pi/16.803 = 0.18696 W/(m K), the wall's 0.0001 m K/W apart.
   */
  @Test
  void anInsulatedPipeByHand() {
    assertThat(copper15(0.013)).isCloseTo(0.18696, within(2e-5));
  }

  /** A thin cover on a thin pipe adds more surface than it resists: the critical radius. */
  @Test
  void belowTheCriticalRadiusInsulationMakesItWorse() {
    double poor = 0.2;
    double bare = PipeLoss.perMetre(0.0068, 0.008, 380, 0, poor, 10);
    double covered = PipeLoss.perMetre(0.0068, 0.008, 380, 0.004, poor, 10);
    assertThat(covered).isGreaterThan(bare);
    // lambda/h = 20 mm: at that radius the loss is greatest, Psi = 2 pi lambda/(ln(20/4) + 1).
    assertThat(PipeLoss.perMetre(0.0068, 0.008, 380, 0.016, poor, 10))
        .isCloseTo(2 * Math.PI * poor / (Math.log(5) + 1), within(1e-4));
  }

  /** 15 x 1.65 mm plastic at 0.5 W/(m K): its wall takes 3.6 % off a bare pipe's loss. */
  @Test
  void aPlasticWallResistsALittle() {
    double wall = Math.log(15 / 11.7) / 1.0;
    double surface = 1 / (10 * 0.015);
    assertThat(PipeLoss.perMetre(0.0117, 0.015, 0.5, 0, 0.035, 10))
        .isCloseTo(Math.PI / (wall + surface), within(1e-12));
    assertThat(wall / (wall + surface)).isCloseTo(0.036, within(5e-4));
  }
}
