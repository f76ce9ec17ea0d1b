package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Limits and invariants of the emission law; its figures are in the validation table. */
class EmissionLawTest {

  @Test
  void ratedPathGivesItsRatedOutputForAnyExponent() {
    for (double n = 1; n <= 1.6; n += 0.05) {
      double coefficient = EmissionLaw.distributedCoefficient(800, n);
      double outlet =
          EmissionLaw.outletExcess(55, n, coefficient, EmissionLaw.ratedCapacityFlow(800));
      assertThat(outlet).isCloseTo(45, within(1e-12));
      assertThat(coefficient * EmissionLaw.meanEmissionPower(55, outlet, n))
          .isCloseTo(800, within(1e-9));
    }
  }

  @Test
  void exponentOneIsReachedSmoothly() {
    double linear = EmissionLaw.distributedCoefficient(1000, 1);
    assertThat(linear).isCloseTo(100 * Math.log(55.0 / 45), within(1e-12));
    for (double n : new double[] {1 + 1e-3, 1 + 1e-6, 1 + 1e-9, 1 + 1e-12}) {
      double slope = 100 * linear; // a generous bound on |d/dn|
      assertThat(EmissionLaw.distributedCoefficient(1000, n))
          .isCloseTo(linear, within(slope * (n - 1) + 1e-12));
      assertThat(EmissionLaw.outletExcess(55, n, 30, 40))
          .isCloseTo(55 * Math.exp(-0.75), within(1000 * (n - 1) + 1e-12));
      assertThat(EmissionLaw.meanEmissionPower(55, 45, n))
          .isCloseTo(10 / Math.log(55.0 / 45), within(1000 * (n - 1) + 1e-12));
    }
  }

  @Test
  void meanOverAShrinkingStretchIsTheLocalEmission() {
    for (double difference = 1; difference > 1e-17; difference /= 10) {
      double middle = 40 + difference / 2;
      assertThat(EmissionLaw.meanEmissionPower(40 + difference, 40, 1.3))
          .isCloseTo(Math.pow(middle, 1.3), within(0.01 * difference * difference + 1e-12));
    }
  }

  @Test
  void meanIsSymmetricAndLiesBetweenItsEnds() {
    double mean = EmissionLaw.meanEmissionPower(50, 2, 1.4);
    assertThat(mean).isEqualTo(EmissionLaw.meanEmissionPower(2, 50, 1.4), within(1e-12));
    assertThat(mean).isBetween(Math.pow(2, 1.4), Math.pow(50, 1.4));
  }

  @Test
  void stretchesAddUpToThePath() {
    double half = EmissionLaw.excessAt(35, 1.3, 3, 20, 0.5);
    assertThat(EmissionLaw.excessAt(half, 1.3, 3, 20, 0.5))
        .isCloseTo(EmissionLaw.outletExcess(35, 1.3, 3, 20), within(1e-12));
  }

  @Test
  void nothingIsEmittedAtOrBelowTheRoom() {
    assertThat(EmissionLaw.outletExcess(0, 1.3, 3, 20)).isZero();
    assertThat(EmissionLaw.outletExcess(-5, 1.3, 3, 20)).isEqualTo(-5);
    assertThat(EmissionLaw.excessAfter(-5, 1.3, 3, 400, 60)).isEqualTo(-5);
    assertThat(EmissionLaw.meanEmissionPower(-1, 20, 1.3)).isZero();
    assertThat(EmissionLaw.ratedFactor(-5, 1.3)).isZero();
  }

  @Test
  void withoutFlowTheOutletReachesTheRoom() {
    assertThat(EmissionLaw.outletExcess(55, 1.3, 6, 0)).isZero();
    assertThat(EmissionLaw.outletExcess(55, 1, 6, 0)).isZero();
    assertThat(EmissionLaw.outletExcess(55, 1.3, 6, 1e-12)).isBetween(0.0, 1e-9);
  }

  @Test
  void longChainsApproachThePath() {
    double path = EmissionLaw.distributedCoefficient(1000, 1.3);
    double error100 = 100 * EmissionLaw.chainCoefficient(1000, 1.3, 100) - path;
    double error200 = 200 * EmissionLaw.chainCoefficient(1000, 1.3, 200) - path;
    assertThat(error100 / error200).isCloseTo(2, within(0.01)); // first order in 1/M
  }

  @Test
  void reachesOfTheRunAddUpInTime() {
    double first = EmissionLaw.excessAfter(40, 1.3, 0.37, 400, 700);
    assertThat(EmissionLaw.excessAfter(first, 1.3, 0.37, 400, 500))
        .isCloseTo(EmissionLaw.excessAfter(40, 1.3, 0.37, 400, 1200), within(1e-12));
  }
}
