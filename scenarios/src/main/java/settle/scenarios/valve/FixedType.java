package settle.scenarios.valve;

import settle.scenarios.definition.Described;
import settle.scenarios.definition.Kind;
import settle.scenarios.format.OwnOrCommon;
import settle.scenarios.format.Table;
import settle.scenarios.quantity.Dimension;
import settle.sim.valve.FixedOpening;
import settle.sim.valve.Valve;

/**
 * A valve that stays where it is set.
 *
 * @param described its name and source
 * @param valve the valve
 */
record FixedType(Described described, FixedOpening valve) implements ValveType {

  static final Kind<ValveType, Valve> KIND =
      new Kind<>(
          "fixed opening",
          "fixed opening",
          Table.of("a valve that stays where it is set", ValveKeys.KV_OPEN),
          (described, s, known) ->
              new FixedType(
                  described, new FixedOpening(described.name(), s.number(ValveKeys.KV_OPEN))));

  @Override
  public Valve placed(OwnOrCommon keys, double want, boolean nearFloor) {
    keys.refuse(
        "'" + described.name() + "' has no head to set",
        ValveKeys.SET,
        ValveKeys.KNOB,
        ValveKeys.HEAD_BIAS);
    return valve;
  }

  @Override
  public String facts() {
    return "Kvs " + Dimension.FLOW_COEFFICIENT.show(valve.kvMaximum());
  }
}
