package settle.sim.atrest;

import java.util.List;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.room.Room;

/**
 * What the emitters of each room can give at most: every valve open, every room at its want, water
 * at a flow temperature, while hot water leaves it to them. Heat lost on the way is not counted.
 */
public final class FullOutput {

  private final double[] output;

  /**
   * @param model the prepared house, as it is run
   * @param flow flow temperature [°C]
   */
  public FullOutput(HouseModel model, double flow) {
    House house = model.house();
    List<Branch> branches = model.arrangement().branches();
    NetworkFlow network = model.networkFlow();
    network.solve(branches.stream().mapToDouble(b -> b.valve().kvMaximum()).toArray(), true);
    EmitterStepper[] emitters = model.emitterSteppers(flow);
    output = new double[house.rooms().size()];
    Loops loops = model.arrangement().loops();
    double[] leaving = new double[emitters.length];
    for (int i = 0; i < emitters.length; i++) {
      int b = loops.inOrder(i);
      Room room = house.rooms().get(model.branchRoom(b));
      double capacityFlow = network.flow(b) * house.water().specificHeat();
      double round = network.loopFlow(b) * house.water().specificHeat();
      double want = room.want().maximum();
      double entering = loops.after(b) < 0 ? flow : leaving[loops.after(b)];
      double given = emitters[b].atRest(capacityFlow, entering, want);
      leaving[b] = round > 0 ? entering - given / round : entering;
      output[model.branchRoom(b)] += house.shareForRooms() * given;
    }
  }

  /** Most that a room's emitters give [W]. */
  public double of(int room) {
    return output[room];
  }
}
