package settle.sim.room;

import java.util.Arrays;

/**
 * Steps air and fabric of all rooms: exact for inputs that hold over the step.
 *
 * <p>Order within a step: set outdoor temperature and gains; {@link #begin}; set heats, {@link
 * #settleLinks} and read what is felt as often as the emitters need to agree with it; {@link
 * #finish}. A step can be begun again with another length as long as it is not finished.
 */
public final class RoomStepper {

  /**
   * Agreement of what links carry with the temperatures at their ends [K]: of what an emitter's
   * reference temperature is allowed, so little that it adds nothing to it.
   */
  private static final double LINK_AGREEMENT = 1e-4;

  /**
   * Sweeps after which a length is given up: two or three do in most houses; where wide doors make
   * rooms one, a shorter step is the cheaper way.
   */
  private static final int MOST_SWEEPS = 100;

  /** Share by which a heat may be held back at once, and still be reckoned without that [-]. */
  private static final double AT_ONCE = 0.2;

  /** Inputs that change only at events, kept summed up: held temperatures and gains. */
  private static final int[] SLOW_INPUTS = {
    RoomModes.HELD, RoomModes.CONVECTIVE, RoomModes.RADIANT
  };

  // Model
  private HouseFabric fabric;
  private final int rooms;
  private final int links;
  private final double linkAgreement;
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
  private final double[][] freeMean;
  private final double[][] felt;
  private final double[][] keptInput;
  private ModalStep step;
  private double[] lengths = {};
  private ModalStep[] prepared = {};
  private ModalStep anyLength;

  // Where air and star are now, until something moves them
  private final double[] airNow;
  private final double[] starNow;
  private final boolean[] moved;

  /**
   * @param fabric the house
   * @param startTemperature of everything [°C]
   */
  public RoomStepper(HouseFabric fabric, double startTemperature) {
    this(fabric, startTemperature, 1);
  }

  /**
   * @param fabric the house
   * @param startTemperature of everything [°C]
   * @param agreement how closely links are to agree, as a share of what is usual [-]
   */
  public RoomStepper(HouseFabric fabric, double startTemperature, double agreement) {
    this.fabric = fabric;
    linkAgreement = LINK_AGREEMENT * agreement;
    rooms = fabric.rooms.length;
    anyLength = new ModalStep(fabric);
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
    freeMean = new double[rooms][];
    felt = new double[rooms][];
    keptInput = new double[rooms][];
    airNow = new double[rooms];
    starNow = new double[rooms];
    moved = new boolean[rooms];
    Arrays.fill(moved, true);
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
      freeMean[r] = new double[RoomModes.FIRST_LINK];
      felt[r] = new double[room.outputs];
      keptInput[r] = input[r].clone();
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
    Arrays.fill(prepared, null);
  }

