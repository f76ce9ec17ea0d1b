package settle.sim.room;

import java.util.Arrays;

/**
 * What an advance over one length of step needs, for every room: prepared once per length, or for
 * one length after another in the same place.
 *
 * <p>For a mode with rate lambda and forcing f held over h: z(h) = E z + Phi f, mean z = P z + S f,
 * with E = e^(-lambda h), Phi = (1 - E)/lambda, P = Phi/h, S = (1 - P)/lambda.
 *
 * <p>Where a heat rises evenly through the step, from a below its mean to a above it, the end is
 * further by R b a and the mean by -R/x b a, x = lambda h, R = h (2/x - (1 - E)(2/x + 1)/x).
 *
 * <p>What is joined to a node - an emitter, a pipe, another room - sees its <i>felt</i>
 * temperature, T_mean + theta (T_end - T_mean). With the mean alone the pair would swing for ever
 * where it comes to rest within a step: a small room would end as far above the water as it began
 * below. With
 *
 * <pre>
 *   theta = coth(x/2) - 2/x,   x = G 2 (r_end - r_mean)
 * </pre>
 *
 * <p>where G is the conductance and r the node's rise per watt, one node on one conductance is
 * exact, and nothing comes past what drives it whatever x is: the end is r_end q beyond where it
 * would be without, q = G d/(1 + G r), r = r_mean + theta (r_end - r_mean), and G r_end <= 1 + G r.
 */
final class ModalStep {

  /**
   * Below this x the mean is felt as it is [-]: it is of second order then, and passes nothing by
   * as long as x < 2.
   */
  private static final double MEAN_DOES = 1;

  double length;
  final double[][] decay;
  final double[][] gain;
  final double[][] meanState;
  final double[][] meanForcing;

  /** What an even rise adds at the end of a step, R, and takes from the mean, R/x, per mode [s]. */
  final double[][] riseAtEnd;

  final double[][] riseInMean;

  /** What an even rise of each heat adds to the mean of its room's outputs: [heat][output]. */
  final double[][] meanOfRise;

  /** Mean output per mode at the step's start: [room][output][mode]. */
  final double[][][] meanOutput;

  /** Mean output per input: [room][output][input]. */
  final double[][][] meanDirect;

  /** Felt output per mode and per input; the same rows as of the mean where that does. */
  final double[][][] feltOutput;

  final double[][][] feltDirect;

  /** What is felt per input, by input: [room][input][output]. */
  final double[][][] feltByInput;

  /** Whether any output of a room is felt otherwise than as its mean. */
  final boolean[] stiff;

  private final HouseFabric fabric;

  // Scratch: x of every output [room][output], and rows of outputs that are felt otherwise
  private final double[][] drawn;
  private final double[][][] ownOutput;
  private final double[][][] ownDirect;

  /**
   * Room for a step of any length.
   *
   * @param fabric the house
   */
  ModalStep(HouseFabric fabric) {
    this.fabric = fabric;
    int n = fabric.rooms.length;
    decay = new double[n][];
    gain = new double[n][];
    meanState = new double[n][];
    meanForcing = new double[n][];
    riseAtEnd = new double[n][];
    riseInMean = new double[n][];
    meanOfRise = new double[fabric.heatRoom.length][];
    meanOutput = new double[n][][];
    meanDirect = new double[n][][];
    feltOutput = new double[n][][];
    feltDirect = new double[n][][];
    feltByInput = new double[n][][];
    stiff = new boolean[n];
    drawn = new double[n][];
    ownOutput = new double[n][][];
    ownDirect = new double[n][][];
    for (int r = 0; r < n; r++) {
      RoomModes room = fabric.rooms[r];
      decay[r] = new double[room.modes];
      gain[r] = new double[room.modes];
      meanState[r] = new double[room.modes];
      meanForcing[r] = new double[room.modes];
      riseAtEnd[r] = new double[room.modes];
      riseInMean[r] = new double[room.modes];
      feltByInput[r] = new double[room.inputs][room.outputs];
      meanOutput[r] = new double[room.outputs][room.modes];
      meanDirect[r] = new double[room.outputs][room.inputs];
      feltOutput[r] = meanOutput[r].clone();
      feltDirect[r] = meanDirect[r].clone();
      drawn[r] = new double[room.outputs];
      ownOutput[r] = new double[room.outputs][];
      ownDirect[r] = new double[room.outputs][];
    }
    for (int i = 0; i < meanOfRise.length; i++) {
      meanOfRise[i] = new double[fabric.rooms[fabric.heatRoom[i]].outputs];
    }
  }

