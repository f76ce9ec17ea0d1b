package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.weather.Weather;

/**
 * What is read at the end of a step is the room under the sun of that instant: surfaces follow the
 * sun at once, and steps of many minutes must not let them lag by half of one.
 */
class SunAtTheEndOfAStepTest {

  private static final double HOUR = 3600;
  private static final double BUDGET = 0.02;

  @Test
  void longStepsShowTheRoomUnderTheSunOfTheirEnd() {
    double[] outdoor = {2, 2, 4, 8, 10, 10};
    double[] sun = {0, 0, 400, 700, 200, 0};
    House plain = SampleHouses.twoRooms(1, SampleHouses.ideal());
    House house =
        plain
            .withWeather(new Weather.Series(0, HOUR, outdoor, sun))
            .withRun(new RunSettings(20, 0, 5 * HOUR, 10, 640, List.of()));
    assertThat(house.rooms().get(0).solarAperture()).isPositive();
    Trace usual = Steps.usual(house, 1);
    Trace fine = Steps.of(house, 1, 5, 5);
    double longest = 0;
    for (int k = 1; k < usual.size(); k++) {
      double time = usual.time()[k];
      longest = Math.max(longest, time - usual.time()[k - 1]);
      int i = Steps.at(fine, time);
      for (RoomColumn column : List.of(RoomColumn.AIR, RoomColumn.OPERATIVE)) {
        for (int r = 0; r < usual.rooms().size(); r++) {
          assertThat(Math.abs(usual.column(column, r)[k] - fine.column(column, r)[i]))
              .as("%s of room %s at %s s", column, r, time)
              .isLessThan(BUDGET);
        }
      }
    }
    assertThat(longest).as("long steps were taken").isGreaterThan(300);
  }
}
