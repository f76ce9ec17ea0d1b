package settle.sim.atrest;

import java.util.function.DoubleUnaryOperator;
import settle.sim.atrest.RestStatus.Kind;
import settle.sim.control.Control;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.valve.Valve;
import settle.sim.valve.ValveStepper;

/**
 * A house at rest under its controls: room thermostat, interlock, actuators and want of flow let
 * the water be hot all the time, for a share of it, or never.
 */
final class ControlsAtRest {

  /** Agreement asked of a room with its want [K]. */
  static final double ROOM_AGREEMENT = 1e-5;

  /**
   * How far the mean of a room that is switched on and off may be from the middle between on and
   * off, besides half the differential [K]; what emitters hold when they are shut off goes on
   * warming it.
   */
  static final double AFTERWARDS = 0.3;

  /** Smallest share of the time taken for on at all [-]. */
  static final double LEAST_DUTY = 1e-3;

  // Model
  private final HouseModel model;
  private final House house;
  private final double outdoor;
  private final int branches;

  /** Share of the time in which hot water leaves the source to the rooms [-]. */
  private final double available;

  // State
  private final RestSweep sweep;
  private final RestState state;
  private final RestOutcome outcome;
  private final FlowAtRest flow;

  /** What asks for the state, with heads wherever in their play. */
  private Runnable asked;

  private final RootSearch search = new RootSearch();

  ControlsAtRest(HouseModel model, double outdoor, RestSweep sweep, RestOutcome outcome) {
    this.model = model;
    this.outdoor = outdoor;
    this.sweep = sweep;
    this.outcome = outcome;
    house = model.house();
    branches = model.branches();
    available = Math.max(house.shareForRooms(), LEAST_DUTY);
    state = sweep.state;
    flow = new FlowAtRest(model, outdoor, sweep, outcome);
  }

  /** Settles as controls and source bring about. */
  void settleAsControlled() {
    asked = this::controlled;
    solve();
  }

  /** Settles with a flow temperature [°C], whatever controls and source would say. */
  void settleAt(double temperature) {
    asked =
        () -> {
          flow.take(temperature);
          outcome.found &= sweep.found();
        };
    solve();
  }

