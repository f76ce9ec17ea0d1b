package settle.sim.atrest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import settle.sim.model.HouseModel;
import settle.sim.testhouses.PlausibleHouse;

/**
 * What is found all at once is what each branch comes to by itself, the others staying as they are:
 * its valve asked with the room as it is, its emitter with the valve.
 */
class RestNewtonTest {

  /** Heat that a branch by itself may differ by [W]: a millikelvin or less of its room. */
  private static final double BY_ITSELF = 0.05;

  static LongStream houses() {
    return LongStream.rangeClosed(1, 60);
  }

  @ParameterizedTest
  @MethodSource("houses")
  void everyBranchAgreesByItself(long seed) {
    PlausibleHouse drawn = PlausibleHouse.of(seed);
    HouseModel model = Balancing.asRun(drawn.house(), drawn.arrangement());
    double[] none = new double[drawn.house().rooms().size()];
    SettledHouse settled = new SettledHouse(model, drawn.outdoor(), none, none);
    for (double flow : new double[] {drawn.outdoor() - 5, 30, 45, 60}) {
      settled.at(flow);
      if (settled.status().has(RestStatus.Kind.NOT_FOUND)) {
        continue;
      }
      for (int b = 0; b < model.branches(); b++) {
        // An actuator or a motor head goes from shut to open within what a watt warms a room by.
        if (!drawn.arrangement().branches().get(b).valve().electric()) {
          double heat = settled.heat(b);
          assertThat(settled.heatOffered(b, heat))
              .as("%s, flow %.0f °C, branch %d", drawn, flow, b)
              .isCloseTo(heat, within(BY_ITSELF));
        }
      }
    }
  }
}
