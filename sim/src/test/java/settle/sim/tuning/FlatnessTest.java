package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.source.IdealSource;

/** How flat an objective is along one setting, the objective being known. */
class FlatnessTest {

  private final House house =
      SampleHouses.steady(SampleHouses.twoRooms(1, new IdealSource("source", 60, 1e5)), 0);
  private final Plant plant = new Plant(house, house.arrangements().get(0));
  private final Setting head = new Setting.Head(plant.arrangement().branches().get(0).room());

  /** Five parts in a hundred dearer 1 K away, straight on either side. */
  private ToDoubleFunction<Plant> wedge(double best) {
    return p -> 1 + Flatness.DEARER * Math.abs(head.of(p) - best);
  }

  @Test
  void aWedgeIsAsFarToBothSides() {
    double at = head.of(plant);
    Flatness flat = Flatness.of(plant, head, wedge(at), 1);
    assertThat(flat.down()).hasValueCloseTo(1.0, within(1e-9));
    assertThat(flat.up()).hasValueCloseTo(1.0, within(1e-9));
  }

  @Test
  void whatHardlyMattersIsLookedAtUpToItsLimits() {
    Flatness flat = Flatness.of(plant, head, p -> 1, 1);
    assertThat(flat.down()).isEmpty();
    assertThat(flat.up()).isEmpty();
    assertThat(flat.points().get(0).value()).isEqualTo(head.lowest(plant));
    assertThat(flat.points().get(flat.points().size() - 1).value()).isEqualTo(head.highest(plant));
  }

  @Test
  void foundBeyondItsLimitsThereIsNothingFurther() {
    double at = head.highest(plant) + 2;
    Flatness flat = Flatness.of(head.with(plant, at), head, wedge(at), 1);
    assertThat(flat.up()).isEmpty();
    assertThat(flat.points()).allSatisfy(p -> assertThat(p.value()).isLessThanOrEqualTo(at));
    assertThat(flat.points()).filteredOn(p -> p.value() == at).hasSize(1);
    assertThat(flat.down()).isPresent();
  }
}
