package settle.sim.emitter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeResistance;

/**
 * Two runs left and right of one connection: a short one takes more than its share of the water.
 */
class TwoRunsTest {

  private static final double BORE = 0.014;
  private static final Tubes TUBES = new Tubes(Tubes.Way.OUT_AND_BACK, BORE, true, 5);

  private static PerimeterEmitter skirting(double all, double shorter, double fittings) {
    return new PerimeterEmitter(
        "skirting",
        all,
        130,
        1.3,
        2 * Math.PI / 4 * BORE * BORE,
        1.25 * 900,
        0.3,
        0,
        List.of(),
        TUBES,
        new PerimeterEmitter.Second(shorter, fittings),
        new PerimeterEmitter.Face(0.14, 0.03, 0.04, 0.1));
  }

  private static EmitterStepper stepper(PerimeterEmitter e) {
    return e.stepper(e.waterVolume() * 988 * 4180 + e.metalCapacity(), 20, 1);
  }

  private static double drop(double run, double fittings, double massFlow) {
    PipeResistance resistance =
        new PipeResistance(
            Pipe.withoutDelay("run", BORE, 1.5e-6, 2 * run, fittings), 988, 5.467e-4);
    resistance.at(massFlow);
    return resistance.drop();
  }

  /** Where fittings decide they are shared evenly; where tubes do, the short run takes most. */
  @ParameterizedTest
  @CsvSource({"0, 0.70, 0.76", "8, 0.58, 0.72", "40, 0.52, 0.62"})
  void aShortRunRobsALongOne(double fittings, double least, double most) {
    PerimeterEmitter both = skirting(12, 3, fittings);
    double massFlow = 1.0 / 60 * 0.988;
    double share = both.shareOfShorter(massFlow);
    assertThat(share).isBetween(least, most);
    double pressure = drop(3, fittings, share * massFlow);
    assertThat(drop(9, fittings, (1 - share) * massFlow))
        .isCloseTo(pressure, within(0.02 * pressure));
  }

  /** What each gets by itself, run and rest alike; more where lengths share the water. */
  @Test
  void togetherTheyGiveWhatEachGives() {
    PerimeterEmitter both = skirting(12, 3, 8);
    double flow = 1.0 / 60 * 0.988 * 4180;
    double share = both.shareOfShorter(flow / 4180);
    double shorter = stepper(skirting(3, 0, 0)).atRest(share * flow, 55, 20);
    double longer = stepper(skirting(9, 0, 0)).atRest((1 - share) * flow, 55, 20);
    EmitterStepper stepper = stepper(both);
    assertThat(stepper.atRest(flow, 55, 20)).isCloseTo(shorter + longer, within(0.5));
    double byLength =
        stepper(skirting(3, 0, 0)).atRest(flow / 4, 55, 20)
            + stepper(skirting(9, 0, 0)).atRest(flow * 3 / 4, 55, 20);
    assertThat(byLength).isCloseTo(717.6, within(2.0));
    assertThat(shorter + longer).isBetween(560.0, 600.0).isLessThan(0.85 * byLength);
    double before = stepper.stored();
    double balance = 0;
    for (int i = 0; i < 400; i++) {
      stepper.attempt(30, flow, 55, 20);
      stepper.accept();
      balance += flow * 30 * (55 - stepper.meanReturn()) - stepper.emitted();
    }
    assertThat(stepper.emitted() / 30).isCloseTo(shorter + longer, within(0.5));
    assertThat(stepper.stored() - before).isCloseTo(balance, within(1e-6 * balance));
  }

  @Test
  void lengthsStayInProportion() {
    PerimeterEmitter both = skirting(12, 3, 8).ofLength(24);
    assertThat(both.second().length()).isCloseTo(6, within(1e-12));
    assertThat(both.run().orElseThrow().longest()).isCloseTo(18, within(1e-12));
  }
}
