package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import settle.sim.control.FlowCurve;
import settle.sim.engine.SampleHouses;
import settle.sim.house.House;
import settle.sim.source.IdealSource;
import settle.sim.study.Workers;
import settle.sim.tuning.Grid.Choice;

/** The search and the look around, on worths whose least is known. */
class SearchTest {

  private static final IdealSource SOURCE = new IdealSource("source", 60, 1e5);
  private static final Setting SLOPE = new CurveSlope();
  private static final Setting SHIFT = new CurveShift();
  private static final List<Setting> BOTH = List.of(SLOPE, SHIFT);

  static Plant plant(double slope, double shift) {
    House house = SampleHouses.twoRooms(1, SOURCE);
    House onCurve =
        house.withControl(house.control().withFlowCurve(new FlowCurve(slope, shift, 20, 80, 0)));
    return new Plant(onCurve, onCurve.arrangements().get(0));
  }

  /**
   * Judges by a function of the plant and a price of each change; what it confirms may be dearer.
   */
  record Known(ToDoubleFunction<Plant> worth, double change, double more, List<Double> confirmed)
      implements Tried.Judge {

    static Known of(ToDoubleFunction<Plant> worth, double change) {
      return new Known(worth, change, 0, new ArrayList<>());
    }

    @Override
    public Worth quick(Plant plant, int changed) {
      return new Worth(worth.applyAsDouble(plant), 0, 0, changed * change, Set.of());
    }

    @Override
    public Worth confirmed(Plant plant, Worth quick) {
      confirmed.add(quick.total());
      return new Worth(quick.energy(), 0, more, quick.effort(), Set.of());
    }
  }

  /** A bowl round a slope and a shift, steeper one way. */
  private static ToDoubleFunction<Plant> bowl(double slope, double shift) {
    return plant -> {
      double x = (SLOPE.of(plant) - slope) / 0.2;
      double y = (SHIFT.of(plant) - shift) / 3;
      return 1 + x * x + x * y + 2 * y * y;
    };
  }

  /** What a search leaves. */
  private record Found(Grid grid, Tried tried, Search.Ending ending) {
    double value(Setting setting) {
      return setting.of(grid.plant(tried.best()));
    }
  }

  private static Found search(Plant found, Tried.Judge judge, List<Plant> starts) {
    Grid grid = new Grid(found, BOTH);
    Tried tried = new Tried(grid, judge, Workers.ONE);
    Search search = new Search(grid, tried, List.of(0, 1), new Moves(grid, 5));
    List<Choice> choices = new ArrayList<>(List.of(grid.asFound()));
    starts.forEach(start -> choices.add(grid.of(start)));
    return new Found(grid, tried, search.from(choices));
  }

  @Test
  void findsTheLeastOfABowlOnWhatCanBeSet() {
    Found found = search(plant(0.5, 0), Known.of(bowl(1.35, 7), 0), List.of());
    assertThat(found.value(SLOPE)).isEqualTo(1.35);
    assertThat(found.value(SHIFT)).isEqualTo(7);
    assertThat(found.tried().least()).isCloseTo(1, within(1e-12));
    assertThat(found.tried().count()).isLessThan(100);
    assertThat(found.ending()).isEqualTo(Search.Ending.CONVERGED);
  }

  @Test
  void staysWithinTheLimits() {
    Found found = search(plant(0.5, 0), Known.of(bowl(9, 0), 0), List.of());
    assertThat(found.value(SLOPE)).isEqualTo(SLOPE.highest(plant(0.5, 0)));
  }

  /** Two hollows: the one near what was found is shallow, and cheaper where the searches begin. */
  @Test
  void takesTheBetterOfTwoHollows() {
    ToDoubleFunction<Plant> hollows =
        p -> Math.min(bowl(0.6, 0).applyAsDouble(p) + 0.2, bowl(2.5, -5).applyAsDouble(p));
    Found one = search(plant(0.5, 0), Known.of(hollows, 0), List.of());
    assertThat(one.value(SLOPE)).isCloseTo(0.6, within(0.06));
    Found several = search(plant(0.5, 0), Known.of(hollows, 0), List.of(plant(2.3, -5)));
    assertThat(several.value(SLOPE)).isEqualTo(2.5);
    assertThat(several.value(SHIFT)).isEqualTo(-5);
  }

  @Test
  void whatGainsLessThanAVisitStaysAsItWasFound() {
    ToDoubleFunction<Plant> flatInShift =
        p -> 1 + Math.pow(SLOPE.of(p) - 1.6, 2) + 1e-4 * Math.abs(SHIFT.of(p) - 8);
    Found found = search(plant(1.2, 3.7), Known.of(flatInShift, 0.003), List.of(plant(0.8, 9)));
    assertThat(found.value(SLOPE)).isCloseTo(1.6, within(0.05));
    assertThat(found.value(SHIFT)).isEqualTo(3.7);
    Found useless = search(plant(1.2, 3.7), Known.of(p -> 1, 0.003), List.of(plant(0.8, 9)));
    assertThat(useless.tried().best()).isEqualTo(useless.grid().asFound());
  }

