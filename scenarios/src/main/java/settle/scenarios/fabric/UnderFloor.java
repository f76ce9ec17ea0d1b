package settle.scenarios.fabric;

import java.util.ArrayList;
import java.util.List;
import settle.sim.fabric.Behind;
import settle.sim.fabric.Boundary;
import settle.sim.fabric.Construction;
import settle.sim.fabric.Facing;
import settle.sim.fabric.FloorOnGround;
import settle.sim.fabric.Layer;

/**
 * A floor to the ground: its layers, and soil or void under them.
 *
 * @param construction layers from the room down, the lower film of a suspended floor included
 * @param boundary soil or void
 */
public record UnderFloor(Construction construction, Boundary.Between boundary) {

  /** B' of a small house, for lists [m]. */
  private static final double USUAL_BREADTH = 4;

  /**
   * Puts ground under a floor.
   *
   * @param makeUp of the floor
   * @param breadth area over half the exposed perimeter, B' of ISO 13370 [m]
   * @param temperature deep down [°C]
   * @param share of the soil's conductance that leads outdoors [-]
   */
  public static UnderFloor of(MakeUp makeUp, double breadth, double temperature, double share) {
    return makeUp.suspended()
        ? overVoid(makeUp, breadth, temperature)
        : onSoil(makeUp, breadth, temperature, share);
  }

  /** On the ground of a small house. */
  static UnderFloor usual(MakeUp makeUp) {
    return of(makeUp, USUAL_BREADTH, 10, 0);
  }

  private static UnderFloor onSoil(
      MakeUp makeUp, double breadth, double temperature, double share) {
    Construction layers = makeUp.construction(Facing.FLOOR, Behind.GROUND);
    // A U-value contains the soil, which is then among the layers but for what a film would be.
    double soil =
        makeUp.isKnownByUValue()
            ? Facing.EXTERNAL_RESISTANCE
            : FloorOnGround.soilResistance(breadth, layers.resistance());
    return new UnderFloor(layers, Boundary.Between.ground(temperature, 1 / soil, share));
  }

  private static UnderFloor overVoid(MakeUp makeUp, double breadth, double temperature) {
    double toGround = FloorOnGround.voidToGround(breadth);
    double toOutdoors = FloorOnGround.voidToOutdoors(breadth);
    double film = Facing.FLOOR.surfaceResistance();
    Construction floor =
        makeUp
            .withFarResistance(film + 1 / (toGround + toOutdoors))
            .construction(Facing.FLOOR, Behind.OUTDOORS);
    List<Layer> layers = new ArrayList<>(floor.layers());
    layers.add(Layer.cavity("film over the void", film));
    return new UnderFloor(
        new Construction(floor.name(), layers),
        new Boundary.Between("void", temperature, toGround, toOutdoors));
  }

  /** U-value, all that is under the floor included [W/(m²K)]. */
  public double uValue() {
    return 1
        / (Facing.FLOOR.surfaceResistance() + construction.resistance() + boundary.farResistance());
  }
}
