package settle.sim.emitter;

import java.util.List;
import settle.sim.units.Range;

/**
 * The part of an emitter that is fixed to one wall.
 *
 * @param wall name of the wall in its room
 * @param share of the emitter's length that runs along it [-]
 * @param outside whether that wall is a surface to outdoors, which takes the back loss
 * @param insulation resistance between the emitter's back and that wall [m²K/W]; not a number where
 *     only a share of the heat is known to pass
 */
public record Fixing(String wall, double share, boolean outside, double insulation) {

  public Fixing {
    Range.within("share of an emitter on wall '" + wall + "'", share, 0, 1, "1");
  }

  /** A fixing of which the insulation is not known. */
  public Fixing(String wall, double share, boolean outside) {
    this(wall, share, outside, Double.NaN);
  }

  /** This fixing with insulation behind the emitter [m²K/W]. */
  public Fixing insulated(double resistance) {
    return new Fixing(wall, share, outside, resistance);
  }

  /** Whether it is known what insulates the emitter's back. */
  public boolean isInsulated() {
    return insulation > 0;
  }

  /** All of an emitter on one outside wall. */
  public static List<Fixing> outside(String wall) {
    return List.of(new Fixing(wall, 1, true));
  }
}
