package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Each rule by itself: 4 to 16 kW, 60 °C with a band of 5 K, 20 kJ/K; figures are closed forms of C
 * dT/dt = P - m c (T - T_ret) - G (T - 20 °C).
 */
class BoilerStepperTest {

  private static final double MASS = 20_000;

  /** A flow that carries next to nothing, yet lets the burner light [W/K]. */
  private static final double TRICKLE = 1e-3;

  private double least = 4000;
  private double antiCycle;
  private double loss;
  private Exchanger exchanger = Exchanger.UNLIMITED;
  private Flue flue = Flue.usual(55);

  private BoilerStepper stepper(double start) {
    BoilerEfficiency efficiency =
        new BoilerEfficiency(
            flue,
            Optional.of(
                new BoilerEfficiency.Table(
                    new double[] {30, 70},
                    new double[] {0.25, 1},
                    new double[][] {{0.98, 0.95}, {0.90, 0.87}})));
    return new BoilerStepper(
        new Boiler("boiler", 16_000, least, 60, 5, MASS, 60, antiCycle, 0, loss, efficiency)
            .withExchanger(exchanger),
        4180,
        start);
  }

  /** Gross efficiency of the table above, straight in both of its arguments. */
  private static double efficiency(double returning, double load) {
    return 0.98 - 0.08 * (returning - 30) / 40 - 0.03 * (load - 0.25) / 0.75;
  }

  /** 800 W/K from 50 to 60 °C take 8 kW, the casing 2 W/K x 40 K: half load. */
  @Test
  void holdsTheSetPointWithTheEfficiencyOfReturnAndLoad() {
    loss = 2;
    BoilerStepper stepper = stepper(50);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(7200, 60, 800, 50, true);
    assertThat(driven.flow()).isCloseTo(60, within(1e-6));
    assertThat(stepper.heatMade() / 60).isCloseTo(8080, within(1e-3));
    assertThat(stepper.loss() / 60).isCloseTo(80, within(1e-3));
    assertThat(stepper.input() / 60)
        .isCloseTo(8080 / efficiency(50, 8080.0 / 16_000), within(1e-2));
    assertThat(stepper.timeAtMinimum()).isZero();
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(stepper.shortestRun()).isInfinite();
    assertThat(stepper.steadyFor()).isInfinite();
    assertThat(driven.imbalance()).isCloseTo(0, within(1e-9 * driven.made()));
  }

  /** 16 kW lift 500 W/K by no more than 32 K, whatever is asked for. */
  @Test
  void givesNoMoreThanItsLargestOutput() {
    BoilerStepper stepper = stepper(40);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(3600, 60, 500, 20, true);
    assertThat(driven.flow()).isCloseTo(52, within(1e-6));
    assertThat(stepper.heatMade() / 60).isCloseTo(16_000, within(1e-3));
    assertThat(stepper.input() / 60).isCloseTo(16_000 / 0.95, within(1e-2));
  }

  /** No heat taken: 4 kW warm 20 kJ/K by 10 K in 50 s, then the burner rests for good. */
  @Test
  void runsThroughItsBandAtLeastOutputWhenNothingIsTaken() {
    BoilerStepper stepper = stepper(55);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(10, 10, TRICKLE, 50, true);
    driven.run(600, 200, 0, 0, true);
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(stepper.shortestRun()).isCloseTo(50, within(1e-4));
    assertThat(driven.atMinimum()).isCloseTo(50, within(1e-4));
    assertThat(driven.made()).isCloseTo(200_000, within(1.0));
    assertThat(stepper.stored()).isCloseTo(65 * MASS, within(1e-3));
    // Without flow it sees its own water, 57 °C where the flow fails.
    assertThat(driven.input())
        .isCloseTo(40_000 / efficiency(50, 0.25) + 160_000 / efficiency(57, 0.25), within(1.0));
  }

