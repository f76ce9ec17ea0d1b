package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Aims;
import settle.sim.house.Arrangement;
import settle.sim.house.Building;
import settle.sim.house.Heating;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.valve.FixedOpening;

/** What is said to make enough houses warm does, carried out and tried again. */
class LiftTest {

  private static final int HOUSES = 128;
  private static final long SEED = 7;

  private static House twoRooms(double flow) {
    House house = SampleHouses.twoRooms(1, new IdealSource("ideal", flow, 20_000));
    return SampleHouses.withValves(house, b -> new FixedOpening("open", 1.3));
  }

  /** Coolest water that holds both rooms as stated [°C], to half a kelvin. */
  private static double leastThatHolds() {
    House house = twoRooms(75);
    Holding holding = new Holding(house, house.arrangements().get(0));
    return Math.ceil(2 * holding.leastFlow(house.designOutdoor()).orElseThrow()) / 2;
  }

  private static Verdict verdict(House house) {
    return Verdict.of(house, house.arrangements().get(0))
        .tried(house, HOUSES, SEED, Workers.ONE, done -> {});
  }

  /** Share of the houses like it that are held, and what runs say of the house as stated. */
  private static void assertSure(House house, Lift lift) {
    String name = house.arrangements().get(0).name();
    House with = lift.on(house, name);
    Arrangement as = with.arrangement(name);
    double share =
        Odds.of(with, as, HOUSES, SEED, Workers.ONE, done -> {}).headsTurnedUp().keepUp();
    assertThat(share).isEqualTo(lift.share()).isGreaterThanOrEqualTo(house.aims().sure());
    Judgement judged = Judgement.of(with, as);
    assertThat(judged.holds()).isTrue();
    assertThat(judged.confirmedByRun()).isTrue();
  }

  @Test
  void aHouseThatIsOnlyJustWarmIsMadeSureOf() {
    House house = twoRooms(leastThatHolds());
    Verdict verdict = verdict(house);
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.ONLY_JUST);
    Lift lift = verdict.lift().orElseThrow();
    assertThat(lift.enough()).isTrue();
    assertThat(lift.measures()).isEqualTo(lift.added()).isNotEmpty();
    assertSure(house, lift);
  }

  /** The least set holds the house as stated, and what is added makes it a yes. */
  @Test
  void aColdHouseIsMadeSureOfByMoreThanTheLeastSet() {
    House house = twoRooms(leastThatHolds() - 4);
    Verdict verdict = verdict(house);
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.NO);
    Lift lift = verdict.lift().orElseThrow();
    assertThat(lift.enough()).isTrue();
    assertSure(house, lift);
    assertThat(lift.added()).isNotEmpty();
  }

  @Test
  void aHouseWithPlentyNeedsNoLift() {
    Verdict verdict = verdict(twoRooms(75));
    assertThat(verdict.outcome()).isEqualTo(Verdict.Outcome.YES);
    assertThat(verdict.lift()).isEmpty();
  }

  /**
   * All of them is more than most; what is claimed is tried again, and what is not is not listed.
   */
  @Test
  void whatIsNotFoundIsNotClaimed() {
    House house = twoRooms(leastThatHolds());
    Aims aims = house.aims();
    House certain =
        with(
            house,
            new Aims(
                aims.tolerance(),
                aims.warmUp(),
                aims.overshoot(),
                1,
                aims.tariffs(),
                aims.spreads()));
    Lift lift = verdict(certain).lift().orElseThrow();
    assertThat(lift.enough()).isFalse();
    assertThat(lift.measures()).isEmpty();
    assertThat(lift.share()).isLessThan(1);
    assertThat(house.rooms().stream().map(Room::name)).contains(lift.weakest());
  }

  private static House with(House h, Aims aims) {
    return new House(
        h.title(),
        h.designOutdoor(),
        h.weather(),
        new Building(h.rooms(), h.partitions(), h.airExchanges()),
        h.arrangements(),
        new Heating(h.water(), h.distribution(), h.source(), h.buffer(), h.control()),
        aims,
        h.run());
  }
}
