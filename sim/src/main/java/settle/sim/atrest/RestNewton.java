package settle.sim.atrest;

import java.util.Arrays;
import settle.sim.emitter.EmitterStepper;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.Valve;

/**
 * Rooms, emitters, valves and pipes on water of one temperature, all at once by Newton's method.
 * Unknown are the heats that enter the rooms and the K_v of valves that follow them; flows and
 * pressures follow from these, temperatures of rooms and water from all. What must vanish:
 *
 * <pre>
 *   d Q_b(m_b c, T_b, T_ref) - q_b     of each emitter, of each room's pipes likewise [W]
 *   what the valve lacks               of each that rests neither shut nor open [K]
 * </pre>
 *
 * <p>Slopes of flows, pipes and rooms are carried along with their values; an emitter and a valve
 * are asked beside where they stand, so that a new kind has no slopes to supply. Where a step does
 * not lead nearer, it is shortened; a few times valves then go where they would stand in the rooms
 * as they are, and after that somebody else has to look.
 */
final class RestNewton {

  private static final int MOST_ROUNDS = 30;
  private static final int HALVINGS = 6;

  /** Rounds without a better step after which it is left to others. */
  private static final int MOST_FOLLOWED = 4;

  /** Agreement asked of each valve [K]; the error left is of the order of its square. */
  private static final double LACKING_AGREEMENT = 1e-6;

  /** That of each heat [W]. */
  private static final double HEAT_AGREEMENT = 1e-4;

  /**
   * How well heats settle for what is still lacking [W/K]: a watt is some hundredth of a kelvin.
   */
  private static final double HEAT_PER_KELVIN = 1;

  /** K_v from which a valve that was shut begins to open, as a share of K_vs [-]. */
  private static final double AJAR = 1e-6;

  /** K_v that counts as nearly shut where valves only follow, as a share of K_vs [-]. */
  private static final double LITTLE = 1e-4;

  /** Step beside where an emitter or a valve stands, as a share or in kelvin. */
  private static final double BESIDE = 1e-6;

  // Model
  private final HouseModel model;
  private final NetworkFlow network;
  private final BranchAtRest branch;
  private final WaterAtRest water;
  private final EmitterStepper[] emitters;
  private final int branches;
  private final int heats;
  private final double specificHeat;

  // State
  private final RestState state;

  // What is left, and how it varies
  private final Varying[] off;
  private final Varying[] lacks;
  private final boolean[] moves;
  private double worst;
  private int count;
  private int followed;

  // Scratch
  private final Varying reference;
  private final int[] free;
  private final int[] keptFree;
  private final double[] keptStep;
  private final double[][] matrix;
  private final double[] step;
  private final double[] keptHeat;
  private final double[] keptKv;

  RestNewton(
      HouseModel model,
      SteadyRooms rooms,
      NetworkFlow network,
      BranchAtRest branch,
      RestState state) {
    this.model = model;
    this.network = network;
    this.branch = branch;
    this.state = state;
    branches = model.branches();
    heats = state.heat.length;
    specificHeat = model.house().water().specificHeat();
    emitters = branch.emitters();
    water = new WaterAtRest(model, rooms, network, state);
    int size = heats + branches;
    off = new Varying[heats];
    lacks = new Varying[branches];
    Arrays.setAll(off, h -> new Varying(size));
    Arrays.setAll(lacks, b -> new Varying(size));
    reference = new Varying(size);
    moves = new boolean[branches];
    free = new int[branches];
    keptFree = new int[branches];
    keptStep = new double[size];
    matrix = new double[size][size + 1];
    step = new double[size];
    keptHeat = new double[heats];
    keptKv = new double[branches];
  }

  /**
   * Looks for it from where the house stands.
   *
   * @param flow temperature of the water that goes into the mains [°C]
   * @return whether it was found
   */
  boolean find(double flow) {
    for (int b = 0; b < branches; b++) {
      moves[b] = branch.moves(b);
      state.kv[b] = moves[b] ? state.kv[b] : branch.heldOpen(b);
    }
    settle(flow, 1);
    followed = 0;
    for (int round = 0; round < MOST_ROUNDS && !isFound() && followed < MOST_FOLLOWED; round++) {
      if (runColdWater(flow)) {
        settle(flow, worst);
      } else if (solve(chooseFree())) {
        go(flow);
      } else {
        return false;
      }
    }
    for (int b = 0; b < branches; b++) {
      state.massFlow[b] = water.capacityFlow[b].value() / specificHeat;
      state.pressure[b] = network.pressureOver(b);
    }
    return isFound();
  }

  private boolean isFound() {
    return worst <= LACKING_AGREEMENT && off() <= HEAT_AGREEMENT;
  }

  /** The largest that a heat is off [W]. */
  private double off() {
    double most = 0;
    for (Varying heat : off) {
      most = Math.max(most, Math.abs(heat.value()));
    }
    return most;
  }

