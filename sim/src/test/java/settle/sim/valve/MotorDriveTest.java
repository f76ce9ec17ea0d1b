package settle.sim.valve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A motor head's controller against the same in many small steps, and how long it may step. */
class MotorDriveTest {

  private static final double KVS = 0.8;

  private static MotorDrive motor(double gain, double integralTime, double travelTime) {
    return new MotorDrive(
        new MotorHead("motor", 20, gain, integralTime, travelTime, KVS, RoomSensing.OPERATIVE), 20);
  }

  /** A step in which the room goes straight; mean K_v over it. */
  private static double step(MotorDrive head, double length, double from, double to) {
    double mean = (from + to) / 2;
    double kv = head.feel(length, 0, mean, 0, 0, 0);
    head.accept(length);
    head.see(length, 0, to);
    return kv;
  }

  /** PI controller with conditional integration behind a motor of constant speed, step by step. */
  private static final class Small {
    private final double gain;
    private final double integralTime;
    private final double travelTime;
    private double integral;
    private double lift;

    Small(double gain, double integralTime, double travelTime) {
      this.gain = gain;
      this.integralTime = integralTime;
      this.travelTime = travelTime;
    }

    double mean(double length, double from, double to) {
      int parts = 20_000;
      double dt = length / parts;
      double sum = 0;
      for (int i = 0; i < parts; i++) {
        double error = 20 - (from + (to - from) * (i + 0.5) / parts);
        double asked = gain * (error + integral / integralTime);
        if (!(asked > 1 && error > 0) && !(asked < 0 && error < 0)) {
          integral += error * dt;
        }
        double goal = Math.min(Math.max(gain * (error + integral / integralTime), 0), 1);
        double most = dt / travelTime;
        double next = lift + Math.min(Math.max(goal - lift, -most), most);
        sum += (lift + next) / 2;
        lift = next;
      }
      return KVS * sum / parts;
    }
  }

  /**
   * Sixteen parts a step: where an end of the stroke is met inside a part, integral and motor are
   * off by at most that part, the integral from both sides.
   */
  @Property(tries = 200, shrinking = ShrinkingMode.OFF)
  void itIsTheControllerInSmallSteps(
      @ForAll @DoubleRange(min = 0.1, max = 2) double gain,
      @ForAll @DoubleRange(min = 300, max = 7200) double integralTime,
      @ForAll @DoubleRange(min = 20, max = 600) double travelTime,
      @ForAll @DoubleRange(min = 17, max = 23) double first,
      @ForAll @DoubleRange(min = 17, max = 23) double second,
      @ForAll @DoubleRange(min = 10, max = 600) double length) {
    MotorDrive head = motor(gain, integralTime, travelTime);
    Small small = new Small(gain, integralTime, travelTime);
    double[] rooms = {20, first, second, first, 20};
    for (int i = 1; i < rooms.length; i++) {
      double mean = step(head, length, rooms[i - 1], rooms[i]);
      double part = length / 16;
      double late = KVS * (gain * 6 / integralTime * (i + 2) + 1 / travelTime) * part;
      assertThat(mean).isEqualTo(small.mean(length, rooms[i - 1], rooms[i]), within(late + 2e-3));
      assertThat(head.lift()).isEqualTo(small.lift, within(late / KVS + 2e-3));
    }
  }

  @Test
  void whatIsLookedAheadAtIsWhatComesIfTheRoomGoesOn() {
    MotorDrive head = motor(0.4, 3600, 60);
    step(head, 60, 20, 19.8);
    step(head, 60, 19.8, 19.6);
    double ahead = head.lookAhead(60, 0);
    assertThat(ahead).isPositive().isEqualTo(head.feel(60, 0, 19.5, 0, 0, 0), within(1e-12));
  }

  @Test
  void decidingMovesNothing() {
    MotorDrive head = motor(0.4, 3600, 60);
    step(head, 60, 20, 19);
    double lift = head.lift();
    head.decide();
    assertThat(head.lift()).isEqualTo(lift);
    assertThat(head.sensed()).isEqualTo(19);
  }

  /** Behind what is asked by more than it may travel: no longer than that travel takes. */
  @Test
  void aMotorThatCatchesUpKeepsStepsShort() {
    MotorDrive head = motor(0.4, Double.POSITIVE_INFINITY, 100);
    step(head, 1e-6, 20, 18);
    step(head, 1e-6, 18, 18);
    step(head, 1e-6, 18, 18);
    assertThat(head.steadyFor(0.5)).isEqualTo(0.5 * 0.1 * 100, within(1e-3));
  }

  /** Where it has caught up, it moves as the error integrates: K_p e/T_i a second. */
  @Test
  void aMotorThatFollowsMayGoTheShareOfItsLift() {
    MotorDrive head = motor(0.4, 3600, 1);
    step(head, 10, 20, 19);
    step(head, 10, 19, 19);
    step(head, 10, 19, 19);
    double speed = 0.4 * 1 / 3600;
    assertThat(head.steadyFor(0.2))
        .isEqualTo(0.2 * (head.lift() + 0.1) / speed, within(1e-6 / speed));
  }

  /** Beyond the end of its stroke it may also go half the way back to it. */
  @Test
  void aMotorAtItsEndHasTimeBeforeItLeavesIt() {
    MotorDrive head = motor(2, Double.POSITIVE_INFINITY, 1);
    step(head, 10, 20, 19);
    step(head, 10, 19, 18);
    // Asked 2 x 2 = 4 of 1; rising by 2 x 0.1 K/s.
    assertThat(head.lift()).isOne();
    assertThat(head.steadyFor(0.2)).isEqualTo((0.2 * 1.1 + 3 / 2.0) / (2 * 0.1), within(1e-6));
  }
}
