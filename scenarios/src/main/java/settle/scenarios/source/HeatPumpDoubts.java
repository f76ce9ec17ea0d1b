package settle.scenarios.source;

import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.EmissionLaw;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.source.Buffer;
import settle.sim.source.HeatPump;

/** What is doubtful about a heat pump with the emitters it feeds. */
public final class HeatPumpDoubts {

  private HeatPumpDoubts() {}

  /**
   * Warns of emitters that even at full output carry less water than the heat pump needs. Bypass
   * and parallel buffer give it water of its own.
   */
  public static void warnOfLittleFlow(House house, Section source) {
    boolean ownWater =
        house.distribution().bypass().isPresent()
            || house.buffer().filter(b -> b.placement() == Buffer.Placement.PARALLEL).isPresent();
    if (!(house.source() instanceof HeatPump heatPump) || ownWater) {
      return;
    }
    for (Arrangement arrangement : house.arrangements()) {
      double flow = 0;
      for (Branch branch : arrangement.branches()) {
        flow += branch.designFlow().orElse(flowAtFullOutput(house, branch));
      }
      if (flow < heatPump.minimumFlow()) {
        source.warn(
            "the heat pump needs "
                + shown(heatPump.minimumFlow(), house)
                + " of water to run; with a drop of "
                + Dimension.TEMPERATURE_DIFFERENCE.show(house.distribution().designDrop())
                + " the emitters of '"
                + arrangement.name()
                + "' carry "
                + shown(flow, house)
                + " together: plan a bypass, a parallel buffer or a smaller drop");
      }
    }
  }

  /** Flow that brings with the design drop what an emitter gives in design weather [kg/s]. */
  private static double flowAtFullOutput(House house, Branch branch) {
    double drop = house.distribution().designDrop();
    double flowTemperature =
        house
            .control()
            .flowCurve()
            .map(curve -> curve.setPoint(house.designOutdoor(), 0))
            .orElse(house.source().flowSetPoint());
    double want = house.rooms().get(house.roomIndex(branch.room())).want().maximum();
    double excess = flowTemperature - drop / 2 - want;
    double output =
        branch.emitter().ratedOutput()
            * EmissionLaw.ratedFactor(excess, branch.emitter().exponent());
    return output / (house.water().specificHeat() * drop);
  }

  private static String shown(double massFlow, House house) {
    return Dimension.FLOW.show(massFlow / house.water().density());
  }
}
