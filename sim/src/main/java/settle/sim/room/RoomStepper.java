package settle.sim.room;

import java.util.Arrays;

/**
 * Steps air and fabric of all rooms: exact for inputs that hold over the step.
 *
 * <p>Order within a step: set outdoor temperature and gains; {@link #begin}; read mean temperatures
 * and set heats as often as the emitters need to agree with them; {@link #settleLinks}; {@link
 * #finish}.
 */
public final class RoomStepper {

  /** Sweeps over the links; neighbouring links of one room influence each other weakly. */
  private static final int LINK_SWEEPS = 2;

  /** Inputs that change only at events, kept summed up: held temperatures and gains. */
  private static final int[] SLOW_INPUTS = {
    RoomModes.HELD, RoomModes.CONVECTIVE, RoomModes.RADIANT
  };

  // Model
  private HouseFabric fabric;
  private final int rooms;
  private final int links;
  private double[] conductance;

  // State: modes and inputs in force, per room
  private final double[][] z;
  private final double[][] input;

  // Quadrature over the run: mean modes and inputs times length
  private final double[][] modeIntegral;
  private final double[][] inputIntegral;

  // Scratch
  private final double[][] free;
  private final double[][] force;
  private final double[][] slowForce;
  private final boolean[] slowChanged;
  private final double[][] mean;
  private ModalStep step;
  private ModalStep[] prepared = {};

