package settle.sim.fabric;

import java.util.OptionalDouble;
import settle.sim.units.Range;

/** What lies behind a room's surface. */
public sealed interface Boundary {

  /** Whether it is the air outdoors. */
  default boolean isOutdoors() {
    return false;
  }

  /** Temperature that it keeps, or tends to, whatever the weather [°C]; empty if it keeps none. */
  default OptionalDouble held() {
    return OptionalDouble.empty();
  }

  /** Conductance from the element's far face to outdoors [W/(m²K)]. */
  default double toOutdoors() {
    return 0;
  }

  /** Conductance from the element's far face to the temperature that is held [W/(m²K)]. */
  default double toHeld() {
    return 0;
  }

  /** Resistance between the element's far face and all that lies beyond it [m²K/W]. */
  default double farResistance() {
    return 1 / (toOutdoors() + toHeld());
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

    @Override
    public double toOutdoors() {
      return 1 / Facing.EXTERNAL_RESISTANCE;
    }
  }

  /**
   * A temperature that does not follow the weather: a neighbour, an unheated space. It is that of
   * the element's far face.
   *
   * @param what what is there, in words for the reader
   * @param temperature its temperature [°C]
   */
  record Held(String what, double temperature) implements Boundary {
    @Override
    public OptionalDouble held() {
      return OptionalDouble.of(temperature);
    }

    @Override
    public double toHeld() {
      return Double.POSITIVE_INFINITY;
    }
  }

  /**
   * What follows the weather in part: the ground, or the void under a floor.
   *
   * @param what what is there, in words for the reader
   * @param temperature that is held deep down [°C]
   * @param toHeld conductance from the element's far face to that [W/(m²K)]
   * @param toOutdoors conductance from there to outdoors [W/(m²K)]
   */
  record Between(String what, double temperature, double toHeld, double toOutdoors)
      implements Boundary {

    public Between {
      Range.notNegative("conductance to what is held", toHeld, "W/(m2 K)");
      Range.notNegative("conductance to outdoors", toOutdoors, "W/(m2 K)");
      Range.positive("conductance beyond the element", toHeld + toOutdoors, "W/(m2 K)");
    }

    @Override
    public OptionalDouble held() {
      return OptionalDouble.of(temperature);
    }

    /**
     * The ground, colder in the cold season: the conductance to it is shared between a temperature
     * deep down and outdoors.
     *
     * @param temperature annual mean [°C]
     * @param conductance of the soil [W/(m²K)]
     * @param share to outdoors [-]
     */
    public static Between ground(double temperature, double conductance, double share) {
      return new Between("ground", temperature, conductance * (1 - share), conductance * share);
    }
  }

  /** No heat passes: the like on the other side does the same. */
  record Adiabatic() implements Boundary {}
}
