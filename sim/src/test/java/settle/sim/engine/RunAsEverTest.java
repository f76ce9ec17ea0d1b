package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.RoomColumn;
import settle.sim.result.RunResult;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;

/** A run in weather that has lasted, against one with a lead-in of weeks. */
class RunAsEverTest {

  private static final double DAY = 86_400;

  private static House house(double daysBefore) {
    House house =
        SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 2);
    Timetable programme =
        new Timetable(DAY, new double[] {0, 6 * 3600, 22 * 3600}, new double[] {15, 20, 15});
    List<Room> rooms = house.rooms().stream().map(r -> r.withWant(programme)).toList();
    RunSettings as = house.run();
    return house
        .withRooms(rooms)
        .withRun(
            new RunSettings(
                8, daysBefore * DAY, DAY, as.shortestStep(), as.longestStep(), List.of()));
  }

  @Test
  void fourDaysDoForWeeks() {
    House weeks = house(40);
    House days = house(4);
    RunResult slow = Simulation.run(weeks, weeks.arrangements().get(0));
    RunResult quick = Simulation.runAsEver(new HouseModel(days, days.arrangements().get(0), 1));
    for (int r = 0; r < weeks.rooms().size(); r++) {
      assertThat(mean(quick, r))
          .as(weeks.rooms().get(r).name())
          .isCloseTo(mean(slow, r), within(0.05));
    }
  }

  @Test
  void theBalanceOfTheRecordedTimeCloses() {
    House days = house(4);
    RunResult quick = Simulation.runAsEver(new HouseModel(days, days.arrangements().get(0), 1));
    assertThat(quick.ledger().error()).isLessThan(1e-9);
    assertThat(quick.ledger().sourceHeat())
        .isCloseTo(quick.plant().sourceHeat(), within(1e-6 * quick.plant().sourceHeat()));
  }

  private static double mean(RunResult run, int room) {
    double[] time = run.trace().time();
    double[] operative = run.trace().column(RoomColumn.OPERATIVE, room);
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += (operative[i - 1] + operative[i]) / 2 * (time[i] - time[i - 1]);
    }
    return sum / (time[time.length - 1] - time[0]);
  }
}
