package settle.sim.room;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A room's fabric and air in modal form: what is prepared once, never changed.
 *
 * <p>With the massless nodes eliminated, C dT/dt = -K T + B u, symmetric K. In the modes z = V'
 * C^(1/2) T the room falls apart into independent lags, dz_m/dt = -lambda_m z_m + b_m u, each of
 * which can be advanced exactly over any time while the inputs u hold. Outputs are y = c z + d u.
 *
 * <p>Inputs u, in order: outdoor temperature [°C]; 1 (the constant flows from held temperatures);
 * convective gain [W]; radiant gain [W]; then the heat of each heat input declared [W] and the heat
 * flow of each link [W].
 *
 * <p>Outputs y, in order: air temperature, star temperature, temperature at each link's node [°C].
 */
final class RoomModes {

  static final int OUTDOOR = 0;
  static final int HELD = 1;
  static final int CONVECTIVE = 2;
  static final int RADIANT = 3;
  static final int FIRST_HEAT = 4;

  static final int AIR = 0;
  static final int STAR = 1;
  static final int FIRST_LINK = 2;

  final int modes;
  final int inputs;
  final int outputs;

  /** Decay rates [1/s], length modes, >= 0. */
  final double[] rate;

  /** Forcing per input: [input][mode]. */
  final double[][] forcing;

  /** Output per mode: [output][mode]. */
  final double[][] output;

  /** Output per input, without delay: [output][input]. */
  final double[][] direct;

  /** Stored heat per mode [J]. */
  final double[] stored;

  /** Outdoor loss per mode [W] and per input [W]. */
  final double[] outdoorLoss;

  final double[] outdoorLossDirect;

  /** Loss to held temperatures per mode [W] and per input [W]. */
  final double[] heldLoss;

  final double[] heldLossDirect;

  /** Modes of a room at 1 °C throughout. */
  final double[] uniform;

  /** Whether each link ends at the air. */
  final boolean[] linksAir;

