package settle.scenarios.weather;

import settle.scenarios.document.ScenarioFolder;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.house.RunSettings;
import settle.sim.weather.Weather;

/** Reads the section 'site'. */
public final class SiteReader {

  private final Section section;
  private final double designOutdoor;

  /** Read when the first surface needs them: else they would be listed as defaults used. */
  private double ground = Double.NaN;

  private double neighbours = Double.NaN;

  public SiteReader(Section section) {
    this.section = section;
    designOutdoor = section.number(SiteKeys.DESIGN_OUTDOOR);
  }

  /** Outdoor design temperature [°C]. */
  public double designOutdoor() {
    return designOutdoor;
  }

  /** Temperature under floors on the ground [°C]. */
  public double ground() {
    if (Double.isNaN(ground)) {
      ground =
          section.has(SiteKeys.GROUND)
              ? section.number(SiteKeys.GROUND)
              : section.number(SiteKeys.GROUND, section.number(SiteKeys.ANNUAL_MEAN));
    }
    return ground;
  }

  /** Temperature behind party walls [°C]. */
  public double neighbours() {
    if (Double.isNaN(neighbours)) {
      neighbours = section.number(SiteKeys.NEIGHBOURS);
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
    if (!section.has(SiteKeys.WEATHER)) {
      section.note(SiteKeys.WEATHER, "constant " + Dimension.TEMPERATURE.show(designOutdoor));
      return new Weather.Constant(designOutdoor);
    }
    Section weather = section.section(SiteKeys.WEATHER);
    if (weather.has(SiteKeys.CONSTANT)) {
      return new Weather.Constant(weather.number(SiteKeys.CONSTANT));
    }
    if (weather.has(SiteKeys.STEP)) {
      Section step = weather.section(SiteKeys.STEP);
      return new Weather.Change(
          step.number(SiteKeys.STEP_FROM),
          step.number(SiteKeys.STEP_TO),
          step.number(SiteKeys.STEP_AT),
          0);
    }
    if (weather.has(SiteKeys.RAMP)) {
      Section ramp = weather.section(SiteKeys.RAMP);
      return new Weather.Change(
          ramp.number(SiteKeys.STEP_FROM),
          ramp.number(SiteKeys.STEP_TO),
          ramp.number(SiteKeys.STEP_AT),
          ramp.number(SiteKeys.RAMP_OVER));
    }
    if (weather.has(SiteKeys.DESIGN_DAY)) {
      Section day = weather.section(SiteKeys.DESIGN_DAY);
      return new Weather.DesignDay(
          day.number(SiteKeys.DAY_MEAN),
          day.number(SiteKeys.DAY_AMPLITUDE),
          day.timeOfDay(SiteKeys.DAY_COLDEST));
    }
    if (weather.has(SiteKeys.SERIES)) {
      return WeatherFile.read(weather.section(SiteKeys.SERIES), folder, run);
    }
    return new Weather.Constant(designOutdoor);
  }
}
