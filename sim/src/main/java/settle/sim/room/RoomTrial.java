package settle.sim.room;

/**
 * What rooms show over a step that is being tried: the temperatures that emitters, pipes and other
 * rooms feel, with heats and links as they are now set. Setting those moves no state.
 */
final class RoomTrial {

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

  // Model
  private final HouseFabric fabric;
  private final double linkAgreement;
  private double[] conductance;

  // State of the rooms: modes, not modified, and inputs in force
  private final double[][] z;
  private final double[][] input;

  /** By how much each heat input ends above its mean [W]. */
  private final double[] rise;

  // The step: what would come of the state alone, what is felt with the inputs as they now are
  private ModalStep step;
  private final double[][] free;
  private final double[][] freeMean;
  private final double[][] felt;

  /** Heats and rises that what is felt is of [W]; a step begins with none. */
  private final double[] feltHeat;

  private final double[] feltRise;
  private boolean begun;

  RoomTrial(HouseFabric fabric, double agreement, double[][] z, double[][] input, double[] rise) {
    this.fabric = fabric;
    linkAgreement = LINK_AGREEMENT * agreement;
    conductance = fabric.conductance;
    this.z = z;
    this.input = input;
    this.rise = rise;
    int rooms = z.length;
    free = new double[rooms][];
    freeMean = new double[rooms][RoomModes.FIRST_OTHER];
    felt = new double[rooms][];
    feltHeat = new double[rise.length];
    feltRise = new double[rise.length];
    for (int r = 0; r < rooms; r++) {
      free[r] = new double[fabric.rooms[r].outputs];
      felt[r] = new double[fabric.rooms[r].outputs];
    }
  }

  /** Lets the links conduct otherwise [W/K]. */
  void linkAs(double[] other) {
    conductance = other;
  }

  /** Begins a step: what would come of the state alone. */
  void begin(ModalStep modalStep) {
    step = modalStep;
    begun = true;
    for (int r = 0; r < z.length; r++) {
      Vectors.products(step.feltOutput[r], z[r], free[r]);
      if (step.stiff[r]) {
        freeMean[r][RoomModes.AIR] = Vectors.dot(step.meanOutput[r][RoomModes.AIR], z[r]);
        freeMean[r][RoomModes.STAR] = Vectors.dot(step.meanOutput[r][RoomModes.STAR], z[r]);
      }
    }
  }

  /** The step that is tried. */
  ModalStep step() {
    return step;
  }

  /**
   * Rise of the temperature that a heat input feels per watt of it over the step [K/W].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  private double referenceRise(int heat, double radiantFraction) {
    double[][] d = step.feltDirect[fabric.heatRoom[heat]];
    int slot = fabric.heatSlot[heat];
    return radiantFraction * d[RoomModes.STAR][slot]
        + (1 - radiantFraction) * d[RoomModes.AIR][slot];
  }

  /**
   * Finds what the rooms do with the inputs now set, and the mean heat flow of every link from the
   * temperatures at its ends: q = G (T_first - T_second), each link solved with its own influence
   * on its ends, swept over all links until none moves.
   *
   * @return whether the links came to agree
   */
  boolean settleLinks() {
    if (begun) {
      begun = false;
      feelAll();
    } else {
      feelHeats();
    }
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      if (sweepLinks() < linkAgreement) {
        return true;
      }
    }
    return conductance.length == 0;
  }

  private void feelAll() {
    for (int r = 0; r < z.length; r++) {
      System.arraycopy(free[r], 0, felt[r], 0, felt[r].length);
      Vectors.addAll(felt[r], step.feltByInput[r], input[r], 0);
    }
    for (int i = 0; i < rise.length; i++) {
      feltHeat[i] = input[fabric.heatRoom[i]][fabric.heatSlot[i]];
      feltRise[i] = 0;
      feelRise(i);
    }
  }

  /** Lets what is felt follow the heats that were set otherwise since. */
  private void feelHeats() {
    for (int i = 0; i < rise.length; i++) {
      int r = fabric.heatRoom[i];
      int slot = fabric.heatSlot[i];
      follow(r, slot, input[r][slot] - feltHeat[i]);
      feltHeat[i] = input[r][slot];
      feelRise(i);
    }
  }

  /** What the even rise of a heat takes from the means of the room it heats. */
  private void feelRise(int heat) {
    double change = rise[heat] - feltRise[heat];
    if (change != 0) {
      int r = fabric.heatRoom[heat];
      Vectors.add(felt[r], step.meanOfRise[heat], change);
      feltRise[heat] = rise[heat];
    }
  }

  /** One sweep; returns the most by which it moved the difference across a link [K]. */
  private double sweepLinks() {
    double most = 0;
    for (int l = 0; l < conductance.length; l++) {
      double[] feltInA = felt[fabric.firstRoom[l]];
      double[] feltInB = felt[fabric.secondRoom[l]];
      int rowA = fabric.firstRow[l];
      int rowB = fabric.secondRow[l];
      double[] inA = input[fabric.firstRoom[l]];
      int slotA = fabric.firstSlot[l];
      int slotB = fabric.secondSlot[l];
      double[] riseInA = step.feltByInput[fabric.firstRoom[l]][slotA];
      double[] riseInB = step.feltByInput[fabric.secondRoom[l]][slotB];
      double g = conductance[l];
      double own = riseInB[rowB] - riseInA[rowA];
      double change = (g * (feltInA[rowA] - feltInB[rowB]) - inA[slotA]) / (1 + g * own);
      inA[slotA] += change;
      input[fabric.secondRoom[l]][slotB] = inA[slotA];
      Vectors.add(feltInA, riseInA, change);
      Vectors.add(feltInB, riseInB, change);
      double moved = Math.abs(change) * own;
      if (moved > most) {
        most = moved;
      }
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
  void foresee(double[] tried, double[] slope, double[] reference, double[] radiantFraction) {
    for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
      double most = 0;
      for (int i = 0; i < tried.length; i++) {
        int r = fabric.heatRoom[i];
        int slot = fabric.heatSlot[i];
        double rise = referenceRise(i, radiantFraction[i]);
        double wanted = tried[i] - slope[i] * (felt(i, radiantFraction[i]) - reference[i]);
        double change = (wanted - input[r][slot]) / (1 + slope[i] * rise);
        input[r][slot] += change;
        feltHeat[i] = input[r][slot];
        follow(r, slot, change);
        most = Math.max(most, Math.abs(change) * rise);
      }
      most = Math.max(most, sweepLinks());
      if (most < linkAgreement) {
        break;
      }
    }
  }

  /**
   * Temperature that a heat input feels over the step, links settled [°C].
   *
   * @param heat the heat input
   * @param radiantFraction weight of the star; the air has the rest [-]
   */
  double felt(int heat, double radiantFraction) {
    double[] outputs = felt[fabric.heatRoom[heat]];
    return radiantFraction * outputs[RoomModes.STAR]
        + (1 - radiantFraction) * outputs[RoomModes.AIR];
  }

  /** Lets what is felt of a room follow a change of one input. */
  private void follow(int room, int slot, double change) {
    Vectors.add(felt[room], step.feltByInput[room][slot], change);
  }

  /** Mean of an output of a room over the step, links settled [°C]. */
  double settled(int room, int row) {
    // Where a room is stiff no heat rises within a step.
    return step.stiff[room]
        ? freeMean[room][row] + Vectors.dot(step.meanDirect[room][row], input[room])
        : felt[room][row];
  }
}
