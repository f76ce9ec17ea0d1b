package settle.sim.measure;

import settle.sim.house.House;

/** The pump set higher [Pa]; one with a curve has no setting. */
public record PumpRaised(double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.PUMP;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withPump(house.distribution().pump().setTo(to));
  }
}
