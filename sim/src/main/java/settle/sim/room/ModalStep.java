package settle.sim.room;

/**
 * What an advance over one length of step needs, for every room: prepared once per length.
 *
 * <p>For a mode with rate lambda and forcing f held over h: z(h) = E z + Phi f, mean z = P z + S f,
 * with E = e^(-lambda h), Phi = (1 - E)/lambda, P = Phi/h, S = (1 - P)/lambda.
 */
final class ModalStep {

  final double length;
  final double[][] decay;
  final double[][] gain;
  final double[][] meanState;
  final double[][] meanForcing;

  /** Mean output per mode at the step's start: [room][output][mode]. */
  final double[][][] meanOutput;

  /** Mean output per input: [room][output][input]. */
  final double[][][] meanDirect;

  ModalStep(HouseFabric fabric, double length) {
    this.length = length;
    int n = fabric.rooms.length;
    decay = new double[n][];
    gain = new double[n][];
    meanState = new double[n][];
    meanForcing = new double[n][];
    meanOutput = new double[n][][];
    meanDirect = new double[n][][];
    for (int r = 0; r < n; r++) {
      prepare(fabric.rooms[r], r);
    }
  }

  private void prepare(RoomModes room, int r) {
    int modes = room.modes;
    decay[r] = new double[modes];
    gain[r] = new double[modes];
    meanState[r] = new double[modes];
    meanForcing[r] = new double[modes];
    for (int m = 0; m < modes; m++) {
      double x = room.rate[m] * length;
      double e = Math.exp(-x);
      double p = x < 1e-5 ? 1 - x / 2 + x * x / 6 : -Math.expm1(-x) / x;
      // (1 - P)/lambda = h (1 - P)/x, by its series where x is small.
      double s = x < 1e-3 ? 0.5 - x / 6 + x * x / 24 - x * x * x / 120 : (1 - p) / x;
      decay[r][m] = e;
      gain[r][m] = p * length;
      meanState[r][m] = p;
      meanForcing[r][m] = s * length;
    }
    meanOutput[r] = new double[room.outputs][modes];
    meanDirect[r] = new double[room.outputs][room.inputs];
    for (int y = 0; y < room.outputs; y++) {
      double[] c = room.output[y];
      for (int m = 0; m < modes; m++) {
        meanOutput[r][y][m] = c[m] * meanState[r][m];
      }
      for (int u = 0; u < room.inputs; u++) {
        double sum = room.direct[y][u];
        double[] b = room.forcing[u];
        for (int m = 0; m < modes; m++) {
          sum += c[m] * meanForcing[r][m] * b[m];
        }
        meanDirect[r][y][u] = sum;
      }
    }
  }
}
