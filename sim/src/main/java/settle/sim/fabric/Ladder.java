package settle.sim.fabric;

import java.util.ArrayList;
import java.util.List;

/**
 * An element cut into lumps: the finite-volume form of one-dimensional conduction. Lumps are
 * cell-centred and uneven: thin at the faces that see a room, thicker inside.
 *
 * <p>A lump's width is measured by the time heat takes to cross it, sqrt(R kappa) [s^0.5], so that
 * one rule serves every material.
 */
public final class Ladder {

  /**
   * Width of the lump at a room's face [s^0.5]; the penetration of a 1-hour wave is sqrt(3600/pi) =
   * 34. With this, {@link #GROWTH} and {@link #WIDEST} admittance and transmittance of common
   * elements stay within 2 % of ISO 13786 at 1 hour and at 24 hours, and the lag of a day's wave
   * within 0.05 h; wider lumps do not hold that.
   */
  private static final double FACE_WIDTH = 14;

  /** How much wider each lump is than its neighbour nearer to the face [-]. */
  private static final double GROWTH = 1.8;

  /** Widest lump [s^0.5]; the penetration of a 24-hour wave is 166. */
  private static final double WIDEST = 38;

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
        resistances.add(pending + share * layer.resistance() / 2);
        capacities.add(share * layer.arealCapacity());
        pending = share * layer.resistance() / 2;
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

  /** Width of a lump that begins so far from a face: the geometric series through the face lump. */
  private static double allowed(double distance, double refinement) {
    return Math.min(FACE_WIDTH / refinement + (GROWTH - 1) * distance, WIDEST / refinement);
  }

  /**
   * Width of a lump that begins so far before a face and ends nearer to it: the same series read
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