  RoomModes(RoomNetwork network) {
    List<RoomNetwork.LinkEnd> links = network.links();
    int n = network.nodes();
    int[] massive = select(network, true);
    int[] massless = select(network, false);
    modes = massive.length;
    inputs = network.inputs();
    outputs = FIRST_LINK + links.size();

    RealMatrix k = new Array2DRowRealMatrix(network.balance(), false);
    RealMatrix kzz = k.getSubMatrix(massless, massless);
    RealMatrix kzc = k.getSubMatrix(massless, massive);
    RealMatrix s = new Array2DRowRealMatrix(network.sources(), false);
    int[] allInputs = range(inputs);
    RealMatrix sz = s.getSubMatrix(massless, allInputs);
    RealMatrix sc = s.getSubMatrix(massive, allInputs);
    DecompositionSolver solver = new LUDecomposition(kzz).getSolver();
    // Massless nodes: T_z = -K_zz^-1 K_zc T_c + K_zz^-1 s_z u.
    RealMatrix fromMassive = solver.solve(kzc).scalarMultiply(-1);
    RealMatrix fromInputs = solver.solve(sz);
    RealMatrix kcz = k.getSubMatrix(massive, massless);
    RealMatrix reduced = k.getSubMatrix(massive, massive).add(kcz.multiply(fromMassive));
    RealMatrix reducedSource = sc.subtract(kcz.multiply(fromInputs));

    double[] rootCapacity = new double[modes];
    for (int i = 0; i < modes; i++) {
      rootCapacity[i] = Math.sqrt(network.capacity(massive[i]));
    }
    double[][] symmetric = new double[modes][modes];
    for (int i = 0; i < modes; i++) {
      for (int j = 0; j <= i; j++) {
        double value =
            (reduced.getEntry(i, j) + reduced.getEntry(j, i))
                / (2 * rootCapacity[i] * rootCapacity[j]);
        symmetric[i][j] = value;
        symmetric[j][i] = value;
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(symmetric, false));
    RealMatrix v = eigen.getV();

    rate = new double[modes];
    forcing = new double[inputs][modes];
    stored = new double[modes];
    uniform = new double[modes];
    double[][] massiveShape = new double[modes][modes];
    for (int m = 0; m < modes; m++) {
      rate[m] = Math.max(eigen.getRealEigenvalue(m), 0);
      for (int i = 0; i < modes; i++) {
        double shape = v.getEntry(i, m);
        massiveShape[i][m] = shape / rootCapacity[i];
        stored[m] += shape * rootCapacity[i];
        for (int u = 0; u < inputs; u++) {
          forcing[u][m] += shape / rootCapacity[i] * reducedSource.getEntry(i, u);
        }
      }
      uniform[m] = stored[m];
    }

    // Node temperatures from modes and inputs, massive and massless alike.
    double[][] nodeFromModes = new double[n][];
    double[][] nodeFromInputs = new double[n][];
    for (int i = 0; i < modes; i++) {
      nodeFromModes[massive[i]] = massiveShape[i];
      nodeFromInputs[massive[i]] = new double[inputs];
    }
    double[][] masslessFromModes =
        fromMassive.multiply(new Array2DRowRealMatrix(massiveShape, false)).getData();
    for (int i = 0; i < massless.length; i++) {
      nodeFromModes[massless[i]] = masslessFromModes[i];
      nodeFromInputs[massless[i]] = fromInputs.getRow(i);
    }

    output = new double[outputs][];
    direct = new double[outputs][];
    output[AIR] = nodeFromModes[RoomNetwork.AIR];
    direct[AIR] = nodeFromInputs[RoomNetwork.AIR];
    output[STAR] = nodeFromModes[RoomNetwork.STAR];
    direct[STAR] = nodeFromInputs[RoomNetwork.STAR];
    for (int l = 0; l < links.size(); l++) {
      output[FIRST_LINK + l] = nodeFromModes[links.get(l).node()];
      direct[FIRST_LINK + l] = nodeFromInputs[links.get(l).node()];
    }

    linksAir = new boolean[links.size()];
    for (int l = 0; l < linksAir.length; l++) {
      linksAir[l] = links.get(l).node() == RoomNetwork.AIR;
    }

    outdoorLoss = new double[modes];
    outdoorLossDirect = new double[inputs];
    heldLoss = new double[modes];
    heldLossDirect = new double[inputs];
    for (int i = 0; i < n; i++) {
      addLoss(
          network.outdoor(i), nodeFromModes[i], nodeFromInputs[i], outdoorLoss, outdoorLossDirect);
      addLoss(
          network.heldConductance(i),
          nodeFromModes[i],
          nodeFromInputs[i],
          heldLoss,
          heldLossDirect);
      outdoorLossDirect[OUTDOOR] -= network.outdoor(i);
      heldLossDirect[HELD] -= network.heldFlow(i);
    }
  }

  /** A room whose slow modes go faster; see {@link #hastened}. */
  private RoomModes(RoomModes room, double longestLag, double mostHaste) {
    modes = room.modes;
    inputs = room.inputs;
    outputs = room.outputs;
    rate = room.rate.clone();
    forcing = new double[inputs][];
    for (int u = 0; u < inputs; u++) {
      forcing[u] = room.forcing[u].clone();
    }
    for (int m = 0; m < modes; m++) {
      double lag = 1 / Math.max(rate[m], Double.MIN_NORMAL);
      double haste = Math.min(Math.max(lag / longestLag, 1), mostHaste);
      rate[m] *= haste;
      for (int u = 0; u < inputs; u++) {
        forcing[u][m] *= haste;
      }
    }
    output = room.output;
    direct = room.direct;
    stored = room.stored;
    outdoorLoss = room.outdoorLoss;
    outdoorLossDirect = room.outdoorLossDirect;
    heldLoss = room.heldLoss;
    heldLossDirect = room.heldLossDirect;
    uniform = room.uniform;
    linksAir = room.linksAir;
  }

  /**
   * The room with its slow modes gone through faster: it comes to rest where it would, only sooner.
   * Modes and outputs stay what they are, so that a state can pass from one to the other; what a
   * mode stores no longer balances with what flows in.
   *
   * @param longestLag time constant that slower modes are brought to [s]
   * @param mostHaste by how much at most [-]
   */
  RoomModes hastened(double longestLag, double mostHaste) {
    return new RoomModes(this, longestLag, mostHaste);
  }

  private static void addLoss(
      double g, double[] fromModes, double[] fromInputs, double[] loss, double[] lossDirect) {
    for (int m = 0; m < loss.length; m++) {
      loss[m] += g * fromModes[m];
    }
    for (int u = 0; u < lossDirect.length; u++) {
      lossDirect[u] += g * fromInputs[u];
    }
  }

  private static int[] select(RoomNetwork network, boolean massive) {
    return java.util.stream.IntStream.range(0, network.nodes())
        .filter(i -> network.capacity(i) > 0 == massive)
        .toArray();
  }

  private static int[] range(int n) {
    return java.util.stream.IntStream.range(0, n).toArray();
  }
}
