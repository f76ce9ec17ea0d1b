package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** 60 °C and 6 kW, without delay or loss. */
class IdealSourceStepperTest {

  private final IdealSourceStepper stepper =
      new IdealSourceStepper(new IdealSource("ideal", 60, 6000));

  @Test
  void holdsItsSetPointUpToItsPower() {
    assertThat(stepper.attempt(60, 150, 30, true)).isEqualTo(60);
    // 6 kW lift 300 W/K by 20 K.
    assertThat(stepper.attempt(60, 300, 30, true)).isCloseTo(50, within(1e-12));
    stepper.begin(0, 45);
    assertThat(stepper.attempt(60, 300, 30, true)).isEqualTo(45);
  }

  @Test
  void neverCoolsTheWater() {
    assertThat(stepper.attempt(60, 300, 70, true)).isEqualTo(70);
    assertThat(stepper.attempt(60, 300, 30, false)).isEqualTo(30);
    assertThat(stepper.leaving()).isEqualTo(30);
  }

  @Test
  void standsReadyWithoutFlow() {
    assertThat(stepper.attempt(60, 0, 30, true)).isEqualTo(60);
    assertThat(stepper.attempt(60, 0, 30, false)).isEqualTo(30);
  }

  @Test
  void makesAndTakesInWhatIsTaken() {
    stepper.attempt(60, 150, 30, true);
    stepper.accept(270_000);
    assertThat(stepper.heatMade()).isEqualTo(270_000);
    assertThat(stepper.input()).isEqualTo(270_000);
    assertThat(stepper.backupHeat() + stepper.loss() + stepper.stored()).isZero();
    assertThat(stepper.timeAtMinimum() + stepper.timeBlocked() + stepper.timeOutsideMap()).isZero();
    assertThat(stepper.shortestRun()).isInfinite();
    assertThat(stepper.steadyFor()).isInfinite();
    assertThat(stepper.defrosts()).isZero();
    assertThat(stepper.agreed()).isTrue();
  }

  @Test
  void startsWithEachCall() {
    for (boolean called : new boolean[] {true, true, false, true, false, false}) {
      stepper.attempt(60, 150, 30, called);
      stepper.accept(0);
    }
    assertThat(stepper.starts()).isEqualTo(2);
  }
}