  /**
   * @param fabric the house
   * @param startTemperature of everything [°C]
   */
  public RoomStepper(HouseFabric fabric, double startTemperature) {
    this.fabric = fabric;
    rooms = fabric.rooms.length;
    conductance = fabric.conductance;
    links = conductance.length;
    z = new double[rooms][];
    input = new double[rooms][];
    modeIntegral = new double[rooms][];
    inputIntegral = new double[rooms][];
    free = new double[rooms][];
    force = new double[rooms][];
    slowForce = new double[rooms][];
    slowChanged = new boolean[rooms];
    mean = new double[rooms][];
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      z[r] = new double[room.modes];
      for (int m = 0; m < room.modes; m++) {
        z[r][m] = room.uniform[m] * startTemperature;
      }
      input[r] = new double[room.inputs];
      input[r][RoomModes.HELD] = 1;
      input[r][RoomModes.OUTDOOR] = startTemperature;
      modeIntegral[r] = new double[room.modes];
      inputIntegral[r] = new double[room.inputs];
      free[r] = new double[room.outputs];
      force[r] = new double[room.modes];
      slowForce[r] = new double[room.modes];
      slowChanged[r] = true;
      mean[r] = new double[room.outputs];
    }
  }

  /**
   * Lets the links between rooms conduct as they do in another fabric of the same house, in which
   * doors stand otherwise; temperatures stay as they are.
   *
   * @param other the same rooms with as many links
   */
  public void linkAs(HouseFabric other) {
    if (other.conductance.length != links || other.rooms.length != rooms) {
      throw new IllegalArgumentException(
          "need "
              + rooms
              + " rooms and "
              + links
              + " links, not "
              + other.rooms.length
              + " and "
              + other.conductance.length);
    }
    conductance = other.conductance;
  }

  /**
   * Goes on with the fabric of the same house at another pace; temperatures stay as they are.
   *
   * @param other the same rooms in the same modes, as {@link HouseFabric#hastened} makes them
   */
  public void goOnThrough(HouseFabric other) {
    fabric = other;
    Arrays.fill(slowChanged, true);
    double[] lengths = Arrays.stream(prepared).mapToDouble(s -> s.length).toArray();
    prepare(lengths);
  }

  /**
   * Brings air and fabric to where they rest with inputs that stay as they are.
   *
   * @param response of the same house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   * @param heat every heat input [W]
   */
  public void rest(
      SteadyResponse response,
      double outdoor,
      double[] convective,
      double[] radiant,
      double[] heat) {
    double[][] atRest = response.inputsAtRest(outdoor, convective, radiant, heat);
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      System.arraycopy(atRest[r], 0, input[r], 0, room.inputs);
      Arrays.fill(force[r], 0);
      for (int u = 0; u < room.inputs; u++) {
        addForce(force[r], room.forcing[u], input[r][u]);
      }
      for (int m = 0; m < room.modes; m++) {
        z[r][m] = force[r][m] / (room.rate[m] + SteadyResponse.LEAST_RATE);
      }
      slowChanged[r] = true;
    }
  }

  /** Sets the outdoor temperature, mean over the coming step [°C]. */
  public void setOutdoor(double temperature) {
    for (int r = 0; r < rooms; r++) {
      input[r][RoomModes.OUTDOOR] = temperature;
    }
  }

  /** Sets a room's gains, mean over the coming step [W]. */
  public void setGains(int room, double convective, double radiant) {
    double[] u = input[room];
    if (u[RoomModes.CONVECTIVE] != convective || u[RoomModes.RADIANT] != radiant) {
      u[RoomModes.CONVECTIVE] = convective;
      u[RoomModes.RADIANT] = radiant;
      slowChanged[room] = true;
    }
  }

  /** Sets a heat input [W]. */
  public void setHeat(int heat, double watts) {
    input[fabric.heatRoom[heat]][fabric.heatSlot[heat]] = watts;
  }

  /** A heat input as now set [W]. */
  public double heat(int heat) {
    return input[fabric.heatRoom[heat]][fabric.heatSlot[heat]];
  }

  /**
   * Prepares the lengths of step that will be used again and again.
   *
   * @param lengths [s], all > 0
   */
  public void prepare(double[] lengths) {
    prepared = new ModalStep[lengths.length];
    for (int i = 0; i < lengths.length; i++) {
      prepared[i] = new ModalStep(fabric, lengths[i]);
    }
  }

  /** Begins a step of a prepared length: mean outputs that would come from the state alone. */
  public void beginPrepared(int index) {
    begin(prepared[index]);
  }

  /** Begins a step of any length [s]. */
  public void begin(double length) {
    begin(new ModalStep(fabric, length));
  }

  private void begin(ModalStep modalStep) {
    step = modalStep;
    for (int r = 0; r < rooms; r++) {
      products(step.meanOutput[r], z[r], free[r]);
    }
  }

  /** Mean air temperature over the step with the inputs now set [°C]. */
  public double meanAir(int room) {
    return meanOutput(room, RoomModes.AIR);
  }

  /** Mean temperature of the radiant star over the step with the inputs now set [°C]. */
  public double meanStar(int room) {
    return meanOutput(room, RoomModes.STAR);
  }

  /**
   * Rise of a room's mean reference temperature per watt of a heat input over the step [K/W].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  public double referenceRise(int heat, double radiantFraction) {
    double[][] d = step.meanDirect[fabric.heatRoom[heat]];
    int slot = fabric.heatSlot[heat];
    return radiantFraction * d[RoomModes.STAR][slot]
        + (1 - radiantFraction) * d[RoomModes.AIR][slot];
  }

  private double meanOutput(int room, int row) {
    return free[room][row] + dot(step.meanDirect[room][row], input[room]);
  }

  /**
   * Finds the mean heat flow of every link from the mean temperatures at its ends: q = G (T_first -
   * T_second), each link solved with its own influence on its ends, swept over all links.
   * Afterwards the rooms' mean air and star are known for good.
   */
  public void settleLinks() {
    for (int r = 0; r < rooms; r++) {
      double[][] direct = step.meanDirect[r];
      for (int y = 0; y < direct.length; y++) {
        mean[r][y] = free[r][y] + dot(direct[y], input[r]);
      }
    }
    for (int sweep = 0; sweep < LINK_SWEEPS; sweep++) {
      for (int l = 0; l < links; l++) {
        int a = fabric.firstRoom[l];
        int b = fabric.secondRoom[l];
        int slotA = fabric.firstSlot[l];
        int slotB = fabric.secondSlot[l];
        double g = conductance[l];
        double q = input[a][slotA];
        double own =
            step.meanDirect[b][fabric.secondRow[l]][slotB]
                - step.meanDirect[a][fabric.firstRow[l]][slotA];
        double change =
            (g * (mean[a][fabric.firstRow[l]] - mean[b][fabric.secondRow[l]]) - q) / (1 + g * own);
        input[a][slotA] = q + change;
        input[b][slotB] = q + change;
        follow(a, slotA, change);
        follow(b, slotB, change);
      }
    }
  }

  /** Lets a room's mean outputs follow a change of one input. */
  private void follow(int room, int slot, double change) {
    double[][] direct = step.meanDirect[room];
    double[] outputs = mean[room];
    for (int y = 0; y < outputs.length; y++) {
      outputs[y] += direct[y][slot] * change;
    }
  }

  /** Mean air temperature over the step, links settled [°C]. */
  public double settledAir(int room) {
    return mean[room][RoomModes.AIR];
  }

  /** Mean temperature of the radiant star over the step, links settled [°C]. */
  public double settledStar(int room) {
    return mean[room][RoomModes.STAR];
  }

  /** Advances the state over the step with the inputs now set. */
  public void finish() {
    double h = step.length;
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      double[] u = input[r];
      double[] uSum = inputIntegral[r];
      for (int i = 0; i < u.length; i++) {
        uSum[i] += h * u[i];
      }
      if (slowChanged[r]) {
        sumSlowInputs(r);
      }
      double[] f = force[r];
      double[] slow = slowForce[r];
      double[] b = room.forcing[RoomModes.OUTDOOR];
      double outdoor = u[RoomModes.OUTDOOR];
      for (int m = 0; m < f.length; m++) {
        f[m] = slow[m] + b[m] * outdoor;
      }
      for (int i = RoomModes.FIRST_HEAT; i < u.length; i++) {
        addForce(f, room.forcing[i], u[i]);
      }
      advance(r, h, f);
    }
  }

  /** z <- E z + Phi f; the mean of z over the step is P z + S f. */
  private void advance(int r, double h, double[] f) {
    double[] state = z[r];
    double[] sum = modeIntegral[r];
    double[] e = step.decay[r];
    double[] phi = step.gain[r];
    double[] p = step.meanState[r];
    double[] s = step.meanForcing[r];
    for (int m = 0; m < f.length; m++) {
      sum[m] += h * (p[m] * state[m] + s[m] * f[m]);
      state[m] = e[m] * state[m] + phi[m] * f[m];
    }
  }

  private void sumSlowInputs(int r) {
    slowChanged[r] = false;
    Arrays.fill(slowForce[r], 0);
    for (int i : SLOW_INPUTS) {
      addForce(slowForce[r], fabric.rooms[r].forcing[i], input[r][i]);
    }
  }

  private static void addForce(double[] f, double[] b, double value) {
    for (int m = 0; m < f.length; m++) {
      f[m] += b[m] * value;
    }
  }

  /** Air temperature now [°C]. */
  public double air(int room) {
    return output(room, RoomModes.AIR);
  }

  /** Temperature of the radiant star now, with the inputs now set [°C]. */
  public double star(int room) {
    return output(room, RoomModes.STAR);
  }

  private double output(int room, int row) {
    RoomModes modes = fabric.rooms[room];
    return dot(modes.output[row], z[room]) + dot(modes.direct[row], input[room]);
  }

  /** Heat stored in air and fabric, above 0 °C [J]. */
  public double stored() {
    double sum = 0;
    for (int r = 0; r < rooms; r++) {
      sum += dot(fabric.rooms[r].stored, z[r]);
    }
    return sum;
  }

  /** Heat lost to outdoors since the beginning [J]. */
  public double outdoorLoss() {
    double sum = 0;
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      sum += dot(room.outdoorLoss, modeIntegral[r]) + dot(room.outdoorLossDirect, inputIntegral[r]);
    }
    return sum;
  }

  /** Heat lost to held temperatures since the beginning [J]. */
  public double heldLoss() {
    double sum = 0;
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      sum += dot(room.heldLoss, modeIntegral[r]) + dot(room.heldLossDirect, inputIntegral[r]);
    }
    return sum;
  }

  /** Gains received since the beginning [J]. */
  public double gains() {
    double sum = 0;
    for (int r = 0; r < rooms; r++) {
      sum += inputIntegral[r][RoomModes.CONVECTIVE] + inputIntegral[r][RoomModes.RADIANT];
    }
    return sum;
  }

  /** Products of rows with one vector, two rows at a time. */
  private static void products(double[][] rows, double[] v, double[] result) {
    int y = 0;
    for (; y + 1 < rows.length; y += 2) {
      double[] a = rows[y];
      double[] b = rows[y + 1];
      double a0 = 0;
      double a1 = 0;
      double b0 = 0;
      double b1 = 0;
      int i = 0;
      for (; i + 1 < v.length; i += 2) {
        double v0 = v[i];
        double v1 = v[i + 1];
        a0 += a[i] * v0;
        a1 += a[i + 1] * v1;
        b0 += b[i] * v0;
        b1 += b[i + 1] * v1;
      }
      if (i < v.length) {
        a0 += a[i] * v[i];
        b0 += b[i] * v[i];
      }
      result[y] = a0 + a1;
      result[y + 1] = b0 + b1;
    }
    if (y < rows.length) {
      result[y] = dot(rows[y], v);
    }
  }

  /**
   * Sum of products; four partial sums, in a fixed order, so that additions need not wait for each
   * other.
   */
  private static double dot(double[] a, double[] b) {
    double s0 = 0;
    double s1 = 0;
    double s2 = 0;
    double s3 = 0;
    int n = a.length;
    int i = 0;
    for (; i + 3 < n; i += 4) {
      s0 += a[i] * b[i];
      s1 += a[i + 1] * b[i + 1];
      s2 += a[i + 2] * b[i + 2];
      s3 += a[i + 3] * b[i + 3];
    }
    for (; i < n; i++) {
      s0 += a[i] * b[i];
    }
    return (s0 + s1) + (s2 + s3);
  }
}
