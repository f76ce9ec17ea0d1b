package settle.sim.valve;

import settle.sim.units.Range;

/**
 * An electrothermal actuator switched by a thermostat of its room: opens below set-point -
 * differential/2, shuts above set-point + differential/2, its stroke straight in time.
 *
 * @param name what it is called
 * @param setPoint room temperature it holds [°C]
 * @param differential full switching differential [K]
 * @param travelTime from shut to open, and back [s]
 * @param kvMaximum K_vs: fully open [m³/h at 1 bar]
 * @param sensing which room temperature its thermostat feels
 */
public record OnOffActuator(
    String name,
    double setPoint,
    double differential,
    double travelTime,
    double kvMaximum,
    RoomSensing sensing)
    implements Valve {

  public OnOffActuator {
    Range.positive("differential of '" + name + "'", differential, "K");
    Range.positive("travel time of '" + name + "'", travelTime, "s");
    Range.positive("Kvs of '" + name + "'", kvMaximum, "m³/h");
  }
}
