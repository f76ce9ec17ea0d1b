package settle.cli.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import settle.scenarios.ScenarioException;
import settle.scenarios.file.ScenarioFiles;
import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.weather.Weather;

/** Houses to measure: those of the tests, and the examples. */
final class Houses {

  private static final double DAY = 86_400;
  private static final double HOUR = 3600;

  /** The first of October among the days of a year, counted from 0. */
  private static final int OCTOBER = 273;

  /** Outdoor temperature, hourly, of a year that stands for every year. */
  private static final String HOURLY = "sim/src/test/resources/weather/seattle-hourly-normals.csv";

  private static final Path ROOT = Path.of(System.getProperty("bench.root", ".."));

  private Houses() {}

  /** The folder the sources are in. */
  static Path root() {
    return ROOT.toAbsolutePath().normalize();
  }

  /** The file of an example. */
  static Path exampleFile(String name) {
    return root().resolve("scenarios/examples/" + name + ".yaml");
  }

  /** An example as it stands, but for the length of its run. */
  static House example(String name, double days) {
    try {
      return lasting(ScenarioFiles.read(exampleFile(name)).house(), days);
    } catch (ScenarioException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The house with another length of run [d]. */
  static House lasting(House house, double days) {
    RunSettings run = house.run();
    return house.withRun(
        new RunSettings(
            run.startTemperature(),
            run.leadIn(),
            days * DAY,
            run.shortestStep(),
            run.longestStep(),
            run.profileTimes()));
  }

  /** The house in open hourly weather from the first of October on. */
  static House inHourlyWeather(House house) {
    double[] year = hourly();
    int hours = (int) Math.round(house.run().length() / HOUR) + 1;
    double[] temperature = new double[hours];
    for (int i = 0; i < hours; i++) {
      // The file begins with the second hour of the year.
      int hour = (OCTOBER * 24 + i) % 8760;
      temperature[i] = year[Math.max(hour - 1, 0)];
    }
    return house.withWeather(new Weather.Series(0, HOUR, temperature, new double[0]));
  }

  /** The house in days of 2 to 8 °C: a heat pump starts, stops and defrosts in all of them. */
  static House inCoolDays(House house) {
    return house.withWeather(new Weather.DesignDay(5, 3, 6 * HOUR));
  }

  private static double[] hourly() {
    try {
      List<String> lines =
          Files.readAllLines(root().resolve(HOURLY)).stream()
              .filter(line -> !line.startsWith("#"))
              .collect(Collectors.toList());
      int column = List.of(lines.get(0).split(",")).indexOf("temperature");
      return lines.stream()
          .skip(1)
          .mapToDouble(line -> Double.parseDouble(line.split(",")[column]))
          .toArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
