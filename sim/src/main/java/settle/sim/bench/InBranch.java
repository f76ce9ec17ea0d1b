package settle.sim.bench;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import settle.sim.atrest.Balancing;
import settle.sim.house.Branch;
import settle.sim.house.Distribution;
import settle.sim.house.House;
import settle.sim.hydraulics.FlowCoefficient;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.valve.Valve;

/**
 * A valve in the branch it is fitted to, the network solved with the pump running and every other
 * valve at its nominal opening.
 *
 * @param designFlow flow the branch is to have [kg/s]
 * @param nominalFlow flow with the valve at its nominal opening [kg/s]
 * @param openFlow flow with the valve fully open [kg/s]
 * @param nominalDrop pressure across the valve at its nominal opening [Pa]
 * @param shutPressure pressure across it when it is shut [Pa]
 * @param authority share of that which it takes at its nominal opening [-]; not a number for a
 *     valve that does not throttle
 * @param designBelow how far below its temperature point the head must be for the design flow [K];
 *     not a number where it cannot give it or does not throttle
 */
public record InBranch(
    double designFlow,
    double nominalFlow,
    double openFlow,
    double nominalDrop,
    double shutPressure,
    double authority,
    double designBelow) {

  /**
   * Looks at a valve in its branch.
   *
   * @param model the house as it is run
   * @param branch which
   * @param onRig what the rig read of the valve, if anything moves it
   */
  static InBranch of(HouseModel model, int branch, Optional<HysteresisLoop> onRig) {
    double density = model.house().water().density();
    Valve valve = model.arrangement().branches().get(branch).valve();
    Optional<HysteresisLoop> throttling = onRig.filter(HysteresisLoop::throttles);
    double nominal =
        throttling
            .map(loop -> FlowCoefficient.kv(loop.nominalFlow(), TestRig.PRESSURE, density))
            .orElse(valve.kvNominal());
    Opened water = new Opened(model, branch);
    double nominalFlow = water.flow(nominal);
    double nominalDrop = water.network.valveDrop(branch);
    double openFlow = water.flow(valve.kvMaximum());
    water.flow(0);
    double shutPressure = water.network.branchPressure(branch);
    double designFlow = Balancing.balance(model).branches().get(branch).designFlow();
    double below = Double.NaN;
    if (throttling.isPresent() && designFlow < openFlow) {
      double needed =
          new BrentSolver(1e-6).solve(100, kv -> water.flow(kv) - designFlow, 0, valve.kvMaximum());
      HysteresisLoop loop = throttling.get();
      double flow = FlowCoefficient.massFlow(TestRig.PRESSURE, needed, density);
      below = loop.temperaturePoint() - loop.opening().temperatureAt(flow);
    }
    boolean throttles = throttling.isPresent() || valve.controller().isPresent();
    double authority = throttles ? nominalDrop / shutPressure : Double.NaN;
    return new InBranch(
        designFlow, nominalFlow, openFlow, nominalDrop, shutPressure, authority, below);
  }

  /** The network with one valve opened this far and that, all others at their nominal opening. */
  private static final class Opened {
    private final NetworkFlow network;
    private final double[] kv;
    private final int branch;

    Opened(HouseModel model, int branch) {
      this.branch = branch;
      House house = model.house();
      Distribution distribution = house.distribution();
      List<Branch> branches = model.arrangement().branches();
      network =
          new NetworkFlow(
              distribution.behindSource(),
              distribution.mains(),
              distribution.bypass().orElse(null),
              branches,
              house.water().density(),
              house.water().viscosity());
      kv = branches.stream().mapToDouble(b -> b.valve().kvNominal()).toArray();
    }

    /** Solves it with the valve at a flow coefficient, and gives the flow through it [kg/s]. */
    double flow(double opening) {
      kv[branch] = opening;
      network.solve(kv, true);
      return network.flow(branch);
    }
  }
}
