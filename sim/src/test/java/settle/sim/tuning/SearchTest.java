package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import settle.sim.control.FlowCurve;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.source.IdealSource;

/** The search and the look around, on objectives whose least is known. */
class SearchTest {

  private static final IdealSource SOURCE = new IdealSource("source", 60, 1e5);
  private static final Setting SLOPE = new Setting.CurveSlope();
  private static final Setting SHIFT = new Setting.CurveShift();

  private static Plant plant(double slope, double shift) {
    House house = SampleHouses.twoRooms(1, SOURCE);
    House onCurve =
        house.withControl(house.control().withFlowCurve(new FlowCurve(slope, shift, 20, 80, 0)));
    return new Plant(onCurve, onCurve.arrangements().get(0));
  }

  /** A bowl round a slope and a shift, steeper one way, in strides of each. */
  private static ToDoubleFunction<Plant> bowl(double slope, double shift) {
    return plant -> {
      double x = (SLOPE.of(plant) - slope) / SLOPE.stride(plant);
      double y = (SHIFT.of(plant) - shift) / SHIFT.stride(plant);
      return 1 + x * x + x * y + 2 * y * y;
    };
  }

  @Test
  void findsTheLeastOfABowlOnWhatCanBeSet() {
    Plant found = plant(0.5, 0);
    Search search = new Search(found, found, List.of(SLOPE, SHIFT), bowl(1.35, 7));
    assertThat(SLOPE.of(search.best())).isEqualTo(1.35);
    assertThat(SHIFT.of(search.best())).isEqualTo(7);
    assertThat(search.least()).isCloseTo(1, within(1e-12));
    assertThat(search.trials()).isLessThan(80);
  }

  @Test
  void oneSettingIsFoundByItself() {
    Plant found = plant(0.5, 7);
    Search search = new Search(found, found, List.of(SLOPE), bowl(1.35, 7));
    assertThat(SLOPE.of(search.best())).isEqualTo(1.35);
  }

  @Test
  void staysWithinTheLimits() {
    Plant found = plant(0.5, 0);
    Search search = new Search(found, found, List.of(SLOPE, SHIFT), bowl(9, 0));
    assertThat(SLOPE.of(search.best())).isEqualTo(SLOPE.highest(found));
  }

  @Test
  void whatGainsNothingStaysAsItWasFound() {
    Plant found = plant(1.2, 3.7);
    Plant start = plant(0.8, 9);
    ToDoubleFunction<Plant> flatInShift = p -> 1 + Math.pow(SLOPE.of(p) - 1.6, 2);
    Search search = new Search(found, start, List.of(SLOPE, SHIFT), flatInShift);
    assertThat(SLOPE.of(search.best())).isCloseTo(1.6, within(0.05));
    assertThat(SHIFT.of(search.best())).isEqualTo(3.7);
    Search useless = new Search(found, start, List.of(SLOPE, SHIFT), p -> 1);
    assertThat(useless.best()).isSameAs(found);
  }

  /** Along the shift the bowl is 1 + 2 y², y in strides. */
  @Test
  void flatnessIsReadOffAParabola() {
    Plant tuned = plant(1.4, 5);
    Flatness flat = Flatness.of(tuned, SHIFT, bowl(1.4, 5), 1);
    // Straight between looks at half a stride: 2 y² = 0.05 lies on the chord to (0.5, 0.5).
    double chord = 0.05 / 0.5 * 0.5 * SHIFT.stride(tuned);
    assertThat(flat.down().orElseThrow()).isCloseTo(chord, within(1e-9));
    assertThat(flat.up().orElseThrow()).isCloseTo(chord, within(1e-9));
    assertThat(Flatness.of(tuned, SHIFT, p -> 3, 3).up()).isEmpty();
    assertThat(flat.points()).isSortedAccordingTo((a, b) -> Double.compare(a.value(), b.value()));
  }

  @Test
  void whatCanBeSetIsAMultipleOfTheFinest() {
    Plant plant = plant(1, 0);
    assertThat(SLOPE.settable(plant, 0.6749)).isEqualTo(0.65);
    assertThat(SLOPE.settable(plant, 0.01)).isEqualTo(0.2);
    assertThat(SLOPE.settable(plant, 99)).isEqualTo(3);
    assertThat(SHIFT.settable(plant, -2.6)).isEqualTo(-3);
  }
}
