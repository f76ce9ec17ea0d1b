package settle.sim.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import settle.sim.engine.HouseRun;
import settle.sim.engine.SampleHouses;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.model.HouseModel;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.room.AirExchange;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.MotorHead;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

class ValveBenchTest {

  private static final House HOUSE = SampleHouses.twoRooms(1, SampleHouses.ideal());
  private static final Arrangement SKIRTING = HOUSE.arrangements().get(0);

  private static Arrangement with(Valve valve) {
    List<Branch> branches = SKIRTING.branches();
    return SKIRTING.withBranches(List.of(branches.get(0).withValve(valve), branches.get(1)));
  }

  @ParameterizedTest
  @EnumSource(Disturbance.class)
  void aRoomSettlesWhereTheHouseAtRestDoesWithinThePlay(Disturbance disturbance) {
    ValveBench bench = new ValveBench(HOUSE, SKIRTING, 0);
    Optional<Course> run = bench.through(disturbance);
    if (disturbance == Disturbance.DOOR) {
      // One room lies above the other: there is no wall to have a door in.
      assertThat(run).isEmpty();
      return;
    }
    Course course = run.orElseThrow();
    double play = ((WaxValve) SKIRTING.branches().get(0).valve()).play();
    assertThat(course.after()).isCloseTo(course.atRest(), within(play / 2 + 0.03));
    assertThat(course.swing()).isLessThan(0.05);
    assertThat(course.settlingTime()).isBetween(0.0, 2.5 * 86_400);
    switch (disturbance) {
      case WANT -> assertThat(course.after() - course.before()).isBetween(1.0, 2.5);
      case OUTDOOR -> assertThat(course.after()).isLessThan(course.before() + 0.01);
      case PUMP -> assertThat(course.after()).isGreaterThan(course.before() - 0.01);
      default -> assertThat(course.above()).isGreaterThan(0.2);
    }
  }

  @Test
  void theLoadLineCrossesTheBandWhereTheHouseSettles() {
    BenchFindings findings = new ValveBench(HOUSE, SKIRTING, 0).findings(List.of());
    assertThat(findings.lines()).hasSize(3);
    for (LoadLine line : findings.lines()) {
      assertThat(line.crossing()).isCloseTo(line.settled(), within(1e-3));
      assertThat(line.load()[0]).isLessThan(line.offered()[0]);
      int last = line.room().length - 1;
      assertThat(line.load()[last]).isGreaterThan(line.offered()[last]);
    }
    // Proportional: the milder, the warmer.
    assertThat(findings.lines().get(2).crossing())
        .isGreaterThan(findings.lines().get(0).crossing() + 0.05);
    assertThat(findings.left()).containsExactly(Disturbance.values());
  }

  @Test
  void aHeadInAWarmPlaceIsTheSameValveOnTheRigAndLeavesItsRoomCooler() {
    WaxValve head = (WaxValve) SKIRTING.branches().get(0).valve();
    BenchFindings plain = new ValveBench(HOUSE, SKIRTING, 0).findings(List.of());
    BenchFindings warm = new ValveBench(HOUSE, with(head.withBias(1)), 0).findings(List.of());
    assertThat(warm.rig().loop().orElseThrow().temperaturePoint())
        .isEqualTo(plain.rig().loop().orElseThrow().temperaturePoint());
    // In mild weather, where the head decides and not the emitter.
    assertThat(warm.lines().get(2).crossing())
        .isCloseTo(plain.lines().get(2).crossing() - 1, within(0.25));
  }

  @Test
  void aLooseHeadBreaksTheLimitAndIsToldSo() {
    WaxValve head = (WaxValve) SKIRTING.branches().get(0).valve();
    WaxValve loose =
        new WaxValve(
            "loose",
            head.setPoint(),
            2,
            1.3,
            new WaxValve.Lags(3000, 0, 0),
            head.waterInfluence(),
            0,
            0.5,
            0.25,
            0.5,
            RoomSensing.AIR);
    List<En215.Reading> readings = RigFindings.of(loose, 988).readings();
    assertThat(readings.stream().filter(r -> !r.isWithin()).map(En215.Reading::figure))
        .containsExactly(En215.HYSTERESIS, En215.RESPONSE_TIME, En215.STATIC_PRESSURE);
    assertThat(readings.get(0).value().orElseThrow()).isCloseTo(1.3, within(0.003));
    assertThat(readings.get(3).value().orElseThrow()).isCloseTo(3000, within(5.0));
  }

