package settle.sim.source;

import java.util.List;
import settle.sim.units.Range;

/**
 * Performance as a share of Carnot's, COP = eta T_f/(T_f - T_e) in kelvin, with a capacity that
 * falls in a straight line with the outdoor temperature.
 *
 * @param share eta [-]; 0.35 to 0.5 for air to water, common practice, no source
 * @param capacityAtSeven heating capacity at 7 °C outdoors [W]
 * @param capacitySlope its rise with the outdoor temperature [W/K]
 */
public record CarnotPerformance(double share, double capacityAtSeven, double capacitySlope)
    implements HeatPumpPerformance {

  private static final double KELVIN = 273.15;

  /** Least lift taken between air and water [K]. */
  private static final double LEAST_LIFT = 5;

  /** Least capacity, as a share of that at 7 °C [-]. */
  private static final double LEAST_SHARE = 0.1;

  public CarnotPerformance {
    Range.within("share of Carnot's COP", share, 0.01, 1, "1");
    Range.positive("capacity at 7 °C", capacityAtSeven, "W");
    Range.notNegative("rise of the capacity with outdoor temperature", capacitySlope, "W/K");
  }

  @Override
  public double capacity(double outdoor, double flow) {
    double straight = capacityAtSeven + capacitySlope * (outdoor - 7);
    return Math.max(straight, LEAST_SHARE * capacityAtSeven);
  }

  @Override
  public double cop(double outdoor, double flow) {
    return share * (flow + KELVIN) / Math.max(flow - outdoor, LEAST_LIFT);
  }

  @Override
  public List<Double> bends() {
    return capacitySlope > 0
        ? List.of(7 - (1 - LEAST_SHARE) * capacityAtSeven / capacitySlope)
        : List.of();
  }

  @Override
  public CarnotPerformance scaled(double factor) {
    return new CarnotPerformance(share, capacityAtSeven * factor, capacitySlope * factor);
  }

  @Override
  public boolean covers(double outdoor, double flow) {
    return flow - outdoor >= LEAST_LIFT
        && capacityAtSeven + capacitySlope * (outdoor - 7) >= LEAST_SHARE * capacityAtSeven;
  }
}
