package settle.sim.house;

import settle.sim.units.Range;

/**
 * How far the uncertain things of a house spread, each as a standard deviation about the value
 * given; 0 for what is certain.
 *
 * @param uValue of fabric and windows, as a share [-]
 * @param airChange as a share [-]
 * @param emitterOutput as a share [-]
 * @param valveSetting of each valve's set-point [K]
 * @param want of the people in the house, all rooms alike [K]
 * @param coldestOutdoor of the coldest weather [K]
 */
public record Spreads(
    double uValue,
    double airChange,
    double emitterOutput,
    double valveSetting,
    double want,
    double coldestOutdoor) {

  /** Common practice, no source. */
  public static final Spreads USUAL = new Spreads(0.15, 0.3, 0.07, 0.7, 0.7, 1.5);

  public Spreads {
    Range.within("spread of the U-values", uValue, 0, 1, "1");
    Range.within("spread of the air change", airChange, 0, 1, "1");
    Range.within("spread of the emitters' output", emitterOutput, 0, 1, "1");
    Range.notNegative("spread of the valves' settings", valveSetting, "K");
    Range.notNegative("spread of the wants", want, "K");
    Range.notNegative("spread of the coldest weather", coldestOutdoor, "K");
  }
}
