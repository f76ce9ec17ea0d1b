package settle.sim.house;

import java.util.function.ToDoubleFunction;

/** What is never quite known of a house. */
public enum Uncertainty {
  /** U-values of fabric and windows: all of the house alike. */
  U_VALUES(Spreads::uValue, true),
  /** Air change: of all rooms alike. */
  AIR_CHANGE(Spreads::airChange, true),
  /** Output of the emitters against their rating: all alike. */
  EMITTER_OUTPUT(Spreads::emitterOutput, true),
  /** How warm its people want it: all rooms alike, and the heads turned accordingly. */
  WANT(Spreads::want, false),
  /** How cold the coldest weather is. */
  COLDEST_OUTDOOR(Spreads::coldestOutdoor, false),
  /** Where a valve's set-point really lies: each by itself. */
  VALVE_SETTING(Spreads::valveSetting, false);

  private final ToDoubleFunction<Spreads> spread;
  private final boolean share;

  Uncertainty(ToDoubleFunction<Spreads> spread, boolean share) {
    this.spread = spread;
    this.share = share;
  }

  /** Whether it spreads by a share of its value; otherwise by kelvins. */
  public boolean isShare() {
    return share;
  }

  /** Its standard deviation: a share [-] or [K]. */
  public double of(Spreads spreads) {
    return spread.applyAsDouble(spreads);
  }
}
