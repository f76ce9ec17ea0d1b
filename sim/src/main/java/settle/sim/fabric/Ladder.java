package settle.sim.fabric;

import java.util.ArrayList;
import java.util.List;

/**
 * An element cut into lumps, for one-dimensional conduction. It is first cut into cells: thin at
 * the faces that see a room, thicker inside.
 *
 * <p>A cell holds two lumps of half its heat capacity at its Gauss points, 0.2113 of its resistance
 * from either end: the matrix of the pair then agrees with that of the solid cell to first order in
 * frequency (the integrals of x and x (1 - x) over the cell are exact), which a single lump in the
 * middle does not. A thin cell has one lump in its middle.
 *
 * <p>A cell's width is measured by the time heat takes to cross it, sqrt(R kappa) [s^0.5], so that
 * one rule serves every material.
 */
public final class Ladder {

  /**
   * Width of the cell at a room's face [s^0.5]; the penetration of a 1-hour wave is sqrt(3600/pi) =
   * 34. With this, {@link #GROWTH} and {@link #WIDEST} room temperatures of a house of eight rooms
   * stay within 0.02 K of those with a ladder ten times as fine; admittance and transmittance of
   * common elements within 1.2 % and the lag of a day's wave within 0.05 h of ISO 13786. Wider
   * cells do not hold that.
   */
  private static final double FACE_WIDTH = 26;

  /** How much wider each cell is than its neighbour nearer to the face [-]. */
  private static final double GROWTH = 1.5;

  /** Widest cell [s^0.5]; the penetration of a 24-hour wave is 166. */
  private static final double WIDEST = 70;

  /** A cell narrower than this has one lump [s^0.5]; it matters for waves of a few minutes only. */
  private static final double SINGLE = 12;

  /** Share of a cell before its first Gauss point: (1 - 1/sqrt(3))/2. */
  private static final double GAUSS = 0.21132486540518713;

  private final double[] capacity;
  private final double[] resistance;

  private Ladder(double[] capacity, double[] resistance) {
    this.capacity = capacity;
    this.resistance = resistance;
  }

  /**
   * Cuts an element.
   *
   * @param construction the element, from its first face
   * @param roomBehind whether the far face sees a room too, and so needs thin lumps
   * @param refinement divides every width [-]; 1 for ordinary work, larger for a finer ladder
   */
  public static Ladder of(Construction construction, boolean roomBehind, double refinement) {
    double total = 0;
    for (Layer layer : construction.layers()) {
      total += width(layer);
    }
    List<Double> capacities = new ArrayList<>();
    List<Double> resistances = new ArrayList<>();
    double pending = 0;
    double passed = 0;
    for (Layer layer : construction.layers()) {
      if (layer.arealCapacity() == 0) {
        pending += layer.resistance();
        continue;
      }
      for (double share : shares(layer, passed, total, roomBehind, refinement)) {
        double across = share * layer.resistance();
        double held = share * layer.arealCapacity();
        if (share * width(layer) * refinement < SINGLE) {
          resistances.add(pending + across / 2);
          capacities.add(held);
          pending = across / 2;
        } else {
          pending += GAUSS * across;
          resistances.add(pending);
          capacities.add(held / 2);
          resistances.add((1 - 2 * GAUSS) * across);
          capacities.add(held / 2);
          pending = GAUSS * across;
        }
      }
      passed += width(layer);
    }
    resistances.add(pending);
    return new Ladder(toArray(capacities), toArray(resistances));
  }

  /** Number of lumps; 0 for an element without mass. */
  public int lumps() {
    return capacity.length;
  }

  /** Heat capacity of a lump [J/(m²K)]. */
  public double capacity(int lump) {
    return capacity[lump];
  }

  /**
   * Resistance before a lump [m²K/W]: from the first face for 0, between neighbours, and from the
   * last lump to the far face for {@link #lumps()}.
   */
  public double resistance(int lump) {
    return resistance[lump];
  }

  private static double width(Layer layer) {
    return Math.sqrt(layer.resistance() * layer.arealCapacity());
  }

  /**
   * Cuts one layer into shares of its thickness, each as wide as its distance from the nearer room
   * face allows.
   */
  private static List<Double> shares(
      Layer layer, double passed, double total, boolean roomBehind, double refinement) {
    double width = width(layer);
    if (width == 0) {
      return List.of(1.0); // a bare lump
    }
    List<Double> cuts = new ArrayList<>();
    double at = 0;
    while (at < width * (1 - 1e-9)) {
      double fromFace = passed + at;
      double allowed = allowed(fromFace, refinement);
      if (roomBehind) {
        double fromFar = total - fromFace;
        allowed = Math.min(allowed, backward(fromFar, refinement));
      }
      double left = width - at;
      double cut = left < 1.5 * allowed ? left : allowed;
      cuts.add(cut / width);
      at += cut;
    }
    return cuts;
  }

  /** Width of a cell that begins so far from a face: the geometric series through the face cell. */
  private static double allowed(double distance, double refinement) {
    return Math.min(FACE_WIDTH / refinement + (GROWTH - 1) * distance, WIDEST / refinement);
  }

  /**
   * Width of a cell that begins so far before a face and ends nearer to it: the same series read
   * backwards.
   */
  private static double backward(double distance, double refinement) {
    double face = FACE_WIDTH / refinement;
    return Math.min(Math.max((distance * (GROWTH - 1) + face) / GROWTH, face), WIDEST / refinement);
  }

  private static double[] toArray(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