  /** Too dear is too dear: by how much does not change the answer, and can be asked later. */
  @Test
  void whoStopsLookingAtEnoughFindsTheSame() {
    Plant found = plant(0.5, 0);
    ToDoubleFunction<Plant> bowl = bowl(1.35, 7);
    List<Plant> stopped = new ArrayList<>();
    Tried.Judge stopping =
        new Tried.Judge() {
          @Override
          public Worth quick(Plant plant, int changed) {
            return new Worth(bowl.applyAsDouble(plant), 0, 0, 0, Set.of());
          }

          @Override
          public Worth quick(Plant plant, int changed, double enough) {
            double worth = bowl.applyAsDouble(plant);
            if (worth > enough) {
              stopped.add(plant);
            }
            return new Worth(Math.min(worth, Math.nextUp(enough)), 0, 0, 0, Set.of());
          }

          @Override
          public Worth confirmed(Plant plant, Worth quick) {
            return quick;
          }
        };
    Found one = search(found, Known.of(bowl, 0), List.of(plant(2.3, -5)));
    Found other = search(found, stopping, List.of(plant(2.3, -5)));
    assertThat(stopped).isNotEmpty();
    assertThat(other.tried().best()).isEqualTo(one.tried().best());
    for (Plant plant : List.copyOf(stopped)) {
      assertThat(other.tried().look(other.grid().of(plant))).isEqualTo(bowl.applyAsDouble(plant));
    }
  }

  /** Two settings of which one hardly matters: what it gains beyond noise is kept, no more. */
  @Test
  void ofWhatIsWorthTheSameTheLeastChangeIsTaken() {
    ToDoubleFunction<Plant> nearlyFlat =
        p -> 1 + Math.pow(SLOPE.of(p) - 1.6, 2) + 1e-4 * Math.abs(SHIFT.of(p) - 12);
    Plant found = plant(1.2, 0);
    Grid grid = new Grid(found, BOTH);
    Tried tried = new Tried(grid, Known.of(nearlyFlat, 0), Workers.ONE);
    Search search = new Search(grid, tried, List.of(0, 1), new Moves(grid, 5));
    search.from(List.of(grid.asFound()));
    double least = tried.least();
    Choice before = tried.best();
    search.turnBack();
    Choice best = tried.best();
    Plant answer = grid.plant(best);
    assertThat(SHIFT.of(answer)).isBetween(1.0, 3.0);
    assertThat(SLOPE.of(answer)).isEqualTo(1.6);
    assertThat(tried.least()).isLessThanOrEqualTo(least * (1 + Search.ENOUGH));
    tried.thoroughly(List.of(before));
    assertThat(tried.best()).isEqualTo(best);
  }

  /** A staircase without end: every step further is better by more than noise. */
  @Test
  void saysWhenItMayTryNoMore() {
    Plant found = plant(0.5, 0);
    Grid grid = new Grid(found, BOTH);
    Tried tried =
        new Tried(grid, Known.of(p -> 1 / (SLOPE.of(p) * (30 + SHIFT.of(p))), 0), Workers.ONE);
    Search search = new Search(grid, tried, List.of(0, 1), new Moves(grid, 5));
    List<Choice> all =
        IntStream.range(0, grid.values(0))
            .boxed()
            .flatMap(i -> IntStream.range(0, 3).mapToObj(k -> grid.asFound().with(0, i).with(1, k)))
            .toList();
    assertThat(search.from(all)).isEqualTo(Search.Ending.TRIALS_USED_UP);
  }

  /** What looks better at first and is not when confirmed never becomes the answer. */
  @Test
  void theAnswerIsConfirmed() {
    Plant found = plant(0.5, 0);
    Grid grid = new Grid(found, BOTH);
    ToDoubleFunction<Plant> worth = bowl(0.9, 0);
    Tried.Judge cheating =
        new Tried.Judge() {
          @Override
          public Worth quick(Plant plant, int changed) {
            return new Worth(worth.applyAsDouble(plant), 0, 0, 0, Set.of());
          }

          @Override
          public Worth confirmed(Plant plant, Worth quick) {
            double miss = SLOPE.of(plant) > 0.7 ? 100 : 0;
            return new Worth(quick.energy(), 0, miss, 0, Set.of());
          }
        };
    Tried tried = new Tried(grid, cheating, Workers.ONE);
    Search search = new Search(grid, tried, List.of(0, 1), new Moves(grid, 5));
    search.from(List.of(grid.asFound()));
    assertThat(SLOPE.of(grid.plant(tried.best()))).isCloseTo(0.7, within(0.01));
  }

  @Test
  void whatCanBeSetIsAMark() {
    Plant plant = plant(1, 0);
    assertThat(SLOPE.settable(plant, 0.6749)).isEqualTo(0.65);
    assertThat(SLOPE.settable(plant, 0.01)).isEqualTo(0.2);
    assertThat(SLOPE.settable(plant, 99)).isEqualTo(3);
    assertThat(SHIFT.settable(plant, -2.6)).isEqualTo(-3);
    assertThat(SHIFT.onMark(plant, 3.7)).isFalse();
  }
}
