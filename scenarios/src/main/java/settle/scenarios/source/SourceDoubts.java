package settle.scenarios.source;

import java.util.Optional;
import settle.scenarios.format.Section;
import settle.scenarios.quantity.Dimension;
import settle.sim.emitter.EmissionLaw;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.source.Buffer;

/** What is doubtful about a source beside the water that reaches it. */
final class SourceDoubts {

  private final House house;
  private final Section source;

  /** What messages call it. */
  private final String it;

  SourceDoubts(House house, Section source, String it) {
    this.house = house;
    this.source = source;
    this.it = it;
  }

  void note() {
    Optional<Buffer> parallel =
        house.buffer().filter(b -> b.placement() == Buffer.Placement.PARALLEL);
    if (parallel.isPresent()) {
      doubtOwnPump(parallel.get());
    } else if (house.distribution().bypass().isEmpty()) {
      house.arrangements().forEach(this::doubtLittleFlow);
    }
  }

  private void doubtOwnPump(Buffer buffer) {
    if (buffer.sourceFlow() < house.source().minimumFlow()) {
      source
          .section(SourceSection.BUFFER)
          .value(SourceSection.SOURCE_FLOW)
          .ifPresent(
              v ->
                  v.warn(
                      shown(buffer.sourceFlow())
                          + " is less than the "
                          + shown(house.source().minimumFlow())
                          + " "
                          + it
                          + " needs: it will never run"));
    }
  }

  /** Emitters that even at full output carry less water than the source needs. */
  private void doubtLittleFlow(Arrangement arrangement) {
    double flow = 0;
    for (Branch branch : arrangement.branches()) {
      flow += branch.designFlow().orElse(flowAtFullOutput(branch));
    }
    if (flow < house.source().minimumFlow()) {
      source.warn(
          it
              + " needs "
              + shown(house.source().minimumFlow())
              + " of water to run; with a drop of "
              + Dimension.TEMPERATURE_DIFFERENCE.show(house.distribution().designDrop())
              + " the emitters of '"
              + arrangement.name()
              + "' carry "
              + shown(flow)
              + " together: plan a bypass, a parallel buffer or a smaller drop");
    }
  }

  /** Flow that brings with the design drop what an emitter gives in design weather [kg/s]. */
  private double flowAtFullOutput(Branch branch) {
    double drop = house.distribution().designDrop();
    double flowTemperature =
        house
            .control()
            .flowCurve()
            .map(curve -> curve.setPoint(house.designOutdoor(), 0))
            .orElse(house.source().flowSetPoint());
    double want = house.dayWant(branch.room());
    double excess = flowTemperature - drop / 2 - want;
    double output =
        branch.emitter().ratedOutput()
            * EmissionLaw.ratedFactor(excess, branch.emitter().exponent());
    return output / (house.water().specificHeat() * drop);
  }

  private String shown(double massFlow) {
    return Dimension.FLOW.show(massFlow / house.water().density());
  }
}
