package settle.sim.measure;

import settle.sim.house.House;

/**
 * More skirting in a room: one of its runs made longer.
 *
 * @param room which
 * @param branch position of the run that is made longer
 * @param runFrom its length as it is [m]
 * @param runTo as it is to be [m]
 * @param others length of the room's other skirting [m]
 */
public record LongerSkirting(String room, int branch, double runFrom, double runTo, double others)
    implements Measure {
  @Override
  public Kind kind() {
    return Kind.LENGTH;
  }

  /** All skirting of the room [m]. */
  @Override
  public double from() {
    return runFrom + others;
  }

  @Override
  public double to() {
    return runTo + others;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.with(
        house
            .arrangement(arrangement)
            .withBranch(branch, b -> b.withEmitter(b.emitter().ofLength(runTo))));
  }
}
