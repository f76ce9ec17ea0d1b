package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.model.HouseModel;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.EnergyLedger;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.Valve;

class LoopsInARunTest {

  private static HouseRun run(House house, int arrangement) {
    HouseRun run =
        new HouseRun(new HouseModel(house, house.arrangements().get(arrangement), 1), house.run());
    run.run();
    return run;
  }

  /** All heat is accounted for, water that is on its way between emitters too. */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void noHeatIsLostRoundALoop(boolean passedBy) {
    House plain = SampleHouses.eightRooms(2, SampleHouses.boiler());
    for (House house : List.of(plain, SampleHouses.onMains(plain))) {
      for (int arrangement = 0; arrangement < 2; arrangement++) {
        HouseRun run = run(SampleHouses.inLoops(house, passedBy), arrangement);
        EnergyLedger ledger = run.ledger();
        assertThat(ledger.error()).isLessThan(1e-9);
        assertThat(run.stepsUnagreed()).isZero();
      }
    }
  }

  /** Without pipes that lose heat each emitter is fed with what the one before gives back. */
  @Test
  void eachIsFedByTheOneBefore() {
    House house = SampleHouses.inLoops(SampleHouses.eightRooms(1, SampleHouses.ideal()), false);
    Trace trace = run(house, 0).trace();
    int end = trace.time().length - 1;
    for (int b : new int[] {1, 2, 3, 5, 6, 7}) {
      double[] flow = trace.column(BranchColumn.MASS_FLOW, b);
      assertThat(flow).isEqualTo(trace.column(BranchColumn.MASS_FLOW, b - 1));
      assertThat(flow[end]).isPositive();
      assertThat(trace.column(BranchColumn.INLET, b)[end])
          .isEqualTo(trace.column(BranchColumn.RETURN, b - 1)[end]);
    }
    assertThat(trace.column(HouseColumn.MASS_FLOW)[end])
        .isCloseTo(
            trace.column(BranchColumn.MASS_FLOW, 0)[end]
                + trace.column(BranchColumn.MASS_FLOW, 4)[end],
            within(1e-12));
  }

  /** Two halves of a run one after the other warm a room as the whole run does. */
  @Test
  void halvesInALoopAreAsGoodAsTheWhole() {
    House house = SampleHouses.eightRooms(2, SampleHouses.ideal());
    Arrangement whole = opened(house.arrangements().get(0), 1);
    Arrangement halves = opened(house.arrangements().get(0), 2);
    Trace one = trace(house, whole);
    Trace two = trace(house, halves);
    for (int room = 0; room < house.rooms().size(); room++) {
      for (double hour : new double[] {2, 8, 20, 30, 47}) {
        assertThat(at(two, hour, room)).isCloseTo(at(one, hour, room), within(0.01));
      }
    }
  }

  private static Trace trace(House house, Arrangement arrangement) {
    HouseRun run = new HouseRun(new HouseModel(house, arrangement, 1), house.run());
    run.run();
    return run.trace();
  }

  private static double at(Trace trace, double hour, int room) {
    double[] time = trace.time();
    int i =
        IntStream.range(1, time.length).filter(k -> time[k] >= hour * 3600).findFirst().getAsInt();
    double[] air = trace.column(settle.sim.recording.RoomColumn.AIR, room);
    double share = (hour * 3600 - time[i - 1]) / (time[i] - time[i - 1]);
    return air[i - 1] + share * (air[i] - air[i - 1]);
  }

  /** Every emitter cut in so many pieces, nothing that moves a valve. */
  private static Arrangement opened(Arrangement given, int pieces) {
    List<Branch> branches = new ArrayList<>();
    for (Branch branch : given.branches()) {
      double length = branch.emitter().run().orElseThrow().length();
      Branch open =
          branch
              .withValve(new FixedOpening("open", 0.05))
              .withEmitter(SampleHouses.skirting(length / pieces));
      int first = branches.size();
      branches.add(open);
      for (int k = 1; k < pieces; k++) {
        branches.add(
            new Branch(
                    open.room(),
                    open.emitter(),
                    Valve.none(),
                    Lockshield.NONE,
                    settle.sim.hydraulics.Pipe.withoutDelay("none", 0.02, 0, 0, 0),
                    null,
                    open.designFlow())
                .in(InLoop.after(first + k - 1)));
      }
    }
    return given.withBranches(branches);
  }
}
