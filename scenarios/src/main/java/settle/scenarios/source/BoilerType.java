package settle.scenarios.source;

import settle.scenarios.definition.Described;
import settle.sim.source.Boiler;

/**
 * A boiler; the flow temperature of the pattern is replaced when it is placed.
 *
 * @param described its name and source
 * @param pattern everything but the flow temperature
 */
public record BoilerType(Described described, Boiler pattern) {

  /** One of it, set to a flow temperature [°C]. */
  public Boiler setTo(double flowTemperature) {
    return pattern.setTo(flowTemperature);
  }
}
