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

  /** Share of a heat that may be held back at once and still be neglected [-]. */
  private static final double AT_ONCE = 0.2;

  /** Inputs that change only at events, kept summed up: held temperatures and gains. */
  private static final int[] SLOW_INPUTS = {
    RoomModes.HELD, RoomModes.CONVECTIVE, RoomModes.RADIANT
  };

  // Model
  private HouseFabric fabric;
  private final int rooms;
  private final ModalSteps steps;

  // State: modes and inputs in force, per room
  private final double[][] z;
  private final double[][] input;
  private final RoomIntegrals integrals;

  /** By how much each heat input ends above its mean over the step [W]. */
  private final double[] rise;

  /** Each heat input as it was set, and what is lost of it behind its emitter [W]. */
  private final double[] set;

  private final double[] behind;

  // What the inputs force, per room: those that seldom change, and all of them
  private final double[][] slowForce;
  private final boolean[] slowChanged;
  private final double[][] force;

  // A step that is tried, and the inputs to come back to if it has to be tried again
  private final RoomTrial trial;
  private final double[][] keptInput;

  // What is foreseen, as the rooms have it
  private final double[] triedInRoom;
  private final double[] slopeInRoom;

  // Where air and star are now, until something moves them, and what the modes have in it
  private final double[] airByModes;
  private final double[] starByModes;
  private final boolean[] advanced;
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
    rooms = fabric.rooms.length;
    steps = new ModalSteps(fabric);
    z = new double[rooms][];
    input = new double[rooms][];
    keptInput = new double[rooms][];
    integrals = new RoomIntegrals(fabric.rooms);
    slowForce = new double[rooms][];
    slowChanged = new boolean[rooms];
    force = new double[rooms][];
    airByModes = new double[rooms];
    starByModes = new double[rooms];
    advanced = new boolean[rooms];
    airNow = new double[rooms];
    starNow = new double[rooms];
    moved = new boolean[rooms];
    Arrays.fill(moved, true);
    Arrays.fill(advanced, true);
    Arrays.fill(slowChanged, true);
    for (int r = 0; r < rooms; r++) {
      beginAt(r, startTemperature);
    }
    rise = new double[fabric.heatRoom.length];
    set = new double[rise.length];
    behind = new double[rise.length];
    triedInRoom = new double[rise.length];
    slopeInRoom = new double[rise.length];
    trial = new RoomTrial(fabric, agreement, z, input, rise);
  }

  private void beginAt(int r, double temperature) {
    RoomModes room = fabric.rooms[r];
    z[r] = new double[room.modes];
    Vectors.add(z[r], room.stored, temperature);
    input[r] = new double[room.inputs];
    input[r][RoomModes.HELD] = 1;
    input[r][RoomModes.OUTDOOR] = temperature;
    keptInput[r] = input[r].clone();
    slowForce[r] = new double[room.modes];
    force[r] = new double[room.modes];
  }

  /**
   * Lets the links between rooms conduct as they do in another fabric of the same house, in which
   * doors stand otherwise; temperatures stay as they are.
   *
   * @param other the same rooms with as many links
   */
  public void linkAs(HouseFabric other) {
    int links = fabric.conductance.length;
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
    trial.linkAs(other.conductance);
    steps.linkAs(other.conductance);
  }

  /**
   * Goes on with the fabric of the same house at another pace; temperatures stay as they are.
   *
   * @param other the same rooms in the same modes, as {@link HouseFabric#hastened} makes them
   */
  public void goOnThrough(HouseFabric other) {
    fabric = other;
    steps.goOnThrough(other);
    Arrays.fill(slowChanged, true);
    Arrays.fill(moved, true);
    Arrays.fill(advanced, true);
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
      Vectors.addAll(force[r], room.forcing, input[r], 0);
      for (int m = 0; m < room.modes; m++) {
        z[r][m] = force[r][m] / (room.rate[m] + SteadyResponse.LEAST_RATE);
      }
      slowChanged[r] = true;
      moved[r] = true;
      advanced[r] = true;
    }
  }

  /** Where air and fabric are, a copy: of use only to {@link #moveBy}. */
  public double[][] state() {
    double[][] copy = new double[rooms][];
    Arrays.setAll(copy, r -> z[r].clone());
    return copy;
  }

  /**
   * Moves air and fabric by how far they were apart in another run of the same fabric.
   *
   * @param from where they were in that run
   * @param to where they came to
   */
  public void moveBy(double[][] from, double[][] to) {
    for (int r = 0; r < rooms; r++) {
      Vectors.add(z[r], from[r], -1);
      Vectors.add(z[r], to[r], 1);
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

  /** Sets a heat input [W], of which something may be lost before the room has it. */
  public void setHeat(int heat, double watts) {
    int r = fabric.heatRoom[heat];
    double kept = fabric.lostBehind[heat].kept(watts);
    input[r][fabric.heatSlot[heat]] = kept;
    set[heat] = watts;
    behind[heat] = watts - kept;
    rise[heat] = 0;
    moved[r] = true;
  }

  /**
   * Sets a heat input that rises or falls evenly through the coming step [W]. Of heat that the room
   * follows within the step the mean is what counts.
   *
   * @param heat the heat input
   * @param mean over the step [W]
   * @param endsAbove by how much it ends above that [W]
   */
  public void setHeat(int heat, double mean, double endsAbove) {
    setHeat(heat, mean);
    rise[heat] =
        trial.step().stiff[fabric.heatRoom[heat]]
            ? 0
            : endsAbove * fabric.lostBehind[heat].keptPerHeat(mean, behind[heat]);
  }

  /**
   * Says which lengths of step will be used again and again; each is prepared when it is first
   * used.
   *
   * @param again [s], all > 0
   */
  public void prepare(double[] again) {
    steps.prepare(again);
  }

  /**
   * Begins a step of one of the lengths that are used again: what would come of the state alone.
   */
  public void beginPrepared(int index) {
    trial.begin(steps.prepared(index));
  }

  /** Begins a step of any length [s]. */
  public void begin(double length) {
    trial.begin(steps.of(length));
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
   * temperatures at its ends.
   *
   * @return whether the links came to agree
   */
  public boolean settleLinks() {
    return trial.settleLinks();
  }

  /**
   * Foresees where heats, links and temperatures will come to rest, each heat falling evenly as the
   * temperature it feels rises: Q = Q_tried - S (T_felt - T_tried).
   *
   * @param tried heat of each input, as it was tried [W]; not modified
   * @param slope S of each input [W/K], >= 0; not modified
   * @param reference the temperature with which it was tried [°C]; not modified
   * @param radiantFraction weight of the star in what it feels [-]; not modified
   */
  public void foresee(
      double[] tried, double[] slope, double[] reference, double[] radiantFraction) {
    for (int i = 0; i < tried.length; i++) {
      LostBehind lost = fabric.lostBehind[i];
      double gone = tried[i] == set[i] ? behind[i] : tried[i] - lost.kept(tried[i]);
      triedInRoom[i] = tried[i] - gone;
      slopeInRoom[i] = slope[i] * lost.keptPerHeat(tried[i], gone);
    }
    trial.foresee(triedInRoom, slopeInRoom, reference, radiantFraction);
    Arrays.fill(moved, true);
  }

  /**
   * Temperature that a heat input feels over the step, links settled [°C].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  public double felt(int heat, double radiantFraction) {
    return trial.felt(heat, radiantFraction);
  }

  /** Mean air temperature over the step, links settled [°C]. */
  public double settledAir(int room) {
    return trial.settled(room, RoomModes.AIR);
  }

  /** Mean temperature of the radiant star over the step, links settled [°C]. */
  public double settledStar(int room) {
    return trial.settled(room, RoomModes.STAR);
  }

  /** Mean operative temperature over the step, links settled [°C]. */
  public double settledOperative(int room) {
    return (settledAir(room) + settledStar(room)) / 2;
  }

  /** Advances the state over the step with the inputs now set. */
  public void finish() {
    ModalStep step = trial.step();
    for (int r = 0; r < rooms; r++) {
      RoomModes room = fabric.rooms[r];
      double[] u = input[r];
      double[] uSum = integrals.inputs[r];
      for (int i = 0; i < u.length; i++) {
        uSum[i] += step.length * u[i];
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
      Vectors.addAll(f, room.forcing, u, RoomModes.FIRST_HEAT);
      advance(r, step, f);
      moved[r] = true;
      advanced[r] = true;
    }
    for (int i = 0; i < rise.length; i++) {
      integrals.behind += step.length * behind[i];
      if (rise[i] != 0) {
        addRise(step, i);
      }
    }
  }

  /** What the even rise of a heat adds to the end of the step and takes from its mean. */
  private void addRise(ModalStep step, int heat) {
    int r = fabric.heatRoom[heat];
    double[] b = fabric.rooms[r].forcing[fabric.heatSlot[heat]];
    double[] atEnd = step.riseAtEnd[r];
    double[] inMean = step.riseInMean[r];
    double[] state = z[r];
    double[] sum = integrals.modes[r];
    double most = rise[heat];
    for (int m = 0; m < state.length; m++) {
      double forced = b[m] * most;
      state[m] += atEnd[m] * forced;
      sum[m] -= step.length * inMean[m] * forced;
    }
  }

  /** z <- E z + Phi f; the mean of z over the step is P z + S f. */
  private void advance(int r, ModalStep step, double[] f) {
    double h = step.length;
    double[] state = z[r];
    double[] sum = integrals.modes[r];
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
      Vectors.add(slowForce[r], fabric.rooms[r].forcing[i], input[r][i]);
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
    if (!moved[room]) {
      return;
    }
    moved[room] = false;
    RoomModes modes = fabric.rooms[room];
    if (advanced[room]) {
      advanced[room] = false;
      airByModes[room] = Vectors.dot(modes.output[RoomModes.AIR], z[room]);
      starByModes[room] = Vectors.dot(modes.output[RoomModes.STAR], z[room]);
    }
    double[] u = input[room];
    airNow[room] = airByModes[room] + Vectors.dot(modes.direct[RoomModes.AIR], u);
    starNow[room] = starByModes[room] + Vectors.dot(modes.direct[RoomModes.STAR], u);
  }

  /** Heat stored in air and fabric, above 0 °C [J]. */
  public double stored() {
    double sum = 0;
    for (int r = 0; r < rooms; r++) {
      sum += Vectors.dot(fabric.rooms[r].stored, z[r]);
    }
    return sum;
  }

  /** Heat lost to outdoors since the beginning, what passed walls behind emitters included [J]. */
  public double outdoorLoss() {
    return integrals.outdoorLoss();
  }

  /** Heat lost to held temperatures since the beginning [J]. */
  public double heldLoss() {
    return integrals.heldLoss();
  }

  /** Gains received since the beginning [J]. */
  public double gains() {
    return integrals.gains();
  }
}