  /**
   * Prepares for a length.
   *
   * @param conductance of each link [W/K]
   * @param length [s]
   * @return this
   */
  ModalStep over(double[] conductance, double length) {
    this.length = length;
    for (int r = 0; r < drawn.length; r++) {
      prepare(fabric.rooms[r], r);
    }
    rise();
    draw(conductance);
    for (int r = 0; r < drawn.length; r++) {
      stiff[r] = false;
      for (int y = 0; y < drawn[r].length; y++) {
        if (drawn[r][y] > MEAN_DOES) {
          stiff[r] = true;
          feel(r, y, 1 / Math.tanh(drawn[r][y] / 2) - 2 / drawn[r][y]);
        } else {
          feltOutput[r][y] = meanOutput[r][y];
          feltDirect[r][y] = meanDirect[r][y];
        }
        for (int u = 0; u < feltDirect[r][y].length; u++) {
          feltByInput[r][u][y] = feltDirect[r][y][u];
        }
      }
    }
    return this;
  }

  private void prepare(RoomModes room, int r) {
    int modes = room.modes;
    for (int m = 0; m < modes; m++) {
      double x = room.rate[m] * length;
      double e = Math.exp(-x);
      // (1 - E)/x, by its series where that would lose digits.
      double p =
          x < 2e-2
              ? 1 - x / 2 * (1 - x / 3 * (1 - x / 4 * (1 - x / 5 * (1 - x / 6))))
              : (1 - e) / x;
      // (1 - P)/lambda = h (1 - P)/x, by its series where x is small.
      double s = x < 1e-3 ? 0.5 - x / 6 + x * x / 24 - x * x * x / 120 : (1 - p) / x;
      decay[r][m] = e;
      gain[r][m] = p * length;
      meanState[r][m] = p;
      meanForcing[r][m] = s * length;
      double rise =
          x < 1e-2 ? 1.0 / 6 - x * (1.0 / 12 - x * (1.0 / 40 - x / 180)) : (2 * s - p) / x;
      riseInMean[r][m] = rise * length;
      riseAtEnd[r][m] = rise * x * length;
    }
    for (int y = 0; y < room.outputs; y++) {
      for (int m = 0; m < modes; m++) {
        meanOutput[r][y][m] = room.output[y][m] * meanState[r][m];
      }
      for (int u = 0; u < room.inputs; u++) {
        meanDirect[r][y][u] = room.direct[y][u] + acted(room, y, u, meanForcing[r]);
      }
    }
  }

  private void rise() {
    for (int i = 0; i < meanOfRise.length; i++) {
      int r = fabric.heatRoom[i];
      for (int y = 0; y < meanOfRise[i].length; y++) {
        meanOfRise[i][y] = -acted(fabric.rooms[r], y, fabric.heatSlot[i], riseInMean[r]);
      }
    }
  }

  /** Output per input that acts on the modes so long, but for what shows at once. */
  private static double acted(RoomModes room, int y, int u, double[] acting) {
    return Vectors.dot(room.output[y], acting, room.forcing[u]);
  }

  /** Finds x of every output. */
  private void draw(double[] conductance) {
    for (double[] ofRoom : drawn) {
      Arrays.fill(ofRoom, 0);
    }
    for (int i = 0; i < fabric.heatRoom.length; i++) {
      int r = fabric.heatRoom[i];
      for (int y = RoomModes.AIR; y < RoomModes.FIRST_OTHER; y++) {
        drawn[r][y] += fabric.heatConductance[i] * climb(r, y, fabric.heatSlot[i]);
      }
    }
    for (int l = 0; l < conductance.length; l++) {
      int a = fabric.firstRoom[l];
      int b = fabric.secondRoom[l];
      // What one end gains the other loses, so both move.
      double x =
          conductance[l]
              * (climb(b, fabric.secondRow[l], fabric.secondSlot[l])
                  - climb(a, fabric.firstRow[l], fabric.firstSlot[l]));
      drawn[a][fabric.firstRow[l]] += x;
      drawn[b][fabric.secondRow[l]] += x;
    }
  }

  /** How much further than in the mean an output has risen at the end, twice, per input. */
  private double climb(int r, int y, int u) {
    return 2
        * (fabric.rooms[r].direct[y][u]
            + acted(fabric.rooms[r], y, u, gain[r])
            - meanDirect[r][y][u]);
  }

  private void feel(int r, int y, double theta) {
    RoomModes room = fabric.rooms[r];
    if (ownOutput[r][y] == null) {
      ownOutput[r][y] = new double[room.modes];
      ownDirect[r][y] = new double[room.inputs];
    }
    double[] output = ownOutput[r][y];
    for (int m = 0; m < output.length; m++) {
      double mean = meanOutput[r][y][m];
      output[m] = mean + theta * (room.output[y][m] * decay[r][m] - mean);
    }
    double[] direct = ownDirect[r][y];
    for (int u = 0; u < direct.length; u++) {
      direct[u] = meanDirect[r][y][u] + theta * climb(r, y, u) / 2;
    }
    feltOutput[r][y] = output;
    feltDirect[r][y] = direct;
  }
}
