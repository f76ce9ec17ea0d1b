package settle.sim.house;

import java.util.function.ToDoubleFunction;

/** What is never quite known of a house. */
public enum Uncertainty {
  /** U-values of fabric and windows: all of the house alike. */
  U_VALUES(Spreads::uValue),
  /** Air change: of all rooms alike. */
  AIR_CHANGE(Spreads::airChange),
  /** Output of the emitters against their rating: all alike. */
  EMITTER_OUTPUT(Spreads::emitterOutput),
  /** How warm its people want it: all rooms alike, and the heads turned accordingly. */
  WANT(Spreads::want),
  /** How cold the coldest weather is. */
  COLDEST_OUTDOOR(Spreads::coldestOutdoor),
  /** Where a valve's set-point really lies: each by itself. */
  VALVE_SETTING(Spreads::valveSetting);

  private final ToDoubleFunction<Spreads> spread;

  Uncertainty(ToDoubleFunction<Spreads> spread) {
    this.spread = spread;
  }

  /** Its standard deviation: a share [-] or [K]. */
  public double of(Spreads spreads) {
    return spread.applyAsDouble(spreads);
  }
}
