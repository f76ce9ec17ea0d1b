package settle.sim.study;

import java.util.stream.IntStream;
import settle.sim.house.Arrangement;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Loops;

/**
 * A house as it is and what is known of it, for which measures are looked for.
 *
 * @param house the house
 * @param arrangement how it is heated
 * @param judged what was found of it
 * @param holding what it holds at rest
 */
record Case(House house, Arrangement arrangement, Judgement judged, Holding holding) {

  Case(House house, Arrangement arrangement, Judgement judged) {
    this(house, arrangement, judged, new Holding(house, arrangement));
  }

  /** Name of its arrangement. */
  String name() {
    return arrangement.name();
  }

  Branch branch(int position) {
    return arrangement.branches().get(position);
  }

  /** Positions of the branches of a room. */
  IntStream branchesOf(String room) {
    return IntStream.range(0, arrangement.branches().size())
        .filter(b -> branch(b).room().equals(room));
  }

  /**
   * Positions of the branches whose lockshields throttle a room's emitters: their own and, round a
   * loop in which all of the water passes one, that one's.
   */
  IntStream lockshieldsOf(String room) {
    Loops loops = arrangement.loops();
    return branchesOf(room)
        .flatMap(
            b ->
                IntStream.of(loops.members(b))
                    .filter(m -> m == b || branch(m).loop().byPass().isEmpty()))
        .filter(b -> branch(b).lockshield().isFitted())
        .distinct();
  }
}