  /**
   * Goes on with the fabric of the same house at another pace; temperatures stay as they are.
   *
   * @param other the same rooms in the same modes, as {@link HouseFabric#hastened} makes them
   */
  public void goOnThrough(HouseFabric other) {
    fabric = other;
    anyLength = new ModalStep(other);
    Arrays.fill(slowChanged, true);
    Arrays.fill(moved, true);
    Arrays.fill(prepared, null);
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
      moved[r] = true;
    }
  }

  /** Sets the outdoor temperature, mean over the coming step [°C]. */
  public void setOutdoor(double temperature) {
    for (int r = 0; r < rooms; r++) {
      input[r][RoomModes.OUTDOOR] = temperature;
      moved[r] = true;
    }
  }

  /** Sets a room's gains, mean over the coming step [W]. */
  public void setGains(int room, double convective, double radiant) {
    double[] u = input[room];
    if (u[RoomModes.CONVECTIVE] != convective || u[RoomModes.RADIANT] != radiant) {
      u[RoomModes.CONVECTIVE] = convective;
      u[RoomModes.RADIANT] = radiant;
      slowChanged[room] = true;
      moved[room] = true;
    }
  }

  /** Sets a heat input [W]. */
  public void setHeat(int heat, double watts) {
    int r = fabric.heatRoom[heat];
    input[r][fabric.heatSlot[heat]] = watts;
    moved[r] = true;
  }

  /** A heat input as now set [W]. */
  public double heat(int heat) {
    return input[fabric.heatRoom[heat]][fabric.heatSlot[heat]];
  }

  /**
   * Says which lengths of step will be used again and again; each is prepared when it is first
   * used.
   *
   * @param again [s], all > 0
   */
  public void prepare(double[] again) {
    lengths = again.clone();
    prepared = new ModalStep[again.length];
  }

  /** Makes room for all of these lengths now, so that no step has to. */
  public void makeRoom() {
    for (int i = 0; i < prepared.length; i++) {
      prepared[i] = new ModalStep(fabric);
    }
  }

  /**
   * Begins a step of one of the lengths that are used again: what would come of the state alone.
   */
  public void beginPrepared(int index) {
    if (prepared[index] == null) {
      prepared[index] = new ModalStep(fabric);
    }
    if (prepared[index].length == 0) {
      prepared[index].over(conductance, lengths[index]);
    }
    begin(prepared[index]);
  }

  /** Begins a step of any length [s]. */
  public void begin(double length) {
    begin(anyLength.over(conductance, length));
  }

  private void begin(ModalStep modalStep) {
    step = modalStep;
    for (int r = 0; r < rooms; r++) {
      products(step.feltOutput[r], z[r], free[r]);
      if (step.stiff[r]) {
        freeMean[r][RoomModes.AIR] = dot(step.meanOutput[r][RoomModes.AIR], z[r]);
        freeMean[r][RoomModes.STAR] = dot(step.meanOutput[r][RoomModes.STAR], z[r]);
      }
    }
  }

  /** Keeps heats and link flows as they are, for a step that may have to be tried again. */
  public void keep() {
    for (int r = 0; r < rooms; r++) {
      int first = RoomModes.FIRST_HEAT;
      System.arraycopy(input[r], first, keptInput[r], first, input[r].length - first);
    }
  }

  /** Takes heats and link flows back to what was kept. */
  public void restore() {
    for (int r = 0; r < rooms; r++) {
      int first = RoomModes.FIRST_HEAT;
      System.arraycopy(keptInput[r], first, input[r], first, input[r].length - first);
      moved[r] = true;
    }
  }

  /**
   * Rise of the temperature that a heat input feels per watt of it over the step [K/W].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  public double referenceRise(int heat, double radiantFraction) {
    double[][] d = step.feltDirect[fabric.heatRoom[heat]];
    int slot = fabric.heatSlot[heat];
    return radiantFraction * d[RoomModes.STAR][slot]
        + (1 - radiantFraction) * d[RoomModes.AIR][slot];
  }

  /**
   * Whether the star, which holds no heat, rises by a heat input enough to hold it back at once.
   *
   * @param heat the heat input
   */
  public boolean followsAtOnce(int heat) {
    int r = fabric.heatRoom[heat];
    double rise = fabric.rooms[r].direct[RoomModes.STAR][fabric.heatSlot[heat]];
    return fabric.heatConductance[heat] * rise > AT_ONCE;
  }

  /**
   * Finds what the rooms do with the inputs now set, and the mean heat flow of every link from the
   * temperatures at its ends: q = G (T_first - T_second), each link solved with its own influence
   * on its ends, swept over all links until none moves.
   *
   * @return whether the links came to agree
   */
  public boolean settleLinks() {
    for (int r = 0; r < rooms; r++) {
      double[][] direct = step.feltDirect[r];
      for (int y = 0; y < direct.length; y++) {
        felt[r][y] = free[r][y] + dot(direct[y], input[r]);
      }
    }
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      if (sweepLinks() < linkAgreement) {
        return true;
      }
    }
    return links == 0;
  }

  /** One sweep; returns the most by which it moved the difference across a link [K]. */
  private double sweepLinks() {
    double most = 0;
    for (int l = 0; l < links; l++) {
      int a = fabric.firstRoom[l];
      int b = fabric.secondRoom[l];
      int slotA = fabric.firstSlot[l];
      int slotB = fabric.secondSlot[l];
      double g = conductance[l];
      double q = input[a][slotA];
      double own =
          step.feltDirect[b][fabric.secondRow[l]][slotB]
              - step.feltDirect[a][fabric.firstRow[l]][slotA];
      double off = g * (felt[a][fabric.firstRow[l]] - felt[b][fabric.secondRow[l]]) - q;
      double change = off / (1 + g * own);
      input[a][slotA] = q + change;
      input[b][slotB] = q + change;
      follow(a, slotA, change);
      follow(b, slotB, change);
      most = Math.max(most, Math.abs(change) * own);
    }
    return most;
  }

  /**
   * Foresees where heats, links and temperatures will come to rest, each heat falling evenly as the
   * temperature it feels rises: Q = Q_tried - S (T_felt - T_tried). Only a guess to try next, since
   * no heat is that straight; how good it is shows when it is tried.
   *
   * @param tried heat of each input, as it was tried [W]; not modified
   * @param slope S of each input [W/K], >= 0; not modified
   * @param reference the temperature with which it was tried [°C]; not modified
   * @param radiantFraction weight of the star in what it feels [-]; not modified
   */
  public void foresee(
      double[] tried, double[] slope, double[] reference, double[] radiantFraction) {
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      double most = 0;
      for (int i = 0; i < tried.length; i++) {
        int r = fabric.heatRoom[i];
        int slot = fabric.heatSlot[i];
        double rise = referenceRise(i, radiantFraction[i]);
        double wanted = tried[i] - slope[i] * (felt(i, radiantFraction[i]) - reference[i]);
        double change = (wanted - input[r][slot]) / (1 + slope[i] * rise);
        input[r][slot] += change;
        follow(r, slot, change);
        most = Math.max(most, Math.abs(change) * rise);
      }
      most = Math.max(most, sweepLinks());
      if (most < linkAgreement) {
        break;
      }
    }
    Arrays.fill(moved, true);
  }

  /**
   * Temperature that a heat input feels over the step, links settled [°C].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  public double felt(int heat, double radiantFraction) {
    double[] outputs = felt[fabric.heatRoom[heat]];
    return radiantFraction * outputs[RoomModes.STAR]
        + (1 - radiantFraction) * outputs[RoomModes.AIR];
  }

  /** Lets what is felt of a room follow a change of one input. */
  private void follow(int room, int slot, double change) {
    double[][] direct = step.feltDirect[room];
    double[] outputs = felt[room];
    for (int y = 0; y < outputs.length; y++) {
      outputs[y] += direct[y][slot] * change;
    }
  }

  /** Mean air temperature over the step, links settled [°C]. */
  public double settledAir(int room) {
    return settled(room, RoomModes.AIR);
  }

  /** Mean temperature of the radiant star over the step, links settled [°C]. */
  public double settledStar(int room) {
    return settled(room, RoomModes.STAR);
  }

  /** Mean operative temperature over the step, links settled [°C]. */
  public double settledOperative(int room) {
    return (settledAir(room) + settledStar(room)) / 2;
  }

  private double settled(int room, int row) {
    return step.stiff[room]
        ? freeMean[room][row] + dot(step.meanDirect[room][row], input[room])
        : felt[room][row];
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
      moved[r] = true;
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
    look(room);
    return airNow[room];
  }

  /** Temperature of the radiant star now, with the inputs now set [°C]. */
  public double star(int room) {
    look(room);
    return starNow[room];
  }

  /** Operative temperature now [°C]. */
  public double operative(int room) {
    return (air(room) + star(room)) / 2;
  }

  private void look(int room) {
    if (moved[room]) {
      moved[room] = false;
      airNow[room] = output(room, RoomModes.AIR);
      starNow[room] = output(room, RoomModes.STAR);
    }
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
