package settle.sim.fabric;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Layers for an element of which only the U-value is known: an inner leaf, insulation without mass
 * that makes up the U-value, and what is beyond it. A lump in the middle of the resistance would
 * hide the mass behind half the insulation, which no wall does.
 *
 * <p>Walls that insulate less than {@link #MASONRY_ABOVE} are taken for solid masonry if no leaf is
 * named; walls to outdoors have an outer skin of half a brick, walls between rooms a leaf on either
 * side. All of it common practice, no source.
 */
public final class FromUValue {

  /** U-value above which a wall is taken for solid masonry [W/(m²K)]. */
  public static final double MASONRY_ABOVE = 1.0;

  /** Least resistance of the layers together [m²K/W]. */
  private static final double LEAST_RESISTANCE = 0.01;

  /** What is too thin to be a layer of its own [m²K/W]. */
  private static final double NOTHING = 1e-9;

  private static final double MASONRY_CONDUCTIVITY = 0.77;
  private static final double MASONRY_DENSITY = 1700;
  private static final double MASONRY_SPECIFIC_HEAT = 800;

  /** Thickness of half a brick [m]. */
  private static final double SKIN = 0.102;

  private FromUValue() {}

  /**
   * The element.
   *
   * @param name what it is called
   * @param uValue U-value between room and outdoor air [W/(m²K)]
   * @param leaf its inner leaf, if that is known
   * @param facing which way it faces: fixes the internal surface resistance contained in the
   *     U-value
   * @param behind what it separates the room from
   * @return its layers from the room outwards; their resistance is never below 0.01 m²K/W
   */
  public static Construction of(
      String name, double uValue, Optional<Leaf> leaf, Facing facing, Behind behind) {
    double resistance = layersResistance(uValue, facing);
    if (isMasonry(uValue, leaf, facing)) {
      return new Construction(name, List.of(masonry(resistance * MASONRY_CONDUCTIVITY)));
    }
    Layer inner = leaf.orElse(Leaf.usual(facing, behind)).layer();
    List<Layer> layers = new ArrayList<>(List.of(inner));
    if (facing == Facing.WALL) {
      layers.add(behind == Behind.ROOM ? inner : masonry(SKIN));
    }
    if (sum(layers) > resistance && behind != Behind.ROOM) {
      layers = new ArrayList<>(List.of(inner));
    }
    double insulation = resistance - sum(layers);
    if (insulation > NOTHING) {
      layers.add(1, Layer.cavity("insulation", insulation));
      return new Construction(name, layers);
    }
    return new Construction(name, layers).withResistance(resistance);
  }

  /** Whether an element is taken for solid masonry. */
  public static boolean isMasonry(double uValue, Optional<Leaf> leaf, Facing facing) {
    return leaf.isEmpty() && facing == Facing.WALL && uValue > MASONRY_ABOVE;
  }

  /** Resistance of layers that together with the films of ISO 6946 make up a U-value [m²K/W]. */
  static double layersResistance(double uValue, Facing facing) {
    double films = facing.surfaceResistance() + Facing.EXTERNAL_RESISTANCE;
    return Math.max(1 / uValue - films, LEAST_RESISTANCE);
  }

  private static Layer masonry(double thickness) {
    return Layer.solid(
        "masonry", thickness, MASONRY_CONDUCTIVITY, MASONRY_DENSITY, MASONRY_SPECIFIC_HEAT);
  }

  private static double sum(List<Layer> layers) {
    return layers.stream().mapToDouble(Layer::resistance).sum();
  }
}