  @Test
  void aHeadWithoutPlayGoesTheSameWayBackAndItsFlowIsAlwaysANumber() {
    WaxValve head =
        new WaxValve(
            "tight",
            20,
            2,
            0,
            new WaxValve.Lags(1200, 0, 0),
            0.0233,
            0,
            0.5,
            0.3,
            0.6,
            RoomSensing.OPERATIVE);
    HysteresisLoop loop = RigFindings.of(head, 988).loop().orElseThrow();
    assertThat(loop.closing().flow()).doesNotContain(Double.NaN);
    assertThat(loop.opening().flow()).doesNotContain(Double.NaN);
    assertThat(loop.hysteresis()).isCloseTo(0, within(1e-6));
    assertThat(loop.temperaturePoint()).isCloseTo(22, within(1e-4));
  }

  @Test
  void aFixedOpeningHasNoLoopAndSettlesWhereItsRoomDoes() {
    ValveBench bench = new ValveBench(HOUSE, with(new FixedOpening("open", 0.5)), 0);
    assertThat(bench.through(Disturbance.WANT)).isEmpty();
    BenchFindings findings = bench.findings(List.of());
    assertThat(findings.rig().loop()).isEmpty();
    assertThat(findings.rig().readings()).isEmpty();
    assertThat(findings.rig().openFlow())
        .isCloseTo(0.5 * Math.sqrt(0.1 * 988 * 1000) / 3600, within(1e-9));
    assertThat(findings.inBranch().authority()).isNaN();
    assertThat(findings.lines())
        .allSatisfy(line -> assertThat(line.crossing()).isCloseTo(line.settled(), within(1e-3)));
  }

  @Test
  void aProportionalMotorHeadShowsItsBandOnTheRig() {
    MotorHead motor =
        new MotorHead("motor", 21, 0.8, Double.POSITIVE_INFINITY, 120, 0.5, RoomSensing.AIR);
    HysteresisLoop loop = RigFindings.of(motor, 988).loop().orElseThrow();
    assertThat(loop.throttlingRange()).isCloseTo(1 / 0.8, within(0.005));
    assertThat(loop.closingTemperature()).isCloseTo(21, within(0.003));
    assertThat(loop.hysteresis()).isCloseTo(0, within(0.003));
  }

  @Test
  void aMotorHeadWithAnIntegralHasNoSlowCurveButAnAnswerToAJumpAndAuthority() {
    // From shut: 0.4 at once by the gain, the rest of the stroke at 0.4 an hour by the integral.
    MotorHead motor = new MotorHead("motor", 21, 0.4, 3600, 60, 0.5, RoomSensing.AIR);
    RigFindings rig = RigFindings.of(motor, 988);
    assertThat(rig.loop()).isEmpty();
    StepResponse response = rig.onward().orElseThrow();
    assertThat(response.timeTo(0.4)).isLessThan(61);
    assertThat(response.timeTo(0.8)).isCloseTo(3600, within(60.0));
    assertThat(new ValveBench(HOUSE, with(motor), 0).findings(List.of()).inBranch().authority())
        .isBetween(0.0, 1.0);
  }

  @Test
  void thePumpAndADoorCanChangeInTheMiddleOfARunAndNoHeatIsLost() {
    House shut =
        HOUSE.withAirExchanges(
            List.of(
                new AirExchange(HOUSE.rooms().get(0).name(), HOUSE.rooms().get(1).name(), 1e-9)));
    House open =
        HOUSE
            .withAirExchanges(
                List.of(
                    new AirExchange(HOUSE.rooms().get(0).name(), HOUSE.rooms().get(1).name(), 80)))
            .withDistribution(HOUSE.distribution().withPump(new ConstantPump(30_000, 0.3)));
    RunSettings settings = new RunSettings(18, 0, 2 * 86_400, 10, 640, List.of());
    HouseRun run = new HouseRun(new HouseModel(shut, SKIRTING, 1), settings);
    run.goOnAs(new HouseModel(open, SKIRTING, 1), 40_000);
    run.run();
    HouseRun never = new HouseRun(new HouseModel(shut, SKIRTING, 1), settings);
    never.run();
    assertThat(run.ledger().error()).isLessThan(1e-9);
    Trace changed = run.trace();
    Trace same = never.trace();
    int common = 0;
    while (changed.time()[common] == same.time()[common]) {
      assertThat(changed.column(RoomColumn.AIR, 0)[common])
          .isEqualTo(same.column(RoomColumn.AIR, 0)[common]);
      common++;
    }
    assertThat(changed.time()[common]).isBetween(39_000.0, 40_000.0);
    double[] head = changed.column(HouseColumn.PUMP_HEAD);
    assertThat(head[head.length - 1]).isEqualTo(30_000);
    double apart = apart(changed);
    assertThat(apart).isLessThan(0.7 * apart(same));
  }

  private static double apart(Trace trace) {
    int last = trace.size() - 1;
    return Math.abs(trace.column(RoomColumn.AIR, 0)[last] - trace.column(RoomColumn.AIR, 1)[last]);
  }
}
