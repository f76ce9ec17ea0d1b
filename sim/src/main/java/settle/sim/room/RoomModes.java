package settle.sim.room;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
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
 * <p>Outputs y, in order: air temperature, star temperature, temperatures of the other nodes at
 * which links end [°C]; open doors end at the air.
 */
final class RoomModes {

  static final int OUTDOOR = 0;
  static final int HELD = 1;
  static final int CONVECTIVE = 2;
  static final int RADIANT = 3;
  static final int FIRST_HEAT = 4;

  static final int AIR = 0;
  static final int STAR = 1;
  static final int FIRST_OTHER = 2;

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

  /**
   * Stored heat per mode, V' C^(1/2) 1 [J]; the modes of a room at 1 °C throughout are the same
   * numbers.
   */
  final double[] stored;

  /** Outdoor loss per mode [W] and per input [W]. */
  final double[] outdoorLoss;

  final double[] outdoorLossDirect;

  /** Loss to held temperatures per mode [W] and per input [W]. */
  final double[] heldLoss;

  final double[] heldLossDirect;

  RoomModes(RoomNetwork network) {
    Reduced room = new Reduced(network);
    modes = room.massive.length;
    inputs = network.inputs();
    outputs = network.outputs().size();
    rate = new double[modes];
    forcing = new double[inputs][modes];
    stored = new double[modes];
    double[][] fromModes = room.nodesFromModes(findModes(room));
    double[][] fromInputs = room.nodesFromInputs();
    output = outputs(network, fromModes);
    direct = outputs(network, fromInputs);
    outdoorLoss = losses(network::outdoor, fromModes);
    outdoorLossDirect = losses(network::outdoor, fromInputs, OUTDOOR, network::outdoor);
    heldLoss = losses(network::heldConductance, fromModes);
    heldLossDirect = losses(network::heldConductance, fromInputs, HELD, network::heldFlow);
  }

  /**
   * Takes the room into its modes, C^(-1/2) K C^(-1/2) = V L V': sets their rates, what forces them
   * and what they store.
   *
   * @return temperature of each node with mass per mode: [node][mode]
   */
  private double[][] findModes(Reduced room) {
    EigenDecomposition eigen =
        new EigenDecomposition(new Array2DRowRealMatrix(room.symmetric(), false));
    RealMatrix v = eigen.getV();
    double[][] massiveShape = new double[modes][modes];
    for (int m = 0; m < modes; m++) {
      rate[m] = Math.max(eigen.getRealEigenvalue(m), 0);
      for (int i = 0; i < modes; i++) {
        double shape = v.getEntry(i, m);
        massiveShape[i][m] = shape / room.rootCapacity[i];
        stored[m] += shape * room.rootCapacity[i];
        for (int u = 0; u < inputs; u++) {
          forcing[u][m] += shape / room.rootCapacity[i] * room.source.getEntry(i, u);
        }
      }
    }
    return massiveShape;
  }

  /** Of the temperatures of all nodes those that are outputs. */
  private static double[][] outputs(RoomNetwork network, double[][] nodes) {
    return network.outputs().stream().map(node -> nodes[node]).toArray(double[][]::new);
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

  /** What all nodes together lose by their conductances, per mode [W]. */
  private static double[] losses(IntToDoubleFunction conductance, double[][] nodes) {
    return losses(conductance, nodes, 0, i -> 0);
  }

  /** What they lose per input, one of which flows back from where the loss goes. */
  private static double[] losses(
      IntToDoubleFunction conductance, double[][] nodes, int input, IntToDoubleFunction back) {
    double[] loss = new double[nodes[0].length];
    for (int i = 0; i < nodes.length; i++) {
      double g = conductance.applyAsDouble(i);
      for (int m = 0; m < loss.length; m++) {
        loss[m] += g * nodes[i][m];
      }
      loss[input] -= back.applyAsDouble(i);
    }
    return loss;
  }

  /**
   * A room's nodes without those that hold no heat: T_z = -K_zz^-1 K_zc T_c + K_zz^-1 s_z u, put
   * into the balance of the others.
   */
  private static final class Reduced {

    final int[] massive;
    private final int[] massless;
    final double[] rootCapacity;

    /** What the inputs bring to the nodes with mass. */
    final RealMatrix source;

    private final RealMatrix balance;
    private final RealMatrix fromMassive;
    private final RealMatrix fromInputs;

    Reduced(RoomNetwork network) {
      massive = select(network, true);
      massless = select(network, false);
      RealMatrix k = new Array2DRowRealMatrix(network.balance(), false);
      RealMatrix s = new Array2DRowRealMatrix(network.sources(), false);
      int[] all = IntStream.range(0, network.inputs()).toArray();
      DecompositionSolver solver =
          new LUDecomposition(k.getSubMatrix(massless, massless)).getSolver();
      fromMassive = solver.solve(k.getSubMatrix(massless, massive)).scalarMultiply(-1);
      fromInputs = solver.solve(s.getSubMatrix(massless, all));
      RealMatrix kcz = k.getSubMatrix(massive, massless);
      balance = k.getSubMatrix(massive, massive).add(kcz.multiply(fromMassive));
      source = s.getSubMatrix(massive, all).subtract(kcz.multiply(fromInputs));
      rootCapacity = IntStream.of(massive).mapToDouble(network::capacity).map(Math::sqrt).toArray();
    }

    private static int[] select(RoomNetwork network, boolean massive) {
      return IntStream.range(0, network.nodes())
          .filter(i -> network.capacity(i) > 0 == massive)
          .toArray();
    }

    /** C^(-1/2) K C^(-1/2), rounding made even. */
    double[][] symmetric() {
      int n = massive.length;
      double[][] symmetric = new double[n][n];
      for (int i = 0; i < n; i++) {
        for (int j = 0; j <= i; j++) {
          double value =
              (balance.getEntry(i, j) + balance.getEntry(j, i))
                  / (2 * rootCapacity[i] * rootCapacity[j]);
          symmetric[i][j] = value;
          symmetric[j][i] = value;
        }
      }
      return symmetric;
    }

    /** Temperature of every node per mode, of those with mass as given: [node][mode]. */
    double[][] nodesFromModes(double[][] massiveShape) {
      RealMatrix others = fromMassive.multiply(new Array2DRowRealMatrix(massiveShape, false));
      return nodes(massiveShape, others.getData());
    }

    /** Temperature of every node per input, without delay: [node][input]. */
    double[][] nodesFromInputs() {
      return nodes(new double[massive.length][source.getColumnDimension()], fromInputs.getData());
    }

    private double[][] nodes(double[][] withMass, double[][] without) {
      double[][] nodes = new double[massive.length + massless.length][];
      for (int i = 0; i < massive.length; i++) {
        nodes[massive[i]] = withMass[i];
      }
      for (int i = 0; i < massless.length; i++) {
        nodes[massless[i]] = without[i];
      }
      return nodes;
    }
  }
}
