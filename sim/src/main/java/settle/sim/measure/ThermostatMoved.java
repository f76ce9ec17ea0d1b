package settle.sim.measure;

import settle.sim.house.House;

/** The room thermostat in another room. */
public record ThermostatMoved(String fromRoom, String toRoom) implements Measure {
  @Override
  public Kind kind() {
    return Kind.REFERENCE_ROOM;
  }

  @Override
  public double from() {
    return Double.NaN;
  }

  @Override
  public double to() {
    return Double.NaN;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withControl(house.control().withReferenceRoom(toRoom));
  }

  @Override
  public <R> R fold(Cases<R> cases) {
    return cases.thermostat(this);
  }
}
