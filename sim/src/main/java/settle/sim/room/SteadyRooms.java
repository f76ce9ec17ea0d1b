package settle.sim.room;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * All rooms at rest: where air and star settle for heats that stay as they are. Linear in outdoor
 * temperature, gains and heats; solved once, then combined.
 */
public final class SteadyRooms {

  /**
   * Least decay rate taken for a mode [1/s]. A room with no way out but its links has a mode that
   * never decays by itself; with this its heat must leave by the links to within 1e-5 W, and the
   * whole stays solvable.
   */
  private static final double LEAST_RATE = 1e-13;

  private final HouseFabric fabric;
  private final int rooms;
  private final int heats;

  /** Air and star of each room: without heats, and per watt of each heat. */
  private final double[] airFree;

  private final double[] starFree;
  private final double[][] airRise;
  private final double[][] starRise;

  /**
   * @param fabric the house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   */
  public SteadyRooms(HouseFabric fabric, double outdoor, double[] convective, double[] radiant) {
    this.fabric = fabric;
    rooms = fabric.rooms.length;
    heats = fabric.heatRoom.length;
    double[][][] response = new double[rooms][][];
    for (int r = 0; r < rooms; r++) {
      response[r] = response(fabric.rooms[r]);
    }
    LUDecomposition links = linkMatrix(response);
    airFree = new double[rooms];
    starFree = new double[rooms];
    airRise = new double[heats][rooms];
    starRise = new double[heats][rooms];
    double[][] input = new double[rooms][];
    for (int r = 0; r < rooms; r++) {
      input[r] = new double[fabric.rooms[r].inputs];
      input[r][RoomModes.OUTDOOR] = outdoor;
      input[r][RoomModes.HELD] = 1;
      input[r][RoomModes.CONVECTIVE] = convective[r];
      input[r][RoomModes.RADIANT] = radiant[r];
    }
    solve(response, links, input, airFree, starFree);
    for (int h = 0; h < heats; h++) {
      for (int r = 0; r < rooms; r++) {
        java.util.Arrays.fill(input[r], 0);
      }
      input[fabric.heatRoom[h]][fabric.heatSlot[h]] = 1;
      solve(response, links, input, airRise[h], starRise[h]);
    }
  }

  private static double[][] response(RoomModes room) {
    double[][] response = new double[room.outputs][room.inputs];
    for (int y = 0; y < room.outputs; y++) {
      for (int u = 0; u < room.inputs; u++) {
        double sum = room.direct[y][u];
        for (int m = 0; m < room.modes; m++) {
          sum += room.output[y][m] * room.forcing[u][m] / Math.max(room.rate[m], LEAST_RATE);
        }
        response[y][u] = sum;
      }
    }
    return response;
  }

  /** q = G (T_first - T_second), with the temperatures themselves following all link flows. */
  private LUDecomposition linkMatrix(double[][][] response) {
    int n = fabric.conductance.length;
    if (n == 0) {
      return null;
    }
    double[][] matrix = new double[n][n];
    for (int l = 0; l < n; l++) {
      matrix[l][l] = 1;
      for (int k = 0; k < n; k++) {
        double rise =
            riseAt(response, fabric.firstRoom[l], fabric.firstRow[l], k)
                - riseAt(response, fabric.secondRoom[l], fabric.secondRow[l], k);
        matrix[l][k] -= fabric.conductance[l] * rise;
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(matrix, false));
  }

  private double riseAt(double[][][] response, int room, int row, int link) {
    double sum = 0;
    if (fabric.firstRoom[link] == room) {
      sum += response[room][row][fabric.firstSlot[link]];
    }
    if (fabric.secondRoom[link] == room) {
      sum += response[room][row][fabric.secondSlot[link]];
    }
    return sum;
  }

  private void solve(
      double[][][] response, LUDecomposition links, double[][] input, double[] air, double[] star) {
    int n = fabric.conductance.length;
    if (n > 0) {
      double[] right = new double[n];
      for (int l = 0; l < n; l++) {
        int a = fabric.firstRoom[l];
        int b = fabric.secondRoom[l];
        right[l] =
            fabric.conductance[l]
                * (product(response[a][fabric.firstRow[l]], input[a])
                    - product(response[b][fabric.secondRow[l]], input[b]));
      }
      RealVector q = links.getSolver().solve(new ArrayRealVector(right, false));
      for (int l = 0; l < n; l++) {
        input[fabric.firstRoom[l]][fabric.firstSlot[l]] = q.getEntry(l);
        input[fabric.secondRoom[l]][fabric.secondSlot[l]] = q.getEntry(l);
      }
    }
    for (int r = 0; r < rooms; r++) {
      air[r] = product(response[r][RoomModes.AIR], input[r]);
      star[r] = product(response[r][RoomModes.STAR], input[r]);
    }
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** Air temperature of a room with the given heats [W] [°C]. */
  public double air(int room, double[] heat) {
    return combined(airFree, airRise, room, heat);
  }

  /** Star temperature of a room with the given heats [W] [°C]. */
  public double star(int room, double[] heat) {
    return combined(starFree, starRise, room, heat);
  }

  private double combined(double[] free, double[][] rise, int room, double[] heat) {
    double sum = free[room];
    for (int h = 0; h < heats; h++) {
      sum += rise[h][room] * heat[h];
    }
    return sum;
  }
}
