package settle.sim.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;

class PipeWaterTest {

  private static final double CAPACITY = 700;
  private static final double LOSS = 0.5;
  private static final double LENGTH = 10;

  private static PipeWater pipe(double loss, double start) {
    Pipe pipe = new Pipe("pipe", 0.0136, 1.5e-6, LENGTH, 0, CAPACITY, loss);
    return new PipeWater(pipe, LENGTH, start);
  }

  private static void step(PipeWater water, double h, double capacityFlow, double inlet) {
    water.attempt(h, capacityFlow, inlet, 15);
    water.accept();
  }

  @Test
  void frontArrivesAfterTheResidenceTime() {
    PipeWater water = pipe(0, 20);
    double capacityFlow = 70; // 0.1 m/s: 100 s
    for (int k = 0; k < 10; k++) {
      step(water, 9.5, capacityFlow, 60);
      assertThat(water.outlet()).isCloseTo(20, within(1e-9));
    }
    step(water, 10, capacityFlow, 60);
    // 95 s before, so it arrives in the middle of these 10 s.
    assertThat(water.outlet()).isCloseTo(40, within(1e-9));
    step(water, 10, capacityFlow, 60);
    assertThat(water.outlet()).isCloseTo(60, within(1e-9));
  }

  @Test
  void steadyOutletIsExponential() {
    double expected = 15 + 45 * Math.exp(-LOSS * LENGTH / 70);
    // A parcel may be a fiftieth of the pipe: its two ends leave half of that share of the fall
    // off.
    double parcel = (60 - expected) / 50 / 2;
    for (double h : new double[] {1, 10, 37, 100, 640, 5000}) {
      PipeWater water = pipe(LOSS, 20);
      for (int k = 0; k < 400; k++) {
        step(water, h, 70, 60);
      }
      assertThat(water.outlet()).as("steps of %s s", h).isCloseTo(expected, within(parcel));
    }
  }

  /**
   * Water that enters during one long step has had unequal time to cool: what leaves in the short
   * steps after it must not show how the long one was cut.
   */
  @Test
  void shortStepsAfterLongOnesLeaveTheOutletAsItIs() {
    double capacityFlow = 10;
    double expected = 15 + 45 * Math.exp(-LOSS * LENGTH / capacityFlow);
    PipeWater water = pipe(LOSS, 60);
    for (int k = 0; k < 40; k++) {
      step(water, 600, capacityFlow, 60);
    }
    for (int k = 0; k < 200; k++) {
      step(water, 10, capacityFlow, 60);
      // The rise over a parcel is taken as even: some hundredths of what is lost.
      assertThat(water.outlet()).isCloseTo(expected, within(0.03 * (60 - expected)));
    }
  }

  @Test
  void standingWaterCools() {
    PipeWater water = pipe(LOSS, 60);
    step(water, 640, 0, 99);
    step(water, 1000, 0, 99);
    double expected = 15 + 45 * Math.exp(-LOSS / CAPACITY * 1640);
    assertThat(water.outlet()).isCloseTo(expected, within(1e-9));
    assertThat(water.stored()).isCloseTo(CAPACITY * LENGTH * expected, within(1e-6));
  }

  /**
   * Every temperature lies between the coldest and the hottest there is; loss is never negative.
   */
  @Property(tries = 300, seed = "20261125", shrinking = ShrinkingMode.OFF)
  void holdsTheSecondLawAndKeepsItsHeat(@ForAll long seed) {
    Random random = new Random(seed);
    PipeWater water = pipe(random.nextBoolean() ? 0 : 3 * random.nextDouble(), 40);
    double start = water.stored();
    double balance = 0;
    double turnover = 1;
    for (int k = 0; k < 400; k++) {
      double h = 10 * Math.pow(2, random.nextInt(7));
      double capacityFlow = random.nextInt(3) == 0 ? 0 : Math.exp(8 * random.nextDouble() - 2);
      double inlet = 15 + 60 * random.nextDouble();
      water.attempt(h, capacityFlow, 15 + 60 * random.nextDouble(), 15);
      water.attempt(h, capacityFlow, inlet, 15);
      assertThat(water.outlet()).isBetween(15 - 1e-6, 75 + 1e-6);
      assertThat(water.loss()).isGreaterThan(-1e-3);
      double moved = capacityFlow * h * (inlet - water.outlet());
      balance += (capacityFlow > 0 ? moved : 0) - water.loss();
      turnover += Math.abs(moved);
      water.accept();
      double mean = water.stored() / (CAPACITY * LENGTH);
      assertThat(mean).isBetween(15 - 1e-6, 75 + 1e-6);
    }
    assertThat(water.stored() - start).isCloseTo(balance, within(1e-10 * turnover));
    // The parcels still hold what the sum says: let all of it stand until it is as cold as around.
    for (int k = 0; k < 60; k++) {
      step(water, 640, 50, 15);
    }
    assertThat(water.outlet()).isCloseTo(15, within(1e-6));
    assertThat(water.stored()).isCloseTo(CAPACITY * LENGTH * 15, within(1.0));
  }
}