  /**
   * Goes the whole step, or less of it where valves then lack more. What a valve lacks hardly
   * depends on it where it is wide open, so that a step from there leads too far; a shorter one
   * goes by 1/K_v.
   */
  private void go(double flow) {
    System.arraycopy(state.heat, 0, keptHeat, 0, heats);
    System.arraycopy(state.kv, 0, keptKv, 0, branches);
    System.arraycopy(step, 0, keptStep, 0, step.length);
    System.arraycopy(free, 0, keptFree, 0, count);
    int moving = count;
    double before = worst;
    double share = 1;
    for (int k = 0; k < HALVINGS; k++) {
      for (int h = 0; h < heats; h++) {
        state.heat[h] = keptHeat[h] + share * keptStep[h];
      }
      for (int i = 0; i < moving; i++) {
        int b = keptFree[i];
        double kv = keptKv[b];
        double by = share * keptStep[heats + i];
        double to = k == 0 || by >= 0 ? kv + by : kv / (1 - by / kv);
        double most = branch.kvMaximum(b);
        state.kv[b] = to < AJAR * most ? 0 : Math.min(to, most);
      }
      settle(flow, before);
      if (worst < before * (1 - share / 4)) {
        return;
      }
      share = k == 0 ? 1 : share / 2;
    }
    follow(flow);
  }

  /**
   * Water that leaves colder than a room does not warm it: the further its valve opens, the more it
   * lacks, so that it rests shut or open only.
   *
   * @return whether a valve went to its end
   */
  private boolean runColdWater(double flow) {
    boolean any = false;
    for (int b = 0; b < branches; b++) {
      if (moves[b] && !isAtAnEnd(b) && flow <= water.air[model.branchRoom(b)].value()) {
        state.kv[b] = lacks[b].value() > 0 ? branch.kvMaximum(b) : 0;
        any = true;
      }
    }
    return any;
  }

  /**
   * Every valve goes half way, as K_v are multiplied, to where it would stand in the rooms as they
   * are.
   */
  private void follow(double flow) {
    followed++;
    System.arraycopy(keptHeat, 0, state.heat, 0, heats);
    System.arraycopy(keptKv, 0, state.kv, 0, branches);
    look(flow);
    for (int b = 0; b < branches; b++) {
      if (moves[b] && !isAtAnEnd(b)) {
        double least = LITTLE * branch.kvMaximum(b);
        state.kv[b] =
            Math.sqrt(Math.max(state.kv[b], least) * Math.max(valve(b).kvAtRest(at(b)), least));
      }
    }
    settle(flow, worst);
  }

  private Valve valve(int b) {
    return model.arrangement().branches().get(b).valve();
  }

  /**
   * Lets heats settle with valves as they are, as well as it takes to tell what valves lack.
   *
   * @param lacking what the worst valve lacked before [K]
   */
  private void settle(double flow, double lacking) {
    double enough = Math.max(HEAT_AGREEMENT, Math.min(lacking, 1) * HEAT_PER_KELVIN);
    look(flow);
    for (int round = 0; round < MOST_ROUNDS && off() > enough; round++) {
      if (!solve(0)) {
        return;
      }
      for (int h = 0; h < heats; h++) {
        state.heat[h] += step[h];
      }
      look(flow);
    }
  }

  /** Finds the valves that rest neither shut nor open; returns how many. */
  private int chooseFree() {
    count = 0;
    for (int b = 0; b < branches; b++) {
      if (moves[b] && !isAtAnEnd(b)) {
        free[count++] = b;
      }
    }
    return count;
  }

  private boolean isAtAnEnd(int b) {
    double there = lacks[b].value();
    return (state.kv[b] == 0 && there <= 0) || (state.kv[b] == branch.kvMaximum(b) && there >= 0);
  }

  /** Finds what is left with heats and valves as they are, and how it varies with them. */
  private void look(double flow) {
    lookOnce(flow);
    boolean again = false;
    for (int b = 0; b < branches; b++) {
      if (moves[b] && state.kv[b] == 0 && lacks[b].value() > 0) {
        state.kv[b] = AJAR * branch.kvMaximum(b);
        again = true;
      }
    }
    if (again) {
      lookOnce(flow);
    }
    worst = 0;
    for (int b = 0; b < branches; b++) {
      if (moves[b] && !isAtAnEnd(b)) {
        worst = Math.max(worst, Math.abs(lacks[b].value()));
      }
    }
  }

  private void lookOnce(double flow) {
    network.solve(state.kv, true);
    water.look(moves);
    water.out(flow);
    for (int b = 0; b < branches; b++) {
      emit(b);
      if (moves[b]) {
        feel(b);
      }
    }
    water.back(off);
  }

