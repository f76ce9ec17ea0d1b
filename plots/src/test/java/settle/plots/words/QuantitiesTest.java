package settle.plots.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class QuantitiesTest {

  @Test
  void timesReadAsPeopleSayThem() {
    assertThat(Quantities.duration(30)).isEqualTo("30 s");
    assertThat(Quantities.duration(60)).isEqualTo("1 min");
    assertThat(Quantities.duration(90)).isEqualTo("90 s");
    assertThat(Quantities.duration(50 * 60)).isEqualTo("50 min");
    assertThat(Quantities.duration(95 * 60)).isEqualTo("1 h 35 min");
    assertThat(Quantities.duration(48 * 3600)).isEqualTo("48 h");
    assertThat(Quantities.duration(212 * 86_400)).isEqualTo("212 days");
  }

  @Test
  void minutesThatRoundUpToAnHourAreAnHour() {
    assertThat(Quantities.duration(3599)).isEqualTo("1 h");
    assertThat(Quantities.duration(7199)).isEqualTo("2 h");
  }

  @Test
  void neverIsAnAnswer() {
    assertThat(Quantities.warmUp(OptionalDouble.empty())).isEqualTo("never");
    assertThat(Quantities.warmUp(OptionalDouble.of(5700))).isEqualTo("1 h 35 min");
  }

  @Test
  void everyFigureCarriesItsUnit() {
    assertThat(Quantities.temperature(20.84)).isEqualTo("20.8 °C");
    assertThat(Quantities.setting(21)).isEqualTo("21 °C");
    assertThat(Quantities.setting(20.5)).isEqualTo("20.5 °C");
    assertThat(Quantities.difference(0.46)).isEqualTo("0.5 K");
    assertThat(Quantities.power(850.4)).isEqualTo("850 W");
    assertThat(Quantities.power(1480)).isEqualTo("1.48 kW");
    assertThat(Quantities.power(999.7)).isEqualTo("1.00 kW");
    assertThat(Quantities.energy(77.04e6)).isEqualTo("21.4 kWh");
    assertThat(Quantities.degreeHours(3.14)).isEqualTo("3.1 K h");
  }

  @Test
  void sharesReachTheirEndsOnlyWhenTrue() {
    assertThat(Quantities.share(0)).isEqualTo("0 %");
    assertThat(Quantities.share(0.001)).isEqualTo("under 1 %");
    assertThat(Quantities.share(0.93)).isEqualTo("93 %");
    assertThat(Quantities.share(0.999)).isEqualTo("over 99 %");
    assertThat(Quantities.share(1 - 1e-12)).isEqualTo("100 %");
    assertThat(Quantities.share(1)).isEqualTo("100 %");
  }

  @Test
  void minusIsAMinusAndZeroHasNone() {
    assertThat(Quantities.temperature(-3)).isEqualTo("\u22123.0 °C");
    assertThat(Quantities.temperature(-0.04)).isEqualTo("0.0 °C");
    assertThat(Quantities.number(Double.NaN, 1)).isEqualTo("–");
  }

  @Test
  void whatShouldBeNothingIsToldByItsSize() {
    assertThat(Quantities.magnitude(0)).isEqualTo("0e+00");
    assertThat(Quantities.magnitude(3.7e-13)).isEqualTo("4e-13");
    assertThat(Quantities.magnitude(9.7e-4)).isEqualTo("1e-03");
    assertThat(Quantities.magnitude(12)).isEqualTo("1e+01");
  }
}
