package settle.sim.hydraulics;

/**
 * Flow through one branch: valve, lockshield and pipe in series under a given pressure.
 *
 * <p>dp = (1/K_v² + 1/K_ls²)(3600 m/rho)² rho/1000 bar + pipe(m) + zeta rho v²/2. The sum rises
 * with m, so there is one flow; it is found by Newton's method from the last one, to 1e-12 of
 * itself.
 */
public final class BranchFlow {

  private static final int MOST_STEPS = 60;

  private final double density;
  private final double lockshieldKv;
  private final double fittingsResistance;
  private final double relativeRoughness;
  private final double reynoldsPerFlow;
  private final double laminarDrop;
  private final double turbulentDrop;
  private final double limitFactor;

  // 1/sqrt(f) last found: where the next search begins
  private double root = 7;

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
    this.density = density;
    lockshieldKv = lockshield.kv();
    double area = Math.PI * pipe.bore() * pipe.bore() / 4;
    fittingsResistance = pipe.fittings() / (2 * density * area * area);
    relativeRoughness = pipe.roughness() / pipe.bore();
    reynoldsPerFlow = Friction.reynolds(1, pipe.bore(), viscosity);
    laminarDrop =
        pipe.length()
            * Friction.pressureGradient(
                0.5 * Friction.LAMINAR_LIMIT / reynoldsPerFlow,
                pipe.bore(),
                pipe.roughness(),
                density,
                viscosity)
            / (0.5 * Friction.LAMINAR_LIMIT / reynoldsPerFlow);
    turbulentDrop = pipe.length() / pipe.bore() / (2 * density * area * area);
    limitFactor = Friction.colebrookWhite(Friction.TURBULENT_LIMIT, relativeRoughness);
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
    double unhindered = FlowCoefficient.massFlow(pressure, series, density);
    double resistance = pressure / (unhindered * unhindered) + fittingsResistance;
    double m = flow > 0 && flow < unhindered ? flow : unhindered;
    for (int i = 0; i < MOST_STEPS; i++) {
      double friction = friction(m);
      double excess = resistance * m * m + friction - pressure;
      double slope = 2 * resistance * m + frictionOrder(m) * friction / m;
      double step = excess / slope;
      m = Math.max(m - step, m / 10);
      if (Math.abs(step) < 1e-11 * m) {
        break;
      }
    }
    flow = m;
    valveDrop = FlowCoefficient.pressureDrop(m, kv, density);
    return m;
  }

  /**
   * Pressure lost in the pipe's straight length at a flow above 0: {@link
   * Friction#pressureGradient} with what repeats kept.
   */
  private double friction(double m) {
    double reynolds = reynoldsPerFlow * m;
    if (reynolds <= Friction.LAMINAR_LIMIT) {
      return laminarDrop * m;
    }
    double factor;
    if (reynolds < Friction.TURBULENT_LIMIT) {
      factor = Friction.blended(reynolds, limitFactor);
    } else {
      root = Friction.colebrookRoot(reynolds, relativeRoughness, root);
      factor = 1 / (root * root);
    }
    return factor * turbulentDrop * m * m;
  }

  /** About d ln(dp)/d ln(m) of the pipe: 1 where laminar, nearly 2 above. */
  private double frictionOrder(double m) {
    return reynoldsPerFlow * m < Friction.LAMINAR_LIMIT ? 1 : 1.8;
  }

  /** Pressure across the valve in the last solution [Pa]. */
  public double valveDrop() {
    return valveDrop;
  }
}
