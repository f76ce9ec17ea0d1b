package settle.scenarios.source;

import settle.scenarios.definition.Described;
import settle.sim.source.HeatPump;

/**
 * A heat pump; the flow temperature of the pattern is replaced when it is placed.
 *
 * @param described its name and source
 * @param pattern everything but the flow temperature
 */
public record HeatPumpType(Described described, HeatPump pattern) {

  /** One of it, set to a flow temperature, at most its highest [°C]. */
  public HeatPump setTo(double flowTemperature) {
    return pattern.setTo(flowTemperature);
  }
}
