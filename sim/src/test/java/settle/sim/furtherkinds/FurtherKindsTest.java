package settle.sim.furtherkinds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.result.RunResult;
import settle.sim.study.Judgement;
import settle.sim.study.Season;
import settle.sim.study.Verdict;

/** Kinds that live here alone are run, settled and judged like those of the house. */
class FurtherKindsTest {

  private static House house(double power) {
    House plain =
        SampleHouses.steady(SampleHouses.twoRooms(1, new FlowHeater("flow heater", power, 55)), 0);
    Arrangement coils = plain.arrangements().get(1);
    return plain.withArrangements(
        List.of(
            coils.withBranches(
                coils.branches().stream()
                    .map(b -> b.withEmitter(new FanConvector("coil", b.emitter().ratedOutput())))
                    .toList())));
  }

  @Test
  void theyRunAndKeepTheirHeat() {
    House house = house(6000);
    RunResult result = Simulation.run(house, house.arrangements().get(0));
    assertThat(result.stepsUnagreed()).isZero();
    assertThat(result.ledger().error()).isLessThan(1e-9);
    assertThat(result.plant().sourceHeat()).isPositive();
  }

  /** By the house at rest and by a run that goes on until it rests. */
  @Test
  void theySettleWhereTheyRunTo() {
    House house = house(6000);
    Arrangement coils = house.arrangements().get(0);
    HeldRun.Day day = HeldRun.of(house, coils, house.designOutdoor());
    Verdict verdict = Verdict.of(house, coils);
    assertThat(verdict.judgement().disagreements()).isEmpty();
    Judgement.AtRest rest = verdict.judgement().weathers().get(0).rest();
    assertThat(rest.claims()).isTrue();
    for (int r = 0; r < rest.operative().length; r++) {
      int room = verdict.judgement().rooms().get(r).index();
      // Anywhere in the play of its head.
      assertThat(day.operative()[room])
          .isBetween(rest.lowest()[r] - 0.05, rest.highest()[r] + 0.05);
    }
  }

  /** Too small by far, it is a no for want of power; its season takes what it makes. */
  @Test
  void theyAreJudged() {
    House ample = house(6000);
    Season.Year year = Verdict.of(ample, ample.arrangements().get(0)).season().asControlled();
    assertThat(year.consumption().orElseThrow().factor()).isCloseTo(1, within(1e-9));
    House weak = house(300);
    Verdict verdict = Verdict.of(weak, weak.arrangements().get(0));
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.NO);
    assertThat(verdict.confirmedByRun()).isTrue();
    assertThat(verdict.remedies().sourceIsShort()).isTrue();
  }
}
