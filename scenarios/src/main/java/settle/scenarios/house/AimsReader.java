package settle.scenarios.house;

import settle.scenarios.format.Section;
import settle.sim.house.Aims;
import settle.sim.house.Spreads;
import settle.sim.house.Tariffs;

/** Reads what is asked of the heating. */
final class AimsReader {

  private AimsReader() {}

  static Aims read(Section s) {
    return new Aims(
        s.number(AimsKeys.TOLERANCE),
        s.numberIfWritten(AimsKeys.WARM_UP),
        s.numberIfWritten(AimsKeys.OVERSHOOT),
        s.number(AimsKeys.SURE),
        tariffs(s.section(AimsKeys.TARIFFS)),
        spreads(s.section(AimsKeys.SPREADS)));
  }

  private static Tariffs tariffs(Section s) {
    return new Tariffs(
        s.words(AimsKeys.CURRENCY, Tariffs.USUAL.currency()),
        s.number(AimsKeys.ELECTRICITY),
        s.number(AimsKeys.GAS),
        s.number(AimsKeys.ELECTRICITY_CARBON),
        s.number(AimsKeys.GAS_CARBON));
  }

  private static Spreads spreads(Section s) {
    return new Spreads(
        s.number(AimsKeys.U_VALUES),
        s.number(AimsKeys.AIR_CHANGE),
        s.number(AimsKeys.EMITTER_OUTPUT),
        s.number(AimsKeys.VALVE_SETTING),
        s.number(AimsKeys.WANT),
        s.number(AimsKeys.COLDEST_OUTDOOR));
  }
}
