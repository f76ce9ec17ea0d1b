package settle.sim.measure;

import settle.sim.fabric.Window;
import settle.sim.house.House;

/** Better glazing in a room [W/(m² K)]; what is better already, and doors, stay. */
public record BetterGlazing(String room, double from, double to) implements Measure {
  @Override
  public Kind kind() {
    return Kind.WINDOW;
  }

  /** Whether an opening lets the sun in: a door that does not stays as it is. */
  public static boolean isGlazed(Window opening) {
    return opening.gValue() > 0;
  }

  @Override
  public House on(House house, String arrangement) {
    return house.withRoom(room, r -> r.withWindows(r.windows().stream().map(this::on).toList()));
  }

  private Window on(Window opening) {
    return isGlazed(opening) && opening.uValue() > to
        ? new Window(opening.name(), opening.area(), to, opening.gValue())
        : opening;
  }
}
