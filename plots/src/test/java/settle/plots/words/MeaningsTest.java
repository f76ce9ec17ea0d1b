package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import settle.plots.SyntheticRuns;
import settle.sim.house.House;

class MeaningsTest {

  private final House house = SyntheticRuns.house(4, 48);
  private final Meanings warm =
      new Meanings(new Comparison(house, SyntheticRuns.results(house, false)));
  private final Meanings cold =
      new Meanings(new Comparison(house, SyntheticRuns.results(house, true)));

  /** The invented front runs at 0.06 m/s along 11 m. */
  @Test
  void theFrontIsReadOffTheProfilesUntilItArrives() {
    assertThat(warm.ofProfiles(3))
        .startsWith("In bedroom 2 the hot front has come 1.8 m after 30 s, 3.")
        .contains(
            " m after 1 min and 7.",
            " m after 2 min; after 30 min the far end, 11.0 m along, is at ")
        .doesNotContain("5 min;");
  }

  @Test
  void roomsThatNeverGetWarmAreNamed() {
    assertThat(warm.ofRooms())
        .contains("all 4 heated rooms get warm and stay so in every heating period");
    assertThat(cold.ofRooms()).contains("With “radiators” bedroom 2 never gets warm");
    assertThat(cold.ofWarmUp()).contains("bedroom 2 not at all in the time simulated");
    assertThat(cold.ofValve(3))
        .contains("bedroom 2 never gets warm, so its head never has to close");
  }

  @Test
  void theBoilerIsToldFromItsReturn() {
    assertThat(warm.ofFlowAndReturn())
        .contains(
            "water returns at 47.1 °C on average and at most at 52.4 °C; it enters the boiler at 48.3 °C while that fires, and 21 % of the flue's vapour condenses");
    assertThat(warm.ofFirstHours())
        .contains("the source starts 1.1 times an hour, and its shortest firing lasts 4 min");
  }

  @Test
  void heatIsAddedUp() {
    assertThat(warm.ofHeat())
        .contains(
            "With “skirting” the rooms get 26.0 kWh from emitters and 2.0 kWh from pipes, most of it in bedroom 2 (30 %)");
  }
}
