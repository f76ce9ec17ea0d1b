package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A head whose step is tried until the opening held is the one it takes, where the house answers to
 * the opening.
 */
class CorrectedOpeningTest {

  /** What {@code StepTrial} asks, as a share of the opening. */
  private static final double AGREEMENT = 0.003;

  private static final double SET_POINT = 20;
  private static final double KVS = 0.5;
  private static final double KV_PER_KELVIN = 0.25 / 2;
  private static final double STEP = 640;

  private static ValveStepper valve(double pressureInfluence) {
    WaxValve wax =
        new WaxValve(
            "head",
            SET_POINT,
            2,
            0,
            new WaxValve.Lags(1, 0, 0),
            0,
            0,
            pressureInfluence,
            0.25,
            KVS,
            RoomSensing.OPERATIVE);
    return new ValveStepper(List.of(wax), 21);
  }

  /** Corrections until the opening agrees; 100 if it does not. */
  private static int corrections(ValveStepper valve, double warming, double pressurePerKv) {
    double kv = valve.lookAhead(STEP, new double[] {2e4})[0];
    for (int k = 0; k < 100; k++) {
      double room = 21 + warming * kv;
      double drop = 2e4 + pressurePerKv * kv;
      if (valve.feel(0, STEP, room, room, 0.01, 50, drop) < AGREEMENT) {
        return k;
      }
      kv = valve.correct()[0];
    }
    return 100;
  }

  /**
   * A room that warms by so much times 1/KV_PER_KELVIN per opening: from 1 on a mere repetition
   * goes to and fro for ever.
   */
  @ParameterizedTest
  @CsvSource({"0.3, 3", "0.9, 3", "1.5, 4", "4, 8"})
  void comesToAgreeWithARoomThatAnswersMoreThanItAsked(double gain, int most) {
    assertThat(corrections(valve(0), gain / KV_PER_KELVIN, 0)).isLessThanOrEqualTo(most);
  }

  /** A pressure that falls as the valve opens opens it further: 0.6 and 0.9 of each move again. */
  @ParameterizedTest
  @CsvSource({"0.6", "0.9"})
  void doesNotCreepWherePressureHelpsIt(double gain) {
    double pressurePerKv = -gain / KV_PER_KELVIN * 1e5;
    assertThat(corrections(valve(1), 0, pressurePerKv)).isLessThanOrEqualTo(4);
  }
}
