package settle.sim.fabric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits and invariants; figures are in the validation table. */
class PeriodicTransferTest {

  private static final Layer CONCRETE = Layer.solid("concrete", 0.2, 1.8, 2400, 1000);
  private static final Layer WOOL = Layer.solid("wool", 0.1, 0.036, 25, 1030);

  @Test
  void slowWavesSeeTheSteadyTransmittance() {
    PeriodicTransfer year =
        PeriodicTransfer.of(List.of(CONCRETE, WOOL), 0.13, 0.04, 50 * 365 * 86_400.0);
    assertThat(year.decrement()).isCloseTo(1, within(1e-6));
    assertThat(year.insideAdmittance())
        .isCloseTo(1 / UValue.totalResistance(List.of(CONCRETE, WOOL), 0.13, 0.04), within(1e-4));
  }

  @Test
  void withoutHeatCapacityNothingLags() {
    PeriodicTransfer bare =
        PeriodicTransfer.of(List.of(Layer.cavity("air", 0.5)), 0.13, 0.04, 86_400);
    assertThat(bare.lag()).isZero();
    assertThat(bare.transmittance()).isCloseTo(1 / 0.67, within(1e-12));
    assertThat(bare.insideArealCapacity()).isZero();
  }

  @Test
  void turningTheElementRoundExchangesItsSides() {
    PeriodicTransfer one = PeriodicTransfer.of(List.of(CONCRETE, WOOL), 0.13, 0.04, 86_400);
    PeriodicTransfer other = PeriodicTransfer.of(List.of(WOOL, CONCRETE), 0.04, 0.13, 86_400);
    assertThat(other.outsideAdmittance()).isCloseTo(one.insideAdmittance(), within(1e-12));
    assertThat(other.insideLead()).isCloseTo(one.outsideLead(), within(1e-6));
    assertThat(other.transmittance()).isCloseTo(one.transmittance(), within(1e-12));
  }

  @Test
  void slicingALayerChangesNothing() {
    PeriodicTransfer whole = PeriodicTransfer.of(List.of(CONCRETE), 0.13, 0.04, 3600);
    PeriodicTransfer sliced =
        PeriodicTransfer.of(List.of(CONCRETE.slice(0.3), CONCRETE.slice(0.7)), 0.13, 0.04, 3600);
    assertThat(sliced.insideAdmittance()).isCloseTo(whole.insideAdmittance(), within(1e-9));
    assertThat(sliced.lag()).isCloseTo(whole.lag(), within(1e-6));
  }

  @Test
  void lagsBeyondHalfAPeriodAreNotWrapped() {
    Layer thick = Layer.solid("concrete", 0.6, 1.8, 2400, 1000);
    // Each penetration depth of 0.1436 m takes a radian, 24/(2 pi) h; films and ends change that by
    // a fraction of it.
    double radians =
        PeriodicTransfer.of(List.of(thick), 0.13, 0.04, 86_400).lag() * 2 * Math.PI / 86_400;
    assertThat(radians).isGreaterThan(Math.PI).isCloseTo(0.6 / 0.1436, within(0.8));
  }

  @Test
  void manyLumpsApproachTheLayer() {
    List<Layer> ladder = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      ladder.add(Layer.cavity("half", CONCRETE.resistance() / 800));
      ladder.add(new Layer("lump", 0, CONCRETE.arealCapacity() / 400));
      ladder.add(Layer.cavity("half", CONCRETE.resistance() / 800));
    }
    PeriodicTransfer lumps = PeriodicTransfer.of(ladder, 0.13, 0.04, 86_400);
    PeriodicTransfer exact = PeriodicTransfer.of(List.of(CONCRETE), 0.13, 0.04, 86_400);
    assertThat(lumps.insideAdmittance()).isCloseTo(exact.insideAdmittance(), within(1e-4));
    assertThat(lumps.lag()).isCloseTo(exact.lag(), within(1.0));
  }
}
