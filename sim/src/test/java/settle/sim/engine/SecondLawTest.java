package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.house.House;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;

/**
 * Invariant: no temperature leaves the range spanned by outdoors, ground and start on one side and
 * the hottest water on the other; no flow runs backwards. The energy balance would not show it.
 */
class SecondLawTest {

  /** Coldest of the outdoor day, -2 °C, less the 0.01 K a scheme may overshoot. */
  private static final double COLDEST = -2.01;

  /** Flow at 60 °C and a burner's band of 5 K, plus 0.01 K. */
  private static final double HOTTEST = 65.01;

  @ParameterizedTest
  @MethodSource("settle.sim.engine.EnergyTest#runs")
  void staysBetweenColdestAndHottest(House house, int arrangement) {
    Trace trace = Simulation.run(house, house.arrangements().get(arrangement)).trace();
    for (int b = 0; b < trace.branches().size(); b++) {
      double[] flow = trace.column(BranchColumn.MASS_FLOW, b);
      double[] returning = trace.column(BranchColumn.RETURN, b);
      for (int i = 1; i < trace.size(); i++) {
        assertThat(flow[i]).isNotNegative();
        if (flow[i] > 0) {
          assertThat(returning[i])
              .as("%s at %s s", trace.branches().get(b), trace.time()[i])
              .isBetween(COLDEST, HOTTEST);
        }
      }
    }
    for (int r = 0; r < trace.rooms().size(); r++) {
      for (double air : trace.column(RoomColumn.AIR, r)) {
        assertThat(air).as(trace.rooms().get(r)).isBetween(COLDEST, HOTTEST);
      }
    }
  }
}
