package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.Spreads;
import settle.sim.house.Uncertainty;

class OddsTest {

  private static final House TWO_ROOMS = SampleHouses.twoRooms(1, SampleHouses.boiler());
  private static final Arrangement SKIRTING = TWO_ROOMS.arrangements().get(0);

  private static Odds alone(House house, int samples) {
    return Odds.of(house, house.arrangements().get(0), samples, 5, Workers.ONE, done -> {});
  }

  @Test
  void answersAreTheSameOnAnyNumberOfThreads() {
    Odds alone = alone(TWO_ROOMS, 128);
    assertThat(Odds.of(TWO_ROOMS, SKIRTING, 128, 5, new Threads(4), done -> {})).isEqualTo(alone);
    assertThat(Odds.of(TWO_ROOMS, SKIRTING, 128, 6, Workers.ONE, done -> {})).isNotEqualTo(alone);
  }

  @Test
  void theMiddleDrawIsTheHouseAsStated() {
    DrawnHouse drawn = new DrawnHouse(TWO_ROOMS, SKIRTING);
    double[] shortfalls = drawn.shortfalls(new double[drawn.inputs().size()]);
    Holding stated = new Holding(TWO_ROOMS, SKIRTING);
    for (int r = 0; r < shortfalls.length; r++) {
      assertThat(shortfalls[r])
          .isCloseTo(stated.shortfall(TWO_ROOMS.designOutdoor(), r), within(1e-6));
    }
  }

  /** Each thing moved by one standard deviation to where it hurts. */
  @ParameterizedTest
  @EnumSource(Uncertainty.class)
  void whatIsUncertainHurtsWhereItShould(Uncertainty what) {
    DrawnHouse drawn = new DrawnHouse(TWO_ROOMS, SKIRTING);
    double worse =
        switch (what) {
          case U_VALUES, AIR_CHANGE, WANT -> 1;
          case EMITTER_OUTPUT, COLDEST_OUTDOOR, VALVE_SETTING -> -1;
        };
    int inputs = drawn.inputs().size();
    double[] stated = drawn.shortfalls(new double[inputs]);
    double[] moved =
        drawn.shortfalls(
            IntStream.range(0, inputs)
                .mapToDouble(i -> drawn.inputs().get(i) == what ? worse : 0)
                .toArray());
    for (int r = 0; r < stated.length; r++) {
      assertThat(moved[r]).as(drawn.rooms().get(r)).isGreaterThan(stated[r] + 0.01);
    }
  }

  @Test
  void everyValveIsUncertainByItself() {
    assertThat(new DrawnHouse(TWO_ROOMS, SKIRTING).inputs())
        .containsExactly(
            Uncertainty.U_VALUES,
            Uncertainty.AIR_CHANGE,
            Uncertainty.EMITTER_OUTPUT,
            Uncertainty.WANT,
            Uncertainty.COLDEST_OUTDOOR,
            Uncertainty.VALVE_SETTING,
            Uncertainty.VALVE_SETTING);
  }

  @Test
  void theOnlyThingUncertainExplainsAll() {
    List<Odds.Influence> colder =
        alone(LimitedRoom.house(new Spreads(0, 0, 0, 0, 0, 1.5)), 64).influences();
    assertThat(colder).hasSize(1);
    assertThat(colder.get(0).what()).isEqualTo(Uncertainty.COLDEST_OUTDOOR);
    assertThat(colder.get(0).correlation()).isCloseTo(-1, within(1e-9));
  }

  /** Of independent normal terms the squared correlations stand as the variances. */
  @Test
  void whatSpreadsTheShortfallMoreRanksFirst() {
    List<Odds.Influence> both =
        alone(LimitedRoom.house(new Spreads(0, 0, 0, 0, 2, 1.5)), 1024).influences();
    assertThat(both)
        .extracting(Odds.Influence::what)
        .containsExactly(Uncertainty.WANT, Uncertainty.COLDEST_OUTDOOR);
    // Spearman's coefficient of normal variables: 6/pi asin(r/2), r = 2/2.5 and -1.5/2.5.
    assertThat(both.get(0).correlation()).isCloseTo(6 / Math.PI * Math.asin(0.4), within(0.01));
    assertThat(both.get(1).correlation()).isCloseTo(-6 / Math.PI * Math.asin(0.3), within(0.01));
  }

