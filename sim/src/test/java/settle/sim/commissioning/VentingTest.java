package settle.sim.commissioning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.Balancing;
import settle.sim.commissioning.Venting.Passage;
import settle.sim.commissioning.Venting.Turn;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.Storeys;
import settle.sim.hydraulics.Lockshield;

/** Room after room is opened until hot water has been through. */
class VentingTest {

  /** A source without inertia, pipes without delay: what takes time is the run alone. */
  private static final House HOUSE = SampleHouses.eightRooms(1, SampleHouses.ideal());

  private static Venting venting(House house, Arrangement arrangement) {
    return VentingRun.of(Balancing.asRun(house, arrangement), CommissioningDay.USUAL);
  }

  @Test
  void whereOnlyTheRunTakesTimeItIsThatOfItsFront() {
    for (Turn turn : venting(HOUSE, HOUSE.arrangements().get(0)).turns()) {
      for (Passage passage : List.of(turn.asSet(), turn.open())) {
        Venting.Stages stages = passage.stages().orElseThrow();
        assertThat(stages.source()).isLessThanOrEqualTo(20); // one look
        assertThat(stages.pipes()).isZero();
        // Emission cools the front and a look is 20 s: not much apart.
        assertThat(stages.run()).isCloseTo(passage.front(), within(0.15 * passage.front() + 40));
      }
    }
  }

  @Test
  void aFrontTakesHeatCapacityOverCapacityFlow() {
    Turn turn = venting(HOUSE, HOUSE.arrangements().get(0)).turns().get(0);
    double length =
        HOUSE.arrangements().get(0).branches().get(turn.branch()).emitter().length().orElseThrow();
    // 0.3 l/m of water of 988 kg/m³ and 4180 J/(kg K), 1.6 kg/m of 500 J/(kg K)
    double byHand = length * (0.3 * 0.988 * 4180 + 800) / (turn.asSet().massFlow() * 4180);
    assertThat(turn.asSet().front()).isCloseTo(byHand, within(0.005 * byHand));
    double speed = turn.asSet().massFlow() / 988 / 0.3e-3;
    assertThat(turn.asSet().speed()).isCloseTo(speed, within(0.005 * speed));
  }

  @Test
  void lowerRoomsComeFirstAndNearerOnesBeforeFarther() {
    House house = SampleHouses.onMains(HOUSE);
    Storeys storeys = Storeys.of(house);
    assertThat(IntStream.range(0, 8).map(storeys::of)).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
    assertThat(storeys.count()).isEqualTo(2);
    Venting venting = venting(house, house.arrangements().get(0));
    assertThat(venting.turns().stream().map(Turn::storey)).containsExactly(0, 0, 0, 0, 1, 1, 1, 1);
    assertThat(venting.highest()).isEqualTo(venting.turns().get(7).branch());
  }

  @Test
  void mainsAreWarmFromTheSecondTurnOn() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.boiler()));
    List<Turn> turns = venting(house, house.arrangements().get(0)).turns();
    Turn first = turns.get(0);
    assertThat(first.inTurn().orElseThrow())
        .isCloseTo(first.open().stages().orElseThrow().total(), within(90.0));
    Turn third = turns.get(2);
    assertThat(third.open().stages().orElseThrow().source()).isGreaterThan(60);
    assertThat(third.inTurn().orElseThrow())
        .isLessThan(third.open().stages().orElseThrow().total() - 60);
  }

  @Test
  void radiatorsOfTheHighestStoreyStayOpenBesideSkirting() {
    List<Branch> branches = new ArrayList<>(HOUSE.arrangements().get(0).branches());
    branches.set(1, HOUSE.arrangements().get(1).branches().get(1));
    branches.set(6, HOUSE.arrangements().get(1).branches().get(6));
    Venting venting = venting(HOUSE, new Arrangement("mixed", branches, false));
    assertThat(venting.keptOpen()).containsExactly(6);
    assertThat(venting(HOUSE, HOUSE.arrangements().get(1)).keptOpen()).isEmpty();
  }

  @Test
  void aSourceThatNeedsMoreWaterThanOneRoomPassesGetsIt() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.heatPump()));
    Venting venting = venting(house, house.arrangements().get(0));
    assertThat(venting.forSource()).isNotEmpty().hasSizeLessThan(8);
    for (Turn turn : venting.turns()) {
      assertThat(turn.asSet().stages()).as(turn.place()).isPresent();
    }
  }

  @Test
  void whatIsShutByHandHasNoTurn() {
    Arrangement shut =
        HOUSE
            .arrangements()
            .get(0)
            .withBranch(2, b -> b.withLockshield(new Lockshield("shut", 0, 0)));
    assertThat(venting(HOUSE, shut).turns()).hasSize(7).noneMatch(turn -> turn.branch() == 2);
  }
}
