package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.PipePlace;
import settle.sim.model.HouseModel;
import settle.sim.notice.Code;
import settle.sim.notice.Notice;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.MainColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.source.Buffer;
import settle.sim.valve.FixedOpening;
import settle.sim.weather.Weather;

/** What a whole wet system must do, seen from outside. */
class WetSystemTest {

  private static RunResult run(House house, int arrangement) {
    return Simulation.run(house, house.arrangements().get(arrangement));
  }

  @Test
  void whatGoesThroughThePumpComesFromBranchesAndBypass() {
    Trace trace = run(SampleHouses.wetSystem(1), 0).trace();
    double bypassed = 0;
    for (int i = 1; i < trace.size(); i++) {
      double sum = trace.column(HouseColumn.BYPASS_FLOW)[i];
      bypassed = Math.max(bypassed, sum);
      for (int b = 0; b < trace.branches().size(); b++) {
        sum += trace.column(BranchColumn.MASS_FLOW, b)[i];
      }
      assertThat(sum).isCloseTo(trace.column(HouseColumn.MASS_FLOW)[i], within(1e-9));
      double storeys =
          trace.column(MainColumn.MASS_FLOW, 1)[i] + trace.column(MainColumn.MASS_FLOW, 2)[i];
      assertThat(storeys).isCloseTo(trace.column(MainColumn.MASS_FLOW, 0)[i], within(1e-9));
    }
    assertThat(bypassed).as("the bypass opens in the night").isGreaterThan(0.05);
  }

