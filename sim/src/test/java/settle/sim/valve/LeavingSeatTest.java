package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** When a shut head leaves its seat within a step, so that no long step goes across it. */
class LeavingSeatTest {

  private static final double SHUT = 22;
  private static final double LAG = 1200;

  /** Told 20 °C from 23 °C on, without play: T_b = 20 + 3 e^(-t/tau) passes 22 °C at tau ln 1.5. */
  private static final double LEAVES = LAG * Math.log(1.5);

  private static ValveStepper after(double step, double room) {
    WaxValve head =
        new WaxValve(
            "head",
            SHUT - 2,
            2,
            0,
            new WaxValve.Lags(LAG, 0, 0),
            0,
            0,
            0,
            0.25,
            0.5,
            RoomSensing.OPERATIVE);
    ValveStepper valve = new ValveStepper(List.of(head), 23);
    valve.lookAhead(step, new double[] {1e4});
    valve.feel(0, step, room, room, 0, 20, 1e4);
    return valve;
  }

  @Test
  void saysWhenItLeaves() {
    assertThat(after(640, 20).leavesSeatAfter()).isCloseTo(LEAVES, within(0.03 * LEAVES));
  }

  @Test
  void saysNothingOfAStepThatEndsBefore() {
    assertThat(after(320, 20).leavesSeatAfter()).isInfinite();
    assertThat(after(640, 22.5).leavesSeatAfter()).isInfinite();
  }

  @Test
  void saysNothingOfAHeadThatIsOffItsSeat() {
    ValveStepper valve = after(1280, 20);
    valve.accept(1280);
    valve.lookAhead(640, new double[] {1e4});
    valve.feel(0, 640, 20, 20, 0.01, 60, 1e4);
    assertThat(valve.leavesSeatAfter()).isInfinite();
  }
}
