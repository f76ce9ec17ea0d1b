package settle.sim.fabric;

import java.util.OptionalDouble;

/** What lies behind a room's surface. */
public sealed interface Boundary {

  /** Whether it is the air outdoors. */
  default boolean isOutdoors() {
    return false;
  }

  /** Temperature that it keeps whatever the weather [°C]; empty if it keeps none. */
  default OptionalDouble held() {
    return OptionalDouble.empty();
  }

  /** Whether any heat passes. */
  default boolean passesHeat() {
    return isOutdoors() || held().isPresent();
  }

  /** Outdoor air, through the external surface resistance. */
  record Outdoors() implements Boundary {
    @Override
    public boolean isOutdoors() {
      return true;
    }
  }

  /**
   * A temperature that does not follow the weather: ground, a neighbour, an unheated space.
   *
   * @param what what is there, in words for the reader
   * @param temperature its temperature [°C]
   */
  record Held(String what, double temperature) implements Boundary {
    @Override
    public OptionalDouble held() {
      return OptionalDouble.of(temperature);
    }
  }

  /** No heat passes: the like on the other side does the same. */
  record Adiabatic() implements Boundary {}
}
