package settle.sim.hydraulics;

import java.util.Optional;

/**
 * Flow through one branch: valve, lockshield and pipe in series under a given pressure.
 *
 * <pre>
 *   p = R m² + f(Re) B m²,   R = resistance of valves and fittings, B = L/(2 D rho A²), Re = c m
 * </pre>
 *
 * <p>The sum rises with m, so there is one flow, and the losses at the ends of the laminar and the
 * turbulent range tell which law f follows there (see {@link Friction}):
 *
 * <ul>
 *   <li>laminar, f = 64/Re: a quadratic in m;
 *   <li>between, f straight in Re: a cubic in m, by Newton's method;
 *   <li>turbulent, f explicit: by Newton's method.
 * </ul>
 *
 * <p>All of them to rounding.
 */
public final class BranchFlow {

  private static final int MOST_STEPS = 60;

  // Model
  private final double density;
  private final double lockshieldKv;
  private final PipeResistance pipe;

  // Last solution
  private double flow;
  private double lastKv = -1;
  private double lastPressure;
  private double valveDrop;

  /**
   * @param pipe the branch pipe
   * @param lockshield the balancing valve
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public BranchFlow(Pipe pipe, Lockshield lockshield, double density, double viscosity) {
    this(pipe, Optional.empty(), lockshield, density, viscosity);
  }

  /**
   * @param pipe the branch pipe
   * @param within what the water passes in the emitter
   * @param lockshield the balancing valve
   * @param density of the water [kg/m³]
   * @param viscosity dynamic viscosity of the water [Pa s]
   */
  public BranchFlow(
      Pipe pipe, Optional<Pipe> within, Lockshield lockshield, double density, double viscosity) {
    this.density = density;
    lockshieldKv = lockshield.kv();
    this.pipe = new PipeResistance(pipe, within, density, viscosity);
  }

  /**
   * Solves for the flow.
   *
   * @param kv of the valve [m³/h at 1 bar]
   * @param pressure across the branch [Pa], >= 0
   * @return mass flow [kg/s]; 0 if valve or lockshield is shut or there is no pressure
   */
  public double solve(double kv, double pressure) {
    if (kv == lastKv && pressure == lastPressure) {
      return flow;
    }
    lastKv = kv;
    lastPressure = pressure;
    double series = FlowCoefficient.series(kv, lockshieldKv);
    if (series == 0 || pressure == 0) {
      flow = 0;
      valveDrop = kv == 0 ? pressure : 0;
      return 0;
    }
    double valves = FlowCoefficient.pressureDrop(1, series, density);
    double resistance = valves + pipe.fittings;
    if (pipe.further != null) {
      flow = through(valves, pressure);
    } else if (pressure
        <= (resistance + pipe.laminarFactor * pipe.friction)
            * pipe.laminarFlow
            * pipe.laminarFlow) {
      flow = laminar(resistance, pressure);
    } else if (pressure
        >= (resistance + pipe.turbulentFactor * pipe.friction)
            * pipe.turbulentFlow
            * pipe.turbulentFlow) {
      flow = turbulent(resistance, pressure);
    } else {
      flow = between(resistance, pressure);
    }
    valveDrop = FlowCoefficient.pressureDrop(flow, kv, density);
    return flow;
  }

  /** R m² + (64 B/c) m = p. */
  private double laminar(double resistance, double pressure) {
    double half = 32 * pipe.friction / pipe.reynoldsPerFlow;
    return pressure / (half + Math.sqrt(half * half + resistance * pressure));
  }

  /** (R + (f_1 + s (m - m_1)) B) m² = p. */
  private double between(double resistance, double pressure) {
    double cubic = pipe.factorSlope * pipe.friction;
    double square =
        resistance + (pipe.laminarFactor - pipe.factorSlope * pipe.laminarFlow) * pipe.friction;
    double m = flow > pipe.laminarFlow && flow < pipe.turbulentFlow ? flow : pipe.turbulentFlow;
    for (int i = 0; i < MOST_STEPS; i++) {
      double excess = (square + cubic * m) * m * m - pressure;
      double step = excess / ((2 * square + 3 * cubic * m) * m);
      m -= step;
      if (Math.abs(step) < 1e-13 * m) {
        break;
      }
    }
    return m;
  }

  /**
   * R m² + f(m) B m² = p by Newton's method: the left side is convex, so that after one step m
   * falls towards the root.
   */
  private double turbulent(double resistance, double pressure) {
    double m = Math.max(flow, pipe.turbulentFlow);
    double others = resistance - pipe.fittings;
    for (int i = 0; i < MOST_STEPS; i++) {
      pipe.at(m);
      double excess = pipe.drop() + others * m * m - pressure;
      double step = excess / (pipe.slope() + 2 * others * m);
      m = Math.max(m - step, pipe.turbulentFlow);
      if (Math.abs(step) < 1e-9 * m) {
        // What is left is of the order of the square of this last step.
        break;
      }
    }
    return m;
  }

  /**
   * R m² + p(m) = p of a pipe and what follows it: by Newton's method between bounds, since p(m) is
   * not convex where laminar flow ends.
   */
  private double through(double valves, double pressure) {
    double least = 0;
    double most = Math.sqrt(pressure / valves);
    double m = flow > 0 && flow < most ? flow : most / 2;
    for (int i = 0; i < MOST_STEPS; i++) {
      pipe.at(m);
      double excess = pipe.drop() + valves * m * m - pressure;
      if (excess > 0) {
        most = m;
      } else {
        least = m;
      }
      double next = m - excess / (pipe.slope() + 2 * valves * m);
      if (Math.abs(next - m) < 1e-13 * m) {
        break;
      }
      m = next > least && next < most ? next : (least + most) / 2;
    }
    return m;
  }

  /** Pressure across the valve in the last solution [Pa]. */
  public double valveDrop() {
    return valveDrop;
  }
}