  /** What an emitter gives more than stands among the heats. */
  private void emit(int b) {
    int r = model.branchRoom(b);
    double f = model.radiantFraction(b);
    reference.setTimes(f, water.star[r]).add(1 - f, water.air[r]);
    double c = water.capacityFlow[b].value();
    double inlet = water.inlet[b].value();
    double ref = reference.value();
    double there = emitters[b].atRest(c, inlet, ref);
    double perInlet = emitters[b].perExcessAtRest();
    double perReference = -perInlet;
    if (Double.isNaN(perInlet)) {
      perInlet = (emitters[b].atRest(c, inlet + BESIDE, ref) - there) / BESIDE;
      perReference = (emitters[b].atRest(c, inlet, ref + BESIDE) - there) / BESIDE;
    }
    // Without flow no valve as it stands moves it: there is no slope to ask for.
    double perFlow = c > 0 ? emitters[b].perFlowAtRest() : 0;
    if (Double.isNaN(perFlow)) {
      perFlow = (emitters[b].atRest(c + BESIDE * c, inlet, ref) - there) / (BESIDE * c);
    }
    double d = state.duty;
    off[b].set(d * there - state.heat[b]);
    off[b].addSlopes(d * perInlet, water.inlet[b]);
    off[b].addSlopes(d * perReference, reference);
    off[b].addSlopes(d * perFlow, water.capacityFlow[b]);
    off[b].vary(b, 0, -1);
  }

  /** What a valve lacks. */
  private void feel(int b) {
    Valve valve = valve(b);
    int r = model.branchRoom(b);
    double kv = state.kv[b];
    Valve.AtRest at = at(b);
    double there = valve.lacking(kv, at);
    lacks[b].set(there);
    lacks[b].addSlopes((valve.lacking(kv, airBeside(at)) - there) / BESIDE, water.air[r]);
    lacks[b].addSlopes((valve.lacking(kv, starBeside(at)) - there) / BESIDE, water.star[r]);
    lacks[b].addSlopes((valve.lacking(kv, inletBeside(at)) - there) / BESIDE, water.inlet[b]);
    if (kv > 0) {
      double aside = BESIDE * kv;
      lacks[b].vary(heats + b, 0, (valve.lacking(kv + aside, at) - there) / aside);
    }
    if (at.massFlow() > 0 && at.drop() > 0) {
      double flow = at.massFlow() * specificHeat;
      double perShareOfFlow = (valve.lacking(kv, flowBeside(at)) - there) / BESIDE;
      double perShareOfDrop = (valve.lacking(kv, dropBeside(at)) - there) / BESIDE;
      // The drop goes with m²/K_v².
      lacks[b].addSlopes((perShareOfFlow + 2 * perShareOfDrop) / flow, water.capacityFlow[b]);
      lacks[b].vary(heats + b, 0, -2 * perShareOfDrop / kv);
    }
  }

  private Valve.AtRest at(int b) {
    int r = model.branchRoom(b);
    return new Valve.AtRest(
        water.air[r].value(),
        water.star[r].value(),
        water.capacityFlow[b].value() / specificHeat,
        network.valveDrop(b),
        water.inlet[b].value(),
        state.playOf(b),
        state.duty,
        state.switchesAt[b]);
  }

  private static Valve.AtRest airBeside(Valve.AtRest at) {
    return beside(at, BESIDE, 0, 1, 1, 0);
  }

  private static Valve.AtRest starBeside(Valve.AtRest at) {
    return beside(at, 0, BESIDE, 1, 1, 0);
  }

  private static Valve.AtRest flowBeside(Valve.AtRest at) {
    return beside(at, 0, 0, 1 + BESIDE, 1, 0);
  }

  private static Valve.AtRest dropBeside(Valve.AtRest at) {
    return beside(at, 0, 0, 1, 1 + BESIDE, 0);
  }

  private static Valve.AtRest inletBeside(Valve.AtRest at) {
    return beside(at, 0, 0, 1, 1, BESIDE);
  }

  private static Valve.AtRest beside(
      Valve.AtRest at, double air, double star, double flow, double drop, double inlet) {
    return new Valve.AtRest(
        at.air() + air,
        at.star() + star,
        at.massFlow() * flow,
        at.drop() * drop,
        at.inlet() + inlet,
        at.play(),
        at.duty(),
        at.switchesAt());
  }

  /** Solves for the step by elimination, the largest pivot of each column first. */
  private boolean solve(int openings) {
    int n = heats + openings;
    for (int i = 0; i < n; i++) {
      Varying row = i < heats ? off[i] : lacks[free[i - heats]];
      for (int j = 0; j < n; j++) {
        matrix[i][j] = row.slope(j < heats ? j : heats + free[j - heats]);
      }
      matrix[i][n] = -row.value();
    }
    for (int k = 0; k < n; k++) {
      pivot(k, n);
      if (!(Math.abs(matrix[k][k]) > 0)) {
        return false;
      }
      eliminate(k, n);
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = matrix[i][n];
      for (int j = i + 1; j < n; j++) {
        sum -= matrix[i][j] * step[j];
      }
      step[i] = sum / matrix[i][i];
    }
    return true;
  }

  private void eliminate(int k, int n) {
    double[] upper = matrix[k];
    for (int i = k + 1; i < n; i++) {
      double[] row = matrix[i];
      double share = row[k] / upper[k];
      if (share != 0) {
        for (int j = k + 1; j <= n; j++) {
          row[j] -= share * upper[j];
        }
      }
    }
  }

  private void pivot(int k, int n) {
    int best = k;
    for (int i = k + 1; i < n; i++) {
      best = Math.abs(matrix[i][k]) > Math.abs(matrix[best][k]) ? i : best;
    }
    double[] swap = matrix[k];
    matrix[k] = matrix[best];
    matrix[best] = swap;
  }
}
