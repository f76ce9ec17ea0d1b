package settle.sim.tuning;

import java.util.function.UnaryOperator;
import settle.sim.atrest.Balancing;
import settle.sim.control.FlowCurve;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.valve.Valve;

/**
 * A house with the one of its ways of heating that is to be set.
 *
 * @param house the house
 * @param arrangement one of its arrangements
 */
public record Plant(House house, Arrangement arrangement) {

  /** House and heating of a model. */
  static Plant of(HouseModel model) {
    return new Plant(model.house(), model.arrangement());
  }

  /** This plant as it is run, sharing what is prepared already of the same fabric. */
  HouseModel model(HouseModel like) {
    return Balancing.balancedIfAsked(like.like(house, arrangement));
  }

  Plant with(House other) {
    return new Plant(other, arrangement);
  }

  /** This plant with every branch of a room changed. */
  Plant withRoom(String room, UnaryOperator<Branch> change) {
    return new Plant(house, arrangement.withRoom(room, change));
  }

  /** This plant with one branch changed. */
  Plant withBranch(int position, UnaryOperator<Branch> change) {
    return new Plant(house, arrangement.withBranch(position, change));
  }

  /** The weather compensation of a plant that has one. */
  FlowCurve curve() {
    return house.control().flowCurve().orElseThrow();
  }

  /** How a motor head reacts. */
  Valve.Controller controller(int branch) {
    return arrangement.branches().get(branch).valve().controller().orElseThrow();
  }

  /** This plant with a motor head that reacts otherwise. */
  Plant withController(int branch, Valve.Controller other) {
    return withBranch(branch, b -> b.withValve(b.valve().tuned(other)));
  }

  /** Whether any room is set back. */
  boolean hasProgramme() {
    return house.rooms().stream().anyMatch(room -> !room.want().isConstant());
  }

  /** Whether a room has an emitter. */
  boolean heats(String room) {
    return arrangement.branches().stream().anyMatch(b -> b.room().equals(room));
  }
}
