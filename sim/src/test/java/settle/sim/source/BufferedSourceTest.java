package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BufferedSourceTest {

  private static final double DENSITY = 988;
  private static final double C = SamplePump.SPECIFIC_HEAT;
  private static final double VOLUME = 0.1;

  private static BufferedSource ideal(Buffer.Placement placement, double lossCoefficient) {
    IdealSource source = new IdealSource("source", 50, Double.POSITIVE_INFINITY);
    Buffer buffer = new Buffer(placement, VOLUME, lossCoefficient, 15, 0.3);
    return new BufferedSource(new IdealSourceStepper(source), buffer, DENSITY, C, 20);
  }

  /** A vessel of 100 l at 0.1 kg/s: 1 - e^(-t/988 s) of a step at its inlet. */
  @Test
  void aVesselInTheFlowDelaysWhatEntersTheMains() {
    BufferedSource source = ideal(Buffer.Placement.FLOW, 0);
    source.attempt(600, 0.1 * C, 30, true);
    source.accept(source.attempt(600, 0.1 * C, 30, true) * 0.1 * C * 600 - 30 * 0.1 * C * 600);
    assertThat(source.stored() / (VOLUME * DENSITY * C))
        .isCloseTo(50 - 30 * Math.exp(-600 * 0.1 / (VOLUME * DENSITY)), within(1e-9));
    assertThat(source.leaving()).isEqualTo(50);
  }

  @Test
  void aVesselInTheReturnDelaysWhatTheSourceSees() {
    BufferedSource source = ideal(Buffer.Placement.RETURN, 0);
    DrivenSource driven = new DrivenSource(source);
    driven.run(600, 600, 0.1 * C, 30, true);
    assertThat(driven.flow()).isEqualTo(50);
    double end = 30 - 10 * Math.exp(-600 * 0.1 / (VOLUME * DENSITY));
    assertThat(source.stored() / (VOLUME * DENSITY * C)).isCloseTo(end, within(1e-9));
  }

  /** Source 0.3 kg/s, mains 0.1: 0.2 kg/s run down through it; at rest it is hot throughout. */
  @Test
  void whatTheMainsLeaveRunsThroughAParallelVessel() {
    BufferedSource source = ideal(Buffer.Placement.PARALLEL, 0);
    DrivenSource driven = new DrivenSource(source);
    driven.run(40_000, 100, 0.1 * C, 30, true);
    assertThat(driven.flow()).isCloseTo(50, within(1e-6));
    // The lower half mixes 0.1 kg/s at 30 °C with 0.2 at 50.
    double mixed = (0.1 * 30 + 0.2 * 50) / 0.3;
    assertThat(source.heatMade() / 100).isCloseTo(0.3 * C * (50 - mixed), within(1e-3));
    assertThat(source.stored() / (VOLUME * DENSITY * C)).isCloseTo((50 + mixed) / 2, within(1e-6));
  }

  /** Mains 0.6 kg/s, source 0.3: the mains see a mixture. */
  @Test
  void whatTheMainsLackComesFromTheReturnThroughAParallelVessel() {
    BufferedSource source = ideal(Buffer.Placement.PARALLEL, 0);
    DrivenSource driven = new DrivenSource(source);
    driven.run(40_000, 100, 0.6 * C, 30, true);
    assertThat(driven.flow()).isCloseTo((50 + 30) / 2.0, within(1e-6));
    assertThat(source.leaving()).isEqualTo(50);
  }

  @Test
  void theMainsDrawOnAParallelVesselWhileTheSourceRests() {
    BufferedSource source = ideal(Buffer.Placement.PARALLEL, 0);
    DrivenSource driven = new DrivenSource(source);
    driven.run(40_000, 100, 0, 30, true);
    double hot = source.stored();
    assertThat(hot / (VOLUME * DENSITY * C)).isCloseTo(50, within(1e-6));
    driven.run(100, 10, 0.1 * C, 30, false);
    assertThat(driven.taken()).isCloseTo(hot - source.stored(), within(1e-3));
    assertThat(driven.flow()).isCloseTo(50, within(0.5));
  }

  /** G 2 W/K on 100 l: at rest from 20 °C towards 15 °C. */
  @ParameterizedTest
  @EnumSource
  void aVesselLosesHeatToItsSurroundings(Buffer.Placement placement) {
    BufferedSource source = ideal(placement, 2);
    new DrivenSource(source).run(86_400, 640, 0, 30, false);
    double capacity = VOLUME * DENSITY * C;
    assertThat(source.stored() / capacity)
        .isCloseTo(15 + 5 * Math.exp(-86_400 * 2 / capacity), within(1e-9));
  }

  /** A parallel vessel gives the source its own flow, whatever the valves do. */
  @Test
  void aParallelVesselKeepsAHeatPumpFromBeingBlocked() {
    SamplePump sample = new SamplePump();
    sample.minimumFlow = 0.2;
    for (Buffer.Placement placement : Buffer.Placement.values()) {
      Buffer buffer = new Buffer(placement, VOLUME, 0, 15, 0.3);
      DrivenSource driven =
          new DrivenSource(new BufferedSource(sample.stepper(30, 7), buffer, DENSITY, C, 30));
      driven.run(3600, 30, 0.05 * C, 25, true);
      assertThat(driven.blocked())
          .isCloseTo(placement == Buffer.Placement.PARALLEL ? 0 : 3600, within(1e-6));
    }
  }

  /**
   * Against a steady load, on a mixed volume whose water goes round quickly, run and rest are (C +
   * C_v) dT/(P - Q) and (C + C_v) dT/Q, the swing dT being twice the band less the jump of the flow
   * temperature that each start makes.
   */
  @Test
  void aVolumiserLengthensRunsInProportionToTheWater() {
    SamplePump sample = new SamplePump();
    sample.modulation = 1;
    double load = 3000;
    double capacityFlow = 4000;
    double bare = run(sample.stepper(32, 7), load, capacityFlow);
    assertThat(bare)
        .isCloseTo(sample.mass * 2 * sample.band / (SamplePump.CAPACITY - load), within(3.0));
    assertThat(bare).as("short-cycles").isLessThan(120);
    Buffer buffer = new Buffer(Buffer.Placement.RETURN, VOLUME, 0, 15, 0);
    double long1 =
        run(new BufferedSource(sample.stepper(32, 7), buffer, DENSITY, C, 32), load, capacityFlow);
    double vessel = VOLUME * DENSITY * C;
    double total = sample.mass + vessel;
    double share = vessel / total;
    double swing = 2 * sample.band - SamplePump.CAPACITY / capacityFlow * share * share;
    assertThat(long1).isCloseTo(total * swing / (SamplePump.CAPACITY - load), within(0.02 * long1));
    assertThat(long1).isGreaterThan(3 * bare);
  }

  /** What the source does behind its vessel is told as if it stood alone. */
  @ParameterizedTest
  @EnumSource
  void aVesselHidesNothingOfItsSource(Buffer.Placement placement) {
    SamplePump sample = new SamplePump();
    sample.modulation = 1;
    sample.defrost = Optional.of(new Defrost(-10, 5, 1500, 200, 3000, 500));
    sample.backup = Optional.of(new BackupHeater(2000, 0));
    sample.performance =
        new PerformanceMap(
            new double[] {2, 7},
            new double[] {35},
            new double[][] {{6000}, {8000}},
            new double[][] {{3}, {4}});
    HeatPumpStepper pump = sample.stepper(30, -1);
    Buffer buffer = new Buffer(placement, VOLUME, 1, 15, 0.3);
    BufferedSource source = new BufferedSource(pump, buffer, DENSITY, C, 30);
    double before = source.stored();
    DrivenSource driven = new DrivenSource(source);
    double lost = 0;
    double outside = 0;
    double atMinimum = 0;
    for (int k = 0; k < 500; k++) {
      driven.run(20, 20, 0.15 * C, k % 100 < 60 ? 27 : 40, k % 70 < 65);
      lost += source.loss();
      outside += pump.timeOutsideMap();
      atMinimum += pump.timeAtMinimum();
      assertThat(source.heatMade()).isEqualTo(pump.heatMade());
      assertThat(source.backupHeat()).isEqualTo(pump.backupHeat());
      assertThat(source.input()).isEqualTo(pump.input());
      assertThat(source.leaving()).isEqualTo(pump.leaving());
      assertThat(source.starts()).isEqualTo(pump.starts());
      assertThat(source.defrosts()).isEqualTo(pump.defrosts());
      assertThat(source.shortestRun()).isEqualTo(pump.shortestRun());
      assertThat(source.timeBlocked()).isEqualTo(pump.timeBlocked());
      assertThat(source.steadyFor()).isLessThanOrEqualTo(pump.steadyFor());
      assertThat(source.agreed()).isTrue();
    }
    assertThat(driven.outsideMap()).isEqualTo(outside).isGreaterThan(1000);
    assertThat(driven.atMinimum()).isEqualTo(atMinimum).isGreaterThan(100);
    assertThat(driven.backup()).isGreaterThan(1000);
    assertThat(source.starts()).isGreaterThan(2);
    assertThat(source.defrosts()).isGreaterThan(1);
    assertThat(driven.made() - driven.taken() - lost - (source.stored() - before))
        .isCloseTo(0, within(1e-9 * driven.made()));
  }

  @ParameterizedTest
  @EnumSource
  void aVesselPassesOnWhatIsAskedOfItsSource(Buffer.Placement placement) {
    BufferedSource source = ideal(placement, 0);
    source.begin(0, 42);
    DrivenSource driven = new DrivenSource(source);
    driven.run(40_000, 100, 0.1 * C, 30, true);
    assertThat(source.leaving()).isEqualTo(42);
    assertThat(driven.flow()).isCloseTo(42, within(1e-6));
  }

  /** Steps follow the vessel, half a kelvin at a time: 0.1 kg/s of 50 °C into 98.8 kg at 20 °C. */
  @Test
  void stepsFollowTheVessel() {
    BufferedSource source = ideal(Buffer.Placement.FLOW, 0);
    new DrivenSource(source).run(10, 10, 0.1 * C, 30, true);
    double moved = 30 * (1 - Math.exp(-10 * 0.1 / (VOLUME * DENSITY)));
    assertThat(source.steadyFor()).isCloseTo(0.5 * 10 / moved, within(1e-9));
    // Of a parallel vessel the half that moves faster: 0.3 kg/s of 50 °C into the upper 49.4 kg.
    source = ideal(Buffer.Placement.PARALLEL, 0);
    new DrivenSource(source).run(1, 1, 0, 30, true);
    moved = 30 * (1 - Math.exp(-0.3 / (VOLUME / 2 * DENSITY)));
    assertThat(source.steadyFor()).isCloseTo(0.5 / moved, within(1e-6));
  }

  private static double run(SourceStepper stepper, double load, double capacityFlow) {
    DrivenSource driven = new DrivenSource(stepper).from(32);
    driven.runAgainst(load, 20_000, 2, capacityFlow);
    assertThat(stepper.starts()).isGreaterThan(5);
    return stepper.shortestRun();
  }

  /** As much water as the law says keeps the least running time, and not a tenth less. */
  @Test
  void theWaterNeededIsJustEnough() {
    SamplePump sample = new SamplePump();
    sample.onTime = 600;
    double load = 500;
    double least = sample.modulation * SamplePump.CAPACITY;
    double needed = WaterNeeded.volume(least, load, 600, 2 * sample.band, DENSITY * C);
    assertThat(WaterNeeded.of(sample.build(), 7, 35, DENSITY * C))
        .isCloseTo(WaterNeeded.volume(least, 0, 600, 6, DENSITY * C), within(1e-12));
    for (double share : new double[] {0.9, 1.02}) {
      sample.onTime = 0;
      sample.modulation = 1;
      sample.performance = SamplePump.onePoint(least, 4);
      sample.mass = share * needed * DENSITY * C;
      HeatPumpStepper stepper = sample.stepper(32, 7);
      new DrivenSource(stepper).from(32).runAgainst(load, 20_000, 5, 4000);
      assertThat(stepper.shortestRun() >= 600).isEqualTo(share > 1);
    }
  }
}