  @Test
  void lightsOnlyWhereItsWaterIsBelowTheBandAndFlows() {
    for (double start : new double[] {55.1, 54.9}) {
      BoilerStepper stepper = stepper(start);
      new DrivenSource(stepper).run(10, 10, TRICKLE, 50, true);
      assertThat(stepper.starts()).isEqualTo(start < 55 ? 1 : 0);
    }
    BoilerStepper uncalled = stepper(40);
    new DrivenSource(uncalled).run(600, 60, 500, 40, false);
    assertThat(uncalled.starts()).isZero();
    assertThat(uncalled.heatMade()).isZero();
    assertThat(uncalled.input()).isZero();
  }

  /**
   * One power, 16 kW into 1 kW/K from 54 °C: on its way to 70 °C it stops at 65 °C; it rests 180 s,
   * of which the way to 55 °C takes 48 s, and lights at 54 °C + 11 e^-9 K.
   */
  @Test
  void restsForItsAntiCycleTimeThoughTheWaterIsCold() {
    least = 16_000;
    antiCycle = 180;
    double tau = MASS / 1000;
    double cold = 54 + 11 * Math.exp(-180 / tau);
    double run = tau * Math.log((70 - cold) / (70 - 65));
    BoilerStepper stepper = stepper(cold);
    DrivenSource driven = new DrivenSource(stepper);
    double cycles = 20;
    driven.run(cycles * (run + 180), (run + 180) / 10, 1000, 54, true);
    assertThat(stepper.shortestRun()).isCloseTo(run, within(1e-6));
    assertThat(stepper.starts()).isBetween(20, 21);
    assertThat(driven.made()).isCloseTo(cycles * run * 16_000, within(20.0));
    assertThat(driven.atMinimum()).isCloseTo(cycles * run, within(1e-3));
    assertThat(stepper.steadyFor()).isLessThanOrEqualTo(40);
  }

  /** G 5 W/K on 20 kJ/K: towards 20 °C with a time constant of 4000 s. */
  @Test
  void stopsWithTheCallAndCoolsByItsCasing() {
    loss = 5;
    BoilerStepper stepper = stepper(55);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(5, 5, TRICKLE, 50, true);
    assertThat(stepper.starts()).isEqualTo(1);
    double hot = stepper.stored() / MASS;
    driven.run(6000, 60, 0, 0, false);
    assertThat(stepper.heatMade()).isZero();
    assertThat(stepper.shortestRun()).isCloseTo(5, within(1e-9));
    assertThat(stepper.stored() / MASS).isCloseTo(20 + (hot - 20) * Math.exp(-1.5), within(1e-9));
    assertThat(driven.imbalance()).isCloseTo(0, within(1e-3));
  }

  /** Burner out, water on its way from 65 to 55 °C: half of what is left of the way is a step. */
  @Test
  void stepsShortenTowardsTheNextStart() {
    loss = 5;
    BoilerStepper stepper = stepper(65);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(10, 10, 0, 0, true);
    // 5 W/K x 45 K cool 20 kJ/K by 1 K in 89 s: 9.89 K in 879 s, half of that is 440 s.
    double speed = (65 - stepper.stored() / MASS) / 10;
    assertThat(stepper.steadyFor())
        .isCloseTo((stepper.stored() / MASS - 55) / speed / 2, within(1e-6));
    assertThat(stepper.steadyFor()).isBetween(430.0, 450.0);
  }

  @Test
  void aSetPointHoldsFromTheStepItIsGiven() {
    BoilerStepper stepper = stepper(40);
    stepper.begin(0, 45);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(3600, 60, 800, 35, true);
    assertThat(driven.flow()).isCloseTo(45, within(1e-6));
    assertThat(stepper.leaving()).isCloseTo(45, within(1e-6));
  }

