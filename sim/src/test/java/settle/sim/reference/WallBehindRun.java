package settle.sim.reference;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * A wall with a warm profile at its foot, by two-dimensional conduction: room film above, the
 * profile's back below, the foot of the wall a line of symmetry.
 */
public final class WallBehindRun {

  private static final double ROOM_FILM = 0.13;
  private static final double OUTER_FILM = 0.04;
  private static final double CELL = 0.005;
  private static final int ROWS_BEHIND = 28;
  private static final double GROWTH = 1.04;
  private static final double WALL_HEIGHT = 2.4;

  private final double extra;
  private final double taken;

  /**
   * @param thickness of each layer from the room outwards [m]
   * @param conductivity of each [W/(m K)]
   * @param back resistance between profile and wall [m²K/W]
   * @param run height of the run [m]
   * @param metal temperature of the profile [°C], room 20 and outdoors 0
   */
  public WallBehindRun(
      double[] thickness, double[] conductivity, double back, double run, double metal) {
    double[] width = new double[0];
    double[] lambda = new double[0];
    double resistance = ROOM_FILM + OUTER_FILM;
    for (int layer = 0; layer < thickness.length; layer++) {
      int cells = Math.max(4, (int) Math.round(thickness[layer] / CELL));
      width = joined(width, cells, thickness[layer] / cells);
      lambda = joined(lambda, cells, conductivity[layer]);
      resistance += thickness[layer] / conductivity[layer];
    }
    double[] height = rows(run);
    PlaneConduction wall = new PlaneConduction(width, lambda, height);
    for (int j = 0; j < height.length; j++) {
      wall.left(j, j < ROWS_BEHIND ? back : ROOM_FILM, j < ROWS_BEHIND ? metal : 20);
      wall.right(j, OUTER_FILM, 0);
    }
    wall.solve();
    double passing = 0;
    double behind = 0;
    for (int j = 0; j < height.length; j++) {
      boolean warm = j < ROWS_BEHIND;
      double entering = wall.enteringLeft(j, warm ? back : ROOM_FILM, warm ? metal : 20);
      passing += entering;
      behind += warm ? entering : 0;
    }
    extra = passing - 20 / resistance * DoubleStream.of(height).sum();
    taken = behind;
  }

  private static double[] joined(double[] first, int more, double value) {
    double[] all = Arrays.copyOf(first, first.length + more);
    Arrays.fill(all, first.length, all.length, value);
    return all;
  }

  private static double[] rows(double run) {
    double[] rows = joined(new double[0], ROWS_BEHIND, run / ROWS_BEHIND);
    double next = run / ROWS_BEHIND;
    double reached = run;
    while (reached < WALL_HEIGHT) {
      next *= GROWTH;
      rows = joined(rows, 1, next);
      reached += next;
    }
    return rows;
  }

  /** What goes out beyond what the wall would lose without a profile [W/m]. */
  public double extra() {
    return extra;
  }

  /** What passes from the profile into the wall [W/m]. */
  public double taken() {
    return taken;
  }
}
