package settle.sim.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.control.Thermostat;
import settle.sim.engine.HeldRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.measure.LockshieldsTurned;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.source.Boiler;
import settle.sim.source.IdealSource;
import settle.sim.valve.FixedOpening;

/** Whatever is said to suffice does, carried out as it is printed and run by itself. */
class RemediesTest {

  private static final WarmUps NOT_ASKED = new WarmUps(Optional.empty(), List.of());

  private static Remedies of(House house) {
    Arrangement as = house.arrangements().get(0);
    return Remedies.of(house, as, Judgement.of(house, as), NOT_ASKED);
  }

  private static Remedy of(Remedies remedies, Kind kind) {
    return remedies.tried().stream().filter(r -> r.kind() == kind).findFirst().orElseThrow();
  }

  /** How short the worst of some rooms falls in design weather and in milder, by runs alone. */
  private static double worst(House house, List<String> rooms) {
    Arrangement as = house.arrangements().get(0);
    double worst = Double.NEGATIVE_INFINITY;
    double design = house.designOutdoor();
    for (double outdoor : new double[] {design, (design + Holding.MILDEST) / 2}) {
      HeldRun.Day day = HeldRun.of(house, as, outdoor);
      for (String room : rooms) {
        int r = house.roomIndex(room);
        double need = house.rooms().get(r).want().maximum() - house.wantTolerance();
        worst = Math.max(worst, need - day.operative()[r]);
      }
    }
    return worst;
  }

  private static void assertWhatSufficesHolds(House house, Remedies remedies) {
    String name = house.arrangements().get(0).name();
    for (Remedy remedy : remedies.sufficing()) {
      List<String> rooms = remedy.effects().stream().map(Remedy.Effect::room).toList();
      assertThat(worst(remedy.measure().on(house, name), rooms)).as("%s", remedy).isNegative();
    }
    remedies
        .cure()
        .ifPresent(
            cure ->
                assertThat(worst(cure.on(house, name), heated(house))).as("%s", cure).isNegative());
  }

  private static List<String> heated(House house) {
    return house.arrangements().get(0).branches().stream().map(Branch::room).distinct().toList();
  }

  /** Two rooms on hand valves left open. */
  private static House twoRooms(double flow, double first, double second) {
    House house = SampleHouses.twoRooms(1, new IdealSource("ideal", flow, 20_000));
    Arrangement as = house.arrangements().get(0);
    List<Branch> branches =
        as.branches().stream()
            .map(b -> b.withValve(new FixedOpening("open", 1.3)))
            .map(b -> b.withEmitter(b.emitter().scaled(scale(house, b, first, second))))
            .toList();
    return house.withArrangements(List.of(as.withBranches(branches)));
  }

  private static double scale(House house, Branch branch, double first, double second) {
    return branch.room().equals(house.rooms().get(0).name()) ? first : second;
  }

  @Test
  void whatSufficesHoldsRunAsPrinted() {
    House house = twoRooms(60, 1, 1);
    Remedies remedies = of(house);
    assertThat(remedies.sufficing()).hasSizeGreaterThan(1);
    assertThat(remedies.cure().orElseThrow().measures()).isNotEmpty();
    assertThat(remedies.judged()).isLessThanOrEqualTo(remedies.most());
    assertWhatSufficesHolds(house, remedies);
    Measure flow = of(remedies, Kind.FLOW_TEMPERATURE).measure();
    assertThat(flow.to()).isEqualTo(Math.rint(flow.to())).isGreaterThan(60);
  }

