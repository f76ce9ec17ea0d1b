package settle.plots.gallery;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import settle.plots.SyntheticPlant;
import settle.sim.house.House;
import settle.sim.tuning.Flatness;
import settle.sim.tuning.FlowTemperature;
import settle.sim.tuning.Plant;
import settle.sim.tuning.Setting;
import settle.sim.tuning.Tuning;

/** Chart of how much each setting matters. */
class FlatCurvesTest {

  @Test
  void aSettingThatDoesNotMatterAtAllIsDrawnAllTheSame() {
    House house = SyntheticPlant.house(2, 24);
    Plant plant = new Plant(house, house.arrangements().get(0));
    Setting setting = new FlowTemperature();
    double tuned = setting.of(plant);
    Flatness flat =
        new Flatness(
            setting,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(
                new Flatness.Point(tuned - 5, 0),
                new Flatness.Point(tuned, 0),
                new Flatness.Point(tuned + 5, 0)));
    Tuning tuning =
        new Tuning(
            plant,
            plant,
            List.of(),
            null,
            null,
            List.of(flat),
            new Tuning.Searched(true, 3, 1),
            new Tuning.Prices(1, 0.1));
    assertThat(
            new FlatCurves(tuning, tuning.flatness(), 4)
                .chart("flatness", "How much each setting matters", "")
                .svg())
        .contains("flow temperature");
  }
}
