package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.sim.weather.Weather;

/** Hourly weather from a CSV file beside the scenario. */
class WeatherFileTest {

  @TempDir Path folder;
  private final StringBuilder csv = new StringBuilder("time,outdoor (°C),solar [W/m²]\n");

  @BeforeEach
  void threeDaysOfHours() {
    for (int hour = 0; hour < 72; hour++) {
      csv.append(
          "2026-01-%02dT%02d:00,%.1f,%d\n"
              .formatted(14 + hour / 24, hour % 24, hour * 0.1 - 3, hour % 24 == 12 ? 200 : 0));
    }
  }

  private Weather read(String weather, String run) throws Exception {
    Files.writeString(folder.resolve("weather.csv"), csv);
    Path file =
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            site: {weather: {series: {file: weather.csv%s}}}
            rooms: {hall: {size: 3 x 2 x 2.5 m}}
            arrangements: {a: {rooms: {hall: {emitter: skirting 140, length: 8 m}}}}
            source: {fixed flow: 55 °C}
            run: {%s}
            """
                .formatted(weather, run));
    return ScenarioReader.read(file).house().weather();
  }

  @Test
  void beginsAtTheFirstMidnight() throws Exception {
    Weather weather = read("", "length: 48 h");
    assertThat(weather.outdoorAt(0)).isCloseTo(-3, within(1e-12));
    assertThat(weather.outdoorAt(1800)).isCloseTo(-2.95, within(1e-12));
    assertThat(weather.meanIrradiance(11 * 3600, 13 * 3600)).isCloseTo(100, within(1e-9));
  }

  @Test
  void beginsAtTheDayAskedFor() throws Exception {
    Weather weather = read(", from: 2026-01-15", "length: 48 h, lead in: 24 h");
    assertThat(weather.outdoorAt(0)).isCloseTo(-0.6, within(1e-12));
    assertThat(weather.outdoorAt(-3600)).isCloseTo(-0.7, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-01-14T05:00,-2.5,0~ | '' | line 7: found 2026-01-14T06:00, expected 2026-01-14T05:00: a value is missing or the interval changes",
        "2026-01-14T05:00,-2.5 | 2026-01-14T03:00,-2.5 | line 7: found 2026-01-14T03:00 after 2026-01-14T04:00, expected times that ascend",
        "2026-01-14T05:00,-2.5 | 2026-01-14T04:00,-2.5 | line 7: found 2026-01-14T04:00 after 2026-01-14T04:00, expected times that ascend",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,,0 | line 7: found outdoor '', expected a number",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,NaN,0 | line 7: found outdoor NaN, expected -60 to 60",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,-99,0 | line 7: found outdoor -99, expected -60 to 60",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,-2.5 | line 7: found 2 values, expected one under every heading",
        "2026-01-14T05:00 | 14.01.2026 05:00 | line 7: found '14.01.2026 05:00', expected a time such as 2026-01-15T06:00",
        "outdoor (°C) | temperature | 'line 1: found the headings time, temperature, solar [W/m²]; expected time, outdoor and, if known, solar'",
      })
  void gapsAndDisorderAreErrors(String find, String replace, String message) {
    String text = csv.toString();
    String found = find.replace('~', '\n');
    assertThat(text).contains(found);
    csv.setLength(0);
    csv.append(text.replace(found, replace));
    assertThat(problem("", "length: 24 h")).endsWith("'weather.csv': " + message);
  }

  @Test
  void theRunMustBeCovered() {
    assertThat(problem("", "length: 96 h"))
        .endsWith(
            "'weather.csv': covers 2026-01-14T00:00 to 2026-01-16T23:00; the run needs 2026-01-14T00:00 to"
                + " 2026-01-18T00:00");
    assertThat(problem(", from: 2026-01-13", "length: 24 h")).contains("covers 2026-01-14T00:00");
  }

  private String problem(String weather, String run) {
    return catchThrowableOfType(ScenarioException.class, () -> read(weather, run)).getMessage();
  }
}
