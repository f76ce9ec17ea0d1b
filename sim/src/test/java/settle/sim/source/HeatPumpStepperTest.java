package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each rule by itself; figures are closed forms of C dT/dt = P - m c (T - T_ret). */
class HeatPumpStepperTest {

  /** A flow that carries 1 kW per kelvin [W/K]. */
  private static final double FLOW = 1000;

  /** A flow that carries next to nothing [W/K]. */
  private static final double TRICKLE = 1e-3;

  private final SamplePump sample = new SamplePump();

  /** Return 30 °C and 1 kW/K: 35 °C takes 5 kW. */
  @Test
  void holdsTheSetPointWhileTheLoadLiesWithinItsRange() {
    HeatPumpStepper stepper = sample.stepper(30, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(3600, 60, FLOW, 30, true);
    assertThat(driven.flow()).isCloseTo(35, within(1e-6));
    assertThat(stepper.heatMade() / 60).isCloseTo(5000, within(1e-3));
    assertThat(stepper.input() / 60).isCloseTo(5000 / SamplePump.COP, within(1e-3));
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(driven.atMinimum()).isZero();
  }

  /** Without heat taken, least output warms 60 kJ/K by 1 K in 30 s. */
  @Test
  void keepsRunningForItsLeastTimeThoughTheBandIsPast() {
    for (double onTime : new double[] {0, 600}) {
      sample.onTime = onTime;
      sample.highestFlow = 90;
      HeatPumpStepper stepper = sample.stepper(32, 7);
      DrivenSource driven = new DrivenSource(stepper);
      driven.run(3600, 30, TRICKLE, 30, true);
      double unhindered = stepper.shortestRun();
      assertThat(unhindered).isGreaterThanOrEqualTo(onTime);
      if (onTime > 0) {
        assertThat(unhindered).isCloseTo(600, within(1e-6));
        assertThat(driven.flow()).isGreaterThan(38 + 3);
      } else {
        assertThat(unhindered).isLessThan(200);
        assertThat(driven.flow()).isCloseTo(38, within(0.01));
      }
    }
  }

  @Test
  void restsForItsLeastTimeThoughTheWaterIsCold() {
    sample.offTime = 500;
    sample.modulation = 1;
    // Return 31 °C: 8 kW settles at 39 °C, so that it always reaches 38 °C.
    double cold = 31 + 7 * Math.exp(-500 * FLOW / sample.mass);
    HeatPumpStepper stepper = sample.stepper(cold, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(36_000, 10, FLOW, 31, true);
    double on = sample.mass / FLOW * Math.log((39 - cold) / (39 - 38));
    assertThat(stepper.shortestRun()).isCloseTo(on, within(1e-6));
    assertThat(stepper.starts()).isCloseTo((int) (36_000 / (on + 500)), within(1));
  }

  @Test
  void stopsAtOnceAtItsHighestFlowWhateverItsLeastTime() {
    sample.onTime = 3600;
    sample.highestFlow = 37;
    HeatPumpStepper stepper = sample.stepper(30, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(900, 10, TRICKLE, 30, true);
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(stepper.shortestRun()).isLessThan(900);
    assertThat(stepper.stored() / sample.mass).isCloseTo(37, within(1e-4));
  }

  @Test
  void holdsItsHighestFlowWhereMoreIsAskedFor() {
    sample.highestFlow = 40;
    HeatPumpStepper stepper = sample.stepper(30, 7);
    stepper.begin(7, 50);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(7200, 640, FLOW, 34, true);
    assertThat(driven.flow()).isCloseTo(40, within(1e-6));
    assertThat(stepper.starts()).isEqualTo(1);
  }

  @Test
  void tooLittleFlowStopsItAndIsCounted() {
    sample.minimumFlow = 0.2;
    sample.onTime = 600;
    HeatPumpStepper stepper = sample.stepper(30, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(300, 10, 0.2 * SamplePump.SPECIFIC_HEAT, 30, true);
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(driven.blocked()).isZero();
    double made = driven.made();
    driven.run(200, 10, 0.19 * SamplePump.SPECIFIC_HEAT, 30, true);
    assertThat(driven.blocked()).isCloseTo(200, within(1e-6));
    assertThat(driven.made()).isEqualTo(made);
    assertThat(stepper.shortestRun()).isCloseTo(300, within(1e-6));
    driven.run(200, 10, 0, 30, false);
    assertThat(driven.blocked()).isCloseTo(200, within(1e-6));
  }

  @Test
  void stopsWhenTheCallEndsThoughItsLeastTimeIsNotPast() {
    sample.onTime = 600;
    sample.standby = 50;
    HeatPumpStepper stepper = sample.stepper(30, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(120, 10, FLOW, 30, true);
    double input = driven.input();
    driven.run(120, 10, FLOW, 30, false);
    assertThat(stepper.shortestRun()).isCloseTo(120, within(1e-6));
    assertThat(driven.input()).isCloseTo(input + 50 * 120, within(1e-6));
  }

  @Test
  void takesStandbyPowerWhileItRestsCalledOrNot() {
    sample.standby = 50;
    HeatPumpStepper stepper = sample.stepper(37, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(600, 10, FLOW, 37, true);
    assertThat(stepper.starts()).isZero();
    assertThat(driven.input()).isCloseTo(50 * 600, within(1e-6));
    driven.run(600, 10, FLOW, 37, false);
    assertThat(driven.input()).isCloseTo(50 * 1200, within(1e-6));
  }

  /**
   * COP 5 at the least 2 kW, 4 at 8 kW: 5 kW, half way between, are made at 4.5, stepped as at
   * rest.
   */
  @Test
  void partLoadHasTheCopThatIsDeclaredForIt() {
    sample.performance =
        new PerformanceMap(
            new double[] {7},
            new double[] {35},
            new double[][] {{8000}},
            new double[][] {{4}},
            new double[][] {{5}});
    HeatPumpStepper stepper = sample.stepper(35, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(7200, 60, FLOW, 30, true);
    driven.run(600, 60, FLOW, 30, true);
    assertThat(stepper.heatMade() / 60).isCloseTo(5000, within(1e-3));
    assertThat(stepper.input() / 60).isCloseTo(5000 / 4.5, within(1e-3));
    HeatPump pump = sample.build();
    assertThat(pump.deliver(7, 5000, 35, 30).input().orElseThrow())
        .isCloseTo(5000 / 4.5, within(1e-9));
    assertThat(pump.deliver(7, 1000, 35, 30).input().orElseThrow())
        .isCloseTo(1000 / SeasonalPerformance.cycling(5, 0.5), within(1e-9));
    assertThat(pump.scaled(2).performance().cop(7, 35, 0)).isEqualTo(5);
  }

  /**
   * 2 kW at COP 4 take 500 W; after an hour of rest a start costs a tenth of that for 10 min, 30
   * kJ, whatever the rest before.
   */
  @Test
  void aStartAfterALongRestCostsNoMoreThanTenMinutesOfIt() {
    for (double rest : new double[] {300, 3600}) {
      HeatPumpStepper stepper = sample.stepper(37, 7);
      DrivenSource driven = new DrivenSource(stepper);
      driven.run(rest, 10, FLOW, 37, false);
      double before = driven.input();
      driven.run(60, 10, FLOW, 20, true);
      // 60 kJ/K cooled by 1 kW/K from 37 towards 20 °C are at 32 °C after 60 ln(17/12) s.
      double pause = Math.min(rest + 60 * Math.log(17.0 / 12), 600);
      assertThat(stepper.starts()).isEqualTo(1);
      assertThat(driven.input() - before - driven.made() / SamplePump.COP)
          .isCloseTo(0.1 * 500 * pause, within(1e-3));
    }
  }

  /** Return 20 °C with a flow of 1 kW/K: full output cannot reach the set-point. */
  @Test
  void aDefrostTakesHeatFromTheWaterAfterItsRunningTime() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 2400, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(28, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(2400, 100, FLOW, 20, true);
    assertThat(stepper.defrosts()).isZero();
    driven.run(200, 100, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
    assertThat(stepper.heatMade()).isCloseTo(-3000 * 100, within(1e-6));
    assertThat(stepper.input()).isCloseTo(500 * 100, within(1e-6));
    driven.run(2399, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
    driven.run(2, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(2);
    assertThat(stepper.starts()).isEqualTo(1);
  }

  @Test
  void iceGathersOverRestsButNotOutsideItsRange() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 2400, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(28, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(2000, 100, FLOW, 20, true);
    driven.run(1000, 100, FLOW, 20, false);
    stepper.begin(8, 35);
    driven.run(3000, 100, FLOW, 20, true);
    assertThat(stepper.defrosts()).isZero();
    stepper.begin(0, 35);
    driven.run(399, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isZero();
    driven.run(2, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
  }

  /** 20 kJ/K hold less heat than a defrost wants: 12 kW for 10 min. */
  @Test
  void aDefrostNeverCoolsTheWaterBelowFiveDegrees() {
    sample.mass = 20_000;
    sample.defrost = Optional.of(new Defrost(-10, 5, 1000, 600, 12_000, 500));
    HeatPumpStepper stepper = sample.stepper(20, 0);
    DrivenSource driven = new DrivenSource(stepper);
    for (int k = 0; k < 5000; k++) {
      driven.run(5, 5, 400, 10, true);
      assertThat(stepper.stored() / sample.mass).isGreaterThan(5 - 1e-6);
    }
    assertThat(stepper.defrosts()).isGreaterThan(10);
    assertThat(stepper.starts()).isEqualTo(1);
    assertThat(driven.imbalance()).isCloseTo(0, within(1e-9 * driven.made()));
  }

  /** Half of a defrost frees half of the coil: the next one is due after half the running time. */
  @Test
  void iceLeftByADefrostCutShortCountsInProportion() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 1000, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(28, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(1000, 100, FLOW, 20, true);
    driven.run(100, 100, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
    assertThat(stepper.steadyFor()).isLessThanOrEqualTo(50);
    driven.run(100, 100, FLOW, 20, false);
    assertThat(stepper.heatMade()).as("back to rest").isZero();
    driven.run(499, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
    driven.run(2, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(2);
    assertThat(stepper.starts()).isEqualTo(2);
  }

  /**
   * 8 kW into 1 kW/K from -4 °C: 4 °C is too cold to take heat from; from 20 °C it warms to 6 °C.
   */
  @Test
  void aDefrostThatIsDueWaitsForWarmerWater() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 1000, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(4, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(1500, 100, FLOW, -4, true);
    assertThat(stepper.defrosts()).isZero();
    double wait = sample.mass / FLOW * Math.log((28.0 - 4) / (28 - 6));
    driven.run(Math.floor(wait), 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isZero();
    driven.run(1, 1, FLOW, 20, true);
    assertThat(stepper.defrosts()).isEqualTo(1);
  }

  /** 8 kW at 30 °C, 200 W less per kelvin: 8000 - 200 (T - 30) = 1000 (T - 24) at 31.67 °C. */
  @Test
  void itsCapacityFallsWithTheWaterItMakes() {
    sample.performance =
        new PerformanceMap(
            new double[] {7},
            new double[] {30, 40},
            new double[][] {{8000, 6000}},
            new double[][] {{4, 3}});
    HeatPumpStepper stepper = sample.stepper(25, 7);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(3600, 60, FLOW, 24, true);
    double flow = 38_000.0 / 1200;
    assertThat(driven.flow()).isCloseTo(flow, within(1e-6));
    assertThat(stepper.heatMade() / 60).isCloseTo(1000 * (flow - 24), within(1e-3));
    double cop = 4 - (flow - 30) / 10;
    assertThat(stepper.input() / 60).isCloseTo(1000 * (flow - 24) / cop, within(1e-3));
    assertThat(driven.atMinimum()).isZero();
    // On the way there too: C dT/dt = 8000 - 200 (T - 30) - 1000 (T - 24) within the slope.
    HeatPumpStepper warming = sample.stepper(30, 7);
    new DrivenSource(warming).run(20, 20, FLOW, 24, true);
    double expected = flow + (30 - flow) * Math.exp(-20 * 1200.0 / sample.mass);
    assertThat(warming.stored() / sample.mass).isCloseTo(expected, within(1e-6));
  }

  /** Return 22 °C and 1 kW/K: 35 °C takes 13 kW, 5 kW more than the compressor has. */
  @Test
  void theBackupHeaterMakesUpWhatTheCompressorLacksInTheColdOnly() {
    sample.backup = Optional.of(new BackupHeater(6000, -5));
    HeatPumpStepper cold = sample.stepper(34, -5);
    DrivenSource driven = new DrivenSource(cold);
    driven.run(7200, 60, FLOW, 22, true);
    assertThat(driven.flow()).isCloseTo(35, within(1e-6));
    assertThat(cold.backupHeat() / 60).isCloseTo(5000, within(1e-3));
    assertThat(cold.input() / 60).isCloseTo(8000 / SamplePump.COP + 5000, within(1e-3));

    HeatPumpStepper mild = sample.stepper(34, -4.9);
    driven = new DrivenSource(mild);
    driven.run(7200, 60, FLOW, 22, true);
    assertThat(driven.flow()).isCloseTo(30, within(1e-6));
    assertThat(driven.backup()).isZero();

    HeatPumpStepper light = sample.stepper(34, -5);
    driven = new DrivenSource(light);
    driven.run(7200, 60, FLOW, 28, true);
    assertThat(light.backupHeat()).isZero();
  }

  @Test
  void countsRunningTimeOutsideItsMap() {
    sample.performance =
        new PerformanceMap(
            new double[] {-7, 7},
            new double[] {35, 55},
            new double[][] {{6000, 5500}, {8000, 7500}},
            new double[][] {{2.8, 2}, {4.5, 3}});
    HeatPumpStepper stepper = sample.stepper(28, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(1000, 100, FLOW, 30, true);
    assertThat(driven.outsideMap()).isZero();
    stepper.begin(-8, 35);
    driven.run(1000, 100, FLOW, 30, true);
    assertThat(driven.outsideMap()).isCloseTo(1000, within(1e-6));
    driven.run(1000, 100, FLOW, 30, false);
    assertThat(driven.outsideMap()).isCloseTo(1000, within(1e-6));
  }

  /** What an attempt answers depends on its arguments alone, not on attempts before it. */
  @Test
  void anAttemptLeavesNoTrace() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 1000, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(28, 0);
    new DrivenSource(stepper).run(900, 100, FLOW, 25, true);
    double first = stepper.attempt(300, FLOW, 25, true);
    stepper.attempt(640, FLOW, 5, true);
    stepper.attempt(640, 0, 5, false);
    assertThat(stepper.attempt(300, FLOW, 25, true)).isEqualTo(first);
  }

  /** While it runs, rests or defrosts in turn, steps stay well inside each of them. */
  @Test
  void stepsStayShortWhileItCyclesAndUpToADefrost() {
    sample.defrost = Optional.of(new Defrost(-10, 5, 2400, 200, 3000, 500));
    HeatPumpStepper stepper = sample.stepper(28, 0);
    DrivenSource driven = new DrivenSource(stepper);
    driven.run(2000, 100, FLOW, 20, true);
    assertThat(stepper.steadyFor()).isLessThanOrEqualTo(400 + 1e-6);
    driven.run(450, 50, FLOW, 20, true);
    assertThat(stepper.steadyFor()).isLessThanOrEqualTo(40);

    sample.modulation = 1;
    HeatPumpStepper cycling = sample.stepper(38, 7);
    driven = new DrivenSource(cycling);
    for (int k = 0; k < 100; k++) {
      driven.run(10, 10, FLOW, 31, true);
      assertThat(k < 20 || cycling.steadyFor() <= 40).isTrue();
    }
    assertThat(cycling.starts()).isGreaterThan(3);
  }
}
