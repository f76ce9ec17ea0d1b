package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.NullSource;
import settle.sim.house.House;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.source.Buffer;
import settle.sim.weather.Weather;

/** A heat pump in mild weather, which starts dozens of times a day. */
class CyclingTraceTest {

  private static RunResult run(Buffer.Placement placement) {
    House house = SampleHouses.wetSystem(1).withWeather(new Weather.Constant(11));
    if (placement != null) {
      house = house.withBuffer(new Buffer(placement, 0.05, 0, 15, 0.4));
    }
    return Simulation.run(house, house.arrangements().get(0));
  }

  /** No run and no rest is hidden in the mean of a step. */
  @ParameterizedTest
  @NullSource
  @EnumSource
  void theTraceShowsEveryRun(Buffer.Placement placement) {
    RunResult result = run(placement);
    double[] heat = result.trace().column(HouseColumn.SOURCE_HEAT);
    int seen = 0;
    for (int i = 1; i < heat.length; i++) {
      if (heat[i] > 0 && !(heat[i - 1] > 0)) {
        seen++;
      }
    }
    assertThat(result.plant().cycling().starts()).isGreaterThan(10).isEqualTo(seen);
  }

  /**
   * Without a vessel what leaves the source enters the mains: the search for agreement may end
   * short only in the few steps in which a start just comes or does not come about.
   */
  @ParameterizedTest
  @NullSource
  @EnumSource(names = "RETURN")
  void sourceAndMainsAgreeWhileItSwitches(Buffer.Placement placement) {
    Trace trace = run(placement).trace();
    double[] leaving = trace.column(HouseColumn.SOURCE_FLOW);
    double[] entering = trace.column(HouseColumn.FLOW);
    double worst = 0;
    int apart = 0;
    for (int i = 1; i < leaving.length; i++) {
      double off = Math.abs(leaving[i] - entering[i]);
      if (off > 0) {
        worst = Math.max(worst, off);
        apart += off > 0.01 ? 1 : 0;
      }
    }
    assertThat(worst).isBetween(1e-12, 0.5);
    assertThat(apart).isLessThan(leaving.length / 100);
  }
}