  /**
   * Solves for what was asked; an actuator stays open where its room does not even come to the
   * upper edge of its differential, and opens and shuts about its set-point otherwise.
   */
  void solve() {
    boolean any = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches()) {
        state.switchesAt[b] = valve(b).differential() / 2;
        any = true;
      }
    }
    begin();
    asked.run();
    if (any) {
      letActuatorsSwitch();
    }
  }

  private void begin() {
    outcome.begin();
    state.duty = available;
    if (available < 1) {
      outcome.because(Kind.HOT_WATER, 1 - available, 1);
    }
  }

  private void letActuatorsSwitch() {
    boolean switching = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches() && opening(b) < 1) {
        double edge = valve(b).differential() / 2 + AFTERWARDS;
        state.switchesAt[b] = -state.play * edge;
        switching = true;
      }
    }
    if (!switching) {
      return;
    }
    begin();
    asked.run();
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches() && opening(b) > 0 && opening(b) < 1) {
        outcome.because(Kind.ACTUATOR, room(b), opening(b), valve(b).differential());
      }
    }
  }

  private void controlled() {
    flow.find();
    double hot = outcome.flowTemperature;
    boolean pumpRuns = byThermostat(hot) && byInterlock(hot);
    if (pumpRuns) {
      byFlow(hot);
    }
    flow.defrosts();
    outcome.found &= sweep.found();
  }

  /** The valve of a branch. */
  Valve valve(int b) {
    return model.arrangement().branches().get(b).valve();
  }

  /** The room of a branch. */
  String room(int b) {
    return model.arrangement().branches().get(b).room();
  }

  /** How far a branch's valve is open, K_v/K_vs [-]; 0 for one that cannot open. */
  double opening(int b) {
    double most = valve(b).kvMaximum();
    return most > 0 ? state.kv[b] / most : 0;
  }

  /** Lets the water have a temperature [°C]; everything follows. */
  void take(double temperature) {
    flow.take(temperature);
  }

  /** Flow through the mains while the pump runs [kg/s]. */
  double totalFlow() {
    return flow.total();
  }

  /** Lets the pump run and the water be hot for a share of the time that there is only. */
  void share(double duty, double hot) {
    if (duty < LEAST_DUTY) {
      sweep.withoutWater();
      outcome.sourceHeat = 0;
      outcome.flowTemperature = hot;
      return;
    }
    state.duty = duty * available;
    flow.take(hot);
  }

  /**
   * Whether a room thermostat ever lets the source run, for a share of the time where it stops it.
   */
  private boolean byThermostat(double hot) {
    Control control = house.control();
    if (!control.thermostat().isFitted()) {
      return true;
    }
    int room = house.roomIndex(control.referenceRoom());
    double want = house.dayWant(room);
    return control
        .thermostat()
        .fold(
            () -> true,
            onOff -> byRelay(room, want, onOff.differential() / 2, hot),
            cycling -> byCycles(room, want, cycling.band(), hot));
  }

  /** Below its upper edge it may call for good; once off, it may as well go on and off for good. */
  private boolean byRelay(int room, double want, double edge, double hot) {
    double play = state.play;
    outcome.mayStop = sweep.operative(room) > want - edge;
    return sweep.operative(room) <= (play > 0 ? want - edge : want + edge)
        || switched(Kind.THERMOSTAT, d -> sweep.operative(room) - want + play * edge, hot);
  }

  private boolean byCycles(int room, double want, double band, double hot) {
    return sweep.operative(room) <= want - band / 2
        || switched(Kind.THERMOSTAT, d -> sweep.operative(room) - want - band * (0.5 - d), hot);
  }

  /** Finds the share of the time at which an excess vanishes; false where that is none. */
  private boolean switched(Kind kind, DoubleUnaryOperator excess, double hot) {
    double atAll = excess.applyAsDouble(1);
    share(0, hot);
    double atNone = excess.applyAsDouble(0);
    if (atNone >= 0) {
      state.duty = 0;
      outcome.because(kind, 0, 1);
      return false;
    }
    outcome.found &=
        search.between(
            d -> {
              share(d, hot);
              return excess.applyAsDouble(d);
            },
            0,
            atNone,
            1,
            atAll,
            1e-6,
            ROOM_AGREEMENT);
    share(search.root(), hot);
    outcome.because(kind, search.root(), 1);
    outcome.switching = excess;
    return true;
  }

  /**
   * Whether an interlock ever lets the source run, for a share of the time where it stops it: heat
   * is called for while an electric valve is open.
   */
  private boolean byInterlock(double hot) {
    if (!house.control().interlock()) {
      return true;
    }
    double most = Double.NEGATIVE_INFINITY;
    boolean openForGood = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).electric()) {
        most = Math.max(most, opening(b));
        openForGood |= opening(b) > ValveStepper.OPEN && (!valve(b).switches() || opening(b) == 1);
      }
    }
    if (most == Double.NEGATIVE_INFINITY || openForGood) {
      return true;
    }
    if (most > ValveStepper.OPEN) {
      outcome.because(Kind.INTERLOCK, most, 1);
      return true;
    }
    return switched(Kind.INTERLOCK, d -> -coldestElectric(), hot);
  }

  /** How far the room of an electric valve is below its set-point, the largest of all [K]. */
  private double coldestElectric() {
    double most = Double.NEGATIVE_INFINITY;
    for (int b = 0; b < branches; b++) {
      if (valve(b).electric()) {
        most = Math.max(most, valve(b).setPoint() - sweep.felt(b, valve(b).sensing()));
      }
    }
    return most;
  }

  /** A source that needs more water than flows stops, or never runs. */
  private void byFlow(double hot) {
    double least = flow.least();
    if (least == 0) {
      return;
    }
    double left = flow.throughSource();
    if (left >= least) {
      double shut = throughSourceActuatorsShut();
      if (shut < least) {
        outcome.because(Kind.BLOCKED, shut, least);
        outcome.flowBelow = Math.max(hot - outdoor, 0);
      }
      return;
    }
    flow.unheated(hot);
    double cold = flow.throughSource();
    outcome.flowBelow = 0;
    outcome.flowAbove = 0;
    outcome.reasons.removeIf(r -> r.kind() == Kind.STARTS_AND_STOPS);
    if (cold < least) {
      outcome.because(Kind.NEVER_RUNS, cold, least);
      return;
    }
    outcome.found &=
        search.between(
            d -> {
              share(Math.max(d, LEAST_DUTY), hot);
              return least - flow.throughSource();
            },
            0,
            least - cold,
            1,
            least - left,
            1e-5,
            1e-7);
    share(Math.max(search.root(), LEAST_DUTY), hot);
    outcome.because(Kind.BLOCKED, left, least);
    outcome.flowBelow = Math.max(hot - outdoor, 0);
  }

  /** Flow through the source while actuators that open and shut are shut [kg/s]. */
  private double throughSourceActuatorsShut() {
    double[] kv = state.kv.clone();
    boolean any = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches() && opening(b) < 1) {
        kv[b] = 0;
        any = true;
      }
    }
    if (!any) {
      return Double.POSITIVE_INFINITY;
    }
    sweep.network.solve(kv, true);
    double through = flow.throughSource();
    sweep.network.solve(state.kv, true);
    return through;
  }
}
