package settle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.scenarios.ScenarioException;
import settle.sim.measure.Measure;
import settle.sim.study.HeatPumpAnswer;
import settle.sim.study.Remedy;
import settle.sim.study.RoomAnswer;
import settle.sim.study.Season;
import settle.sim.study.Verdict;

/** What the verdict is on the shipped houses, whose comments promise it. */
class VerdictOfExamplesTest {

  @Test
  void theBakeryIsHeldOnceItIsBalanced() throws ScenarioException {
    List<Verdict> verdicts = ExampleVerdicts.of("bakery.yaml").all();
    Verdict found = verdicts.get(0);
    assertThat(found.rooms().stream().filter(r -> !r.holds()).map(RoomAnswer::room))
        .containsExactly("shop");
    List<Remedy> sufficing = found.remedies().sufficing();
    assertThat(sufficing.stream().map(Remedy::kind))
        .startsWith(Measure.Kind.THROTTLE, Measure.Kind.BALANCE);
    assertThat(sufficing.get(1).measure().from()).isBetween(0.3, 0.6);
    assertThat(found.remedies().cure().orElseThrow().measures())
        .containsExactly(sufficing.get(0).measure());
    Verdict balanced = verdicts.get(1);
    assertThat(balanced.keepsUp()).isTrue();
    assertThat(balanced.source().boiler().orElseThrow().condensingShare())
        .isGreaterThan(found.source().boiler().orElseThrow().condensingShare() + 0.3);
  }

  @Test
  void theHeatPumpCarriesTheInsulatedHouseAndCyclesWhenItIsMild() throws ScenarioException {
    for (Verdict verdict : ExampleVerdicts.of("insulated-house.yaml").all()) {
      HeatPumpAnswer pump = verdict.source().heatPump().orElseThrow();
      assertThat(pump.capacity()).isGreaterThan(pump.load());
      assertThat(pump.bivalence()).isEmpty();
      assertThat(pump.cyclesAbove().orElseThrow()).isBetween(0.0, 10.0);
      assertThat(pump.mild().now().orElseThrow().startsPerHour()).isGreaterThan(1);
      Season.Year year = verdict.source().season().asControlled();
      Season.Consumption taken = year.consumption().orElseThrow();
      assertThat(taken.factor()).isBetween(3.5, 5.0);
      assertThat(year.heat() / taken.input()).isCloseTo(taken.factor(), within(1e-9));
      // Cooler water never costs the heat pump anything.
      assertThat(
              verdict
                  .source()
                  .season()
                  .leastFlow()
                  .orElseThrow()
                  .consumption()
                  .orElseThrow()
                  .factor())
          .isGreaterThan(taken.factor());
      assertThat(verdict.source().boiler()).isEmpty();
    }
  }
}
