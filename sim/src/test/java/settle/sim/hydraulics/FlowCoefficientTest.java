package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FlowCoefficientTest {

  @Test
  void flowAndPressureUndoEachOtherInBothDirections() {
    for (double pressure : new double[] {-50_000, -1, 1e-3, 20_000}) {
      double flow = FlowCoefficient.massFlow(pressure, 0.4, 978);
      assertThat(FlowCoefficient.pressureDrop(flow, 0.4, 978)).isCloseTo(pressure, within(1e-9));
    }
  }

  @Test
  void aShutValvePassesNothing() {
    assertThat(FlowCoefficient.massFlow(20_000, 0, 988)).isZero();
    assertThat(FlowCoefficient.pressureDrop(0, 0, 988)).isZero();
    assertThat(FlowCoefficient.series(0, 0.8)).isZero();
    assertThat(FlowCoefficient.series(0, 0)).isZero();
    assertThat(FlowCoefficient.series(0.8, 0)).isZero();
  }

  @Test
  void anUnresistingPartChangesNothing() {
    assertThat(FlowCoefficient.series(0.5, Double.POSITIVE_INFINITY)).isEqualTo(0.5);
    assertThat(FlowCoefficient.series(Double.POSITIVE_INFINITY, 0.5)).isEqualTo(0.5);
  }

  @Test
  void seriesAddsPressures() {
    double both = FlowCoefficient.series(0.3, 0.7);
    assertThat(FlowCoefficient.pressureDrop(0.02, both, 988))
        .isCloseTo(
            FlowCoefficient.pressureDrop(0.02, 0.3, 988)
                + FlowCoefficient.pressureDrop(0.02, 0.7, 988),
            within(1e-9));
  }
}
