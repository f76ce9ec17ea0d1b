package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.control.Timetable;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;
import settle.sim.source.IdealSource;

/** A day, or a week, lived through for a tuning. */
class SpellTest {

  private static final double HOUR = 3600;
  private static final double DAY = 24 * HOUR;

  private static Plant plant(Timetable first) {
    House house =
        SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 0);
    List<Room> rooms = house.rooms();
    House programmed = house.withRooms(List.of(rooms.get(0).withWant(first), rooms.get(1)));
    return new Plant(programmed, programmed.arrangements().get(0));
  }

  private static Spell searched(Plant plant, double outdoor) {
    return Spell.searched(plant, outdoor, model(plant));
  }

  private static Spell of(Plant plant, double outdoor) {
    return Spell.of(plant, outdoor, model(plant));
  }

  private static HouseModel model(Plant plant) {
    return new HouseModel(plant.house(), plant.arrangement(), 1);
  }

  private static Spell.Warmth firstRoom(Plant plant, Spell spell) {
    return spell.warmth().get(plant.house().rooms().get(0).name());
  }

  private static Timetable daily(double from, double to, double want) {
    return from < to
        ? new Timetable(DAY, new double[] {0, from, to}, new double[] {12, want, 12})
        : new Timetable(DAY, new double[] {0, to, from}, new double[] {want, 12, want});
  }

  @Test
  void aRoomWantedAtTheWeekendOnlyIsLivedAtTheWeekend() {
    Timetable saturday =
        new Timetable(7 * DAY, new double[] {0, 5 * DAY, 6 * DAY}, new double[] {8, 30, 8});
    Plant plant = plant(saturday);
    Spell week = searched(plant, 5);
    assertThat(week.days()).isEqualTo(7);
    // 30 °C is more than it ever gets: it is late all of Saturday, and far from want.
    assertThat(firstRoom(plant, week).lateness()).isCloseTo(DAY, within(60.0));
    assertThat(firstRoom(plant, week).below()).isGreaterThan(2);
    assertThat(week.deviation()).isGreaterThan(1);
    Spell day = searched(plant(Timetable.constant(21)), 5);
    assertThat(day.days()).isEqualTo(1);
  }

  @Test
  void aWeekWhoseDaysAreAlikeIsADay() {
    double[] starts = new double[14];
    double[] wants = new double[14];
    for (int d = 0; d < 7; d++) {
      starts[2 * d] = d * DAY + 6 * HOUR;
      starts[2 * d + 1] = d * DAY + 22 * HOUR;
      wants[2 * d] = 21;
      wants[2 * d + 1] = 16;
    }
    assertThat(new Timetable(7 * DAY, starts, wants).repeatsDaily()).isTrue();
    wants[10] = 19;
    assertThat(new Timetable(7 * DAY, starts, wants).repeatsDaily()).isFalse();
    assertThat(new Timetable(7 * DAY, new double[] {DAY}, new double[] {21}).repeatsDaily())
        .isTrue();
  }

  @Test
  void aPeriodAcrossMidnightIsOnePeriod() {
    Plant plant = plant(daily(22 * HOUR, 6 * HOUR, 30));
    assertThat(firstRoom(plant, searched(plant, 5)).lateness()).isCloseTo(8 * HOUR, within(60.0));
  }

  @Test
  void latenessCountsFromTheBeginningOfThePeriod() {
    Plant late = plant(daily(6 * HOUR, 22 * HOUR, 20));
    Setting lead = new StartLead();
    double without = firstRoom(late, searched(late, 0)).lateness();
    Plant early = lead.with(late, 2 * HOUR);
    assertThat(without).isBetween(600.0, 12 * HOUR);
    assertThat(firstRoom(early, searched(early, 0)).lateness()).isLessThan(without);
    assertThat(firstRoom(late, searched(late, 0)).periods()).isTrue();
    Plant steady = plant(Timetable.constant(20));
    assertThat(firstRoom(steady, searched(steady, 0)).lateness()).isZero();
    assertThat(firstRoom(steady, searched(steady, 0)).periods()).isFalse();
  }

  @Test
  void aRoomFarBelowItsWantCounts() {
    assertThat(searched(plant(Timetable.constant(30)), 5).deviation())
        .isGreaterThan(searched(plant(Timetable.constant(21)), 5).deviation() + 1);
  }

  /** The longer steps of a search move what is weighed little; see COARSER. */
  @Test
  void longerStepsSayNearlyTheSame() {
    Plant plant = plant(daily(6 * HOUR, 22 * HOUR, 20));
    Spell fine = of(plant, 0);
    Spell coarse = searched(plant, 0);
    assertThat(coarse.costPerDay(plant.house()))
        .isCloseTo(fine.costPerDay(plant.house()), within(0.01 * fine.costPerDay(plant.house())));
    assertThat(coarse.awayFromWant()).isCloseTo(fine.awayFromWant(), within(0.05));
  }

  /** What a known swing saves is time only, for a plant set otherwise than the one it is from. */
  @Test
  void aKnownSwingBringsADayToWhereALongLeadInBringsIt() {
    Plant found = plant(daily(6 * HOUR, 22 * HOUR, 21));
    Plant hotter = new FlowTemperature().with(found, 50);
    HouseModel like = model(found);
    Spell known = Spell.searched(hotter, 0, like, Spell.swing(found, 0, like));
    Spell lived = of(hotter, 0);
    assertThat(known.costPerDay(hotter.house()))
        .isCloseTo(lived.costPerDay(hotter.house()), withinPercentage(1));
    assertThat(known.deviation()).isCloseTo(lived.deviation(), within(0.05));
    assertThat(firstRoom(hotter, known).lateness())
        .isCloseTo(firstRoom(hotter, lived).lateness(), within(300.0));
  }
}
