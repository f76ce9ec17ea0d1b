package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import settle.sim.atrest.Balancing;
import settle.sim.atrest.RestStatus;
import settle.sim.atrest.SettledHouse;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.notice.Code;
import settle.sim.recording.HouseColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;
import settle.sim.units.Times;

/** A source that hot water takes away for stated times. */
class HotWaterTest {

  /** From half past one to a quarter past two, and again in the evening. */
  private static final Timetable TWICE =
      new Timetable(
          Times.DAY,
          new double[] {0, 1.5 * Times.HOUR, 2.25 * Times.HOUR, 18 * Times.HOUR, 19 * Times.HOUR},
          new double[] {0, 1, 0, 1, 0});

  private static final Timetable LONG =
      new Timetable(
          Times.DAY,
          new double[] {0, 5 * Times.HOUR, 8 * Times.HOUR, 17 * Times.HOUR, 19 * Times.HOUR},
          new double[] {0, 1, 0, 1, 0});

  private static final Timetable NONE = Timetable.constant(0);

  private static House house(Timetable hotWater) {
    House house = SampleHouses.eightRooms(1, SampleHouses.boiler());
    RunSettings as = house.run();
    return house
        .withHotWater(hotWater)
        .withRun(
            new RunSettings(
                10, 0, Times.DAY, as.shortestStep(), as.longestStep(), as.profileTimes()));
  }

  @Test
  void theSourceHeatsNoRoomsMeanwhileAndTheMainsRest() {
    House house = house(TWICE);
    RunResult run = Simulation.run(house, house.arrangements().get(0));
    Trace trace = run.trace();
    double[] time = trace.time();
    double[] heat = trace.column(HouseColumn.SOURCE_HEAT);
    double[] flow = trace.column(HouseColumn.MASS_FLOW);
    double away = 0;
    for (int i = 1; i < time.length; i++) {
      double middle = (time[i] + time[i - 1]) / 2;
      if (TWICE.valueAt(middle) > 0) {
        assertThat(heat[i]).isZero();
        assertThat(flow[i]).isZero();
        away += time[i] - time[i - 1];
      }
    }
    assertThat(away).isCloseTo(1.75 * Times.HOUR, within(1e-3));
    assertThat(run.ledger().error()).isLessThan(1e-9);
  }

  @Test
  void warmUpIsToldWithItAndWithout() {
    House house = house(TWICE);
    RunResult run = Simulation.run(house, house.arrangements().get(0));
    House dry = house(NONE);
    RunResult without = Simulation.run(dry, dry.arrangements().get(0));
    assertThat(without.notices()).noneMatch(n -> n.code() == Code.HOT_WATER_DELAYS);
    assertThat(run.notices())
        .filteredOn(n -> n.code() == Code.HOT_WATER_DELAYS)
        .isNotEmpty()
        .allSatisfy(
            n -> {
              int r = house.roomIndex(n.about());
              double with = run.rooms().get(r).warmUp().orElseThrow();
              double alone = without.rooms().get(r).warmUp().orElseThrow();
              assertThat(n.numbers()).containsExactly(with, alone);
              assertThat(with).isGreaterThan(alone + 60);
            });
  }

  /**
   * In weather that stays rooms without reserve are colder for the hours that the source is away:
   * the rest says by how much to a quarter of a kelvin, and that the house does not stand still.
   */
  @Test
  void heldWeatherIsWithHotWaterAtItsHours() {
    double cold = -12;
    House house = house(LONG);
    Arrangement arrangement = house.arrangements().get(0);
    double[] with = HeldRun.of(house, arrangement, cold).operative();
    double[] without = HeldRun.of(house(NONE), arrangement, cold).operative();
    SettledHouse rest = atRest(house, cold);
    SettledHouse dry = atRest(house(NONE), cold);
    assertThat(rest.status().has(RestStatus.Kind.HOT_WATER)).isTrue();
    assertThat(rest.status().standsStill()).isFalse();
    assertThat(rest.duty()).isCloseTo(1 - 5.0 / 24, within(1e-9));
    for (int r = 0; r < with.length; r++) {
      assertThat(without[r]).isCloseTo(dry.operative(r), within(0.02));
      assertThat(with[r]).isLessThan(without[r] - 3);
      // What is lost by starting again twice a day the rest leaves open.
      assertThat(with[r]).isCloseTo(rest.operative(r), within(0.25));
      assertThat(with[r]).isBetween(rest.lowest(r), rest.highest(r));
    }
  }

  private static SettledHouse atRest(House house, double outdoor) {
    double[] none = new double[house.rooms().size()];
    HouseModel model = Balancing.asRun(house, house.arrangements().get(0));
    return new SettledHouse(model, outdoor, none, none).asControlled();
  }
}
