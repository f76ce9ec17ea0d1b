package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.sim.emitter.PanelEmitter;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;

class VerdictTest {

  private final House house = SyntheticRuns.house(4, 48);

  @Test
  void saysWhenAllIsWarmAndWhichRoomIsLast() {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    RoomFigures last = run.rooms().get(3);
    assertThat(new Verdict(house, run).answer())
        .isEqualTo(
            "the rooms keep up: every room is warm within "
                + Quantities.warmUp(last.warmUp())
                + " of the first call for heat; the slowest is bedroom 2.");
  }

  @Test
  void namesTheRoomThatNeverGetsWarmAndWhatItAverages() {
    RunResult run = SyntheticRuns.results(house, true).get(1);
    assertThat(new Verdict(house, run).answer())
        .startsWith(
            "the rooms do not keep up: bedroom 2 never comes within 0.5 K of its 19 °C (it averages 17.5 °C, between 16.9 and 17.7 °C); ")
        .contains("the other rooms are warm within");
    assertThat(new Verdict(house, run).name()).isEqualTo("Radiators");
  }

  @Test
  void aRoomThatIsWarmAndThenNotIsTheReason() {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    RoomFigures first = run.rooms().get(0);
    List<RoomFigures> rooms = new ArrayList<>(run.rooms());
    rooms.set(0, shortOnceWarm(first, 30, 3.2));
    RunResult later =
        new RunResult(
            run.arrangement(),
            run.trace(),
            rooms,
            run.plant(),
            run.balance(),
            run.ledger(),
            run.profiles(),
            run.firstCall(),
            false,
            run.steps(),
            run.stepsUnagreed(),
            run.notices());
    assertThat(new Verdict(house, later).answer())
        .startsWith("the rooms do not keep up, although every room is warm within")
        .endsWith("Later " + first.name() + " falls short of want by 3.2 K h.");
    assertThat(String.join(" ", new Verdict(house, later).sentences())).containsOnlyOnce("3.2 K h");
  }

  private static RoomFigures shortOnceWarm(RoomFigures room, double all, double onceWarm) {
    return new RoomFigures(
        room.name(),
        room.want(),
        room.warmUp(),
        room.overshoot(),
        room.undershoot(),
        room.lastDay(),
        all,
        onceWarm,
        room.valveSwing(),
        room.heat());
  }

  @Test
  void whereNothingIsEverWarmTwoNeversAreNotCompared() {
    RunResult run = SyntheticRuns.results(house, true).get(1);
    assertThat(new Comparison(house, List.of(run, run)).paragraph().orElseThrow())
        .contains("with either some room is never warm")
        .doesNotContain("never against never");
  }

  @Test
  void saysWhatTheWaterDoes() {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    assertThat(String.join(" ", new Verdict(house, run).sentences()))
        .contains("leaves the source at 66.8 °C and returns at 47.1 °C on average")
        .contains(
            "water of 48.3 °C enters the boiler while it fires, below the dew point of 55 °C for 93 % of that time, and 21 % of the flue's vapour condenses.");
  }

  @Test
  void oneRoomIsSpokenOfByName() {
    House single = SyntheticRuns.house(1, 24);
    RunResult run = SyntheticRuns.results(single, false).get(0);
    assertThat(new Verdict(single, run).answer())
        .startsWith("the room keeps up: living & dining is warm ");
  }

  @Test
  void theArrangementThatKeepsUpSettlesBetter() {
    List<RunResult> runs = SyntheticRuns.results(house, true);
    assertThat(new Comparison(house, runs).paragraph().orElseThrow())
        .startsWith("“skirting” settles better: it keeps up and “radiators” does not.")
        .contains("Its return is 6.0 K cooler on average (47.1 °C against 53.1 °C).");
  }

  @Test
  void whereBothKeepUpTheQuickerOneSettlesBetter() {
    List<RunResult> runs = SyntheticRuns.results(house, false);
    assertThat(new Comparison(house, runs).paragraph().orElseThrow())
        .startsWith("“skirting” settles better: its slowest room (bedroom 2) is warm after ");
  }

  @Test
  void aRunIsAlikeItself() {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    assertThat(new Comparison(house, List.of(run, run)).paragraph().orElseThrow())
        .contains("settle alike");
  }

  @Test
  void oneArrangementIsNotCompared() {
    RunResult run = SyntheticRuns.results(house, false).get(0);
    Comparison alone = new Comparison(house, List.of(run));
    assertThat(alone.paragraph()).isEmpty();
    assertThat(alone.fairPairNote()).isEmpty();
  }

  @Test
  void pairsOfEqualRatingAreFairAndOthersAreTold() {
    assertThat(new Comparison(house, SyntheticRuns.results(house, false)).fairPairNote()).isEmpty();
    House unfair = SyntheticRuns.unfairHouse(4, 48);
    assertThat(
            new Comparison(unfair, SyntheticRuns.results(unfair, false))
                .fairPairNote()
                .orElseThrow())
        .startsWith("Not a fair pair")
        .contains("kitchen (skirting 1.17 kW, radiators 1.52 kW)");
  }

  /** Exponents that differ make equal ratings unequal where the water is cooler than 75/65. */
  @Test
  void equalRatingsAreNotEqualInCoolWater() {
    List<RunResult> runs = SyntheticRuns.results(house, false);
    assertThat(new Comparison(house, List.of(runs.get(0))).designFlowNote()).isEmpty();
    House cool = house.withSource(house.source().setTo(40));
    assertThat(new Comparison(cool, runs).designFlowNote()).isEmpty();
    RunResult flat = runs.get(1);
    Arrangement flatter =
        flat.arrangement()
            .withBranches(flat.arrangement().branches().stream().map(VerdictTest::flat).toList());
    RunResult run =
        new RunResult(
            flatter,
            flat.trace(),
            flat.rooms(),
            flat.plant(),
            flat.balance(),
            flat.ledger(),
            flat.profiles(),
            flat.firstCall(),
            flat.keepsUp(),
            flat.steps(),
            flat.stepsUnagreed(),
            flat.notices());
    assertThat(new Comparison(cool, List.of(runs.get(0), run)).designFlowNote().orElseThrow())
        .startsWith(
            "Equal outputs at 75/65/20 are not equal at the 40 °C of design weather: “radiators”")
        .contains("could be rated");
  }

  private static Branch flat(Branch branch) {
    double rated = branch.emitter().ratedOutput();
    return branch.withEmitter(
        new PanelEmitter("flat", rated, 1.1, 5e-3, 9000, 0.3, 0, List.of(), 5));
  }
}
