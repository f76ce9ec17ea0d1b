package settle.scenarios.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import settle.scenarios.document.DocumentException;
import settle.scenarios.document.TextFile;
import settle.scenarios.format.Section;
import settle.scenarios.format.SiteKeys;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.RunSettings;
import settle.sim.weather.Weather;

/**
 * Reads weather at equal intervals from a CSV file: a heading, then {@code time} (local standard
 * time, {@code 2026-01-15T06:00}), {@code outdoor} [°C] and, where known, {@code solar} [W/m2].
 * Units may follow a heading in brackets. A gap or disorder is an error, as is a value that is no
 * number or cannot be weather.
 */
final class WeatherFile {

  /** A year at intervals of a minute is about 15 MB. */
  private static final int MOST_BYTES = 20_000_000;

  private static final String TIME = "time";
  private static final String OUTDOOR = "outdoor";
  private static final String SOLAR = "solar";
  private static final double COLDEST = -60;
  private static final double HOTTEST = 60;
  private static final double BRIGHTEST = 1500;

  private final List<LocalDateTime> times = new ArrayList<>();
  private final List<Double> temperatures = new ArrayList<>();
  private final List<Double> irradiances = new ArrayList<>();

  /** Something wrong in the file: line and what. */
  private static final class Fault extends Exception {
    private static final long serialVersionUID = 1L;

    Fault(long line, String message) {
      super("line " + line + ": " + message);
    }

    Fault(String message) {
      super(message);
    }
  }

  private WeatherFile() {}

  /**
   * The series of a scenario. Mistakes are noted at the file's name in the scenario.
   *
   * @param section the section 'series'
   * @param folder where the file's name is looked up
   * @param run what the series must cover
   * @return the weather; a stand-in where the file cannot be used
   */
  static Weather read(Section section, Path folder, RunSettings run) {
    Optional<Value> file = section.value(SiteKeys.SERIES_FILE);
    if (file.isEmpty()) {
      return new Weather.Constant(0);
    }
    String name = file.get().words();
    WeatherFile weather = new WeatherFile();
    try {
      weather.parse(TextFile.read(folder.resolve(name), "a CSV", MOST_BYTES));
      return weather.series(section, run);
    } catch (DocumentException e) {
      DocumentException.Fault fault = e.faults().get(0);
      String line = fault.position().line() > 1 ? "line " + fault.position().line() + ": " : "";
      file.get().problem("'" + name + "': " + line + fault.message());
    } catch (InvalidPathException | Fault e) {
      file.get().problem("'" + name + "': " + e.getMessage());
    }
    return new Weather.Constant(0);
  }

  private void parse(String text) throws Fault {
    CSVFormat format =
        CSVFormat.DEFAULT
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreSurroundingSpaces(true)
            .setIgnoreEmptyLines(true)
            .setAllowMissingColumnNames(true)
            .setCommentMarker('#')
            .get();
    try (CSVParser parser = CSVParser.parse(text, format)) {
      Map<String, Integer> headings = parser.getHeaderMap();
      int time = column(headings, TIME);
      int outdoor = column(headings, OUTDOOR);
      int solar = column(headings, SOLAR);
      if (time < 0 || outdoor < 0) {
        throw new Fault(
            1,
            "found the headings "
                + String.join(", ", headings.keySet())
                + "; expected time, outdoor and, if known, solar");
      }
      for (CSVRecord row : parser) {
        add(row, parser.getCurrentLineNumber(), time, outdoor, solar);
      }
    } catch (IOException | UncheckedIOException | IllegalArgumentException e) {
      throw new Fault("is not a CSV file: " + e.getMessage());
    }
    if (times.size() < 2) {
      throw new Fault("has " + times.size() + " values; expected at least two");
    }
  }

  /**
   * Column whose heading begins with a word; what follows in brackets is its unit. -1 where there
   * is none.
   */
  private static int column(Map<String, Integer> headings, String word) {
    for (Map.Entry<String, Integer> heading : headings.entrySet()) {
      String plain =
          heading.getKey().toLowerCase(Locale.ROOT).replaceFirst("\\s*[(\\[].*", "").strip();
      if (plain.equals(word)) {
        return heading.getValue();
      }
    }
    return -1;
  }

  private void add(CSVRecord row, long line, int time, int outdoor, int solar) throws Fault {
    if (row.size() <= Math.max(time, Math.max(outdoor, solar))) {
      throw new Fault(line, "found " + row.size() + " values, expected one under every heading");
    }
    LocalDateTime at = time(row.get(time), line);
    int n = times.size();
    if (n >= 1 && !at.isAfter(times.get(n - 1))) {
      throw new Fault(
          line, "found " + at + " after " + times.get(n - 1) + ", expected times that ascend");
    }
    if (n >= 2) {
      Duration interval = Duration.between(times.get(0), times.get(1));
      LocalDateTime expected = times.get(n - 1).plus(interval);
      if (!at.equals(expected)) {
        throw new Fault(
            line,
            "found "
                + at
                + ", expected "
                + expected
                + ": a value is missing or the interval changes");
      }
    }
    times.add(at);
    temperatures.add(number(row.get(outdoor), line, OUTDOOR, COLDEST, HOTTEST));
    if (solar >= 0) {
      irradiances.add(number(row.get(solar), line, SOLAR, 0, BRIGHTEST));
    }
  }

  private static LocalDateTime time(String text, long line) throws Fault {
    try {
      return LocalDateTime.parse(text.replace(' ', 'T'));
    } catch (DateTimeParseException e) {
      throw new Fault(line, "found '" + text + "', expected a time such as 2026-01-15T06:00");
    }
  }

  private static double number(String text, long line, String what, double least, double most)
      throws Fault {
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new Fault(line, "found " + what + " '" + text + "', expected a number");
    }
    if (!(value >= least && value <= most)) {
      throw new Fault(
          line, "found " + what + " " + text + ", expected " + (int) least + " to " + (int) most);
    }
    return value;
  }

  private Weather series(Section section, RunSettings run) throws Fault {
    LocalDateTime first = times.get(0);
    LocalDateTime last = times.get(times.size() - 1);
    LocalDateTime begin;
    Optional<Value> from = section.value(SiteKeys.SERIES_FROM);
    if (from.isPresent()) {
      begin = from.get().day().atStartOfDay();
    } else {
      begin =
          first.toLocalTime().equals(LocalTime.MIDNIGHT)
              ? first
              : first.toLocalDate().plusDays(1).atStartOfDay();
      section.note(SiteKeys.SERIES_FROM, begin.toLocalDate().toString());
    }
    double firstTime = Duration.between(begin, first).toSeconds();
    double lastTime = Duration.between(begin, last).toSeconds();
    double interval = Duration.between(times.get(0), times.get(1)).toSeconds();
    // The last value stands for its own interval.
    if (firstTime > 0 || lastTime + interval < run.length()) {
      throw new Fault(
          "covers "
              + first
              + " to "
              + last
              + "; the run needs "
              + begin
              + " to "
              + begin.plusSeconds((long) run.length()));
    }
    if (firstTime > -run.leadIn()) {
      section.warn(
          "the lead-in of "
              + Dimension.DURATION.show(run.leadIn())
              + " begins before the first value of the file, which is held until then");
    }
    return new Weather.Series(firstTime, interval, array(temperatures), array(irradiances));
  }

  private static double[] array(List<Double> values) {
    double[] array = new double[values.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = values.get(i);
    }
    return array;
  }
}
