package settle.scenarios.weather;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.time.Duration;
import java.time.LocalDate;
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
import settle.scenarios.document.Node;
import settle.scenarios.document.PlainText;
import settle.scenarios.document.Position;
import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.format.Section;
import settle.scenarios.format.Value;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.RunSettings;
import settle.sim.weather.Weather;

/**
 * Reads weather at equal intervals from a CSV file: a heading, then {@code time} (local standard
 * time, {@code 2026-01-15T06:00}), {@code outdoor} [°C] and, where known, {@code solar} [W/m2];
 * {@code date} and {@code temperature} are understood too. Units may follow a heading in brackets,
 * other columns are passed over. Some hours that are missing are filled by straight lines, with a
 * warning; a longer gap or disorder is an error, as is a value that is no number or cannot be
 * weather.
 *
 * <p>One year of values may stand for every year: the season then runs on from December into the
 * January of the same file.
 */
final class WeatherFile {

  /** A year at intervals of a minute is about 15 MB. */
  private static final int MOST_BYTES = 20_000_000;

  private static final List<String> TIME = List.of("time", "date");
  private static final List<String> OUTDOOR = List.of("outdoor", "temperature");
  private static final List<String> SOLAR = List.of("solar");

  /**
   * Longest stretch of missing values that a straight line may stand for; longer ones would lose a
   * morning or an afternoon.
   */
  private static final Duration LONGEST_GAP = Duration.ofHours(6);

  private static final Duration SHORTEST_INTERVAL = Duration.ofSeconds(10);

  /** A year at intervals of twenty seconds. */
  private static final int MOST_VALUES = 1_600_000;

  private static final double COLDEST = -60;
  private static final double HOTTEST = 60;
  private static final double BRIGHTEST = 1500;
  private static final int LAST_YEAR = 9998;

