package settle.sim.measure;

import settle.sim.house.House;

/**
 * A source of the same kind of another size.
 *
 * @param from power in design weather [W]
 * @param to that of the larger one [W]
 */
public record LargerSource(double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.SOURCE;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withSource(house.source().scaled(to / from));
  }
}
