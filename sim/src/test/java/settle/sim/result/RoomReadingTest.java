package settle.sim.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;

/** What is read of a room, from made-up courses whose figures are known. */
class RoomReadingTest {

  private static final double HOUR = 3600;
  private static final double DAY = 86_400;
  private static final double WANT = 21;
  private static final double TOLERANCE = 0.5;

  private static final Timetable ALWAYS = Timetable.constant(WANT);

  /** Wanted from six to ten at night. */
  private static final Timetable BY_DAY =
      new Timetable(DAY, new double[] {6 * HOUR, 22 * HOUR}, new double[] {WANT, 16});

  /** A course at steps of five minutes. */
  private record Course(double[] time, double[] operative, Timetable programme) {

    static Course of(double hours, Timetable programme, DoubleUnaryOperator byHour) {
      int n = (int) (hours * 12) + 1;
      double[] time = new double[n];
      double[] operative = new double[n];
      for (int i = 0; i < n; i++) {
        time[i] = 300.0 * i;
        operative[i] = byHour.applyAsDouble(time[i] / HOUR);
      }
      return new Course(time, operative, programme);
    }

    RoomReading reading() {
      double[] want = new double[time.length];
      for (int i = 1; i < want.length; i++) {
        want[i] = programme.valueAt((time[i - 1] + time[i]) / 2);
      }
      double firstCall = programme.isConstant() ? 0 : programme.nextChange(0);
      return new RoomReading(time, operative, want, programme, TOLERANCE, firstCall);
    }

    LastDay lastDay(double restLeast, double restMost, boolean held) {
      double[] emitted = filled(491);
      double[] piped = filled(392);
      double[] air = Arrays.stream(operative).map(t -> t + 1).toArray();
      return reading().lastDay(air, emitted, piped, restLeast, restMost, held);
    }

    LastDay lastDay(double rest, boolean held) {
      return lastDay(rest, rest, held);
    }

    private double[] filled(double value) {
      double[] values = new double[time.length];
      Arrays.fill(values, value);
      values[0] = Double.NaN;
      return values;
    }
  }

  /** Straight from 11 °C to 21 °C in so many hours, and there it stays. */
  private static DoubleUnaryOperator warmedIn(double hours) {
    return h -> Math.min(11 + 10 * h / hours, WANT);
  }

  @Test
  void shortfallCountsFromTheFirstCall() {
    // A triangle 9.5 K high over the time to 20.5 °C, 95 % of the way.
    RoomReading late = Course.of(48, ALWAYS, warmedIn(14)).reading();
    assertThat(late.warmUp().orElseThrow()).isCloseTo(0.95 * 14 * HOUR, within(1e-6));
    assertThat(late.shortfall()).isCloseTo(9.5 * 0.95 * 14 / 2, within(0.01));
    assertThat(late.shortfallOnceWarm()).isCloseTo(0, within(1e-9));
    // Never warm: as short as that and more.
    RoomReading never = Course.of(48, ALWAYS, h -> Math.min(11 + h, 20.4)).reading();
    assertThat(never.warmUp()).isEmpty();
    assertThat(never.shortfall()).isGreaterThan(9.4 * 9.4 / 2);
    assertThat(never.shortfallOnceWarm()).isZero();
  }

  @Test
  void whatFallsShortAfterwardsIsToldApart() {
    // Warm from the start, an hour at 19.5 °C in the night of a room that is always wanted warm.
    RoomReading reading =
        Course.of(24, ALWAYS, h -> h > 3 && h <= 4 ? 19.5 : h < 1 ? 19 : WANT).reading();
    assertThat(reading.shortfallOnceWarm()).isCloseTo(1, within(0.05));
    assertThat(reading.shortfall()).isGreaterThan(reading.shortfallOnceWarm() + 1);
  }

  @Test
  void aRoomSettlesWhereRunAndRestAgree() {
    Course still = Course.of(48, ALWAYS, h -> 20.7);
    LastDay settled = still.lastDay(20.78, false);
    assertThat(settled.settles()).isTrue();
    assertThat(settled.operative()).as("the run's temperature").isCloseTo(20.7, within(1e-9));
    assertThat(settled.air()).isCloseTo(21.7, within(1e-9));
    LastDay apart = still.lastDay(20.85, false);
    assertThat(apart.settles()).isFalse();
    assertThat(apart.operative()).isCloseTo(20.7, within(1e-9));
    assertThat(still.lastDay(Double.NaN, false).settles()).as("no rest was found").isFalse();
  }

  @Test
  void aHeadMayStandAnywhereInItsPlay() {
    Course still = Course.of(48, ALWAYS, h -> 20.7);
    assertThat(still.lastDay(20.4, 20.62, false).settles()).isTrue();
    assertThat(still.lastDay(20.2, 20.55, false).settles()).isFalse();
    // A room that swings between the ends of the play does not rest.
    Course swings = Course.of(48, ALWAYS, h -> 20.7 + 0.15 * Math.sin(h));
    assertThat(swings.lastDay(20.5, 20.9, false).settles()).isFalse();
  }