  private final List<LocalDateTime> times = new ArrayList<>();
  private final List<Double> temperatures = new ArrayList<>();
  private final List<Double> irradiances = new ArrayList<>();
  private int filled;

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
   * @param folder what lies beside the scenario
   * @param run what the series must cover
   * @return the weather; a stand-in where the file cannot be used
   */
  static Weather read(Section section, ScenarioFolder folder, RunSettings run) {
    Optional<Value> file = section.value(SiteSection.SERIES_FILE);
    if (file.isEmpty()) {
      return new Weather.Constant(0);
    }
    String name = file.get().words();
    WeatherFile weather = new WeatherFile();
    try {
      weather.parse(folder.text(name, "a CSV", MOST_BYTES));
      return weather.series(section, run);
    } catch (DocumentException e) {
      DocumentException.Fault fault = e.faults().get(0);
      String line = fault.position().line() > 1 ? "line " + fault.position().line() + ": " : "";
      file.get().problem("'" + name + "': " + line + fault.message());
    } catch (Fault e) {
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
        // What the file says instead is not repeated: it may be no weather at all.
        throw new Fault(
            1,
            "has no heading '"
                + (time < 0 ? TIME : OUTDOOR).get(0)
                + "'; expected time, outdoor and, if known, solar");
      }
      for (CSVRecord row : parser) {
        add(row, parser.getCurrentLineNumber(), time, outdoor, solar);
      }
    } catch (IllegalArgumentException e) {
      throw new Fault(1, "has a heading twice; expected time, outdoor and, if known, solar");
    } catch (IOException | UncheckedIOException e) {
      throw new Fault("is not a CSV file: " + PlainText.line(String.valueOf(e.getMessage())));
    }
    if (times.size() < 2) {
      throw new Fault("has " + times.size() + " values; expected at least two");
    }
  }

  /**
   * Column whose heading begins with one of some words; what follows in brackets is its unit. -1
   * where there is none.
   */
  private static int column(Map<String, Integer> headings, List<String> words) {
    for (Map.Entry<String, Integer> heading : headings.entrySet()) {
      String plain =
          heading.getKey().toLowerCase(Locale.ROOT).replaceFirst("\\s*[(\\[].*", "").strip();
      if (words.contains(plain)) {
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
    if (row.get(outdoor).isBlank() || (solar >= 0 && row.get(solar).isBlank())) {
      return; // as if the line were not there
    }
    int n = times.size();
    if (n >= 1 && !at.isAfter(times.get(n - 1))) {
      throw new Fault(
          line, "found " + at + " after " + times.get(n - 1) + ", expected times that ascend");
    }
    double temperature = number(row.get(outdoor), line, OUTDOOR.get(0), COLDEST, HOTTEST);
    double irradiance = solar < 0 ? 0 : number(row.get(solar), line, SOLAR.get(0), 0, BRIGHTEST);
    if (n == 1 && Duration.between(times.get(0), at).compareTo(SHORTEST_INTERVAL) < 0) {
      throw new Fault(
          line,
          "found "
              + at
              + " after "
              + times.get(0)
              + ", expected values at least "
              + seconds(SHORTEST_INTERVAL)
              + " s apart");
    }
    if (n >= 2) {
      fill(at, temperature, irradiance, line);
    }
    if (n >= MOST_VALUES) {
      throw new Fault(
          line, "is the " + (MOST_VALUES + 1) + "th value, expected no more than " + MOST_VALUES);
    }
    times.add(at);
    temperatures.add(temperature);
    if (solar >= 0) {
      irradiances.add(irradiance);
    }
  }

  /** Straight lines over what is missing before a value, if it is not too much. */
  private void fill(LocalDateTime at, double temperature, double irradiance, long line)
      throws Fault {
    int last = times.size() - 1;
    Duration interval = interval();
    LocalDateTime expected = times.get(last).plus(interval);
    Duration gap = Duration.between(times.get(last), at);
    long parts = wholeParts(gap, interval);
    if (!interval.multipliedBy(parts).equals(gap)
        || (parts > 1 && gap.compareTo(LONGEST_GAP) > 0)) {
      throw new Fault(
          line,
          "found "
              + at
              + ", expected "
              + expected
              + ": the interval changes, or more is missing than "
              + LONGEST_GAP.toHours()
              + " h");
    }
    if (times.size() + parts > MOST_VALUES) {
      throw new Fault(line, "leaves more than " + MOST_VALUES + " values once gaps are filled");
    }
    for (long k = 1; k < parts; k++) {
      double share = (double) k / parts;
      times.add(times.get(last).plus(interval.multipliedBy(k)));
      temperatures.add(between(temperatures.get(last), temperature, share));
      if (!irradiances.isEmpty()) {
        irradiances.add(between(irradiances.get(last), irradiance, share));
      }
      filled++;
    }
  }

  private static double between(double from, double to, double share) {
    return from + share * (to - from);
  }

  private Duration interval() {
    return Duration.between(times.get(0), times.get(1));
  }

  /** How often an interval fits; a browser's Duration cannot say. */
  private static long wholeParts(Duration whole, Duration interval) {
    return nanoseconds(whole).divide(nanoseconds(interval)).longValue();
  }

  @SuppressWarnings("JavaDurationGetSecondsToToSeconds") // nor has a browser's Duration that
  private static long seconds(Duration duration) {
    return duration.getSeconds();
  }

  private static BigInteger nanoseconds(Duration duration) {
    return BigInteger.valueOf(duration.getSeconds())
        .multiply(BigInteger.valueOf(1_000_000_000))
        .add(BigInteger.valueOf(duration.getNano()));
  }

  private static String shown(String text) {
    return new Node.Text(text, true, Position.START).found();
  }

  private static LocalDateTime time(String text, long line) throws Fault {
    try {
      LocalDateTime time = LocalDateTime.parse(text.replace(' ', 'T'));
      if (time.getYear() >= 1 && time.getYear() <= LAST_YEAR) {
        return time;
      }
    } catch (DateTimeParseException e) {
      // Said below.
    }
    throw new Fault(line, "found '" + shown(text) + "', expected a time such as 2026-01-15T06:00");
  }

  private static double number(String text, long line, String what, double least, double most)
      throws Fault {
    double value;
    try {
      value = Double.parseDouble(text);
    } catch (NumberFormatException e) {
      throw new Fault(line, "found " + what + " '" + shown(text) + "', expected a number");
    }
    if (!(value >= least && value <= most)) {
      throw new Fault(
          line,
          "found " + what + " " + shown(text) + ", expected " + (int) least + " to " + (int) most);
    }
    return value;
  }

  private Weather series(Section section, RunSettings run) throws Fault {
    LocalDateTime first = times.get(0);
    double interval = seconds(interval());
    boolean everyYear = section.yesNo(SiteSection.SERIES_EVERY_YEAR);
    if (everyYear) {
      closeYears();
    }
    LocalDateTime begin = begin(section, everyYear);
    double firstTime = seconds(Duration.between(begin, first));
    if (filled > 0) {
      section.warn(
          (filled == 1 ? "a missing value was" : filled + " missing values were")
              + " filled by a straight line");
    }
    if (everyYear) {
      // From the last value before the run, however many years round.
      long from = (long) Math.floor((-run.leadIn() - firstTime) / interval);
      int count = (int) Math.ceil((run.leadIn() + run.length()) / interval) + 2;
      return new Weather.Series(
          begin.toLocalDate(),
          firstTime + from * interval,
          interval,
          around(temperatures, from, count),
          around(irradiances, from, count));
    }
    LocalDateTime last = times.get(times.size() - 1);
    double lastTime = seconds(Duration.between(begin, last));
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
    return new Weather.Series(
        begin.toLocalDate(), firstTime, interval, array(temperatures), array(irradiances));
  }

  /** The midnight at which the run begins. */
  private LocalDateTime begin(Section section, boolean everyYear) {
    LocalDateTime first = times.get(0);
    Optional<Value> from = section.value(SiteSection.SERIES_FROM);
    if (from.isPresent()) {
      LocalDate day = from.get().day();
      return (everyYear ? day.withYear(first.getYear()) : day).atStartOfDay();
    }
    LocalDateTime begin =
        first.toLocalTime().equals(LocalTime.MIDNIGHT)
            ? first
            : first.toLocalDate().plusDays(1).atStartOfDay();
    section.note(SiteSection.SERIES_FROM, begin.toLocalDate().toString());
    return begin;
  }

  /** Cuts the values to one year and fills what is missing at its end. */
  private void closeYears() throws Fault {
    LocalDateTime first = times.get(0);
    int last = times.size() - 1;
    LocalDateTime again = first.plusYears(1);
    Duration gap = Duration.between(times.get(last), again);
    if (gap.compareTo(LONGEST_GAP) > 0) {
      throw new Fault(
          "covers "
              + first
              + " to "
              + times.get(last)
              + ": less than the year that is to stand for every year");
    }
    if (gap.compareTo(interval()) > 0) {
      fill(again, temperatures.get(0), irradiances.isEmpty() ? 0 : irradiances.get(0), last + 2);
    }
    int year = (int) wholeParts(Duration.between(first, again), interval());
    for (List<Double> values : List.of(temperatures, irradiances)) {
      if (values.size() > year) {
        values.subList(year, values.size()).clear();
      }
    }
  }

  /** So many values from one on, the first following the last. */
  private static double[] around(List<Double> values, long from, int count) {
    double[] array = new double[values.isEmpty() ? 0 : count];
    for (int i = 0; i < array.length; i++) {
      array[i] = values.get((int) Math.floorMod(from + i, (long) values.size()));
    }
    return array;
  }

  private static double[] array(List<Double> values) {
    double[] array = new double[values.size()];
    for (int i = 0; i < array.length; i++) {
      array[i] = values.get(i);
    }
    return array;
  }
}