  @Test
  void aCertainHouseKeepsUpOrDoesNot() {
    Odds odds = alone(LimitedRoom.house(new Spreads(0, 0, 0, 0, 0, 0)), 16);
    assertThat(odds.estimate().ofHundred()).isEqualTo(100);
    assertThat(odds.influences()).isEmpty();
    assertThat(odds.rooms().get(0).medianShortfall()).isCloseTo(-1.5, within(1e-5));
  }

  @Test
  void theEstimateIsWatchedOverPowersOfTwo() {
    List<Odds.Estimate> seen =
        alone(LimitedRoom.house(new Spreads(0, 0, 0, 0, 0, 1.5)), 100).convergence();
    assertThat(seen).extracting(Odds.Estimate::samples).containsExactly(8, 16, 32, 64, 128);
    assertThat(seen.get(4).standardError()).isLessThan(seen.get(0).standardError());
    // The error that the shifts tell is of the size of the true one.
    assertThat(Math.abs(seen.get(4).keepUp() - 0.84134))
        .isLessThan(4 * seen.get(4).standardError());
  }

  @Test
  void roomsThatFailMostComeFirst() {
    Odds odds = alone(TWO_ROOMS, 64);
    assertThat(odds.rooms()).hasSize(2);
    assertThat(odds.rooms().get(0).fails()).isGreaterThan(odds.rooms().get(1).fails());
    assertThat(odds.rooms().get(0).worst() + odds.rooms().get(1).worst()).isEqualTo(1);
    // All hold where the room that fails most does, or fewer.
    assertThat(odds.estimate().keepUp()).isLessThanOrEqualTo(1 - odds.rooms().get(0).fails());
  }

  @Test
  void turningLowHeadsUpCuresWhatIsAMatterOfSettings() {
    DrawnHouse drawn = new DrawnHouse(TWO_ROOMS, SKIRTING);
    double[] z = {0.5, 0, 0, -0.3, 1, -2, 1.5};
    assertThat(drawn.headsTurnedUp(z)).containsExactly(0.5, 0, 0, -0.3, 1, 0, 1.5);
    Odds odds = alone(TWO_ROOMS, 64);
    assertThat(odds.headsTurnedUp().keepUp()).isGreaterThan(odds.estimate().keepUp());
    // Without valves, or with valves that are sure, there is nothing to turn.
    Odds sure = alone(LimitedRoom.house(new Spreads(0, 0, 0, 0, 0, 1.5)), 64);
    assertThat(sure.headsTurnedUp()).isEqualTo(sure.estimate());
  }

  @Test
  void moreHousesSettleTheShare() {
    House house = LimitedRoom.house(new Spreads(0, 0, 0, 0, 0, 1.5));
    assertThat(alone(house, 8).converged()).isFalse();
    Odds many = alone(house, 512);
    assertThat(many.converged()).isTrue();
    assertThat(many.estimate().keepUp()).isCloseTo(0.84134, within(0.02));
  }

  /** None of 64 failing leaves up to 3 in 64 that may. */
  @Test
  void agreementIsNotCertainty() {
    Odds.Estimate all = new Odds.Estimate(64, 1, 0);
    assertThat(all.error()).isCloseTo(3 / 64.0, within(1e-12));
    assertThat(all.ofHundred()).isEqualTo(100);
    assertThat(Odds.samples(100)).isEqualTo(128);
    assertThat(Odds.samples(1)).isEqualTo(8);
  }

  @Test
  void everySampleIsReported() {
    Set<Integer> told = Collections.newSetFromMap(new ConcurrentHashMap<>());
    AtomicInteger calls = new AtomicInteger();
    Odds.of(
        TWO_ROOMS,
        SKIRTING,
        16,
        5,
        Workers.ONE,
        done -> {
          told.add(done);
          calls.incrementAndGet();
        });
    assertThat(calls).hasValue(16);
    assertThat(told).hasSize(16).contains(1, 16);
  }

  @Test
  void aFailureInASampleIsToldAsItIs() {
    assertThatThrownBy(
            () ->
                Odds.of(
                    TWO_ROOMS,
                    SKIRTING,
                    8,
                    5,
                    Workers.ONE,
                    done -> {
                      throw new ArithmeticException("no answer");
                    }))
        .isInstanceOf(ArithmeticException.class)
        .hasMessage("no answer");
  }
}
