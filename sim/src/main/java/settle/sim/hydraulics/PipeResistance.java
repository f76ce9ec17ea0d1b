package settle.sim.hydraulics;

/**
 * Pressure that a pipe with its fittings takes at a flow, and how it rises with the flow.
 *
 * <pre>
 *   p = (F + f(Re) B) m²,   F = zeta/(2 rho A²),   B = L/(2 D rho A²),   Re = c m
 * </pre>
 *
 * <p>f is that of {@link Friction}: 64/Re up to Re 2000, Colebrook and White's from Re 4000,
 * straight between.
 */
public final class PipeResistance {

  private static final double LN10 = Math.log(10);
  private static final int MOST_STEPS = 60;

  // Model
  final double fittings;
  final double friction;
  final double reynoldsPerFlow;
  final double rough;
  final double laminarFlow;
  final double turbulentFlow;
  final double laminarFactor;
  final double turbulentFactor;
  final double factorSlope;

  /** 1/sqrt(f) of the last turbulent solution, from which the next one starts. */
  double inverseRoot;

  // Last flow asked for
  private double drop;
  private double slope;

  /**
   * @param pipe the pipe
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public PipeResistance(Pipe pipe, double density, double viscosity) {
    double area = pipe.area();
    fittings = pipe.fittings() / (2 * density * area * area);
    friction = pipe.length() / pipe.bore() / (2 * density * area * area);
    reynoldsPerFlow = Friction.reynolds(1, pipe.bore(), viscosity);
    double relativeRoughness = pipe.roughness() / pipe.bore();
    rough = relativeRoughness / 3.7;
    laminarFlow = Friction.LAMINAR_LIMIT / reynoldsPerFlow;
    turbulentFlow = Friction.TURBULENT_LIMIT / reynoldsPerFlow;
    laminarFactor = Friction.darcyFactor(Friction.LAMINAR_LIMIT, relativeRoughness);
    turbulentFactor = Friction.darcyFactor(Friction.TURBULENT_LIMIT, relativeRoughness);
    factorSlope = (turbulentFactor - laminarFactor) / (turbulentFlow - laminarFlow);
    inverseRoot = 1 / Math.sqrt(turbulentFactor);
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
  }

  /**
   * With x = 1/sqrt(f): g(x) = x + 2 log10(k/(3.7 D) + 2.51 x/Re) = 0 by Newton's method; dx/dm =
   * -(dg/dm)/(dg/dx).
   */
  private void turbulent(double m) {
    double viscous = 2.51 / (reynoldsPerFlow * m);
    double x = inverseRoot;
    double argument = 0;
    double rise = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      argument = rough + viscous * x;
      rise = 1 + 2 / LN10 * viscous / argument;
      double step = (x + 2 / LN10 * Math.log(argument)) / rise;
      x -= step;
      if (Math.abs(step) < 1e-8 * x) {
        // What is left is of the order of the square of this last step.
        break;
      }
    }
    inverseRoot = x;
    double f = 1 / (x * x);
    double rootRise = 2 / LN10 * viscous * x / (m * argument * rise);
    drop = (fittings + f * friction) * m * m;
    slope = 2 * (fittings + f * friction) * m - 2 * friction * f * m * m * rootRise / x;
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
