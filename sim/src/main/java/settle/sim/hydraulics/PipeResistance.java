package settle.sim.hydraulics;

import java.util.Optional;

/**
 * Pressure that a pipe with its fittings takes at a flow, and how it rises with the flow; others in
 * series with it are added.
 *
 * <pre>
 *   p = (F + f(Re) B) m²,   F = zeta/(2 rho A²),   B = L/(2 D rho A²),   Re = c m
 * </pre>
 *
 * <p>f is that of {@link Friction}: 64/Re up to Re 2000, Colebrook and White's from Re 4000,
 * straight between.
 */
public final class PipeResistance {

  // Model
  final double fittings;
  final double friction;
  final double reynoldsPerFlow;
  private final double rough;
  final double laminarFlow;
  final double turbulentFlow;
  final double laminarFactor;
  final double turbulentFactor;
  final double factorSlope;

  /** What the water passes after it; null for nothing. */
  final PipeResistance further;

  // Last flow asked for
  private double drop;
  private double slope;

  /**
   * @param pipe the pipe
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public PipeResistance(Pipe pipe, double density, double viscosity) {
    this(pipe, Optional.empty(), density, viscosity);
  }

  /**
   * @param pipe the pipe
   * @param after what the water passes in series with it
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public PipeResistance(Pipe pipe, Optional<Pipe> after, double density, double viscosity) {
    further = after.map(p -> new PipeResistance(p, density, viscosity)).orElse(null);
    double area = pipe.area();
    fittings = pipe.fittings() / (2 * density * area * area);
    friction = pipe.length() / pipe.bore() / (2 * density * area * area);
    reynoldsPerFlow = Friction.reynolds(1, pipe.bore(), viscosity);
    double relativeRoughness = pipe.roughness() / pipe.bore();
    rough = Friction.ROUGH * relativeRoughness;
    laminarFlow = Friction.LAMINAR_LIMIT / reynoldsPerFlow;
    turbulentFlow = Friction.TURBULENT_LIMIT / reynoldsPerFlow;
    laminarFactor = Friction.darcyFactor(Friction.LAMINAR_LIMIT, relativeRoughness);
    turbulentFactor = Friction.darcyFactor(Friction.TURBULENT_LIMIT, relativeRoughness);
    factorSlope = (turbulentFactor - laminarFactor) / (turbulentFlow - laminarFlow);
  }

  /**
   * Works out pressure and slope, to be read from {@link #drop()} and {@link #slope()}.
   *
   * @param m mass flow [kg/s], >= 0
   */
  public void at(double m) {
    if (m <= laminarFlow) {
      double laminar = 64 / reynoldsPerFlow * friction;
      drop = (fittings * m + laminar) * m;
      slope = 2 * fittings * m + laminar;
    } else if (m < turbulentFlow) {
      double f = laminarFactor + factorSlope * (m - laminarFlow);
      drop = (fittings + f * friction) * m * m;
      slope = (2 * (fittings + f * friction) + factorSlope * friction * m) * m;
    } else {
      turbulent(m);
    }
    if (further != null) {
      further.at(m);
      drop += further.drop;
      slope += further.slope;
    }
  }

  /** x = 1/sqrt(f) rises with the flow, d ln x/d ln m = 1/(1 + K + y); see {@link Friction}. */
  private void turbulent(double m) {
    double x = Friction.inverseRoot(reynoldsPerFlow * m, rough);
    double f = 1 / (x * x);
    double rise = 1 / (1 + rough * reynoldsPerFlow * m + Friction.HALF_LN10 * x);
    double total = fittings + f * friction;
    drop = total * m * m;
    slope = 2 * (total - f * friction * rise) * m;
  }

  /** Pressure at the last flow asked for [Pa]. */
  public double drop() {
    return drop;
  }

  /** Its rise with the flow [Pa s/kg], > 0 for a pipe that has length. */
  public double slope() {
    return slope;
  }
}
