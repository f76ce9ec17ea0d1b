package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import settle.sim.study.Workers;

/** How flat it is along one setting, the worth being known. */
class FlatnessTest {

  private static final Setting SHIFT = new CurveShift();

  private static Tried tried(Grid grid, ToDoubleFunction<Plant> worth) {
    return new Tried(grid, SearchTest.Known.of(worth, 0), Workers.ONE);
  }

  private static Grid grid(double shift) {
    return new Grid(SearchTest.plant(1, shift), List.of(SHIFT));
  }

  /** Five parts in a hundred dearer 2 K away, straight on either side. */
  private static ToDoubleFunction<Plant> wedge(double best) {
    return p -> 1 + Flatness.DEARER / 2 * Math.abs(SHIFT.of(p) - best);
  }

  @Test
  void aWedgeIsAsFarToBothSides() {
    Grid grid = grid(5);
    Flatness flat = Flatness.of(grid, tried(grid, wedge(5)), List.of(0)).get(0);
    assertThat(flat.down()).hasValueCloseTo(2.0, within(1e-9));
    assertThat(flat.up()).hasValueCloseTo(2.0, within(1e-9));
    assertThat(flat.points())
        .isSortedAccordingTo((a, b) -> Double.compare(a.value(), b.value()))
        .allSatisfy(p -> assertThat(p.dearer()).isNotNegative());
  }

  @Test
  void whatHardlyMattersIsLookedAtUpToItsLimits() {
    Grid grid = grid(5);
    Flatness flat = Flatness.of(grid, tried(grid, p -> 1), List.of(0)).get(0);
    assertThat(flat.down()).isEmpty();
    assertThat(flat.up()).isEmpty();
    Plant plant = grid.plant(grid.asFound());
    assertThat(flat.points().get(0).value()).isEqualTo(SHIFT.lowest(plant));
    assertThat(flat.points().get(flat.points().size() - 1).value()).isEqualTo(SHIFT.highest(plant));
  }

  @Test
  void foundBeyondItsLimitsThereIsNothingFurther() {
    Grid grid = grid(22);
    Flatness flat = Flatness.of(grid, tried(grid, wedge(22)), List.of(0)).get(0);
    assertThat(flat.up()).isEmpty();
    assertThat(flat.points()).allSatisfy(p -> assertThat(p.value()).isLessThanOrEqualTo(22));
    assertThat(flat.points()).filteredOn(p -> p.value() == 22).hasSize(1);
    assertThat(flat.down()).isPresent();
  }

  /** A look round that meets something better must not leave it at that. */
  @Test
  void whatIsFoundBetterOnTheWayIsTheBest() {
    Grid grid = grid(0);
    Tried tried = tried(grid, p -> SHIFT.of(p) == 16 ? 0.9 : 1);
    Flatness.of(grid, tried, List.of(0));
    assertThat(SHIFT.of(grid.plant(tried.best()))).isEqualTo(16);
  }
}
