package settle.sim.reference;

import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.hydraulics.Friction;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.Pump;

/**
 * The flows of a pipe network once more, slowly: a root of one unknown inside another, each found
 * by Commons Math's Brent solver. The flow into mains under a pressure is the one after which its
 * end's pressure drives just as much into what hangs there; the pump's head is the one at which it
 * makes the flow that the house takes.
 */
public final class NestedNetwork {

  private static final int MOST = 2000;

  private final List<Main> mains;
  private final Bypass bypass;
  private final List<? extends NetworkFlow.Leaf> leaves;
  private final double[] kv;
  private final double density;
  private final double viscosity;
  private final double[] flow;
  private double bypassFlow;

  /** Solves for the given openings [m³/h at 1 bar]. */
  public NestedNetwork(
      Pump pump,
      List<Main> mains,
      Bypass bypass,
      List<? extends NetworkFlow.Leaf> leaves,
      double[] kv,
      double density,
      double viscosity) {
    this.mains = mains;
    this.bypass = bypass;
    this.leaves = leaves;
    this.kv = kv;
    this.density = density;
    this.viscosity = viscosity;
    flow = new double[leaves.size()];
    double shutHead = pump.head(0, density);
    UnivariateFunction excess = head -> pump.head(into(null, head), density) - head;
    double most = Math.max(shutHead, pump.head(1e3, density));
    double head = excess.value(most) >= 0 ? most : root(excess, 0, most);
    into(null, head);
  }

  private static double root(UnivariateFunction f, double low, double high) {
    if (f.value(low) == 0) {
      return low;
    }
    return new BrentSolver(1e-15, 1e-13, 1e-300).solve(MOST, f, low, high);
  }

  /** Flow into everything fed from a place under a pressure there [kg/s]. */
  private double into(String place, double pressure) {
    double sum = 0;
    for (int b = 0; b < leaves.size(); b++) {
      if (java.util.Objects.equals(leaves.get(b).fedFrom(), place)) {
        flow[b] = leafFlow(b, pressure);
        sum += flow[b];
      }
    }
    if (bypass != null && java.util.Objects.equals(bypass.fedFrom(), place)) {
      bypassFlow = bypassFlow(pressure);
      sum += bypassFlow;
    }
    for (Main main : mains) {
      if (java.util.Objects.equals(main.fedFrom(), place)) {
        sum += mainFlow(main, pressure);
      }
    }
    return sum;
  }

  private double mainFlow(Main main, double pressure) {
    if (pressure <= 0 || into(main.name(), pressure) == 0) {
      into(main.name(), pressure);
      return 0;
    }
    UnivariateFunction excess =
        end -> into(main.name(), end) - pipeFlow(main.pipe(), pressure - end);
    double end = root(excess, 0, pressure);
    return into(main.name(), end);
  }

  /** Flow at which a pipe takes a pressure. */
  private double pipeFlow(Pipe pipe, double pressure) {
    if (pressure <= 0) {
      return 0;
    }
    return root(m -> drop(pipe, m) - pressure, 0, 100);
  }

  private double leafFlow(int b, double pressure) {
    double series = FlowCoefficient.series(kv[b], leaves.get(b).lockshield().kv());
    if (series == 0 || pressure <= 0) {
      return 0;
    }
    double most = FlowCoefficient.massFlow(pressure, series, density);
    return root(
        m ->
            drop(leaves.get(b).pipe(), m)
                + FlowCoefficient.pressureDrop(m, series, density)
                - pressure,
        0,
        most);
  }

  private double bypassFlow(double pressure) {
    double open = (pressure - bypass.setPressure()) / bypass.band();
    if (open <= 0) {
      return 0;
    }
    return FlowCoefficient.massFlow(pressure, bypass.kv() * Math.min(open, 1), density);
  }

  private double drop(Pipe pipe, double m) {
    double velocity = m / density / pipe.area();
    return Friction.pressureGradient(m, pipe.bore(), pipe.roughness(), density, viscosity)
            * pipe.length()
        + pipe.fittings() * density * velocity * velocity / 2;
  }

  /** Flow of a branch [kg/s]. */
  public double flow(int branch) {
    return flow[branch];
  }

  /** Flow of the bypass [kg/s]. */
  public double bypassFlow() {
    return bypassFlow;
  }
}
