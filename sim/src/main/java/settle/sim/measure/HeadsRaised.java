package settle.sim.measure;

import settle.sim.house.House;

/** Every head of a room set to a temperature, if it is set lower [°C]. */
public record HeadsRaised(String room, double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.HEADS;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.with(
        house
            .arrangement(arrangement)
            .withRoom(
                room,
                b ->
                    b.valve().setPoint() < to
                        ? b.withValve(b.valve().raised(to - b.valve().setPoint()))
                        : b));
  }
}
