package settle.sim.source;

import settle.sim.units.Range;

/**
 * What a boiler's heat exchanger asks of its water, and what a start costs it. Where less than its
 * least flow comes back from the mains, an internal by-pass makes up for it with water as it
 * leaves, so that what enters is a mixture of flow and return; where the water would rise by more
 * than the largest drop, the burner turns down.
 *
 * @param leastFlow flow that an internal by-pass keeps through it [kg/s]; 0 without a by-pass
 * @param largestDrop between what leaves and what enters, by which output is limited [K]; may be
 *     infinite
 * @param startInput gas (gross) that a start costs: what the purge carries out of the exchanger,
 *     and what that has cooled by and has to be warmed again [J]
 */
public record Exchanger(double leastFlow, double largestDrop, double startInput) {

  /** One that takes any flow and any drop and starts for nothing. */
  public static final Exchanger UNLIMITED = new Exchanger(0, Double.POSITIVE_INFINITY, 0);

  public Exchanger {
    Range.notNegative("least flow of the exchanger", leastFlow, "kg/s");
    if (!(largestDrop > 0)) {
      throw new IllegalArgumentException("largest drop " + largestDrop + " K must be > 0");
    }
    Range.notNegative("what a start costs", startInput, "J");
  }

  Exchanger scaled(double factor) {
    return new Exchanger(leastFlow * factor, largestDrop, startInput * factor);
  }

  /**
   * Temperature of the water that enters it [°C]: m T_ret + (m_least - m) T_f over m_least where
   * the by-pass is open.
   *
   * @param massFlow m through the mains [kg/s]
   * @param returning T_ret of the mains [°C]; ignored without flow
   * @param leaving T_f [°C]
   */
  public double entering(double massFlow, double returning, double leaving) {
    if (massFlow >= leastFlow) {
      return massFlow > 0 ? returning : leaving;
    }
    return massFlow > 0 ? leaving + massFlow / leastFlow * (returning - leaving) : leaving;
  }

  /**
   * Output at which its water leaves warmer by the largest drop [W]; infinite where none limits it.
   *
   * @param massFlow m through the mains [kg/s]
   * @param specificHeat of the water [J/(kg K)]
   */
  public double mostInto(double massFlow, double specificHeat) {
    double through = Math.max(massFlow, leastFlow) * specificHeat;
    return Double.isInfinite(largestDrop) ? largestDrop : through * largestDrop;
  }
}
