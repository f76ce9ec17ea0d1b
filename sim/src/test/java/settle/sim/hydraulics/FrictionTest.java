package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FrictionTest {

  private static final double BORE = 0.0136;
  private static final double DENSITY = 988;
  private static final double VISCOSITY = 0.5465e-3;

  private static double gradient(double massFlow) {
    return Friction.pressureGradient(massFlow, BORE, 1.5e-6, DENSITY, VISCOSITY);
  }

  @Test
  void gradientRisesWithoutAStepThroughTheTransition() {
    double before = 0;
    double flowBefore = 0;
    for (int i = 1; i <= 20_000; i++) {
      double flow = i * 2e-6;
      double now = gradient(flow);
      assertThat(now).isGreaterThan(before);
      // the steepest stretch is the transition, where the gradient goes with about the third power
      // of the flow
      assertThat(now - before).isLessThan(4 * now * (flow - flowBefore) / flow + 1e-12);
      before = now;
      flowBefore = flow;
    }
    assertThat(Friction.reynolds(flowBefore, BORE, VISCOSITY)).isGreaterThan(6000);
  }

  @Test
  void factorIsContinuousAtBothLimits() {
    assertThat(Friction.darcyFactor(2000 + 1e-9, 1e-4)).isCloseTo(0.032, within(1e-10));
    assertThat(Friction.darcyFactor(4000 - 1e-9, 1e-4))
        .isCloseTo(Friction.darcyFactor(4000, 1e-4), within(1e-10));
  }

  @Test
  void gradientIsOddInTheFlowAndZeroAtRest() {
    assertThat(gradient(0)).isZero();
    for (double flow : new double[] {1e-6, 0.01, 0.015, 0.1}) {
      assertThat(gradient(-flow)).isEqualTo(-gradient(flow));
    }
  }

  /** Over the Moody range, Colebrook's equation solved by Newton's method beside it. */
  @Test
  void explicitFactorIsColebrooks() {
    for (double re = 4000; re < 1e8; re *= 1.2) {
      for (double rough : new double[] {0, 1e-6, 1e-5, 1e-4, 1e-3, 0.01, 0.03, 0.05}) {
        double root = colebrookRoot(re, rough);
        assertThat(Friction.colebrookWhite(re, rough) * root * root)
            .as("Re %g, k/D %g", re, rough)
            .isCloseTo(1, within(6e-7));
      }
    }
  }

  private static double colebrookRoot(double re, double rough) {
    double x = 7;
    for (int k = 0; k < 30; k++) {
      double argument = rough / 3.7 + 2.51 * x / re;
      x -= (x + 2 * Math.log10(argument)) / (1 + 2 * 2.51 / re / (Math.log(10) * argument));
    }
    assertThat(x).isCloseTo(-2 * Math.log10(rough / 3.7 + 2.51 * x / re), within(1e-12));
    return x;
  }
}
