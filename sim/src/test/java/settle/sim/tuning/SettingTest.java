package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.hydraulics.ConstantPump;
import settle.sim.hydraulics.ProportionalPump;
import settle.sim.hydraulics.Pump;
import settle.sim.source.IdealSource;

/** What can be set by hand, and what was found. */
class SettingTest {

  private static Plant with(Pump pump) {
    House house = SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5));
    House pumped = house.withDistribution(house.distribution().withPump(pump));
    return new Plant(pumped, pumped.arrangements().get(0));
  }

  private static final Plant PLANT = with(new ConstantPump(22_000, 0.3));

  @Test
  void aPumpIsSetByHalfMetresFromOneMetreOn() {
    Setting head = new PumpHead();
    assertThat(head.marks(PLANT)).containsExactly(10_000, 15_000, 20_000);
    Plant weak = with(new ConstantPump(200, 0.3));
    assertThat(head.marks(weak)).containsExactly(10_000);
    // What the scenario states stays a candidate, and is known to be none that can be set.
    Grid grid = new Grid(weak, List.of(head));
    assertThat(grid.values(0)).isEqualTo(2);
    assertThat(grid.value(grid.asFound(), 0)).isEqualTo(200);
    assertThat(head.onMark(weak, 200)).isFalse();
  }

  @Test
  void aProportionalPumpHasAHeadToo() {
    Plant plant = with(new ProportionalPump(30_000, 1e-4, 0.3));
    Setting head = new PumpHead();
    assertThat(Settings.of(plant, EnumSet.of(Group.LOCKSHIELDS)))
        .contains(head)
        .hasSize(1 + plant.arrangement().branches().size());
    assertThat(head.of(plant)).isEqualTo(30_000);
    assertThat(head.with(plant, 15_000).house().distribution().pump())
        .isEqualTo(new ProportionalPump(15_000, 1e-4, 0.3));
  }

  @Test
  void aKnobIsSetOnItsStrokes() {
    String room = PLANT.arrangement().branches().get(0).room();
    Setting head = new Head(room);
    double want = PLANT.house().rooms().get(PLANT.house().roomIndex(room)).want().maximum();
    assertThat(Arrays.stream(head.marks(PLANT)).boxed())
        .allSatisfy(mark -> assertThat(mark).isEqualTo(Math.rint(mark)))
        .hasSize(9)
        .contains(want);
  }

  @Test
  void aLockshieldIsSetByPartsOfATurn() {
    Setting turns = new LockshieldTurns(0, PLANT.arrangement().branches().get(0).room());
    assertThat(turns.marks(PLANT))
        .startsWith(0.25, 0.375, 0.5)
        .contains(1, 1.25, 2, 2.5)
        .endsWith(3.5, 4);
    assertThat(turns.settable(PLANT, 0.2)).isEqualTo(0.25);
    assertThat(turns.settable(PLANT, 9)).isEqualTo(4);
  }

  @Test
  void whatWasFoundIsKeptToTheLastBit() {
    Setting shift = new CurveShift();
    Plant plant = SearchTest.plant(0.1 + 0.2, 3.7);
    Grid grid = new Grid(plant, List.of(new CurveSlope(), shift));
    assertThat(grid.plant(grid.asFound())).isSameAs(plant);
    assertThat(grid.of(plant)).isEqualTo(grid.asFound());
    assertThat(grid.changed(grid.asFound())).isZero();
    assertThat(grid.changed(grid.asFound().with(1, 0))).isEqualTo(1);
    assertThat(shift.onMark(plant, 3.7)).isFalse();
  }
}
