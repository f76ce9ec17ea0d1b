package settle.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.weather.Weather;

/**
 * Open hourly data as it is found, through the reader: the normals of 1981 to 2010 at
 * Seattle-Tacoma (NOAA; source and licence are in the file). What is expected was worked out from
 * the file by other code.
 */
class OpenWeatherTest {

  private static final Path DATA =
      Path.of("..", "sim", "src", "test", "resources", "weather", "seattle-hourly-normals.csv");

  /** In the file, whose first day has 23 hours. */
  private static final int HOURS = 8759;

  private static final int[] MONTH_DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  @TempDir Path folder;
  private Weather year;

  @BeforeEach
  void aWholeYear() throws Exception {
    year = read("2010-01-01", "365 d");
  }

  private Weather read(String from, String length) throws Exception {
    Files.copy(
        DATA, folder.resolve("hours.csv"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    Path file =
        Files.writeString(
            folder.resolve("house.yaml"),
            """
            site: {weather: {series: {file: hours.csv, every year: yes, from: %s}}}
            rooms: {hall: {size: 3 x 2 x 2.5 m}}
            arrangements: {a: {rooms: {hall: {emitter: skirting 140, length: 8 m}}}}
            source: {fixed flow: 55 °C}
            run: {length: %s}
            """
                .formatted(from, length));
    return ScenarioFiles.read(file).house().weather();
  }

  private double at(int hour) {
    return year.outdoorAt(hour * 3600.0);
  }

  private double mean(int from, int to) {
    return IntStream.range(from, to).mapToDouble(this::at).average().orElseThrow();
  }

  @Test
  void theYearIsAsItIsInTheFile() {
    assertThat(mean(1, HOURS + 1)).isCloseTo(11.1276, within(5e-5));
    assertThat(IntStream.range(1, HOURS + 1).mapToDouble(this::at).min()).hasValue(3.1);
    assertThat(IntStream.range(1, HOURS + 1).mapToDouble(this::at).max()).hasValue(24.4);
    assertThat(IntStream.range(1, HOURS + 1).filter(h -> at(h) < 10 - 1e-9)).hasSize(4207);
    assertThat(IntStream.range(1, HOURS + 1).filter(h -> at(h) < 5 - 1e-9)).hasSize(1065);
  }

  @Test
  void itsMonthsAreThoseOfTheFile() {
    double[] means = {5.39, 6.11, 7.74, 9.81, 12.89, 15.56, 18.27, 18.40, 15.67, 11.24, 7.32, 4.74};
    int from = 0;
    for (int month = 0; month < 12; month++) {
      int to = from + 24 * MONTH_DAYS[month];
      assertThat(mean(Math.max(from, 1), to))
          .as("month %d", month)
          .isCloseTo(means[month], within(0.005));
      from = to;
    }
  }

  @Test
  void aSeasonRunsOnIntoTheNextYear() throws Exception {
    Weather season = read("2010-10-01", "212 d");
    int newYear = 24 * (31 + 30 + 31);
    int october = 24 * 273;
    for (int hour = 0; hour < newYear; hour++) {
      assertThat(season.outdoorAt(hour * 3600.0)).isCloseTo(at(october + hour), within(1e-9));
    }
    for (int hour = newYear; hour < 24 * 212; hour++) {
      assertThat(season.outdoorAt(hour * 3600.0)).isCloseTo(at(hour - newYear), within(1e-9));
    }
  }
}
