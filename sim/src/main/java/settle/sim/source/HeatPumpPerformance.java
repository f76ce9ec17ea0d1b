package settle.sim.source;

import java.util.List;

/** Heating capacity and coefficient of performance over outdoor and flow temperature. */
public sealed interface HeatPumpPerformance permits PerformanceMap, CarnotPerformance {

  /**
   * Heating capacity at full output [W], > 0.
   *
   * @param outdoor outdoor air [°C]
   * @param flow water leaving [°C]
   */
  double capacity(double outdoor, double flow);

  /**
   * COP at part load [-], > 0: straight between least and full output where both are declared, that
   * at full output otherwise.
   *
   * @param outdoor outdoor air [°C]
   * @param flow water leaving [°C]
   * @param above how far the output is above the least, 1 at full output [-]
   */
  default double cop(double outdoor, double flow, double above) {
    return cop(outdoor, flow);
  }

  /**
   * COP at full output [-], > 0.
   *
   * @param outdoor outdoor air [°C]
   * @param flow water leaving [°C]
   */
  double cop(double outdoor, double flow);

  /** Outdoor temperatures at which the capacity changes its course [°C], ascending. */
  List<Double> bends();

  /** That of a unit so many times as large [-]: capacities multiplied, COP the same. */
  HeatPumpPerformance scaled(double factor);

  /** Whether the declared range covers a point; outside it figures are held or guessed. */
  boolean covers(double outdoor, double flow);
}
