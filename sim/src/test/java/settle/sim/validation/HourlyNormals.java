package settle.sim.validation;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import settle.sim.weather.Weather;

/**
 * Open hourly weather: the normals of 1981 to 2010 at Seattle-Tacoma, a year of 8759 hours from 1
 * January 01:00 on. Averages over thirty years, so without any cold snap: fit for sums over a
 * season, not for a design day.
 */
final class HourlyNormals {

  private static final String FILE = "/weather/seattle-hourly-normals.csv";
  private static final double HOUR = 3600;

  /** From 1 October to 30 April, in days of the year counted from 0; the second after new year. */
  private static final int OCTOBER = 273;

  private static final int SEASON_DAYS = 212;

  private final double[] temperature;

  private HourlyNormals(double[] temperature) {
    this.temperature = temperature;
  }

  static HourlyNormals read() {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setCommentMarker('#')
            .get();
    try (Reader reader =
        new InputStreamReader(
            HourlyNormals.class.getResourceAsStream(FILE), StandardCharsets.UTF_8)) {
      List<Double> values = new ArrayList<>();
      for (CSVRecord row : format.parse(reader)) {
        values.add(Double.parseDouble(row.get("temperature")));
      }
      return new HourlyNormals(values.stream().mapToDouble(Double::doubleValue).toArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The year; time 0 is the midnight at its beginning. */
  Weather year() {
    return new Weather.Series(HOUR, HOUR, temperature, new double[0]);
  }

  /** The heating season from 1 October to 30 April; time 0 is its first midnight. */
  Weather season() {
    double[] hours = new double[SEASON_DAYS * 24 + 1];
    for (int i = 0; i < hours.length; i++) {
      int hour = (OCTOBER * 24 + i) % 8760;
      // The hour that the file lacks lies between those beside it.
      hours[i] =
          hour == 0
              ? (temperature[temperature.length - 1] + temperature[0]) / 2
              : temperature[hour - 1];
    }
    return new Weather.Series(0, HOUR, hours, new double[0]);
  }

  static double seasonSeconds() {
    return SEASON_DAYS * 24 * HOUR;
  }

  /** Sum over the hours of the year, as the weather gives them. */
  static double overYear(Weather year, DoubleUnaryOperator of) {
    double sum = 0;
    for (int h = 1; h < 8760; h++) {
      sum += of.applyAsDouble(year.outdoorAt(h * HOUR));
    }
    return sum;
  }

  /** Degree-hours of the season below a base [K h]. */
  static double seasonDegreeHours(Weather season, double base) {
    double sum = 0;
    for (int h = 0; h < SEASON_DAYS * 24; h++) {
      sum += Math.max(base - season.outdoorAt((h + 0.5) * HOUR), 0);
    }
    return sum;
  }
}
