package settle.sim.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Invariants of every source, with and without a vessel in each of its places. */
class SourceInvariantsTest {

  private static final double DENSITY = 988;
  private static final double C = SamplePump.SPECIFIC_HEAT;

  private static Boiler boiler(Random random) {
    BoilerEfficiency efficiency =
        new BoilerEfficiency(
            new double[] {30, 55, 70},
            new double[] {0.2, 1},
            new double[][] {{0.98, 0.96}, {0.9, 0.88}, {0.88, 0.86}},
            55);
    double least = between(random, 1000, 8000);
    return new Boiler(
        "boiler",
        least * between(random, 1, 6),
        least,
        between(random, 35, 75),
        between(random, 1, 8),
        between(random, 5000, 60_000),
        between(random, 10, 120),
        between(random, 0, 300),
        180,
        between(random, 0, 4),
        efficiency);
  }

  private static HeatPump heatPump(Random random) {
    SamplePump sample = new SamplePump();
    sample.performance = new CarnotPerformance(0.45, between(random, 3000, 12_000), 150);
    sample.modulation = between(random, 0.2, 1);
    sample.setPoint = between(random, 28, 55);
    sample.band = between(random, 1, 5);
    sample.highestFlow = between(random, 55, 65);
    sample.minimumFlow = between(random, 0, 0.15);
    sample.onTime = between(random, 0, 600);
    sample.offTime = between(random, 0, 600);
    sample.mass = between(random, 10_000, 100_000);
    sample.standby = 30;
    sample.defrost =
        Optional.of(
            new Defrost(-10, 6, between(random, 600, 3600), between(random, 60, 600), 4000, 800));
    sample.backup = Optional.of(new BackupHeater(3000, -2));
    return sample.build();
  }

  private static List<SourceStepper> sources(long seed) {
    List<SourceStepper> sources = new ArrayList<>();
    for (int kind = 0; kind < 3; kind++) {
      sources.add(bare(kind, seed));
      Random random = new Random(~seed);
      for (Buffer.Placement placement : Buffer.Placement.values()) {
        Buffer buffer =
            new Buffer(
                placement,
                between(random, 0.01, 0.3),
                between(random, 0, 3),
                20,
                between(random, 0.16, 0.4));
        sources.add(new BufferedSource(bare(kind, seed), buffer, DENSITY, C, 25));
      }
    }
    return sources;
  }

  private static SourceStepper bare(int kind, long seed) {
    Random random = new Random(seed);
    return switch (kind) {
      case 0 -> new BoilerStepper(boiler(random), 4180, 25);
      case 1 -> new HeatPumpStepper(heatPump(random), C, 25);
      default -> new IdealSourceStepper(new IdealSource("source", 45, 6000));
    };
  }

  private static double between(Random random, double least, double most) {
    return least + random.nextDouble() * (most - least);
  }

  /**
   * Over any steps, flows, returns and calls, also where the iteration with the emitters ends a
   * little off: heat made is heat lost, taken or stored, to 1e-9 of all that was turned over.
   */
  @Property(tries = 100)
  void energyIsKept(@ForAll long seed) {
    for (SourceStepper source : sources(seed)) {
      Random random = new Random(seed + 1);
      double before = source.stored();
      double made = 0;
      double passed = 0;
      double turnedOver = 0;
      double worked = 0;
      for (int k = 0; k < 150; k++) {
        double step = Math.exp(between(random, Math.log(1), Math.log(1000)));
        double capacityFlow = random.nextInt(6) == 0 ? 0 : C * between(random, 0.01, 0.5);
        double returning = between(random, 15, 50);
        boolean called = random.nextInt(5) > 0;
        source.begin(between(random, -12, 15), between(random, 28, 60));
        source.attempt(step, capacityFlow, returning - 3, called);
        double flow = source.attempt(step, capacityFlow, returning, called);
        double off = capacityFlow > 0 ? between(random, -1e-3, 1e-3) : 0;
        double taken = capacityFlow * (flow + off - returning) * step;
        source.accept(taken);
        made += source.heatMade();
        passed += source.loss() + taken;
        turnedOver += Math.abs(source.heatMade()) + Math.abs(taken) + Math.abs(source.loss());
        worked += Math.abs(source.heatMade());
        // An ideal source makes just what is taken, ending a little off included.
        assertThat(source.input()).isGreaterThanOrEqualTo(-2e-3 * capacityFlow * step - 1);
      }
      assertThat(worked).isGreaterThan(0);
      assertThat(made - passed - (source.stored() - before))
          .isCloseTo(0, within(1e-9 * turnedOver));
    }
  }

