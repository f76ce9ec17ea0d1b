package settle.sim.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import settle.sim.atrest.Balancing;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.model.HouseModel;
import settle.sim.study.Workers;

/** What is set, vented and read. */
class CommissioningPlanTest {

  private static final House HOUSE =
      SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
  private static final Arrangement BALANCED = HOUSE.arrangements().get(0).asBalanced();

  @Test
  void aBalancedPumpIsPutOnAMarkAndFlowsStay() {
    House strong = HOUSE.withPump(new ConstantPump(57_000, 0.3));
    Balance exact = Balancing.balance(new HouseModel(strong, BALANCED, 1));
    CommissioningPlan plan = CommissioningPlan.of(strong, BALANCED, CommissioningDay.USUAL);
    double head = plan.house().distribution().pump().setHead().orElseThrow();
    assertThat(head % 5000).isCloseTo(0, within(1e-6));
    assertThat(head).isBetween(exact.head() + 1, exact.head() + 5000);
    for (int b = 0; b < exact.branches().size(); b++) {
      double flow = exact.branches().get(b).flow();
      assertThat(plan.balance().branches().get(b).flow()).isCloseTo(flow, within(0.01 * flow));
    }
    assertThat(plan.arrangement().branches().get(0).lockshield().kv())
        .isLessThan(exact.branches().get(0).lockshield().kv());
  }

  @Test
  void whatIsSetByHandStaysAsItIs() {
    Arrangement given = HOUSE.arrangements().get(0);
    CommissioningPlan plan = CommissioningPlan.of(HOUSE, given, CommissioningDay.USUAL);
    assertThat(plan.arrangement().branches()).isEqualTo(given.branches());
    assertThat(plan.house().distribution().pump()).isEqualTo(HOUSE.distribution().pump());
  }

  @Test
  void readingsScatterMoreThanTheirInstrumentAndThreeTellMost() {
    CommissioningPlan plan = CommissioningPlan.of(HOUSE, BALANCED, CommissioningDay.USUAL);
    CommissioningSpreads.Instruments own = CommissioningSpreads.USUAL.instruments();
    ReadingSpreads spreads = plan.spreads();
    for (int b = 0; b < 8; b++) {
      assertThat(spreads.at(Point.Kind.RETURN, b)).isBetween(own.pipe(), 5.0);
      assertThat(spreads.at(Point.Kind.FAR_END, b)).isBetween(own.face(), 5.0);
      assertThat(spreads.at(Point.Kind.AIR, b)).isBetween(own.air(), 3.0);
    }
    assertThat(spreads.telling()).hasSize(3).doesNotHaveDuplicates();
    CommissioningSpreads wide = CommissioningSpreads.USUAL.times(2);
    ReadingSpreads wider =
        ReadingSpreads.of(Balancing.asRun(HOUSE, BALANCED), CommissioningDay.USUAL, wide);
    assertThat(wider.at(Point.Kind.RETURN, 0))
        .isGreaterThan(1.6 * spreads.at(Point.Kind.RETURN, 0));
  }

  /** The quick way to a tolerance comes to what the thorough one does. */
  @Test
  void spreadsAreThoseOfTheModelThatAcceptsReadings() {
    HouseModel model = Balancing.asRun(HOUSE, BALANCED);
    ReadingSpreads quick =
        ReadingSpreads.of(model, CommissioningDay.USUAL, CommissioningSpreads.USUAL);
    ReadingModel thorough =
        ReadingModel.of(
            model,
            CommissioningDay.USUAL,
            quick.points(),
            CommissioningSpreads.USUAL,
            Workers.ONE,
            done -> {});
    for (int p = 0; p < quick.points().size(); p++) {
      assertThat(quick.spreads().get(p))
          .as(quick.points().get(p).toString())
          .isCloseTo(thorough.spread(p), within(0.15 * thorough.spread(p)));
    }
  }
}
