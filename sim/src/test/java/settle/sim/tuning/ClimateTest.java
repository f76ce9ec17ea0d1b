package settle.sim.tuning;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import settle.sim.study.ClimateBins;
import settle.sim.study.EuropeanSeason;

/** The weather a plant is tuned for. */
class ClimateTest {

  @Test
  void aTenthOfTheHeatIsMadeInMilderWeatherThanAMildDay() {
    ClimateBins bins = EuropeanSeason.AVERAGE.fittedTo(-3);
    double mild = Climate.of(-3).mild();
    double milder = 0;
    double all = 0;
    for (int i = 0; i < bins.outdoor().length; i++) {
      double heat = bins.hours()[i] * (EuropeanSeason.NO_LOAD - bins.outdoor()[i]);
      all += heat;
      milder += bins.outdoor()[i] > mild ? heat : 0;
    }
    assertThat(milder / all).isBetween(0.05, 0.1);
    assertThat(Climate.of(-3).usual()).isBetween(-3.0, mild);
  }

  @Test
  void whereThereIsNoSeasonItsOwnWeatherIsAllThereIs() {
    assertThat(Climate.of(18)).isEqualTo(new Climate(18, 18));
  }
}
