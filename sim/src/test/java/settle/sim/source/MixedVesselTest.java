package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** 200 kJ/K that lose 4 W/K to 15 °C: C dT/dt = m c (T_in - T) - G (T - T_s). */
class MixedVesselTest {

  private static final double CAPACITY = 200_000;

  private final MixedVessel vessel = new MixedVessel(CAPACITY, 4, 15, 30);

  /** 96 W/K at 55 °C and 4 W/K at 15 °C settle at 53.4 °C, in 2000 s by e. */
  @Test
  void settlesBetweenWhatEntersAndItsSurroundings() {
    double gone = 1 - Math.exp(-0.25);
    double mean = vessel.attempt(500, 96, 55);
    assertThat(mean).isCloseTo(53.4 - 23.4 * gone / 0.25, within(1e-9));
    assertThat(vessel.mean()).isEqualTo(mean);
    assertThat(vessel.temperature()).as("only tried").isEqualTo(30);
    vessel.accept(0);
    double end = 30 + 23.4 * gone;
    assertThat(vessel.temperature()).isCloseTo(end, within(1e-9));
    assertThat(vessel.stored()).isCloseTo(CAPACITY * end, within(1e-6));
    assertThat(vessel.loss()).isCloseTo(4 * (mean - 15) * 500, within(1e-6));
    assertThat(CAPACITY * (end - 30))
        .isCloseTo(96 * (55 - mean) * 500 - vessel.loss(), within(1e-6));
    assertThat(vessel.timeToMove(0.5)).isCloseTo(0.5 * 500 / (end - 30), within(1e-9));
  }

  @Test
  void coolsByItsLossAlone() {
    vessel.attempt(10_000, 0, Double.NaN);
    vessel.accept(0);
    assertThat(vessel.temperature()).isCloseTo(15 + 15 * Math.exp(-0.2), within(1e-9));
  }

  /** What the mains did not take stays in the vessel. */
  @Test
  void keepsWhatIsLeftOver() {
    vessel.attempt(500, 96, 55);
    vessel.accept(0);
    double without = vessel.temperature();
    MixedVessel other = new MixedVessel(CAPACITY, 4, 15, 30);
    other.attempt(500, 96, 55);
    other.accept(50_000);
    assertThat(other.temperature()).isCloseTo(without + 0.25, within(1e-9));
  }

  @Test
  void staysAsItIsWithoutFlowOrLoss() {
    MixedVessel tight = new MixedVessel(CAPACITY, 0, 15, 30);
    assertThat(tight.attempt(500, 0, Double.NaN)).isEqualTo(30);
    tight.accept(0);
    assertThat(tight.temperature()).isEqualTo(30);
    assertThat(tight.loss()).isZero();
    assertThat(tight.timeToMove(0.5)).isInfinite();
  }
}
