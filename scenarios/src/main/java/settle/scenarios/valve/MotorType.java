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
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.Dimension;
import settle.sim.valve.MotorHead;
import settle.sim.valve.RoomSensing;
import settle.sim.valve.Valve;

/**
 * A motor head with a PI controller.
 *
 * @param described its name and source
 * @param gain [1/K]
 * @param integralTime [s]; infinite for none
 * @param travelTime from shut to open [s]
 * @param kvOpen fully open [m³/h at 1 bar]
 * @param sensing what it feels
 */
record MotorType(
    Described described,
    double gain,
    double integralTime,
    double travelTime,
    double kvOpen,
    RoomSensing sensing)
    implements ValveType {

  private static final Key TRAVEL =
      Key.optional(
              "travel time",
              Forms.of(Dimension.DURATION, 1, 3600, "a second to an hour").usually(5, 600),
              "from shut to open")
          .orElse("1 min", PRACTICE);

  static final Kind<ValveType, Valve> KIND =
      new Kind<>(
          "motor head",
          "motor head",
          Table.of(
              "a motor head with a PI controller",
              ValveKeys.KV_OPEN,
              ValveKeys.GAIN,
              ValveKeys.INTEGRAL_TIME,
              TRAVEL,
              ValveKeys.SENSES),
          MotorType::read,
          MotorHead.class::isInstance,
          MotorType::typed);

  private static MotorType read(Described described, Section s, Definitions known) {
    double kvOpen = s.number(ValveKeys.KV_OPEN);
    double integralTime = s.number(ValveKeys.INTEGRAL_TIME);
    return new MotorType(
        described,
        s.number(ValveKeys.GAIN),
        integralTime > 0 ? integralTime : Double.POSITIVE_INFINITY,
        s.number(TRAVEL),
        kvOpen,
        ValveKeys.sensing(s));
  }

  private static Typed typed(Valve valve) {
    MotorHead head = (MotorHead) valve;
    return new Typed()
        .put(ValveKeys.KV_OPEN, head.kvMaximum())
        .put(ValveKeys.GAIN, head.gain())
        .put(ValveKeys.INTEGRAL_TIME, head.integralTime())
        .put(TRAVEL, head.travelTime())
        .put(ValveKeys.SENSES, head.sensing() == RoomSensing.AIR ? "air" : "operative");
  }

  @Override
  public Valve placed(OwnOrCommon keys, double want, boolean nearFloor) {
    return new MotorHead(
        described.name(),
        ValveKeys.setPoint(this, keys, want),
        gain,
        integralTime,
        travelTime,
        kvOpen,
        sensing);
  }

  @Override
  public String facts() {
    return "Kvs "
        + Dimension.FLOW_COEFFICIENT.show(kvOpen)
        + ", gain "
        + Dimension.SHARE_PER_KELVIN.show(gain)
        + ", integral time "
        + Dimension.DURATION.show(integralTime)
        + ", travel time "
        + Dimension.DURATION.show(travelTime);
  }
}
