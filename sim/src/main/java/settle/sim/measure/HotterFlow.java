package settle.sim.measure;

import settle.sim.house.House;

/** Another flow temperature asked of the source [°C]. */
public record HotterFlow(double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.FLOW_TEMPERATURE;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withSource(house.source().setTo(to));
  }
}
