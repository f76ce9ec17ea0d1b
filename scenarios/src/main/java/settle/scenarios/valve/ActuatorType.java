package settle.scenarios.valve;

import static settle.scenarios.format.Forms.PRACTICE;

import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.valve.OnOffActuator;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;

/**
 * An on/off actuator, switched by a thermostat of its room.
 *
 * @param described its name and source
 * @param differential of the thermostat [K]
 * @param travelTime from shut to open, and back [s]
 * @param kvOpen fully open [m³/h at 1 bar]
 * @param sensing what the thermostat feels
 */
record ActuatorType(
    Described described, double differential, double travelTime, double kvOpen, RoomSensing sensing)
    implements ValveType {

  private static final Key DIFFERENTIAL =
      Key.optional(
              "differential",
              Forms.DIFFERENCE.usually(0.1, 2),
              "switching differential of its room's thermostat")
          .orElse("0.5 K", PRACTICE);
  private static final Key TRAVEL =
      Key.optional(
              "travel time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(10, 600),
              "from shut to open, and back")
          .orElse("3 min", "an electrothermal actuator, " + PRACTICE);

  static final Kind<ValveType, Valve> KIND =
      new Kind<>(
          "on/off actuator",
          "on/off actuator",
          Table.of(
              "an on/off actuator, switched by a thermostat of its room",
              ValveKeys.KV_OPEN,
              DIFFERENTIAL,
              TRAVEL,
              ValveKeys.SENSES),
          ActuatorType::read);

  private static ActuatorType read(Described described, Section s, Definitions known) {
    double kvOpen = s.number(ValveKeys.KV_OPEN);
    return new ActuatorType(
        described, s.number(DIFFERENTIAL), s.number(TRAVEL), kvOpen, ValveKeys.sensing(s));
  }

  @Override
  public Valve placed(OwnOrCommon keys, double want, boolean nearFloor) {
    return new OnOffActuator(
        described.name(),
        ValveKeys.setPoint(this, keys, want),
        differential,
        travelTime,
        kvOpen,
        sensing);
  }

  @Override
  public String facts() {
    return "Kvs "
        + Dimension.FLOW_COEFFICIENT.show(kvOpen)
        + ", differential "
        + Dimension.TEMPERATURE_DIFFERENCE.show(differential)
        + ", travel time "
        + Dimension.DURATION.show(travelTime);
  }
}
