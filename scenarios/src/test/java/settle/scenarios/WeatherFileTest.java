package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import settle.scenarios.file.ScenarioFiles;
import settle.scenarios.finding.Finding;
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
    return scenario(weather, run).house().weather();
  }

  private Scenario scenario(String weather, String run) throws Exception {
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
    return ScenarioFiles.read(file);
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
        "2026-01-14T05:00,-2.5,0~2026-01-14T06:00,-2.4,0~2026-01-14T07:00,-2.3,0~2026-01-14T08:00,-2.2,0~2026-01-14T09:00,-2.1,0~2026-01-14T10:00,-2.0,0~ | '' | line 7: found 2026-01-14T11:00, expected 2026-01-14T05:00: the interval changes, or more is missing than 6 h",
        "2026-01-14T05:00 | 2026-01-14T05:30 | line 7: found 2026-01-14T05:30, expected 2026-01-14T05:00: the interval changes, or more is missing than 6 h",
        "2026-01-14T05:00,-2.5 | 2026-01-14T03:00,-2.5 | line 7: found 2026-01-14T03:00 after 2026-01-14T04:00, expected times that ascend",
        "2026-01-14T05:00,-2.5 | 2026-01-14T04:00,-2.5 | line 7: found 2026-01-14T04:00 after 2026-01-14T04:00, expected times that ascend",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,?,0 | line 7: found outdoor '?', expected a number",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,NaN,0 | line 7: found outdoor NaN, expected -60 to 60",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,-99,0 | line 7: found outdoor -99, expected -60 to 60",
        "2026-01-14T05:00,-2.5,0 | 2026-01-14T05:00,-2.5 | line 7: found 2 values, expected one under every heading",
        "2026-01-14T05:00 | 14.01.2026 05:00 | line 7: found '14.01.2026 05:00', expected a time such as 2026-01-15T06:00",
        "outdoor (°C) | air | 'line 1: has no heading ''outdoor''; expected time, outdoor and, if known, solar'",
      })
  void gapsAndDisorderAreErrors(String find, String replace, String message) {
    String text = csv.toString();
    String found = find.replace('~', '\n');
    assertThat(text).contains(found);
    csv.setLength(0);
    csv.append(text.replace(found, replace));
    assertThat(problem("", "length: 24 h")).endsWith("'weather.csv': " + message);
  }

  private List<Finding> warnings(String weather, String run) throws Exception {
    return scenario(weather, run).warnings();
  }

  /** A line left out, an empty value: both as a straight line, and told. */
  @Test
  void someMissingHoursAreFilledAndTold() throws Exception {
    String text = csv.toString();
    csv.setLength(0);
    csv.append(
        text.replace("2026-01-14T05:00,-2.5,0\n2026-01-14T06:00,-2.4,0\n", "")
            .replace("2026-01-15T12:00,0.6,200", "2026-01-15T12:00,,200")
            .replace("2026-01-14T07:00,-2.3", "2026-01-14T07:00,-1"));
    Weather weather = read("", "length: 48 h");
    assertThat(weather.outdoorAt(4 * 3600)).isCloseTo(-2.6, within(1e-12));
    assertThat(weather.outdoorAt(5 * 3600)).isCloseTo(-2.6 + 1.6 / 3, within(1e-12));
    assertThat(weather.outdoorAt(6 * 3600)).isCloseTo(-2.6 + 3.2 / 3, within(1e-12));
    assertThat(weather.outdoorAt(36 * 3600)).isCloseTo(0.6, within(1e-12));
    assertThat(weather.meanIrradiance(35 * 3600, 37 * 3600)).isZero();
    assertThat(warnings("", "length: 48 h"))
        .anySatisfy(w -> assertThat(w.toString()).contains("3 missing values were filled"));
  }

  @Test
  void headingsOfOpenDataAreUnderstoodAndOtherColumnsPassedOver() throws Exception {
    String text = csv.toString().replaceAll("(?m)^([^,]*,)", "$11013,");
    csv.setLength(0);
    csv.append(text.replace("time,1013,outdoor (°C)", "date,pressure,temperature"));
    assertThat(read("", "length: 48 h").outdoorAt(3600)).isCloseTo(-2.9, within(1e-12));
    assertThat(read("", "length: 48 h").firstDay()).contains(LocalDate.of(2026, 1, 14));
  }

  /** A year that begins an hour late, as some do: day of the year as its temperature. */
  private void oneYear() {
    csv.setLength(0);
    csv.append("time,outdoor\n");
    LocalDateTime time = LocalDateTime.of(2010, 1, 1, 1, 0);
    while (time.getYear() == 2010) {
      csv.append(time + "," + time.getDayOfYear() / 10.0 + "\n");
      time = time.plusHours(1);
    }
  }

  @Test
  void aYearMayStandForEveryYear() throws Exception {
    oneYear();
    String round = ", every year: yes, from: 2024-10-01";
    Weather weather = read(round, "length: 212 d, lead in: 72 h");
    int october = 274;
    assertThat(weather.firstDay()).contains(LocalDate.of(2010, 10, 1));
    assertThat(weather.outdoorAt(12 * 3600)).isCloseTo(october / 10.0, within(1e-9));
    assertThat(weather.outdoorAt(-60 * 3600)).isCloseTo((october - 3) / 10.0, within(1e-9));
    int newYear = 92 * 24;
    assertThat(weather.outdoorAt((newYear - 1) * 3600.0)).isCloseTo(36.5, within(1e-9));
    assertThat(weather.outdoorAt(newYear * 3600.0)).isCloseTo(18.3, within(1e-9));
    assertThat(weather.outdoorAt((newYear + 1) * 3600.0)).isCloseTo(0.1, within(1e-9));
    assertThat(weather.outdoorAt((newYear + 30 * 24 + 12) * 3600.0)).isCloseTo(3.1, within(1e-9));
    assertThat(warnings(round, "length: 212 d"))
        .anySatisfy(w -> assertThat(w.toString()).contains("a missing value was filled"));
  }

  @Test
  void aYearThatDoesNotStandForEveryYearEnds() {
    oneYear();
    assertThat(problem(", from: 2010-10-01", "length: 212 d"))
        .contains("covers 2010-01-01T01:00 to 2010-12-31T23:00; the run needs 2010-10-01");
  }

  @Test
  void lessThanAYearCannotStandForEveryYear() {
    assertThat(problem(", every year: yes", "length: 48 h"))
        .endsWith(
            "covers 2026-01-14T00:00 to 2026-01-16T23:00: less than the year that is to stand for every year");
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
