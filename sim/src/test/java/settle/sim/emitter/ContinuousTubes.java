package settle.sim.emitter;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import settle.sim.water.Water;

/**
 * Out and back in continuous form, written apart from what it judges: fine points along both tubes,
 * upwind differences of second order, film by its published equations at every point,
 * DormandPrince.
 */
final class ContinuousTubes implements FirstOrderDifferentialEquations {

  /** Inlet temperature [°C] at a time [s]. */
  interface Inlet {
    double at(double time);
  }

  static final double LENGTH = 8;
  static final double BORE = 0.014;
  static final double WEB = 5;
  static final double METAL = 1.25 * 900;

  private final int points;
  private final double dx;
  private final double exponent;
  private final double emission;
  private final double capacityFlow;
  private final double reference;
  private final Inlet inlet;
  final double water = 988 * 4180 * Math.PI / 4 * BORE * BORE;

  ContinuousTubes(
      int points,
      double exponent,
      double emission,
      double capacityFlow,
      double reference,
      Inlet inlet) {
    this.points = points;
    dx = LENGTH / points;
    this.exponent = exponent;
    this.emission = emission;
    this.capacityFlow = capacityFlow;
    this.reference = reference;
    this.inlet = inlet;
  }

  @Override
  public int getDimension() {
    // Two waters, two metals, and the integral of what was emitted.
    return 4 * points + 1;
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] dy) {
    int n = points;
    double emitted = 0;
    for (int i = 0; i < 2 * n; i++) {
      int at = i < n ? i : 3 * n - 1 - i;
      double here = y[at];
      double before = i == 0 ? inlet.at(t) : y[along(i - 1)];
      // The inlet stands half a cell before the first point.
      double slope =
          i == 0
              ? (here - before) / (dx / 2)
              : i == 1
                  ? (here - before) / dx
                  : (3 * here - 4 * before + y[along(i - 2)]) / (2 * dx);
      double metal = y[2 * n + at];
      double across = y[2 * n + (at < n ? at + n : at - n)];
      double film = film(here, Math.abs(here - metal));
      double given = emission / 2 * Math.pow(Math.max(metal - reference, 0), exponent);
      dy[at] = (-capacityFlow * slope - film * (here - metal)) / water;
      dy[2 * n + at] = (film * (here - metal) - given - WEB * (metal - across)) / (METAL / 2);
      emitted += given * dx;
    }
    dy[4 * n] = emitted;
  }

  private int along(int i) {
    return i < points ? i : 3 * points - 1 - i;
  }

  private double film(double temperature, double difference) {
    double re = 4 * capacityFlow / 4180 / (Math.PI * BORE * Water.dynamicViscosity(temperature));
    double laminar =
        TubeFilm.laminar(TubeFilm.rayleigh(BORE, temperature, Math.max(difference, 1e-3)));
    double nu = laminar;
    if (re > 2300) {
      double turbulent = TubeFilm.gnielinski(Math.max(re, 4000), TubeFilm.prandtl(temperature));
      nu = laminar + (turbulent - laminar) * Math.min((re - 2300) / 1700, 1);
    }
    return nu * Math.PI * Water.conductivity(temperature);
  }

  double[] start(double temperature) {
    double[] y = new double[getDimension()];
    java.util.Arrays.fill(y, 0, 4 * points, temperature);
    return y;
  }

  void go(double from, double to, double[] y) {
    new DormandPrince853Integrator(1e-6, 10, 1e-7, 1e-7).integrate(this, from, y, to, y);
  }

  /** Temperature of the water that leaves [°C]. */
  double leaving(double[] y) {
    return y[points] + (y[points] - y[points + 1]) / 2;
  }

  /** Temperature at the far end [°C]. */
  double far(double[] y) {
    return (y[points - 1] + y[2 * points - 1]) / 2;
  }
}
