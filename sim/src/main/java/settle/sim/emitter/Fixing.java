package settle.sim.emitter;

import java.util.List;
import settle.sim.units.Range;

/**
 * The part of an emitter that is fixed to one wall.
 *
 * @param wall name of the wall in its room
 * @param share of the emitter's length that runs along it [-]
 * @param outside whether that wall is a surface to outdoors, which takes the back loss
 */
public record Fixing(String wall, double share, boolean outside) {

  public Fixing {
    Range.within("share of an emitter on wall '" + wall + "'", share, 0, 1, "1");
  }

  /** All of an emitter on one outside wall. */
  public static List<Fixing> outside(String wall) {
    return List.of(new Fixing(wall, 1, true));
  }
}
