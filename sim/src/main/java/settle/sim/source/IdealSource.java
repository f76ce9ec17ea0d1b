package settle.sim.source;

/**
 * A source without mass that holds its flow temperature as long as its power suffices.
 *
 * @param name what it is called
 * @param flowSetPoint flow temperature [°C]
 * @param maximumPower largest heat output [W], > 0, may be infinite
 */
public record IdealSource(String name, double flowSetPoint, double maximumPower) implements Source {

  public IdealSource {
    if (!(maximumPower > 0)) {
      throw new IllegalArgumentException(
          "source '" + name + "': power " + maximumPower + " W must be > 0");
    }
  }
}
