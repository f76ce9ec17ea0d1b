package settle.scenarios.valve;

import static settle.scenarios.format.Forms.PRACTICE;

import java.util.Optional;
import settle.scenarios.definition.Definitions;
import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.Forms;
import settle.scenarios.format.Key;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.format.Section;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.units.Times;
import settle.sim.valve.HeadWater;
import settle.sim.valve.KnobScale;
import settle.sim.valve.Valve;
import settle.sim.valve.WaxValve;

/**
 * A thermostatic valve; the set-point of the pattern is replaced when it is placed.
 *
 * @param described its name and source
 * @param pattern everything but the set-point
 * @param saysBias whether it says how warm it is about its head
 */
record WaxType(Described described, WaxValve pattern, boolean saysBias) implements ValveType {

  /** Any set-point: the pattern has none of its own [°C]. */
  private static final double UNSET = 20;

  private static final Key KV_NOMINAL =
      Key.optional("Kv", Forms.FLOW_COEFFICIENT, "flow coefficient at the set temperature")
          .orElse("0.5 m³/h", "typical straight 15 mm body, " + PRACTICE);
  private static final Key PROPORTIONAL_BAND =
      Key.optional(
              "proportional band", Forms.DIFFERENCE.usually(0.5, 5), "from nominal flow to shut")
          .orElse("2 K", "EN 215 rates at S - 2 K, from memory");
  private static final Key HYSTERESIS =
      Key.optional(
              "hysteresis",
              Forms.of(Dimension.TEMPERATURE_DIFFERENCE, 0, 20, "none to a head that hardly moves")
                  .usually(0, 1),
              "full width of the play between opening and closing")
          .orElse("0.4 K", "inside the limit of EN 215 (1 K, from memory)");
  private static final Key LAG =
      Key.optional(
              "lag",
              Forms.of(Dimension.DURATION, 1, Times.DAY, "a second to a day").usually(60, 2400),
              "time constant of the head")
          .orElse("20 min", "inside the limit of EN 215 (40 min, from memory)");
  private static final Key SECOND_LAG =
      Key.optional("second lag", Forms.PAUSE, "time constant of a second lag in series")
          .orElse("0 min", "one lag is enough for a wax head, " + PRACTICE);
  private static final Key DEAD_TIME =
      Key.optional("dead time", Forms.PAUSE, "delay before the head feels a change")
          .orElse("0 min", PRACTICE);
  private static final Key WATER_INFLUENCE =
      Key.optional(
              "water influence",
              Forms.of(Dimension.SLOPE, 0, 0.5, "none to half the water's").usually(0, 0.06),
              "shift of the sensed temperature per kelvin of water temperature")
          .orElse("0.0233 K/K", "0.7 K for 30 K, inside the limit of EN 215 (1.5 K, from memory)");
  private static final Key HEAD_WATER =
      Key.optional(
              "head water",
              Forms.of(Dimension.MASS, 1e-4, 10, "a drop to the body of a large valve")
                  .usually(0.01, 0.3),
              "water in the body that warms the head: passing water renews it")
          .orElse("0.05 kg", "a 15 mm body, " + PRACTICE);
  private static final Key HEAD_COOLING =
      Key.optional(
              "head cooling",
              Forms.of(Dimension.DURATION, 1, Times.DAY, "a second to a day").usually(120, 3600),
              "time constant with which that water cools to the room while it stands")
          .orElse("20 min", PRACTICE);
  private static final Key PRESSURE_INFLUENCE =
      Key.optional(
              "pressure influence",
              Forms.of(
                      Dimension.SHIFT_PER_PRESSURE,
                      0,
                      20,
                      "none to several times the limit of EN 215")
                  .usually(0, 2),
              "fall of the set temperature per bar above 0.1 bar across the valve")
          .orElse("0.5 K/bar", "inside the limit of EN 215 (from memory)");

  static final Kind<ValveType, Valve> KIND =
      new Kind<>(
          "thermostatic",
          "thermostatic",
          Table.of(
              "a thermostatic radiator valve",
              KV_NOMINAL,
              ValveKeys.KV_OPEN,
              PROPORTIONAL_BAND,
              HYSTERESIS,
              LAG,
              SECOND_LAG,
              DEAD_TIME,
              WATER_INFLUENCE,
              HEAD_WATER,
              HEAD_COOLING,
              ValveKeys.BIAS,
              PRESSURE_INFLUENCE,
              ValveKeys.SENSES),
          WaxType::read);

  private static WaxType read(Described described, Section s, Definitions known) {
    double kvOpen = s.number(ValveKeys.KV_OPEN);
    double kvNominal = s.number(KV_NOMINAL);
    if (kvNominal > kvOpen) {
      s.problem(
          "found Kv "
              + Dimension.FLOW_COEFFICIENT.show(kvNominal)
              + " at the set temperature above Kvs "
              + Dimension.FLOW_COEFFICIENT.show(kvOpen)
              + " fully open, expected at most that");
      kvNominal = kvOpen;
    }
    return new WaxType(
        described,
        new WaxValve(
            described.name(),
            UNSET,
            s.number(PROPORTIONAL_BAND),
            s.number(HYSTERESIS),
            new WaxValve.Lags(s.number(LAG), s.number(SECOND_LAG), s.number(DEAD_TIME)),
            new HeadWater(s.number(HEAD_WATER), s.number(HEAD_COOLING)),
            s.number(WATER_INFLUENCE),
            s.number(ValveKeys.BIAS),
            s.number(PRESSURE_INFLUENCE),
            kvNominal,
            kvOpen,
            ValveKeys.sensing(s)),
        s.has(ValveKeys.BIAS));
  }

  @Override
  public Valve placed(OwnOrCommon keys, double want, boolean nearFloor) {
    double bias = saysBias ? pattern.bias() : ValveKeys.placedBias(keys, nearFloor);
    bias = keys.numberIfWritten(ValveKeys.HEAD_BIAS).orElse(bias);
    Section knob = keys.with(ValveKeys.KNOB, ValveKeys.SET);
    double setPoint =
        knob.has(ValveKeys.KNOB)
            ? KnobScale.set(knob.number(ValveKeys.KNOB))
            : keys.with(ValveKeys.SET, ValveKeys.KNOB)
                .number(
                    ValveKeys.SET,
                    want - pattern.proportionalBand() / 2,
                    "half the proportional band below want, so that the band lies about want; "
                        + PRACTICE);
    return pattern.placed(setPoint, bias);
  }

  /** Hot water near the head only makes it shut earlier. */
  @Override
  public Optional<String> doubt(Valve placed, double want) {
    double shut = placed.setPoint() + placed.proportionalBand() - ((WaxValve) placed).bias();
    return shut <= want
        ? Optional.of(
            "is shut where the room is at "
                + Dimension.TEMPERATURE.show(shut)
                + ", so it never lets the room come to its want of "
                + Dimension.TEMPERATURE.show(want))
        : Optional.empty();
  }

  @Override
  public String facts() {
    return "Kv "
        + Dimension.FLOW_COEFFICIENT.show(pattern.kvNominal())
        + ", Kvs "
        + Dimension.FLOW_COEFFICIENT.show(pattern.kvMaximum())
        + ", band "
        + Dimension.TEMPERATURE_DIFFERENCE.show(pattern.proportionalBand())
        + ", hysteresis "
        + Dimension.TEMPERATURE_DIFFERENCE.show(pattern.play())
        + ", lag "
        + Dimension.DURATION.show(pattern.lags().timeConstant());
  }
}
