package settle.sim.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import settle.sim.atrest.Balancing;
import settle.sim.commissioning.Diagnosis.Outcome;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.study.Workers;

/** Readings of a house whose faults are known, without noise: the blind test has that. */
class DiagnosticianTest {

  private static final House HOUSE =
      SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
  private static final CommissioningDay DAY = CommissioningDay.USUAL;
  private static final HouseModel AS_RUN = Balancing.asRun(HOUSE, HOUSE.arrangements().get(0));
  private static final HouseModel OPENED = CommissioningRun.onTheDay(AS_RUN, DAY);
  private static final List<Point> POINTS = ExpectedReadings.possible(OPENED, 3600);
  private static final ReadingModel MODEL = model(Workers.ONE);

  private static ReadingModel model(Workers workers) {
    return ReadingModel.of(
        AS_RUN, DAY, POINTS, CommissioningSpreads.USUAL.times(1.5), workers, done -> {});
  }

  /** What is read everywhere, inlets left out, of a house with faults. */
  private static double[] read(Fault... faults) {
    Condition found = Condition.of(OPENED, DAY);
    for (Fault fault : faults) {
      found = fault.in(found, 2.3);
    }
    double[] readings = found.read(OPENED, POINTS).readings();
    for (int p = 0; p < readings.length; p++) {
      if (POINTS.get(p).kind() == Point.Kind.INLET) {
        readings[p] = Double.NaN;
      }
    }
    return readings;
  }

  private static Diagnosis ask(double[] readings) {
    return Diagnostician.ask(MODEL, readings, Looks.NONE);
  }

  @Test
  void aHouseAsDesignedIsSaidToBe() {
    Diagnosis diagnosis = ask(read());
    assertThat(diagnosis.outcome()).isEqualTo(Outcome.AS_DESIGNED);
    assertThat(diagnosis.nothing()).isGreaterThan(0.8);
    assertThat(diagnosis.two()).isEmpty();
  }

  /** Where it moves a room's heat by enough; what looks much like it may come before it. */
  @ParameterizedTest
  @EnumSource(FaultKind.class)
  void eachFaultIsSuspectedFirstWhereItIs(FaultKind kind) {
    List<Fault> faults = MODEL.faults();
    for (int f = 0; f < faults.size(); f++) {
      Fault fault = faults.get(f);
      boolean matters =
          !kind.hasLevels() || Math.abs(MODEL.heatMove(f, 2.3)) > Diagnostician.MATTERS;
      if (fault.kind() != kind || fault.branch() > 1 || !matters) {
        continue;
      }
      List<Diagnosis.Suspect> suspects = ask(read(fault)).suspects();
      assertThat(suspects.get(0).branch()).as(fault.toString()).isEqualTo(fault.branch());
      assertThat(suspects.subList(0, Math.min(2, suspects.size())))
          .anyMatch(s -> s.branch() == fault.branch() && s.group() == kind.group());
    }
  }

  @Test
  void nothingIsSuspectedThatDoesNotMatter() {
    List<Fault> faults = MODEL.faults();
    int idle = faults.indexOf(new Fault(FaultKind.MAINS_BARE, Fault.HOUSE));
    assertThat(Math.abs(MODEL.heatMove(idle, 3))).isLessThan(Diagnostician.MATTERS / 2);
    Diagnosis diagnosis = ask(read(faults.get(idle)));
    assertThat(diagnosis.suspects()).noneMatch(s -> s.group() == FaultKind.Group.MAINS);
  }

  @Test
  void twoFaultsAreBothNamed() {
    Fault shut = new Fault(FaultKind.LOCKSHIELD_SHUT, 2);
    Fault air = new Fault(FaultKind.AIR, 6);
    Diagnosis diagnosis = ask(read(shut, air));
    assertThat(diagnosis.outcome()).isEqualTo(Outcome.WRONG);
    Diagnosis.Two two = diagnosis.two().orElseThrow();
    assertThat(List.of(two.one().branch(), two.other().branch())).containsExactlyInAnyOrder(2, 6);
  }

  @Test
  void aLookTellsWhatLooksAlikeApart() {
    Fault covered = new Fault(FaultKind.SHORT, 3);
    double[] readings = read(covered);
    Diagnosis seen = Diagnostician.ask(MODEL, readings, Looks.NONE.found(covered));
    assertThat(seen.nothing()).isZero();
    assertThat(seen.suspects().get(0).probability()).isGreaterThan(0.999);
    assertThat(seen.suspects().get(0).causes().get(0).fault()).isEqualTo(covered);
    Diagnosis right = Diagnostician.ask(MODEL, readings, Looks.NONE.right(3));
    assertThat(right.suspects()).noneMatch(suspect -> suspect.branch() == 3);
  }

  @Test
  void whatWasSeenIsThereHoweverLittleItDoesAndHoweverMuchWasSeen() {
    Fault bare = new Fault(FaultKind.MAINS_BARE, Fault.HOUSE);
    Diagnosis one = Diagnostician.ask(MODEL, read(bare), Looks.NONE.found(bare));
    assertThat(one.suspects().get(0).causes().get(0).fault()).isEqualTo(bare);
    Looks many =
        Looks.NONE
            .found(bare)
            .found(new Fault(FaultKind.AIR, 0))
            .found(new Fault(FaultKind.SHORT, 1))
            .found(new Fault(FaultKind.EXCHANGED, 2));
    Diagnosis four = Diagnostician.ask(MODEL, read(bare), many);
    assertThat(four.suspects()).isEmpty();
    assertThat(four.outcome()).isNotEqualTo(Outcome.AS_DESIGNED);
  }

  @Test
  void readingsThatNothingExplainsAreNotExplained() {
    double[] readings = read();
    for (int p = 0; p < readings.length; p++) {
      readings[p] += p % 3 == 0 ? 9 : -9;
    }
    assertThat(ask(readings).outcome()).isEqualTo(Outcome.UNEXPLAINED);
  }

  @Test
  void whatWasNotReadIsAskedForAndNotMissed() {
    Fault shut = new Fault(FaultKind.LOCKSHIELD_SHUT, 4);
    double[] readings = read(shut);
    int own = POINTS.indexOf(new Point(Point.Kind.RETURN, 4, 3600));
    int far = POINTS.indexOf(new Point(Point.Kind.FAR_END, 4, 3600));
    readings[own] = Double.NaN;
    readings[far] = Double.NaN;
    Diagnosis diagnosis = ask(readings);
    assertThat(diagnosis.next().orElseThrow().point().which()).isEqualTo(4);
    assertThat(diagnosis.readings())
        .hasSize((int) Arrays.stream(readings).filter(r -> !Double.isNaN(r)).count());
  }

  @Test
  void howManyWorkTogetherChangesNothing() {
    Workers backwards =
        (count, piece) ->
            IntStream.range(0, count).parallel().map(i -> count - 1 - i).forEach(piece);
    ReadingModel other = model(backwards);
    double[] readings = read(new Fault(FaultKind.AIR, 1));
    assertThat(Diagnostician.ask(other, readings, Looks.NONE)).isEqualTo(ask(readings));
  }
}
