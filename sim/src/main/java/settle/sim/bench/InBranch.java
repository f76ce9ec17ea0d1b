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
    House house = model.house();
    List<Branch> branches = model.arrangement().branches();
    double density = house.water().density();
    Distribution distribution = house.distribution();
    NetworkFlow network =
        new NetworkFlow(
            distribution.pump(),
            distribution.mains(),
            distribution.bypass().orElse(null),
            branches,
            density,
            house.water().viscosity());
    double[] kv = branches.stream().mapToDouble(b -> b.valve().kvNominal()).toArray();
    Optional<HysteresisLoop> throttling = onRig.filter(HysteresisLoop::throttles);
    throttling.ifPresent(
        loop -> kv[branch] = FlowCoefficient.kv(loop.nominalFlow(), TestRig.PRESSURE, density));
    network.solve(kv, true);
    double nominalFlow = network.flow(branch);
    double nominalDrop = network.valveDrop(branch);
    kv[branch] = branches.get(branch).valve().kvMaximum();
    network.solve(kv, true);
    double openFlow = network.flow(branch);
    kv[branch] = 0;
    network.solve(kv, true);
    double shutPressure = network.branchPressure(branch);
    double designFlow = Balancing.balance(model).branches().get(branch).designFlow();
    double below = Double.NaN;
    if (throttling.isPresent() && designFlow < openFlow) {
      HysteresisLoop loop = throttling.get();
      double needed =
          new BrentSolver(1e-6)
              .solve(
                  100,
                  k -> {
                    kv[branch] = k;
                    network.solve(kv, true);
                    return network.flow(branch) - designFlow;
                  },
                  0,
                  branches.get(branch).valve().kvMaximum());
      double flow = FlowCoefficient.massFlow(TestRig.PRESSURE, needed, density);
      below = loop.temperaturePoint() - loop.opening().temperatureAt(flow);
    }
    boolean throttles =
        throttling.isPresent() || branches.get(branch).valve().controller().isPresent();
    double authority = throttles ? nominalDrop / shutPressure : Double.NaN;
    return new InBranch(
        designFlow, nominalFlow, openFlow, nominalDrop, shutPressure, authority, below);
  }
}
