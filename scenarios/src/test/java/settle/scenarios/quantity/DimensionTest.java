package settle.scenarios.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DimensionTest {

  /**
   * Factors: the SI definitions of the prefixes, hour, day, litre and bar; metre of water after ISO
   * 80000-3 gravity.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "TEMPERATURE | 21 °C | 21",
        "TEMPERATURE | -3.5 degC | -3.5",
        "TEMPERATURE | −3 °C | -3",
        "TEMPERATURE | 21 C | 21",
        "TEMPERATURE_DIFFERENCE | 2 K | 2",
        "LENGTH | 15 mm | 0.015",
        "LENGTH | 4.2 m | 4.2",
        "LENGTH | 3 cm | 0.03",
        "AREA | 18 m² | 18",
        "AREA | 18m2 | 18",
        "AREA | 18 m^2 | 18",
        "VOLUME | 12 l | 0.012",
        "DURATION | 30 min | 1800",
        "DURATION | 1.5 h | 5400",
        "DURATION | 2 d | 172800",
        "DURATION | 2 days | 172800",
        "AIR_CHANGE | 0.8 /h | 0.8",
        "AIR_CHANGE | 0.8 1/h | 0.8",
        "AIR_CHANGE | 0.8 h^-1 | 0.8",
        "POWER | 1.2 kW | 1200",
        "POWER_PER_LENGTH | 130 W/m | 130",
        "TRANSMITTANCE | 0.35 W/m²K | 0.35",
        "TRANSMITTANCE | 0.35 W/(m² K) | 0.35",
        "TRANSMITTANCE | 0.35 W/(m2·K) | 0.35",
        "TRANSMITTANCE | 0.35 W/m2K | 0.35",
        "RESISTANCE | 0.18 m2K/W | 0.18",
        "CONDUCTANCE | 20 W/K | 20",
        "CONDUCTIVITY | 0.77 W/(m K) | 0.77",
        "DENSITY | 1700 kg/m3 | 1700",
        "SPECIFIC_HEAT | 0.88 kJ/kgK | 880",
        "HEAT_CAPACITY | 15 kJ/K | 15000",
        "AREAL_CAPACITY | 110 kJ/m2K | 110000",
        "MASS_PER_LENGTH | 1.5 kg/m | 1.5",
        "VOLUME_PER_LENGTH | 0.3 l/m | 0.0003",
        "FLOW | 90 l/h | 2.5e-5",
        "FLOW | 1.5 l/min | 2.5e-5",
        "FLOW_COEFFICIENT | 0.5 m³/h | 0.5",
        "FLOW_COEFFICIENT | 0.5 | 0.5",
        "PRESSURE | 20 kPa | 20000",
        "PRESSURE | 200 mbar | 20000",
        "PRESSURE | 2 m | 19613.3",
        "SHIFT_PER_PRESSURE | 0.5 K/bar | 0.5",
        "SHARE | 30 % | 0.3",
        "SHARE | 0.3 | 0.3",
        "ENERGY | 80 kJ | 80000",
        "ENERGY | 0.08 MJ | 80000",
        "ENERGY_PRICE | 0.27 /kWh | 0.27",
        "ENERGY_PRICE | 0.27 1/kWh | 0.27",
        "ENERGY_CARBON | 0.15 kg/kWh | 0.15",
        "ENERGY_CARBON | 150 g/kWh | 0.15",
        "NUMBER | 1.3 | 1.3",
        "NUMBER | 1e1 | 10",
      })
  void readsTheTradesSpellings(Dimension dimension, String text, double si) throws Exception {
    assertThat(dimension.parse(text)).isCloseTo(si, within(1e-12 * Math.max(1, Math.abs(si))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "AREA | 18 m | found 18 m, which is a length; expected an area such as 18 m²",
        "TEMPERATURE | 21 K | found 21 K, which is a temperature difference; expected a temperature such as 21 °C",
        "TEMPERATURE_DIFFERENCE | 2 °C | found 2 °C, which is a temperature; expected a temperature difference such as 2 K",
        "AIR_CHANGE | 0,8 /h | found 0,8 /h, expected a decimal point, not a comma: 0.8 /h",
        "TEMPERATURE | 21 | found 21 without a unit, expected a temperature such as 21 °C",
        "TEMPERATURE | NaN °C | found NaN °C, expected a temperature such as 21 °C",
        "TEMPERATURE | .inf | found .inf, expected a temperature such as 21 °C",
        "TEMPERATURE | -Infinity °C | found -Infinity °C, expected a temperature such as 21 °C",
        "TEMPERATURE | 1e999 °C | found 1e999 °C, expected a finite number",
        "TEMPERATURE | warm | found warm, expected a temperature such as 21 °C",
        "TEMPERATURE | '' | found nothing, expected a temperature such as 21 °C",
        "POWER | 5 btu | 'found 5 btu, expected a power such as 1200 W; the unit ''btu'' is not known here, use W or kW'",
        "ENERGY_PRICE | 0.15 kg/kWh | found 0.15 kg/kWh, which is CO2 per energy; expected a price of energy such as 0.27 /kWh",
        "ENERGY_PRICE | 0.27 | found 0.27 without a unit, expected a price of energy such as 0.27 /kWh",
        "NUMBER | 1.3 K | found 1.3 K, expected a number without a unit",
        "LENGTH | 4.2 m 3 | 'found 4.2 m 3, which is a volume; expected a length such as 4.2 m'",
        "SHARE | 30 W | found 30 W, which is a power; expected a share such as 30 %",
      })
  void saysWhatWasFoundAndWhatWasExpected(Dimension dimension, String text, String message) {
    assertThatThrownBy(() -> dimension.parse(text))
        .isInstanceOf(QuantityException.class)
        .hasMessage(message);
  }

  @ParameterizedTest
  @EnumSource(Dimension.class)
  void theExampleInAMessageIsItselfRight(Dimension dimension) throws Exception {
    String example = dimension.expected().replaceFirst(".* such as ", "");
    assertThat(dimension.show(dimension.parse(example))).isEqualTo(example);
  }

  /** Round trip: what is shown is read back, to the four digits shown. */
  @Property
  void whatIsShownIsReadBack(
      @ForAll Dimension dimension, @ForAll @DoubleRange(min = -1e5, max = 1e5) double si)
      throws Exception {
    assertThat(dimension.parse(dimension.show(si))).isCloseTo(si, within(5.001e-4 * Math.abs(si)));
  }

  /** Round trip: every unit of every dimension, full digits, with and without the space. */
  @Property
  void everyUnitIsReadBack(
      @ForAll Dimension dimension,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double number,
      @ForAll boolean space)
      throws Exception {
    for (Unit unit : dimension.units()) {
      String text = number + (space || unit.symbol().startsWith("1") ? " " : "") + unit.symbol();
      assertThat(dimension.parse(text)).isEqualTo(number * unit.inSi());
    }
  }

  @Test
  void timesAreShownAsPeopleSayThem() {
    assertThat(Dimension.DURATION.show(5400)).isEqualTo("90 min");
    assertThat(Dimension.DURATION.show(172_800)).isEqualTo("48 h");
    assertThat(Dimension.DURATION.show(7 * 86_400)).isEqualTo("7 d");
    assertThat(Dimension.DURATION.show(10)).isEqualTo("10 s");
    assertThat(Dimension.LENGTH.show(0.0136)).isEqualTo("13.6 mm");
  }
}
