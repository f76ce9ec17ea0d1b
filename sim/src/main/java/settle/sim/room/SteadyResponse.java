package settle.sim.room;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealVector;

/**
 * What each thing that heats or cools a house does to all its rooms at rest: air and star
 * temperature per unit of it. At rest 0 = -K T + B u, so no modes are needed; each room is solved
 * by itself, then the flows through the links so that both ends agree.
 */
public final class SteadyResponse {

  /**
   * Least decay rate taken for a room with no way out but its links [1/s]: with this its heat must
   * leave by the links to within 1e-5 W, and the whole stays solvable.
   */
  static final double LEAST_RATE = 1e-13;

  final int rooms;

  private final HouseNetwork house;

  /** Per room: output [-] per input, as {@link RoomModes} orders them. */
  private final double[][][] response;

  private final DecompositionSolver links;

  /** Per kelvin outdoors, and by the temperatures that are held: by room. */
  final double[] airByOutdoor;

  final double[] starByOutdoor;
  final double[] airByHeld;
  final double[] starByHeld;

  /** Per watt: [where it enters][room]. */
  final double[][] airByConvective;

  final double[][] starByConvective;
  final double[][] airByRadiant;
  final double[][] starByRadiant;
  final double[][] airByHeat;
  final double[][] starByHeat;

  /**
   * @param house the house
   */
  public SteadyResponse(HouseNetwork house) {
    this.house = house;
    rooms = house.rooms.length;
    int heats = house.heatRoom.length;
    response = new double[rooms][][];
    for (int r = 0; r < rooms; r++) {
      response[r] = response(house.rooms[r]);
    }
    links = house.conductance.length == 0 ? null : linkMatrix();
    airByOutdoor = new double[rooms];
    starByOutdoor = new double[rooms];
    airByHeld = new double[rooms];
    starByHeld = new double[rooms];
    airByConvective = new double[rooms][rooms];
    starByConvective = new double[rooms][rooms];
    airByRadiant = new double[rooms][rooms];
    starByRadiant = new double[rooms][rooms];
    airByHeat = new double[heats][rooms];
    starByHeat = new double[heats][rooms];
    double[][] input = new double[rooms][];
    for (int r = 0; r < rooms; r++) {
      input[r] = new double[house.rooms[r].inputs()];
    }
    everywhere(input, RoomModes.OUTDOOR, airByOutdoor, starByOutdoor);
    everywhere(input, RoomModes.HELD, airByHeld, starByHeld);
    for (int r = 0; r < rooms; r++) {
      in(r, input, RoomModes.CONVECTIVE, airByConvective[r], starByConvective[r]);
      in(r, input, RoomModes.RADIANT, airByRadiant[r], starByRadiant[r]);
    }
    for (int h = 0; h < heats; h++) {
      in(house.heatRoom[h], input, house.heatSlot[h], airByHeat[h], starByHeat[h]);
    }
  }

  /** What is lost of a heat input before its room has it. */
  LostBehind lostBehind(int heat) {
    return house.lostBehind[heat];
  }

  /**
   * How far gains in all rooms lift one of them at rest [K]: its air or its star, whichever more.
   *
   * @param room which is lifted
   * @param convective convective gain of each room [W]; not modified
   * @param radiant radiant gain of each room [W]; not modified
   */
  public double riseByGains(int room, double[] convective, double[] radiant) {
    double air = 0;
    double star = 0;
    for (int r = 0; r < rooms; r++) {
      air += airByConvective[r][room] * convective[r] + airByRadiant[r][room] * radiant[r];
      star += starByConvective[r][room] * convective[r] + starByRadiant[r][room] * radiant[r];
    }
    return Math.max(air, star);
  }

  /** T = (K + LEAST_RATE C)^-1 B, the second term only where K alone cannot be solved. */
  private static double[][] response(RoomNetwork room) {
    double[][] k = room.balance();
    if (!room.isOpen()) {
      for (int i = 0; i < k.length; i++) {
        k[i][i] += LEAST_RATE * room.capacity(i);
      }
    }
    double[][] temperatures = room.sources();
    solve(k, temperatures);
    return room.outputs().stream().map(node -> temperatures[node]).toArray(double[][]::new);
  }

