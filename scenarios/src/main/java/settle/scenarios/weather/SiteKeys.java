package settle.scenarios.weather;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.TimeOfDay;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;

/** Where the house stands and what the weather does. */
public final class SiteKeys {

  private static final String FROM_MIDNIGHT = "counted from the midnight at which the run begins";

  public static final Key STEP_FROM = Key.required("from", Forms.OUTDOOR, "temperature before");
  public static final Key STEP_TO = Key.required("to", Forms.OUTDOOR, "temperature after");
  public static final Key STEP_AT =
      Key.required("at", Forms.WITHIN_A_RUN, "when it changes, " + FROM_MIDNIGHT);
  public static final Key RAMP_OVER =
      Key.required(
          "over",
          Forms.of(Dimension.DURATION, 1, 400 * Forms.DAY, "a second to the longest run"),
          "how long the change takes");

  public static final Key DAY_MEAN = Key.required("mean", Forms.OUTDOOR, "mean of the day");
  public static final Key DAY_AMPLITUDE =
      Key.optional(
              "amplitude",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 25, "steady to a desert")
                  .usually(0, 12),
              "half the difference between warmest and coldest hour")
          .orElse("3 K", "an overcast winter day, " + PRACTICE);
  public static final Key DAY_COLDEST =
      Key.optional("coldest at", new TimeOfDay(), "hour of the lowest temperature")
          .orElse("06:00", "about an hour before a winter sunrise, " + PRACTICE);

  public static final Key SERIES_FILE =
      Key.required("file", new Words(), "CSV file, its path relative to the scenario");
  public static final Key SERIES_FROM =
      Key.optional("from", new Form.Day(), "day on which the run begins, at its midnight")
          .orElse("the first midnight in the file");
  public static final Key SERIES_EVERY_YEAR =
      Key.optional(
              "every year",
              new Form.YesNo(),
              "whether the file's first year stands for every year: December is followed by its January, and the year of 'from' does not matter")
          .orElse("no", "the file holds the very days that are simulated");

  public static final Key CONSTANT =
      Key.optional("constant", Forms.OUTDOOR, "one outdoor temperature for the whole run");
  public static final Key STEP =
      Key.optional(
          "step",
          new Keys(Table.of("one temperature, then another at once", STEP_FROM, STEP_TO, STEP_AT)),
          "a sudden change");
  public static final Key RAMP =
      Key.optional(
          "ramp",
          new Keys(
              Table.of(
                  "an even change from one temperature to another",
                  STEP_FROM,
                  STEP_TO,
                  STEP_AT,
                  RAMP_OVER)),
          "an even change");
  public static final Key DESIGN_DAY =
      Key.optional(
          "design day",
          new Keys(
              Table.of(
                  "a day that repeats: mean plus a sine", DAY_MEAN, DAY_AMPLITUDE, DAY_COLDEST)),
          "a day that repeats");
  public static final Key SERIES =
      Key.optional(
          "series",
          new Keys(
              Table.of(
                  "values at equal intervals from a CSV file with the columns time (or date), outdoor (or temperature, °C) and, if known, solar (W/m²); up to 6 h that are missing are filled by straight lines",
                  SERIES_FILE,
                  SERIES_FROM,
                  SERIES_EVERY_YEAR)),
          "measured or typical weather");

  public static final Table WEATHER_TABLE =
      Table.of("outdoor temperature over the run").oneOf(CONSTANT, STEP, RAMP, DESIGN_DAY, SERIES);

  public static final Key DESIGN_OUTDOOR =
      Key.optional("design outdoor", Forms.OUTDOOR, "outdoor design temperature")
          .orElse("-3 °C", "usual design value in lowland Britain, from memory");
  public static final Key ANNUAL_MEAN =
      Key.optional("annual mean", Forms.OUTDOOR, "annual mean outdoor temperature")
          .orElse("10 °C", "lowland Britain, " + PRACTICE);
  public static final Key GROUND =
      Key.optional("ground", Forms.OUTDOOR, "temperature of the ground under floors")
          .orElse("the annual mean outdoor temperature");
  public static final Key NEIGHBOURS =
      Key.optional("neighbours", Forms.WANT, "temperature behind party walls")
          .orElse("18 °C", "a heated neighbour, " + PRACTICE);
  public static final Key WEATHER =
      Key.optional("weather", new Keys(WEATHER_TABLE), "outdoor temperature over the run")
          .orElse("constant at the outdoor design temperature");

  public static final Table TABLE =
      Table.of("where the house stands", DESIGN_OUTDOOR, ANNUAL_MEAN, GROUND, NEIGHBOURS, WEATHER);

  private SiteKeys() {}
}
