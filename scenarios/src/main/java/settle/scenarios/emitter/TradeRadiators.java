package settle.scenarios.emitter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import settle.scenarios.catalogue.Catalogue;
import settle.scenarios.format.Key;
import settle.scenarios.format.Typed;
import settle.scenarios.quantity.NumberText;
import settle.sim.emitter.Emitter;

/**
 * Radiators as the trade calls them, by type and height. A height that the catalogue does not have
 * lies on the straight line through the two nearest that it has.
 */
public final class TradeRadiators {

  /** What panels are called by, one or two figures: panels, then convectors. */
  private static final String PANEL = "type ";

  private static final String RAIL = "towel rail";

  /** Heights in names are in whole millimetres [m]. */
  private static final double MILLIMETRE = 1e-3;

  private TradeRadiators() {}

  /**
   * A radiator that can be fitted.
   *
   * @param name by which a scenario calls it
   * @param definition how a scenario defines it, where the catalogue does not have it
   */
  public record Radiator(String name, Optional<String> definition) {}

  /** The types there are: "10", "11", "towel rail". */
  public static List<String> types() {
    List<String> types = new ArrayList<>();
    for (String name : all().keySet()) {
      String type = name.startsWith(PANEL) ? name.split(" ")[1] : name.startsWith(RAIL) ? RAIL : "";
      if (!type.isEmpty() && !types.contains(type)) {
        types.add(type);
      }
    }
    return types;
  }

  /** Whether a type is of one size and has no length to choose. */
  public static boolean isOfOneSize(String type) {
    return type.equals(RAIL);
  }

  private static Map<String, EmitterType> all() {
    return Catalogue.builtIn().of(EmitterKinds.SECTION);
  }

  /**
   * The radiator of a type and height.
   *
   * @param type one of {@link #types}
   * @param height [m]
   * @param length [m]; of no matter for what is sold by length
   */
  public static Radiator of(String type, double height, double length) {
    return isOfOneSize(type) ? rail(height, length) : panel(type, height);
  }

  private static Radiator panel(String type, double height) {
    String name = PANEL + type + " " + millimetres(height) + " mm";
    if (all().containsKey(name)) {
      return new Radiator(name, Optional.empty());
    }
    TreeMap<Integer, EmitterType> heights = new TreeMap<>();
    all()
        .forEach(
            (known, emitter) -> {
              if (known.startsWith(PANEL + type + " ")) {
                heights.put(Integer.parseInt(known.split(" ")[2]), emitter);
              }
            });
    Integer above = heights.ceilingKey(Math.toIntExact(millimetres(height)));
    int high = above == null ? heights.lastKey() : above;
    high = high == heights.firstKey() ? heights.higherKey(high) : high;
    int low = heights.lowerKey(high);
    Line line =
        new Line(heights.get(low), heights.get(high), (height / MILLIMETRE - low) / (high - low));
    Typed keys =
        new Typed()
            .put(Key.KIND, PanelType.KIND.word())
            .put("about", "by height from the catalogue")
            .put(EmitterLaw.OUTPUT_PER_METRE, line.at(e -> e.ratedOutput(), 0))
            .put(EmitterLaw.EXPONENT, line.at(e -> e.exponent(), 2))
            .put(EmitterLaw.WATER_PER_METRE, line.at(e -> e.waterVolume(), 4))
            .put(EmitterLaw.METAL_PER_METRE, line.at(e -> e.metalCapacity() / EmitterLaw.STEEL, 1))
            .put(EmitterLaw.RADIANT_SHARE, line.at(e -> e.radiantFraction(), 2))
            .put(EmitterLaw.HEIGHT, height);
    return new Radiator(name, Optional.of(keys.toString()));
  }

  /** A metre of each of two heights, and how far from the lower to the higher. */
  private record Line(EmitterType low, EmitterType high, double share) {

    double at(ToDoubleFunction<Emitter> value, int decimals) {
      double from = value.applyAsDouble(low.placed(1, 0, List.of()));
      double to = value.applyAsDouble(high.placed(1, 0, List.of()));
      return NumberText.rounded(from + share * (to - from), decimals);
    }
  }

  /** A rail as one of the catalogue, as much larger or smaller as its face. */
  private static Radiator rail(double height, double width) {
    String name = RAIL + " " + millimetres(height) + " x " + millimetres(width);
    if (all().containsKey(name)) {
      return new Radiator(name, Optional.empty());
    }
    EmitterType nearest = null;
    double nearestFace = Double.NaN;
    for (Map.Entry<String, EmitterType> known : all().entrySet()) {
      if (known.getKey().startsWith(RAIL)) {
        String[] words = known.getKey().split(" ");
        double face =
            Integer.parseInt(words[2]) * MILLIMETRE * Integer.parseInt(words[4]) * MILLIMETRE;
        if (nearest == null
            || Math.abs(face - height * width) < Math.abs(nearestFace - height * width)) {
          nearest = known.getValue();
          nearestFace = face;
        }
      }
    }
    Emitter like = nearest.placed(1, 0, List.of());
    double times = height * width / nearestFace;
    Typed keys =
        new Typed()
            .put(Key.KIND, OneSizeType.KIND.word())
            .put("about", "by its face from the catalogue")
            .put(EmitterLaw.OUTPUT, NumberText.rounded(times * like.ratedOutput(), 0))
            .put(EmitterLaw.EXPONENT, like.exponent())
            .put(EmitterLaw.WATER, NumberText.rounded(times * like.waterVolume(), 4))
            .put(
                EmitterLaw.METAL,
                NumberText.rounded(times * like.metalCapacity() / EmitterLaw.STEEL, 1))
            .put(EmitterLaw.RADIANT_SHARE, like.radiantFraction())
            .put(EmitterLaw.HEIGHT, height);
    return new Radiator(name, Optional.of(keys.toString()));
  }

  private static long millimetres(double metres) {
    return Math.round(metres / MILLIMETRE);
  }
}
