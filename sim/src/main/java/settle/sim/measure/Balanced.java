package settle.sim.measure;

import settle.sim.house.House;

/**
 * A balance before the run.
 *
 * @param from least share of its design flow that a branch has [-]
 * @param to the same balanced [-]
 */
public record Balanced(double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.BALANCE;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.with(house.arrangement(arrangement).asBalanced());
  }
}
