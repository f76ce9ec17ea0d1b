package settle.scenarios.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.quantity.QuantityException;

/** What surveys write in their cells. Factors: the foot is 0.3048 m by definition. */
class MeasureTest {

  private static double read(Measure measure, String typed, String unit, Decimals decimals)
      throws QuantityException {
    return measure
        .read(typed, unit == null ? null : measure.unit(unit).orElseThrow(), decimals)
        .si();
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "LENGTH | 4.2 m | 4.2",
        "LENGTH | 4200mm | 4.2",
        "LENGTH | 420 cm | 4.2",
        "LENGTH | 12'6\" | 3.81",
        "LENGTH | 12' 6\" | 3.81",
        "LENGTH | 12'-6\" | 3.81",
        "LENGTH | 12′6″ | 3.81",
        "LENGTH | 12’6” | 3.81",
        "LENGTH | 12'6 | 3.81",
        "LENGTH | 12 ft 6 in | 3.81",
        "LENGTH | 12ft 6ins | 3.81",
        "LENGTH | 12 feet 6 inches | 3.81",
        "LENGTH | 12' 6 1/2\" | 3.8227",
        "LENGTH | 12'6½\" | 3.8227",
        "LENGTH | 12' | 3.6576",
        "LENGTH | 12.5 ft | 3.81",
        "LENGTH | 12.5' | 3.81",
        "LENGTH | 150\" | 3.81",
        "LENGTH | 150 in | 3.81",
        "LENGTH | 6 1/2 in | 0.1651",
        "AREA | 18 m² | 18",
        "AREA | 18 sqm | 18",
        "AREA | 200 sq ft | 18.580608",
        "AREA | 200 ft2 | 18.580608",
        "HEAT_LOSS | 1450 W | 1450",
        "HEAT_LOSS | 1.45 kW | 1450",
        "HEAT_LOSS | 1,450 W | 1450",
        "HEAT_LOSS | 1 450 W | 1450",
        "HEAT_LOSS | 1000 BTU/h | 293.0711",
        "HEAT_LOSS | 1000 Btu/hr | 293.0711",
        "HEAT_LOSS | 1000 btuh | 293.0711",
        "HEAT_LOSS | 1000 BTUs | 293.0711",
        "HEAT_LOSS | 5 MBH | 1465.3554",
        "HEAT_LOSS | 58 W/K | 58",
        "HEAT_LOSS | 58 W/°C | 58",
        "HEAT_LOSS | 100 BTU/h°F | 52.75279",
        "TEMPERATURE | 21 °C | 21",
        "TEMPERATURE | 21C | 21",
        "TEMPERATURE | -3 ℃ | -3",
        "TEMPERATURE | −3 °C | -3",
        "TEMPERATURE | 70 °F | 21.11111",
        "TEMPERATURE | 27F | -2.77778"
      })
  void unitsInTheCell(Measure measure, String typed, double si) throws Exception {
    assertThat(read(measure, typed, null, Decimals.POINT)).isCloseTo(si, within(5e-5));
  }

  @ParameterizedTest
  @CsvSource({"W, 58, false", "W/K, 58, true", "kW, 58000, false", "BTU/h, 16.99812, false"})
  void unitsInTheHeading(String unit, double si, boolean perKelvin) throws Exception {
    Measure.Value value =
        Measure.HEAT_LOSS.read("58", Measure.HEAT_LOSS.unit(unit).orElseThrow(), Decimals.POINT);
    assertThat(value.si()).isCloseTo(si, within(5e-5));
    assertThat(value.unit().perKelvin()).isEqualTo(perKelvin);
    // What stands in the cell counts.
    assertThat(read(Measure.HEAT_LOSS, "1 W", unit, Decimals.POINT)).isEqualTo(1);
  }

  @ParameterizedTest
  @CsvSource(
      quoteCharacter = '`',
      delimiter = '|',
      value = {
        "LENGTH | 4.2 | found 4.2 without a unit, expected a length such as 4.2 m or 13'9\"",
        "LENGTH | 12'15\" | found 12'15\", expected fewer than 12 inches",
        "LENGTH | about 4 m | found about 4 m, expected a length such as 4.2 m or 13'9\"",
        "LENGTH | =B2*2 | found =B2*2, expected a length such as 4.2 m or 13'9\"",
        "TEMPERATURE | 21 K | found 21 K, expected a temperature such as 21 °C or 70 °F; units are °C, °F",
        "HEAT_LOSS | 14 kWh | found 14 kWh, expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K; the nearest unit is 'kW'",
        "HEAT_LOSS | 1.2.3 W | found 1.2.3, expected a number",
        "HEAT_LOSS | NaN | found NaN, expected a heat loss such as 1450 W, 4950 BTU/h or 58 W/K"
      })
  void whatIsNoneIsTold(Measure measure, String typed, String message) {
    assertThatThrownBy(() -> read(measure, typed, null, Decimals.POINT))
        .isInstanceOf(QuantityException.class)
        .hasMessage(message);
  }

  @Test
  void numbersTogetherSayWhichMarkIsTheDecimalOne() throws Exception {
    Decimals comma = Decimals.of(List.of("1.450", "21,5", "3"), ';');
    assertThat(comma).isEqualTo(Decimals.COMMA);
    assertThat(comma.read("1.450")).isEqualTo(1450);
    assertThat(comma.read("1,450")).isEqualTo(1.45);
    Decimals point = Decimals.of(List.of("1,450", "21.5"), ',');
    assertThat(point).isEqualTo(Decimals.POINT);
    assertThat(point.read("1,450")).isEqualTo(1450);
    assertThat(point.read("12,345,678")).isEqualTo(12345678);
    assertThat(point.read("2.400")).isEqualTo(2.4);
    assertThat(point.read("1,450.5")).isEqualTo(1450.5);
    assertThat(comma.read("1.450,5")).isEqualTo(1450.5);
    assertThat(Decimals.of(List.of("0,450"), ';').read("0,450")).isEqualTo(0.45);
    // Between commas a number without decimals has a comma between thousands.
    assertThat(Decimals.of(List.of("1,450"), ',').read("1,450")).isEqualTo(1450);
    Decimals unknown = Decimals.of(List.of("1.450", "2.400"), ';');
    assertThat(unknown.read("1450")).isEqualTo(1450);
    assertThatThrownBy(() -> unknown.read("2.400"))
        .hasMessage("found 2.400, which may be 2.4 or 2400; expected no mark between thousands");
  }
}
