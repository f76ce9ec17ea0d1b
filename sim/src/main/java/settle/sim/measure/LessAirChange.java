package settle.sim.measure;

import settle.sim.house.House;

/** Less air let into a room [1/h]. */
public record LessAirChange(String room, double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.AIR_CHANGE;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withRoom(room, r -> r.withAirChange(to));
  }
}
