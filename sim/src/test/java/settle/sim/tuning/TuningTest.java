package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import settle.sim.control.FlowCurve;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;
import settle.sim.study.Threads;
import settle.sim.study.Workers;
import settle.sim.tuning.Tuning.Change;

/** A tuning of a whole house. */
class TuningTest {

  private static final Tuning.Request KNOBS = new Tuning.Request(Set.of(Group.KNOBS), 0.8, 16);

  /** Two rooms, the head of the first too high. */
  private static Plant tooWarm(double by) {
    House house =
        SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 0);
    Arrangement given = house.arrangements().get(0);
    Plant plant = new Plant(house, given);
    Setting head = new Head(given.branches().get(0).room());
    return head.with(plant, head.of(plant) + by);
  }

  @Test
  void aHeadThatIsTooHighComesDownAndTheRoomWithIt() {
    Plant found = tooWarm(3);
    Tuning tuning = Tuning.of(found, KNOBS, Workers.ONE, stage -> {});
    Change head = tuning.changes().get(0);
    assertThat(head.after()).isLessThan(head.before());
    assertThat(tuning.after().usual().deviation()).isLessThan(tuning.before().usual().deviation());
    assertThat(tuning.after().usual().costPerDay(found.house()))
        .isLessThan(tuning.before().usual().costPerDay(found.house()));
    assertThat(tuning.after().worth().total()).isLessThan(tuning.before().worth().total());
    // In the coldest weather the emitters are too small for whatever the heads are set to.
    assertThat(tuning.after().missed())
        .allSatisfy(aim -> assertThat(aim.kind()).isEqualTo(Aim.Kind.HELD));
    assertThat(tuning.after().missed().size()).isEqualTo(tuning.before().missed().size());
    assertThat(tuning.search().converged()).isTrue();
  }

  private static Plant programmed() {
    Plant plant = tooWarm(1);
    Timetable day =
        new Timetable(86_400, new double[] {0, 6 * 3600, 22 * 3600}, new double[] {15, 20, 15});
    List<Room> rooms = plant.house().rooms().stream().map(r -> r.withWant(day)).toList();
    return plant.with(plant.house().withRooms(rooms));
  }

  /** Nobody wrote a longest warm-up: rooms are not to be cold for hours all the same. */
  @Test
  void latenessOnAUsualDayCountsWithoutAnAim() {
    Plant found = programmed();
    assertThat(found.house().aims().warmUp()).isEmpty();
    Tuning nothing =
        Tuning.of(
            found, new Tuning.Request(Set.of(Group.THERMOSTAT), 0.8, 8), Workers.ONE, stage -> {});
    assertThat(nothing.changes()).isEmpty();
    assertThat(lateOnUsualDay(nothing.after())).isGreaterThan(Aim.LATEST);
    assertThat(nothing.after().meetsAims()).isFalse();
    assertThat(nothing.after().missed())
        .anySatisfy(aim -> assertThat(aim.kind()).isEqualTo(Aim.Kind.LATE));
    Tuning started =
        Tuning.of(
            found, new Tuning.Request(Set.of(Group.PREHEAT), 0.8, 8), Workers.ONE, stage -> {});
    assertThat(lateOnUsualDay(started.after())).isLessThanOrEqualTo(Aim.LATEST);
  }

  private static double lateOnUsualDay(Tuning.Performance performance) {
    return performance.aims().stream()
        .filter(aim -> aim.kind() == Aim.Kind.LATE && aim.when() == Aim.When.USUAL)
        .mapToDouble(Aim::value)
        .max()
        .orElseThrow();
  }

  /** Water that is hot enough in the cold and too cool when it is mild. */
  @Test
  void aCurveThatStarvesAMildDayMissesAnAim() {
    Plant plant = tooWarm(0);
    House house = plant.house();
    Plant starved =
        plant.with(
            house.withControl(house.control().withFlowCurve(new FlowCurve(3.2, -22, 15, 80, 0))));
    Tuning tuning =
        Tuning.of(
            starved,
            new Tuning.Request(Set.of(Group.LOCKSHIELDS), 0.8, 8),
            Workers.ONE,
            stage -> {});
    assertThat(tuning.after().missed())
        .anySatisfy(
            aim -> {
              assertThat(aim.kind()).isEqualTo(Aim.Kind.HELD);
              assertThat(aim.when()).isEqualTo(Aim.When.MILD);
            });
    assertThat(tuning.after().meetsAims()).isFalse();
  }

  /** One lockshield is all but shut; a balance would turn them all. */
  @Test
  void aLockshieldIsOpenedByItself() {
    Plant plant = tooWarm(0);
    Setting shut = new LockshieldTurns(0, plant.arrangement().branches().get(0).room());
    Setting other = new LockshieldTurns(1, plant.arrangement().branches().get(1).room());
    Plant open = other.with(plant, 4);
    Tuning tuning =
        Tuning.of(
            shut.with(open, 0.02),
            new Tuning.Request(Set.of(Group.LOCKSHIELDS), 0.8, 8),
            Workers.ONE,
            s -> {});
    assertThat(shut.of(tuning.tuned())).isGreaterThan(0.2);
    assertThat(other.of(tuning.tuned())).isEqualTo(4);
    assertThat(tuning.after().missed().size()).isLessThan(tuning.before().missed().size());
  }

  @Test
  void noPictureShowsAnythingBetterThanTheAnswer() {
    Tuning tuning =
        Tuning.of(
            programmed(),
            new Tuning.Request(Set.of(Group.KNOBS, Group.CURVE, Group.PREHEAT), 0.8, 8),
            Workers.ONE,
            stage -> {});
    assertThat(tuning.flatness())
        .isNotEmpty()
        .allSatisfy(
            flat ->
                assertThat(flat.points())
                    .allSatisfy(point -> assertThat(point.dearer()).isNotNegative()));
    assertThat(tuning.changes())
        .allSatisfy(
            change ->
                assertThat(change.onMark() || !change.moved()).as(change.toString()).isTrue());
  }

  @Test
  void neverWorseThanFound() {
    for (Group group : EnumSet.of(Group.CURVE, Group.KNOBS)) {
      Tuning tuning =
          Tuning.of(
              tooWarm(0), new Tuning.Request(Set.of(group), 0.8, 8), Workers.ONE, stage -> {});
      assertThat(tuning.after().worth().total())
          .isLessThanOrEqualTo(tuning.before().worth().total());
    }
  }

  @Test
  void theSameOnAnyNumberOfThreads() {
    assertThat(by(new Threads(3))).isEqualTo(by(Workers.ONE));
  }

  private static String by(Workers workers) {
    Tuning tuning = Tuning.of(tooWarm(2), KNOBS, workers, stage -> {});
    return tuning.changes()
        + " "
        + tuning.flatness()
        + " "
        + tuning.after().worth()
        + " "
        + tuning.after().spreads().outcomes();
  }
}