  @Test
  void whatSwingsHasAMeanAndARange() {
    Course swings = Course.of(72, ALWAYS, h -> 21 + 0.4 * Math.sin(2 * Math.PI * h));
    LastDay last = swings.lastDay(21, true);
    assertThat(last.settles()).isFalse();
    assertThat(last.wanted()).isTrue();
    assertThat(last.operative()).isCloseTo(21, within(0.001));
    assertThat(last.least()).isCloseTo(20.6, within(0.01));
    assertThat(last.most()).isCloseTo(21.4, within(0.01));
  }

  /** A day from cold: in held weather its last six hours tell, else it would have to be all day. */
  @Test
  void inHeldWeatherSixHoursAtRestAreEnough() {
    Course day = Course.of(24, ALWAYS, warmedIn(10));
    assertThat(day.lastDay(21, true).settles()).isTrue();
    assertThat(day.lastDay(21, false).settles()).isFalse();
    assertThat(Course.of(14, ALWAYS, warmedIn(10)).lastDay(21, true).settles()).isFalse();
    assertThat(Course.of(5, ALWAYS, h -> 21).lastDay(21, true).settles()).isFalse();
  }

  /**
   * A run that ends too soon has no place where it would settle, but says that it was on its way.
   */
  @Test
  void aRoomStillOnItsWayIsToldToBe() {
    LastDay rising = Course.of(24, ALWAYS, h -> 11 + 0.4 * h).lastDay(25, true);
    assertThat(rising.settles()).isFalse();
    assertThat(rising.drift()).isCloseTo(0.4 * 3, within(1e-6));
    assertThat(rising.drifts()).isTrue();
    Course swings = Course.of(72, ALWAYS, h -> 21 + 0.4 * Math.sin(2 * Math.PI * h));
    assertThat(swings.lastDay(21, true).drifts()).isFalse();
    assertThat(Course.of(24, ALWAYS, h -> 11 + 0.4 * h).lastDay(25, false).drift()).isZero();
  }

  /** Set-back hours are none of want's, nor is the time before the room was first warm. */
  @Test
  void averagesAreTakenWhileTheDayValueIsWantedAndOnceWarm() {
    DoubleUnaryOperator course = h -> h % 24 < 6 || h % 24 >= 22 ? 16 : 20.8;
    LastDay last = Course.of(72, BY_DAY, course).lastDay(20.8, false);
    assertThat(last.settles()).isFalse();
    assertThat(last.operative()).isCloseTo(20.8, within(0.02));
    assertThat(last.most()).isEqualTo(20.8);
    // Straight up from six o'clock on the only day, at 20.5 °C after nine hours and a half.
    LastDay first =
        Course.of(24, BY_DAY, h -> Math.min(11 + Math.max(h - 6, 0), WANT)).lastDay(21, false);
    assertThat(first.least()).isCloseTo(20.5, within(1e-6));
  }

  @Test
  void withoutADayValueInTheLastDayThereIsNoDroop() {
    Timetable weekdays = new Timetable(7 * DAY, new double[] {0, 5 * DAY}, new double[] {WANT, 16});
    LastDay last =
        Course.of(7 * 24, weekdays, h -> h < 120 ? 21 : 16.5 + Math.sin(h)).lastDay(21, false);
    assertThat(last.wanted()).isFalse();
    assertThat(figures(last).droop()).isNaN();
  }

  @Test
  void droopIsAboveZeroBelowWant() {
    assertThat(figures(Course.of(48, ALWAYS, h -> 20.7).lastDay(20.7, false)).droop())
        .isCloseTo(0.3, within(1e-9));
    assertThat(figures(Course.of(48, ALWAYS, h -> 22).lastDay(18, false)).droop())
        .isCloseTo(-1, within(1e-9));
  }

  @Test
  void heatOfPipesIsNotTheEmitters() {
    LastDay last = Course.of(48, ALWAYS, h -> 20.7).lastDay(20.7, false);
    assertThat(last.emitterHeat()).isCloseTo(491, within(1e-9));
    assertThat(last.pipeHeat()).isCloseTo(392, within(1e-9));
    assertThat(last.pipeShare()).isCloseTo(392 / 883.0, within(1e-9));
  }

  private static RoomFigures figures(LastDay last) {
    return new RoomFigures(
        "room",
        WANT,
        Course.of(1, ALWAYS, h -> 21).reading().warmUp(),
        0,
        0,
        last,
        0,
        0,
        0,
        new RoomFigures.Heat(0, 0, 0, 0));
  }
}
