package settle.scenarios.weather;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.format.Form;
import settle.scenarios.format.Form.Keys;
import settle.scenarios.format.Form.TimeOfDay;
import settle.scenarios.format.Form.Words;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.scenarios.quantity.NumberText;
import settle.sim.house.RunSettings;
import settle.sim.units.Times;
import settle.sim.weather.Weather;

/** Where the house stands and what the weather does. */
public final class SiteSection {

  private static final String FROM_MIDNIGHT = "counted from the midnight at which the run begins";

  private static final Key STEP_FROM = Key.required("from", Forms.OUTDOOR, "temperature before");
  private static final Key STEP_TO = Key.required("to", Forms.OUTDOOR, "temperature after");
  private static final Key STEP_AT =
      Key.required("at", Forms.WITHIN_A_RUN, "when it changes, " + FROM_MIDNIGHT);
  private static final Key RAMP_OVER =
      Key.required(
          "over",
          Forms.of(Dimension.DURATION, 1, 400 * Times.DAY, "a second to the longest run"),
          "how long the change takes");

  private static final Key DAY_MEAN = Key.required("mean", Forms.OUTDOOR, "mean of the day");
  private static final Key DAY_AMPLITUDE =
      Key.optional(
              "amplitude",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 25, "steady to a desert")
                  .usually(0, 12),
              "half the difference between warmest and coldest hour")
          .orElse("3 K", "an overcast winter day, " + PRACTICE);
  private static final Key DAY_COLDEST =
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

  private static final Key CONSTANT =
      Key.optional("constant", Forms.OUTDOOR, "one outdoor temperature for the whole run");
  private static final Key STEP =
      Key.optional(
          "step",
          new Keys(Table.of("one temperature, then another at once", STEP_FROM, STEP_TO, STEP_AT)),
          "a sudden change");
  private static final Key RAMP =
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
  private static final Key DESIGN_DAY =
      Key.optional(
          "design day",
          new Keys(
              Table.of(
                  "a day that repeats: mean plus a sine", DAY_MEAN, DAY_AMPLITUDE, DAY_COLDEST)),
          "a day that repeats");
  private static final Key SERIES =
      Key.optional(
          "series",
          new Keys(
              Table.of(
                  "values at equal intervals from a CSV file with the columns time (or date), outdoor (or temperature, °C) and, if known, solar (W/m²); gaps of up to 6 h are filled by interpolation",
                  SERIES_FILE,
                  SERIES_FROM,
                  SERIES_EVERY_YEAR)),
          "measured or typical weather");

  private static final Table WEATHER_TABLE =
      Table.of("outdoor temperature over the run").oneOf(CONSTANT, STEP, RAMP, DESIGN_DAY, SERIES);

  public static final Key DESIGN_OUTDOOR =
      Key.optional("design outdoor", Forms.OUTDOOR, "design outdoor temperature")
          .orElse("-3 °C", "usual design value in lowland Britain, from memory");
  private static final Key ANNUAL_MEAN =
      Key.optional("annual mean", Forms.OUTDOOR, "annual mean outdoor temperature")
          .orElse("10 °C", "lowland Britain, " + PRACTICE);
  private static final Key GROUND =
      Key.optional(
              "ground", Forms.OUTDOOR, "temperature of the ground under floors, in all weather")
          .orElse(
              "the annual mean outdoor temperature, and under slabs colder in cold weather: at the"
                  + " design outdoor temperature by the factor 1.45 of EN 12831:2003, from memory");
  private static final Key FLOOR_DIMENSION =
      Key.optional(
              "floor dimension",
              Forms.of(Dimension.LENGTH, 0.5, 200, "a shed to a hall").usually(1.5, 30),
              "area of the ground floor over half its exposed perimeter, B' of ISO 13370")
          .orElse(
              "from the floors to the ground and the outside walls of their rooms, ISO 13370:2017,"
                  + " from memory; for a single room 4 m, a small house, "
                  + PRACTICE);
  private static final Key THERMAL_BRIDGES =
      Key.optional(
              "thermal bridges",
              Forms.of(Dimension.TRANSMITTANCE, 0, 1, "none to bare steel").usually(0, 0.2),
              "what thermal bridges add to the U-value of all that faces outdoors")
          .orElse(
              "0.05 W/m²K",
              "new and built by the rules, EN 12831-1:2017 Table B.1, from memory; 0.02 minimised,"
                  + " 0.10 others, 0.15 insulated inside and broken by solid ceilings");
  private static final Key NEIGHBOURS =
      Key.optional("neighbours", Forms.WANT, "temperature behind party walls")
          .orElse("18 °C", "a heated neighbour, " + PRACTICE);
  private static final Key WEATHER =
      Key.optional("weather", new Keys(WEATHER_TABLE), "outdoor temperature over the run")
          .orElse("constant at the design outdoor temperature");

  public static final Table TABLE =
      Table.of(
          "where the house stands",
          DESIGN_OUTDOOR,
          ANNUAL_MEAN,
          GROUND,
          NEIGHBOURS,
          FLOOR_DIMENSION,
          THERMAL_BRIDGES,
          WEATHER);

  /** Factor on the heat that floors lose to the ground in design weather, less 1 [-]. */
  private static final double YEARLY_SWING = 0.45;

  /** B' of a small house [m]; common practice, no source. */
  private static final double SMALL_HOUSE = 4;

  /** Most of the soil's conductance that leads outdoors [-]. */
  private static final double MOST_SWING = 0.9;

  private final Section section;
  private final double designOutdoor;

  /** Read when the first surface needs them: else they would be listed as defaults used. */
  private double ground = Double.NaN;

  private double neighbours = Double.NaN;

  public SiteSection(Section section) {
    this.section = section;
    designOutdoor = section.number(DESIGN_OUTDOOR);
  }

  /** Design outdoor temperature [°C]. */
  public double designOutdoor() {
    return designOutdoor;
  }

  /** Temperature of the ground, in the mean of the year where it is not declared [°C]. */
  public double ground() {
    if (Double.isNaN(ground)) {
      ground =
          section.has(GROUND)
              ? section.number(GROUND)
              : section.number(GROUND, section.number(ANNUAL_MEAN));
    }
    return ground;
  }

  /**
   * Share of the soil's conductance under a slab that leads outdoors, so that at the design outdoor
   * temperature 1.45 times as much is lost as to the annual mean, and no more than that in the mean
   * of the year [-]; none where the ground is declared.
   *
   * @param room temperature of the room [°C]
   */
  public double groundSwing(double room) {
    double warmer = ground() - designOutdoor;
    if (section.has(GROUND) || !(warmer > 0)) {
      return 0;
    }
    return Math.min(Math.max(YEARLY_SWING * (room - ground()) / warmer, 0), MOST_SWING);
  }

  /** That of a small house, where one room does not tell [m]. */
  public double floorDimension() {
    return section.number(FLOOR_DIMENSION, SMALL_HOUSE);
  }

  /**
   * Area of the ground floor over half its exposed perimeter [m].
   *
   * @param area of all floors to the ground [m²]
   * @param exposed length of the outside walls of their rooms [m]
   */
  public double floorDimension(double area, double exposed) {
    Form.Quantity form = (Form.Quantity) FLOOR_DIMENSION.form();
    double found =
        Math.min(Math.max(2 * area / Math.max(exposed, 0.01), form.least()), form.most());
    return section.number(FLOOR_DIMENSION, NumberText.rounded(found, 2));
  }

  /**
   * What thermal bridges add to U-values [W/(m²K)]. If it is not declared, its effect is told
   * beside the default.
   *
   * @param areaTimesDifference area to outdoors times difference to design outdoor temperature,
   *     over all rooms [m²K]
   */
  public double thermalBridges(double areaTimesDifference) {
    if (section.has(THERMAL_BRIDGES)) {
      return section.number(THERMAL_BRIDGES);
    }
    double taken = THERMAL_BRIDGES.fallbackNumber();
    String effect =
        Dimension.POWER.show(NumberText.rounded(taken * areaTimesDifference, 0))
            + " in design weather; ";
    section.noteDefault(
        THERMAL_BRIDGES.name(), THERMAL_BRIDGES.fallback(), effect + THERMAL_BRIDGES.reason());
    return taken;
  }

  /** Temperature behind party walls [°C]. */
  public double neighbours() {
    if (Double.isNaN(neighbours)) {
      neighbours = section.number(NEIGHBOURS);
    }
    return neighbours;
  }

  /**
   * The weather.
   *
   * @param folder what lies beside the scenario
   * @param run what the weather must cover
   */
  public Weather weather(ScenarioFolder folder, RunSettings run) {
    if (!section.has(WEATHER)) {
      section.note(WEATHER, "constant " + Dimension.TEMPERATURE.show(designOutdoor));
      return new Weather.Constant(designOutdoor);
    }
    Section weather = section.section(WEATHER);
    if (weather.has(CONSTANT)) {
      return new Weather.Constant(weather.number(CONSTANT));
    }
    if (weather.has(STEP)) {
      Section step = weather.section(STEP);
      return new Weather.Change(
          step.number(STEP_FROM), step.number(STEP_TO), step.number(STEP_AT), 0);
    }
    if (weather.has(RAMP)) {
      Section ramp = weather.section(RAMP);
      return new Weather.Change(
          ramp.number(STEP_FROM),
          ramp.number(STEP_TO),
          ramp.number(STEP_AT),
          ramp.number(RAMP_OVER));
    }
    if (weather.has(DESIGN_DAY)) {
      Section day = weather.section(DESIGN_DAY);
      return new Weather.DesignDay(
          day.number(DAY_MEAN), day.number(DAY_AMPLITUDE), day.timeOfDay(DAY_COLDEST));
    }
    if (weather.has(SERIES)) {
      return WeatherFile.read(weather.section(SERIES), folder, run);
    }
    return new Weather.Constant(designOutdoor);
  }
}
