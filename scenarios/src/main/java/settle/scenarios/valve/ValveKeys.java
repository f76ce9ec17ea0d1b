package settle.scenarios.valve;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.List;
import settle.scenarios.format.Form.Choice;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.units.Times;
import settle.sim.valve.RoomSensing;

/** What several kinds of valves say of themselves, and what an arrangement says of a head. */
public final class ValveKeys {

  /**
   * How much warmer than the room it is about a head near the floor [K]: a metre below the middle
   * of the room, at the gradient of a room heated along the foot of its walls.
   */
  private static final double NEAR_FLOOR = -0.3;

  static final Key KV_OPEN =
      Key.optional("Kvs", Forms.FLOW_COEFFICIENT, "flow coefficient fully open")
          .orElse("0.8 m³/h", "typical straight 15 mm body, " + PRACTICE);
  static final Key SENSES =
      Key.optional(
              "senses",
              new Choice(List.of("operative", "air")),
              "which temperature of the room it feels")
          .orElse("operative", "a head in the room feels air and radiation, " + PRACTICE);
  static final Key BIAS =
      Key.optional(
              "head bias",
              Forms.of(
                      Dimension.TEMPERATURE_DIFFERENCE,
                      -10,
                      20,
                      "from a draught to a curtain over a hot emitter")
                  .usually(-3, 6),
              "how much warmer than the room it is where the head sits")
          .orElse("0 K", "a head in free air; an arrangement says where it sits, " + PRACTICE);

  // Of a controller.

  public static final Key GAIN =
      Key.optional(
              "gain",
              Forms.of(Dimension.SHARE_PER_KELVIN, 0.001, 20, "hardly at all to open and shut")
                  .usually(0.05, 5),
              "share of its lift per kelvin that the room lacks")
          .orElse("0.5 /K", PRACTICE);
  public static final Key INTEGRAL_TIME =
      Key.optional(
              "integral time",
              Forms.of(Dimension.DURATION, 0, 7 * Times.DAY, "none to a week")
                  .usually(0, 6 * 3600.0),
              "time in which the integral part adds as much again; 0 for none")
          .orElse("60 min", PRACTICE);

  // In an arrangement.

  public static final Key SET =
      Key.optional(
              "set",
              Forms.WANT,
              "room temperature at which the thermostatic valve passes its nominal flow, or that an actuator or motor head holds")
          .orElse(
              "want; on a thermostatic valve half the proportional band below, so that the band lies about want; "
                  + PRACTICE);
  public static final Key KNOB =
      Key.optional(
          "knob",
          Forms.of(Dimension.NUMBER, 0, 5, "the figures on the knob"),
          "knob position instead: frost 0, then 1 to 5 for 12, 16, 20, 24, 28 °C");
  public static final Key HEAD_BIAS =
      Key.optional(
              "head bias", BIAS.form(), "how much warmer than the room it is where this head sits")
          .orElse(
              "that of the valve; where that says none, 0 K in free air and "
                  + Dimension.TEMPERATURE_DIFFERENCE.show(NEAR_FLOOR)
                  + " at an emitter along the foot of the walls; "
                  + PRACTICE);

  private ValveKeys() {}

  /** How much warmer than the room it is about a head of which nothing is said [K]. */
  static double placedBias(OwnOrCommon keys, boolean nearFloor) {
    if (nearFloor && !keys.has(HEAD_BIAS)) {
      keys.own().note(HEAD_BIAS, Dimension.TEMPERATURE_DIFFERENCE.show(NEAR_FLOOR));
    }
    return nearFloor ? NEAR_FLOOR : 0;
  }

  static RoomSensing sensing(Section s) {
    return s.choice(SENSES).equals("air") ? RoomSensing.AIR : RoomSensing.OPERATIVE;
  }

  /** Set-point of one that is set in °C [°C]. */
  static double setPoint(ValveType type, OwnOrCommon keys, double want) {
    keys.refuse(
        "goes with a thermostatic valve; '" + type.described().name() + "' is set in °C",
        KNOB,
        HEAD_BIAS);
    return keys.with(SET, KNOB).number(SET, want, "want, " + PRACTICE);
  }
}
