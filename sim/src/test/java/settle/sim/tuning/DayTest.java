package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;

/** A day lived through for a tuning. */
class DayTest {

  private static final double DAY = 86_400;

  private static Day monday(Timetable first) {
    House house =
        SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 0);
    List<Room> rooms = house.rooms();
    House programmed = house.withRooms(List.of(rooms.get(0).withWant(first), rooms.get(1)));
    return Day.searched(new Plant(programmed, programmed.arrangements().get(0)), 5);
  }

  @Test
  void aRoomWantedOnAnotherDayOnlyIsNotFarFromWant() {
    Timetable saturday =
        new Timetable(7 * DAY, new double[] {0, 5 * DAY, 6 * DAY}, new double[] {16, 21, 16});
    Day day = monday(saturday);
    assertThat(day.deviation()).isFinite().isNotNegative();
    assertThat(day.longestLateness()).isZero();
  }

  @Test
  void aRoomFarBelowItsWantCounts() {
    assertThat(monday(Timetable.constant(30)).deviation())
        .isGreaterThan(monday(Timetable.constant(21)).deviation() + 1);
  }
}
