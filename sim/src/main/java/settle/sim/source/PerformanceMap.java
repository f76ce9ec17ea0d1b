package settle.sim.source;

import java.util.Arrays;
import java.util.List;

/**
 * Performance from a table of rating points, as EN 14511 measures them: bilinear inside, held at
 * its edge outside.
 *
 * @param outdoors outdoor temperatures, ascending [°C]; not modified
 * @param flows flow temperatures, ascending [°C]; not modified
 * @param capacity heating capacity [W], one row per outdoor temperature, one column per flow
 *     temperature; not modified
 * @param cop COP at full output [-], likewise
 * @param copAtLeast COP at least output [-], likewise; {@code cop} itself where it is not declared
 */
public record PerformanceMap(
    double[] outdoors, double[] flows, double[][] capacity, double[][] cop, double[][] copAtLeast)
    implements HeatPumpPerformance {

  public PerformanceMap {
    Grid.requireAscending("outdoor temperatures", outdoors);
    Grid.requireAscending("flow temperatures", flows);
    Grid.requireShape("capacity", capacity, outdoors.length, flows.length);
    Grid.requireShape("COP", cop, outdoors.length, flows.length);
    Grid.requireShape("COP at least output", copAtLeast, outdoors.length, flows.length);
    for (int i = 0; i < outdoors.length; i++) {
      for (int j = 0; j < flows.length; j++) {
        if (!(capacity[i][j] > 0 && cop[i][j] > 0 && copAtLeast[i][j] > 0)) {
          throw new IllegalArgumentException(
              "capacity and COP must be > 0, at " + outdoors[i] + "/" + flows[j] + " °C");
        }
      }
    }
  }

  /**
   * One whose COP at part load is that at full output.
   *
   * @param outdoors outdoor temperatures, ascending [°C]
   * @param flows flow temperatures, ascending [°C]
   * @param capacity heating capacity [W]
   * @param cop COP [-]
   */
  public PerformanceMap(double[] outdoors, double[] flows, double[][] capacity, double[][] cop) {
    this(outdoors, flows, capacity, cop, cop);
  }

  @Override
  public double capacity(double outdoor, double flow) {
    return Grid.bilinear(outdoors, flows, capacity, outdoor, flow);
  }

  @Override
  public double cop(double outdoor, double flow) {
    return Grid.bilinear(outdoors, flows, cop, outdoor, flow);
  }

  @Override
  public double cop(double outdoor, double flow, double above) {
    double full = cop(outdoor, flow);
    if (!hasPartLoad()) {
      return full;
    }
    double least = Grid.bilinear(outdoors, flows, copAtLeast, outdoor, flow);
    return least + Math.min(Math.max(above, 0), 1) * (full - least);
  }

  /** Whether COP at least output is declared. */
  public boolean hasPartLoad() {
    return copAtLeast != cop;
  }

  @Override
  public List<Double> bends() {
    return Arrays.stream(outdoors).boxed().toList();
  }

  @Override
  public PerformanceMap scaled(double factor) {
    double[][] larger = new double[capacity.length][];
    for (int i = 0; i < larger.length; i++) {
      larger[i] = Arrays.stream(capacity[i]).map(c -> c * factor).toArray();
    }
    return new PerformanceMap(outdoors, flows, larger, cop, copAtLeast);
  }

  @Override
  public boolean covers(double outdoor, double flow) {
    return outdoor >= outdoors[0]
        && outdoor <= outdoors[outdoors.length - 1]
        && flow >= flows[0]
        && flow <= flows[flows.length - 1];
  }
}