  /** With steps no longer than it asks for, no source or vessel makes water it could not make. */
  @Property(tries = 40)
  void temperaturesStayWithinReach(@ForAll long seed) {
    for (SourceStepper source : sources(seed)) {
      Random random = new Random(seed + 3);
      double capacity = source.stored() / 25;
      source.begin(5, 50);
      for (int stage = 0; stage < 8; stage++) {
        double capacityFlow = random.nextInt(6) == 0 ? 0 : C * between(random, 0.01, 0.5);
        double returning = between(random, 15, 50);
        boolean called = random.nextInt(5) > 0;
        double step = 10;
        for (double time = 0; time < 3600; time += step) {
          double flow = source.attempt(step, capacityFlow, returning, called);
          source.accept(capacityFlow * (flow - returning) * step);
          assertThat(source.leaving()).isBetween(0.0, 90.0);
          assertThat(flow).isBetween(0.0, 90.0);
          if (capacity > 0) {
            assertThat(source.stored() / capacity).isBetween(0.0, 90.0);
          }
          step = Math.max(10, Math.min(2 * step, source.steadyFor()));
        }
      }
    }
  }

  /** One long step and many short ones see the same events at the same times. */
  @Property(tries = 60)
  void oneLongStepIsAsGoodAsManyShortOnes(@ForAll long seed) {
    for (int kind = 0; kind < 2; kind++) {
      Random random = new Random(seed + 2);
      double capacityFlow = C * between(random, 0.16, 0.4);
      double returning = between(random, 20, 45);
      double outdoor = between(random, -8, 10);
      double setPoint = between(random, 30, 55);
      SourceStepper coarse = bare(kind, seed);
      SourceStepper fine = bare(kind, seed);
      coarse.begin(outdoor, setPoint);
      fine.begin(outdoor, setPoint);
      DrivenSource few = new DrivenSource(coarse);
      DrivenSource many = new DrivenSource(fine);
      for (int k = 0; k < 10; k++) {
        few.run(640, 640, capacityFlow, returning, k != 6);
        many.run(640, 10, capacityFlow, returning, k != 6);
      }
      assertThat(coarse.starts()).isEqualTo(fine.starts());
      assertThat(coarse.defrosts()).isEqualTo(fine.defrosts());
      assertThat(coarse.stored()).isCloseTo(fine.stored(), within(1e-6 * Math.abs(fine.stored())));
      assertThat(few.made()).isCloseTo(many.made(), within(1e-6 * Math.abs(many.made()) + 1));
      assertThat(few.taken()).isCloseTo(many.taken(), within(1e-6 * Math.abs(many.taken()) + 10));
      assertThat(few.atMinimum()).isCloseTo(many.atMinimum(), within(0.01));
      assertThat(few.backup()).isCloseTo(many.backup(), within(1e-6 * Math.abs(many.made()) + 1));
      // COP is taken at the mean temperature of each stretch, and stretches differ.
      assertThat(few.input()).isCloseTo(many.input(), within(0.01 * many.input() + 1));
      assertThat(
              coarse.shortestRun() == fine.shortestRun()
                  || Math.abs(coarse.shortestRun() - fine.shortestRun()) < 1e-3)
          .isTrue();
    }
  }
}