  /**
   * Solves K T = B for every column of B at once, by elimination from the last node to the first:
   * lumps follow one another from their face outwards, faces see only air and star, so nothing that
   * is 0 becomes anything else but between those two, and what is 0 is passed over. A dense
   * factorisation of the same matrix took three quarters of all that questions at rest cost. K is
   * an M-matrix, its diagonal dominant: no pivoting is needed.
   *
   * @param k the matrix; destroyed
   * @param b the right sides by row; on return the temperatures
   */
  private static void solve(double[][] k, double[][] b) {
    for (int i = k.length - 1; i > 0; i--) {
      for (int j = 0; j < i; j++) {
        if (k[j][i] != 0) {
          double share = -k[j][i] / k[i][i];
          addTimes(k[j], share, k[i], i);
          addTimes(b[j], share, b[i], b[i].length);
        }
      }
    }
    for (int i = 0; i < k.length; i++) {
      for (int j = 0; j < i; j++) {
        if (k[i][j] != 0) {
          addTimes(b[i], -k[i][j], b[j], b[i].length);
        }
      }
      for (int c = 0; c < b[i].length; c++) {
        b[i][c] /= k[i][i];
      }
    }
  }

  private static void addTimes(double[] row, double factor, double[] other, int length) {
    for (int c = 0; c < length; c++) {
      row[c] += factor * other[c];
    }
  }

  private void everywhere(double[][] input, int slot, double[] air, double[] star) {
    for (double[] room : input) {
      Arrays.fill(room, 0);
      room[slot] = 1;
    }
    solve(input, air, star);
  }

  private void in(int entered, double[][] input, int slot, double[] air, double[] star) {
    for (double[] room : input) {
      Arrays.fill(room, 0);
    }
    input[entered][slot] = 1;
    solve(input, air, star);
  }

  /** q = G (T_first - T_second), with the temperatures themselves following all link flows. */
  private DecompositionSolver linkMatrix() {
    int n = house.conductance.length;
    double[][] matrix = new double[n][n];
    for (int l = 0; l < n; l++) {
      matrix[l][l] = 1;
      for (int k = 0; k < n; k++) {
        double rise =
            riseAt(house.firstRoom[l], house.firstRow[l], k)
                - riseAt(house.secondRoom[l], house.secondRow[l], k);
        matrix[l][k] -= house.conductance[l] * rise;
      }
    }
    return new LUDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver();
  }

  private double riseAt(int room, int row, int link) {
    double sum = 0;
    if (house.firstRoom[link] == room) {
      sum += response[room][row][house.firstSlot[link]];
    }
    if (house.secondRoom[link] == room) {
      sum += response[room][row][house.secondSlot[link]];
    }
    return sum;
  }

  private void solve(double[][] input, double[] air, double[] star) {
    if (links != null) {
      int n = house.conductance.length;
      double[] right = new double[n];
      for (int l = 0; l < n; l++) {
        int a = house.firstRoom[l];
        int b = house.secondRoom[l];
        right[l] =
            house.conductance[l]
                * (product(response[a][house.firstRow[l]], input[a])
                    - product(response[b][house.secondRow[l]], input[b]));
      }
      RealVector q = links.solve(new ArrayRealVector(right, false));
      for (int l = 0; l < n; l++) {
        input[house.firstRoom[l]][house.firstSlot[l]] = q.getEntry(l);
        input[house.secondRoom[l]][house.secondSlot[l]] = q.getEntry(l);
      }
    }
    for (int r = 0; r < rooms; r++) {
      air[r] = product(response[r][RoomModes.AIR], input[r]);
      star[r] = product(response[r][RoomModes.STAR], input[r]);
    }
  }

  /**
   * Every room's inputs at rest, flows through the links among them.
   *
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   * @param heat every heat input [W]
   * @return by room, as {@link RoomModes} orders them
   */
  double[][] inputsAtRest(double outdoor, double[] convective, double[] radiant, double[] heat) {
    double[][] input = new double[rooms][];
    for (int r = 0; r < rooms; r++) {
      input[r] = new double[house.rooms[r].inputs()];
      input[r][RoomModes.OUTDOOR] = outdoor;
      input[r][RoomModes.HELD] = 1;
      input[r][RoomModes.CONVECTIVE] = convective[r];
      input[r][RoomModes.RADIANT] = radiant[r];
    }
    for (int h = 0; h < heat.length; h++) {
      input[house.heatRoom[h]][house.heatSlot[h]] = house.lostBehind[h].kept(heat[h]);
    }
    solve(input, new double[rooms], new double[rooms]);
    return input;
  }

  private static double product(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }
}