  /** A thermostat in the warm room stops the source: hotter water is void there. */
  @Test
  void besideARoomThermostatHotterWaterIsNoRemedyButThrottlingIs() {
    House house = twoRooms(70, 2, 0.6);
    House stopped =
        house.withControl(
            house
                .control()
                .withReferenceRoom(house.rooms().get(0).name())
                .withThermostat(new Thermostat.OnOff(1, 0)));
    Remedies remedies = of(stopped);
    assertThat(of(remedies, Kind.FLOW_TEMPERATURE).status()).isNotEqualTo(Remedy.Status.SUFFICES);
    Remedy throttled = of(remedies, Kind.THROTTLE);
    assertThat(throttled.status()).isEqualTo(Remedy.Status.SUFFICES);
    LockshieldsTurned.Turn turn = ((LockshieldsTurned) throttled.measure()).turns().get(0);
    assertThat(turn.room()).isEqualTo(house.rooms().get(0).name());
    assertThat(turn.to() * 8).isEqualTo(Math.rint(turn.to() * 8));
    assertWhatSufficesHolds(stopped, remedies);
  }

  @Test
  void aWeakSourceIsNamedAndALargerOneTriedBesideAllElse() {
    House house = twoRooms(60, 1.3, 1.3).withSource(new IdealSource("weak", 60, 1200));
    Remedies remedies = of(house);
    assertThat(remedies.sourceIsShort()).isTrue();
    Remedy larger = of(remedies, Kind.SOURCE);
    assertThat(larger.status()).isEqualTo(Remedy.Status.SUFFICES);
    assertThat(remedies.tried()).anyMatch(r -> r.kind() == Kind.WINDOW);
    assertThat(remedies.tried()).anyMatch(r -> r.kind() == Kind.PROFILE);
    assertWhatSufficesHolds(house, remedies);
  }

  @Test
  void whatNoSettingCanDoIsSaidWithItsBound() {
    Remedies remedies = of(twoRooms(50, 0.08, 1));
    assertThat(remedies.outOfReach()).hasSize(1);
    Remedies.OutOfReach room = remedies.outOfReach().get(0);
    assertThat(room.flow()).isEqualTo(Holding.HOTTEST_FLOW);
    assertThat(room.output()).isLessThan(room.load());
    assertThat(of(remedies, Kind.FLOW_TEMPERATURE).suffices()).isFalse();
  }

  @Test
  void nothingIsTriedWhereEveryRoomIsHeld() {
    assertThat(of(twoRooms(70, 1.5, 1.5))).isSameAs(Remedies.NONE);
  }

  @Test
  void moreSkirtingLeavesARadiatorInTheRoomAsItIs() {
    House house = twoRooms(50, 0.4, 1);
    Arrangement as = house.arrangements().get(0);
    String room = house.rooms().get(0).name();
    Branch run =
        as.branches().stream().filter(b -> b.room().equals(room)).findFirst().orElseThrow();
    List<Branch> both = new java.util.ArrayList<>(as.branches());
    both.add(run.withEmitter(SampleHouses.radiator(150)));
    House mixed = house.withArrangements(List.of(as.withBranches(both)));
    Remedies remedies = of(mixed);
    Measure longer = of(remedies, Kind.LENGTH).measure();
    Arrangement then = longer.on(mixed, as.name()).arrangements().get(0);
    assertThat(then.branches().get(both.size() - 1)).isEqualTo(both.get(both.size() - 1));
    assertThat(longer.to() * 10)
        .isCloseTo(Math.rint(longer.to() * 10), org.assertj.core.api.Assertions.within(1e-9));
    assertThat(of(remedies, Kind.RADIATOR).measure().from()).isEqualTo(150);
    assertWhatSufficesHolds(mixed, remedies);
  }

  @Test
  void aLargerSourceKeepsItsKind() {
    Boiler boiler = (Boiler) SampleHouses.boiler();
    Boiler larger = boiler.scaled(2);
    assertThat(larger.maximumPower()).isEqualTo(2 * boiler.maximumPower());
    assertThat(larger.minimumPower() / larger.maximumPower())
        .isEqualTo(boiler.minimumPower() / boiler.maximumPower());
    assertThat(SampleHouses.heatPump().scaled(1.5).minimumFlow())
        .isEqualTo(1.5 * SampleHouses.heatPump().minimumFlow());
  }
}
