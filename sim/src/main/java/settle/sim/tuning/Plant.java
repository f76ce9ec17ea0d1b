package settle.sim.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;

/**
 * A house with the one of its ways of heating that is to be set.
 *
 * @param house the house
 * @param arrangement one of its arrangements
 */
public record Plant(House house, Arrangement arrangement) {

  Plant with(House other) {
    return new Plant(other, arrangement);
  }

  Plant with(Arrangement other) {
    return new Plant(house, other);
  }

  /** This plant with every branch of a room changed. */
  Plant withRoom(String room, UnaryOperator<Branch> change) {
    List<Branch> branches = new ArrayList<>();
    for (Branch branch : arrangement.branches()) {
      branches.add(branch.room().equals(room) ? change.apply(branch) : branch);
    }
    return with(arrangement.withBranches(branches));
  }

  /** This plant with one branch changed. */
  Plant withBranch(int position, UnaryOperator<Branch> change) {
    List<Branch> branches = new ArrayList<>(arrangement.branches());
    branches.set(position, change.apply(branches.get(position)));
    return with(arrangement.withBranches(branches));
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
