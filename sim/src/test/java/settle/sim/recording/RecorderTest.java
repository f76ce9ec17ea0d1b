package settle.sim.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.result.RunResult;

class RecorderTest {

  private static final int HEAT = Trace.index(HouseColumn.SOURCE_HEAT);
  private static final int FLOW = Trace.index(HouseColumn.FLOW);
  private static final int STARTS = Trace.index(HouseColumn.STARTS);

  private final Recorder recorder = new Recorder(List.of(), List.of(), List.of(), 0);

  private void row(double time, double heat, double flow, int starts, boolean allowed) {
    recorder.begin(time);
    recorder.clear();
    recorder.set(HEAT, heat);
    recorder.set(FLOW, flow);
    recorder.set(STARTS, starts);
    if (time > 0) {
      recorder.join(allowed, 300);
    }
  }

  @Test
  void joinedRowsKeepSumsStatesAndValuesThatComeAndGo() {
    row(0, Double.NaN, Double.NaN, 0, true);
    row(100, 900, 60, 1, true);
    row(250, 300, Double.NaN, 1, true);
    row(300, 600, 66, 2, true);
    row(310, 0, Double.NaN, 2, true);
    row(320, 50, Double.NaN, 2, false);
    Trace trace = recorder.trace();
    assertThat(trace.time()).containsExactly(0, 300, 310, 320);
    double[] heat = trace.column(HouseColumn.SOURCE_HEAT);
    assertThat(heat[1] * 300).isCloseTo(900 * 100 + 300 * 150 + 600 * 50, within(1e-9));
    assertThat(heat[2]).isZero();
    assertThat(trace.column(HouseColumn.FLOW)[1])
        .isCloseTo((60 * 100 + 66 * 50) / 150.0, within(1e-9));
    assertThat(trace.column(HouseColumn.FLOW)[2]).isNaN();
    assertThat(trace.column(HouseColumn.STARTS)).containsExactly(0, 2, 2, 2);
  }

  @Test
  void whatWasHandedOverStaysAsItWas() {
    row(0, Double.NaN, Double.NaN, 0, true);
    row(100, 900, 60, 1, true);
    Trace before = recorder.trace();
    row(250, 300, Double.NaN, 1, true);
    row(900, 100, Double.NaN, 1, true);
    assertThat(before.time()).containsExactly(0, 100);
    assertThat(before.column(HouseColumn.SOURCE_HEAT)[1]).isEqualTo(900);
    assertThat(recorder.trace().time()).containsExactly(0, 250, 900);
  }

  /** Sixteen days are joined to rows, twice eight are not: the heat of both is what was given. */
  @Test
  void aLongRunTakesFewRowsAndLosesNoHeat() {
    House house = SampleHouses.eightRooms(16, SampleHouses.boiler());
    House shorter = SampleHouses.eightRooms(13, SampleHouses.boiler());
    RunResult run = Simulation.run(house, house.arrangements().get(0));
    RunResult kept = Simulation.run(shorter, shorter.arrangements().get(0));
    assertThat(kept.trace().size()).isEqualTo(kept.steps() + 1);
    assertThat(run.trace().size()).isLessThan(run.steps());
    double[] time = run.trace().time();
    double[] want = run.trace().column(RoomColumn.WANT, 0);
    for (int i = 1; i < time.length; i++) {
      double middle = (time[i] + time[i - 1]) / 2;
      assertThat(want[i]).isEqualTo(house.rooms().get(0).want().valueAt(middle));
      if (time[i] > 3.1 * 86_400 && want[i] == want[i - 1]) {
        // Shorter neighbours would have been joined.
        assertThat(time[i] - time[i - 2]).isGreaterThan(300);
      }
    }
    assertThat(run.plant().sourceHeat())
        .isCloseTo(run.ledger().sourceHeat(), within(1e-9 * run.ledger().sourceHeat()));
    double emitted = run.rooms().stream().mapToDouble(r -> r.heat().emitted()).sum();
    assertThat(emitted).isCloseTo(run.ledger().emitted(), within(1e-9 * emitted));
  }

  @Test
  void progressRisesToTheEnd() {
    House house = SampleHouses.twoRooms(4, SampleHouses.ideal());
    List<Double> told = new ArrayList<>();
    Simulation.run(house, house.arrangements().get(0), told::add);
    assertThat(told).hasSizeBetween(3, 4).isSorted();
    assertThat(told.get(0)).isCloseTo(0.25, within(0.01));
  }
}