  /**
   * 400 W/K from 30 to 60 °C take 12 kW. A by-pass that keeps 500 W/K adds 100 W/K at 60 °C, so
   * that 36 °C enter and efficiency is that of 36 °C; what the mains take is the same.
   */
  @Test
  void aByPassMixesFlowIntoWhatEnters() {
    exchanger = new Exchanger(500 / 4180.0, Double.POSITIVE_INFINITY, 0);
    BoilerStepper stepper = stepper(60);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(7200, 60, 400, 30, true);
    assertThat(driven.flow()).isCloseTo(60, within(1e-6));
    assertThat(stepper.heatMade() / 60).isCloseTo(12_000, within(1e-3));
    assertThat(stepper.entering()).isCloseTo(36, within(1e-6));
    assertThat(stepper.input() / 60).isCloseTo(12_000 / efficiency(36, 0.75), within(1e-2));
    assertThat(stepper.firing().entering()).isCloseTo(36, within(1e-6));
    assertThat(stepper.firing().belowDewPointShare()).isEqualTo(1);
    assertThat(stepper.firing().condensedShare()).isCloseTo(flue.condensed(36), within(1e-9));
    driven.run(7200, 60, 800, 45, true);
    assertThat(stepper.entering()).isEqualTo(45);
  }

  /** 200 W/K warmer by no more than 20 K are 4 kW, the least it burns; 500 W/K are 10 kW. */
  @Test
  void turnsDownAtItsLargestDrop() {
    exchanger = new Exchanger(0, 20, 0);
    BoilerStepper stepper = stepper(45);
    new DrivenSource(stepper).run(7200, 60, 500, 30, true);
    assertThat(stepper.heatMade() / 60).isCloseTo(10_000, within(1e-3));
    assertThat(stepper.leaving()).isCloseTo(50, within(1e-6));
    BoilerStepper low = stepper(45);
    new DrivenSource(low).run(7200, 60, 160, 30, true);
    // 4 kW lift 160 W/K by 25 K: no boiler burns less than its least.
    assertThat(low.heatMade() / 60).isCloseTo(4000, within(1e-3));
    assertThat(low.leaving()).isCloseTo(55, within(1e-3));
  }

  /** By-passed to 500 W/K, 20 K are 10 kW, of which 250 W/K take 40 K. */
  @Test
  void theDropIsThatAcrossTheExchangerAndNotAcrossTheMains() {
    exchanger = new Exchanger(500 / 4180.0, 20, 0);
    BoilerStepper stepper = stepper(45);
    new DrivenSource(stepper).run(7200, 60, 250, 10, true);
    assertThat(stepper.heatMade() / 60).isCloseTo(10_000, within(1e-3));
    assertThat(stepper.leaving()).isCloseTo(50, within(1e-6));
    assertThat(stepper.entering()).isCloseTo(30, within(1e-6));
  }

  /** Twenty starts of 60 kJ each on top of what is burnt, however long a step is. */
  @Test
  void everyStartCostsItsPurgeAndItsExchanger() {
    least = 16_000;
    antiCycle = 180;
    BoilerStepper free = stepper(50);
    DrivenSource without = new DrivenSource(free);
    without.run(7200, 60, 1000, 54, true);
    exchanger = new Exchanger(0, Double.POSITIVE_INFINITY, 60_000);
    for (double step : new double[] {10, 60, 600}) {
      BoilerStepper stepper = stepper(50);
      DrivenSource driven = new DrivenSource(stepper);
      driven.run(7200, step, 1000, 54, true);
      assertThat(stepper.starts()).isEqualTo(free.starts()).isGreaterThan(20);
      assertThat(driven.made()).isCloseTo(without.made(), within(1e-6 * without.made()));
      assertThat(driven.input() - without.input())
          .isCloseTo(60_000.0 * stepper.starts(), within(1e-6 * without.input()));
    }
  }

  /** 55 °C is the dew point, but the flue is 5 K warmer than what enters: nothing condenses yet. */
  @Test
  void belowTheDewPointIsNotYetCondensing() {
    BoilerStepper stepper = stepper(60);
    new DrivenSource(stepper).run(7200, 60, 800, 51, true);
    assertThat(stepper.firing().belowDewPointShare()).isEqualTo(1);
    assertThat(stepper.firing().condensedShare()).isZero();
  }
}
