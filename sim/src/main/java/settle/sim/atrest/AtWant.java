package settle.sim.atrest;

import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;

/**
 * The house in design weather with every room at its want and every valve open: what flows, how
 * warm the water is when it comes to each emitter, and what pipes give on the way.
 */
public final class AtWant {

  private final double[] massFlow;
  private final double[] inlet;
  private final double[] pipeHeat;
  private final double[] air;
  private final double[] star;

  /**
   * @param model the prepared house, as it is run
   * @param flow flow temperature at the source [°C]
   */
  public AtWant(HouseModel model, double flow) {
    House house = model.house();
    double[] none = new double[house.rooms().size()];
    DesignFlows design = new DesignFlows(model);
    RestState state = new RestState(model);
    NetworkFlow network = model.networkFlow();
    network.solve(state.kv, true);
    SteadyRooms rooms = new SteadyRooms(model.steadyResponse(), house.designOutdoor(), none, none);
    PipesAtRest pipes = new PipesAtRest(model, network, rooms, state);
    List<Branch> branches = model.arrangement().branches();
    massFlow = new double[branches.size()];
    inlet = new double[branches.size()];
    pipeHeat = new double[none.length];
    air = new double[none.length];
    star = new double[none.length];
    for (int b = 0; b < massFlow.length; b++) {
      massFlow[b] = network.flow(b);
      state.massFlow[b] = massFlow[b];
      state.heat[b] = design.heat(b);
    }
    for (int r = 0; r < air.length; r++) {
      air[r] = rooms.air(r, state.heat);
      star[r] = rooms.star(r, state.heat);
    }
    pipes.outwards(flow);
    for (int b = 0; b < massFlow.length; b++) {
      inlet[b] = pipes.inlet(b);
    }
    pipes.back();
    pipes.give();
    for (int r = 0; r < pipeHeat.length; r++) {
      int input = model.pipeHeatInput(r);
      pipeHeat[r] = input >= 0 ? state.heat[input] : 0;
    }
  }

  /** Flow through a branch [kg/s]. */
  public double massFlow(int branch) {
    return massFlow[branch];
  }

  /** Temperature of the water where it enters a branch's emitter [°C]. */
  public double inlet(int branch) {
    return inlet[branch];
  }

  /**
   * What an emitter gives its heat to [°C].
   *
   * @param room where it stands
   * @param radiantFraction share of its output given by radiation [-]
   */
  public double reference(int room, double radiantFraction) {
    return radiantFraction * star[room] + (1 - radiantFraction) * air[room];
  }

  /** What pipes give to a room, its emitters giving what holds it [W]. */
  public double pipeHeat(int room) {
    return pipeHeat[room];
  }
}