  /** What pipes give is recorded room by room, and is all that the run's ledger has of it. */
  @Test
  void heatOfPipesIsToldRoomByRoom() {
    House house = SampleHouses.wetSystem(1);
    RunResult result = run(house, 0);
    double piped = result.rooms().stream().mapToDouble(r -> r.heat().piped()).sum();
    assertThat(piped).isPositive();
    assertThat(piped)
        .isCloseTo(result.ledger().pipeHeat(), within(1e-9 * result.ledger().pipeHeat()));
    RoomFigures first = result.rooms().get(0);
    double[] time = result.trace().time();
    double[] heat = result.trace().column(RoomColumn.PIPE_HEAT, 0);
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += heat[i] * (time[i] - time[i - 1]);
    }
    assertThat(first.heat().piped()).isCloseTo(sum, within(1e-6 * sum));
  }

  @Test
  void averagesHideWhatTheTraceShows() {
    RunResult result = run(SampleHouses.wetSystem(2), 0);
    Trace trace = result.trace();
    double[] heat = trace.column(HouseColumn.SOURCE_HEAT);
    double[] starts = trace.column(HouseColumn.STARTS);
    assertThat(result.plant().cycling().starts()).isGreaterThan(2);
    assertThat((double) result.plant().cycling().starts()).isEqualTo(starts[starts.length - 1]);
    // A defrost takes heat from the water, in a step of its own.
    assertThat(result.plant().cycling().defrosts()).isPositive();
    int taking = 0;
    int resting = 0;
    for (int i = 1; i < heat.length; i++) {
      taking += heat[i] < -1000 ? 1 : 0;
      resting += heat[i] == 0 ? 1 : 0;
    }
    assertThat(taking).isPositive();
    assertThat(resting).isPositive();
  }

  @Test
  void volumiserMakesFewerAndLongerRuns() {
    House house = SampleHouses.wetSystem(2);
    House mild = house.withWeather(new Weather.Constant(11));
    RunResult without = run(mild, 0);
    RunResult with = run(mild.withBuffer(new Buffer(Buffer.Placement.RETURN, 0.15, 0, 15, 0)), 0);
    assertThat(without.plant().cycling().starts()).isGreaterThan(20);
    assertThat(with.plant().cycling().starts()).isLessThan(without.plant().cycling().starts() / 2);
    assertThat(with.plant().cycling().shortestRun().orElseThrow())
        .isGreaterThan(without.plant().cycling().shortestRun().orElseThrow());
    assertThat(with.plant().cycling().waterVolume() - without.plant().cycling().waterVolume())
        .isCloseTo(0.15, within(1e-9));
  }

  @Test
  void deadEndIsSaid() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(0.2, SampleHouses.ideal()));
    List<Branch> shut =
        house.arrangements().get(0).branches().stream()
            .map(b -> b.withValve(new FixedOpening("shut", 0)))
            .toList();
    House dead = house.withArrangements(List.of(house.arrangements().get(0).withBranches(shut)));
    RunResult result = run(dead, 0);
    assertThat(result.notices()).extracting(Notice::code).contains(Code.DEAD_END);
    double[] head = result.trace().column(HouseColumn.PUMP_HEAD);
    assertThat(head[head.length - 1]).isEqualTo(20_000);
    assertThat(result.trace().column(HouseColumn.MASS_FLOW)[head.length - 1]).isZero();
  }

  /** Two methods agree: the root and the long run. */
  @Test
  void settlesWhereALongRunEnds() {
    for (int arrangement = 0; arrangement < 2; arrangement++) {
      House house =
          SampleHouses.steady(
              SampleHouses.onMains(SampleHouses.eightRooms(40, SampleHouses.ideal())), 2);
      Trace trace = run(house, arrangement).trace();
      double[] none = new double[trace.rooms().size()];
      HouseModel model = Balancing.asRun(house, house.arrangements().get(arrangement));
      SettledHouse rest = new SettledHouse(model, 2, none, none).asControlled();
      for (int r = 0; r < trace.rooms().size(); r++) {
        double[] operative = trace.column(RoomColumn.OPERATIVE, r);
        // Within the play of the heads, 0.4 K wide, in whose middle the root takes them.
        assertThat(operative[operative.length - 1])
            .as(trace.rooms().get(r))
            .isCloseTo(rest.operative(r), within(0.2));
      }
    }
  }

  @Test
  void balanceGivesEveryBranchItsDesignFlow() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
    Distribution strong = house.distribution().withPump(new ConstantPump(45_000, 0.3));
    Arrangement given = house.arrangements().get(0);
    List<Branch> open =
        given.branches().stream().map(b -> b.withLockshield(strong.lockshields().open())).toList();
    Arrangement balanced = new Arrangement(given.name(), open, true);
    House subject = house.withDistribution(strong).withArrangements(List.of(balanced));
    Balance balance = run(subject, 0).balance();
    assertThat(balance.balanced()).isTrue();
    Lockshield index = balance.branches().get(balance.indexBranch()).lockshield();
    assertThat(index.turns()).isCloseTo(4, within(1e-12));
    assertThat(balance.head()).isCloseTo(balance.headNeeded(), within(1.0)).isLessThan(45_000);
    double worstBefore = 0;
    for (BranchBalance b : balance.branches()) {
      assertThat(b.flow()).as(b.name()).isCloseTo(b.designFlow(), within(1e-6 * b.designFlow()));
      worstBefore = Math.max(worstBefore, Math.abs(b.flowAsGiven() / b.designFlow() - 1));
    }
    assertThat(worstBefore).isGreaterThan(0.2);
  }

  @Test
  void weakPumpIsSharedOutInProportion() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
    Arrangement given = house.arrangements().get(0);
    House subject =
        house
            .withDistribution(
                new Distribution(
                    new ConstantPump(10_000, 0.3),
                    house.distribution().mains(),
                    Optional.empty(),
                    house.distribution().designDrop(),
                    house.distribution().lockshields()))
            .withArrangements(List.of(new Arrangement("b", given.branches(), true)));
    Balance balance = run(subject, 0).balance();
    double share = balance.branches().get(0).flow() / balance.branches().get(0).designFlow();
    assertThat(share).isBetween(0.3, 0.99);
    for (BranchBalance b : balance.branches()) {
      assertThat(b.flow() / b.designFlow()).as(b.name()).isCloseTo(share, within(1e-6));
    }
    assertThat(balance.notices()).extracting(Notice::code).contains(Code.PUMP_TOO_WEAK);
  }

  @Test
  void whatIsShutStaysShutUnderABalance() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
    Distribution strong = house.distribution().withPump(new ConstantPump(45_000, 0.3));
    Arrangement given = house.arrangements().get(0);
    List<Branch> branches = new ArrayList<>(given.branches());
    branches.replaceAll(b -> b.withLockshield(strong.lockshields().open()));
    branches.set(2, branches.get(2).withLockshield(strong.lockshields().atTurns(0)));
    branches.set(5, branches.get(5).withValve(new FixedOpening("shut", 0)));
    House subject =
        house
            .withDistribution(strong)
            .withArrangements(List.of(new Arrangement("b", branches, true)));
    RunResult result = run(subject, 0);
    Balance balance = result.balance();
    for (int b = 0; b < branches.size(); b++) {
      BranchBalance branch = balance.branches().get(b);
      if (b == 2 || b == 5) {
        assertThat(branch.flow()).as(branch.name()).isZero();
        assertThat(branch.lockshield()).isEqualTo(branches.get(b).lockshield());
        assertThat(Arrays.stream(result.trace().column(BranchColumn.MASS_FLOW, b)).skip(1).max())
            .hasValue(0);
        assertThat(balance.notices())
            .filteredOn(n -> n.about().equals(branch.name()))
            .containsExactly(Notice.about(branch.name(), Code.LEFT_SHUT));
      } else {
        assertThat(branch.flow())
            .as(branch.name())
            .isCloseTo(branch.designFlow(), within(1e-6 * branch.designFlow()));
      }
    }
    // The pump is set for the water that flows, which a pump for all would exceed.
    branches.replaceAll(b -> b.withLockshield(strong.lockshields().open()));
    House all =
        house
            .withDistribution(strong)
            .withArrangements(
                List.of(
                    new Arrangement(
                        "b",
                        branches.stream().map(b -> b.withValve(SampleHouses.head(20))).toList(),
                        true)));
    assertThat(balance.headNeeded()).isLessThan(run(all, 0).balance().headNeeded());
  }

  @Test
  void whereAllIsShutABalanceSetsNothing() {
    House house = SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal()));
    Arrangement given = house.arrangements().get(0);
    List<Branch> shut =
        given.branches().stream()
            .map(b -> b.withLockshield(house.distribution().lockshields().atTurns(0)))
            .toList();
    Balance balance =
        run(house.withArrangements(List.of(new Arrangement("b", shut, true))), 0).balance();
    assertThat(balance.branches()).allMatch(b -> b.flow() == 0 && b.lockshield().kv() == 0);
    assertThat(balance.notices()).hasSizeGreaterThanOrEqualTo(shut.size());
  }

  /** What a branch's pipe loses in a void is lost there, in a run and at rest alike. */
  @Test
  void aPipeInAVoidHeatsNoRoom() {
    House inRooms =
        SampleHouses.steady(
            SampleHouses.onMains(SampleHouses.eightRooms(20, SampleHouses.ideal())), 2);
    Arrangement given = inRooms.arrangements().get(0);
    List<Branch> moved = new ArrayList<>();
    for (Branch b : given.branches()) {
      moved.add(
          new Branch(
              b.room(),
              null,
              b.emitter(),
              new FixedOpening("open", 0.5),
              b.lockshield(),
              b.pipe(),
              PipePlace.outside(9),
              b.fedFrom(),
              b.designFlow()));
    }
    House inVoid = inRooms.withArrangements(List.of(given.withBranches(moved)));
    SettledHouse rest = rest(inVoid, inVoid.arrangements().get(0));
    RunResult result = run(inVoid, 0);
    assertThat(result.ledger().error()).isLessThan(1e-9);
    double[] loss = result.trace().column(HouseColumn.PIPE_LOSS);
    double lossOfRun = loss[loss.length - 1];
    double expected = 0;
    for (int b = 0; b < moved.size(); b++) {
      // 60 °C less little: hot water about all of the pipe, in a space at 9 °C.
      expected += moved.get(b).pipe().lossCoefficient() * moved.get(b).pipe().length() * (52 - 9);
    }
    assertThat(lossOfRun).isGreaterThan(expected);
    for (int r = 0; r < inVoid.rooms().size(); r++) {
      double[] operative = result.trace().column(RoomColumn.OPERATIVE, r);
      assertThat(operative[operative.length - 1])
          .as(inVoid.rooms().get(r).name())
          .isCloseTo(rest.operative(r), within(0.01));
    }
    // Only rooms that mains run through get heat of pipes.
    assertThat(rest.pipeHeat(0)).isPositive();
    assertThat(rest.pipeHeat(1)).isZero();
  }

  private static SettledHouse rest(House house, Arrangement arrangement) {
    double[] convective =
        house.rooms().stream().mapToDouble(r -> r.convectiveGain().mean()).toArray();
    double[] radiant = house.rooms().stream().mapToDouble(r -> r.radiantGain().mean()).toArray();
    HouseModel model = new HouseModel(house, arrangement, 1);
    return new SettledHouse(model, 2, convective, radiant).at(60);
  }

  @Test
  void aPipeThroughAnotherRoomHeatsThatOne() {
    House house =
        SampleHouses.steady(
            SampleHouses.onMains(SampleHouses.eightRooms(1, SampleHouses.ideal())), 2);
    Arrangement given = house.arrangements().get(0);
    List<Branch> branches = new ArrayList<>(given.branches());
    Branch b = branches.get(1);
    String other = house.rooms().get(2).name();
    branches.set(
        1,
        new Branch(
            b.room(),
            null,
            b.emitter(),
            b.valve(),
            b.lockshield(),
            b.pipe(),
            PipePlace.in(other),
            b.fedFrom(),
            b.designFlow()));
    House through = house.withArrangements(List.of(given.withBranches(branches)));
    SettledHouse before = rest(house, given);
    SettledHouse after = rest(through, through.arrangements().get(0));
    assertThat(before.pipeHeat(1)).isGreaterThan(1);
    assertThat(after.pipeHeat(1)).isZero();
    assertThat(after.pipeHeat(2)).isGreaterThan(before.pipeHeat(2) + 1);
  }
}
