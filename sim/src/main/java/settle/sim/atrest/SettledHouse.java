package settle.sim.atrest;

import settle.sim.house.Distribution;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;

/**
 * A house at rest: where every room settles under weather, gains and flow temperature that stay as
 * they are. Solved, not run: {@link RestSweep} finds rooms, emitters and flows on water of one
 * temperature, and what is asked for, what the source can do and what the controls let it do choose
 * that temperature.
 *
 * <p>Not every house comes to rest. Where source, thermostat or actuators start and stop, what is
 * found is the mean they go about, as near as can be known without a run; {@link #status} says so
 * and how far a room's mean may be from it. Heads stand in the middle of their play; {@link
 * #lowest} and {@link #highest} say where rooms are with heads at either end of it.
 */
public final class SettledHouse {

  private final HouseModel model;
  private final double outdoor;

  private final RestSweep sweep;
  private final RestState state;
  private final RestOutcome outcome = new RestOutcome();
  private final ControlsAtRest controls;

  /** How far it may be from what was found; null until somebody asks. */
  private RangeAtRest range;

  private RestStatus status;

  /**
   * Prepares; {@link #asControlled} or {@link #at} then solve, as often as wanted.
   *
   * @param model the prepared house
   * @param outdoor outdoor temperature [°C]
   * @param convective convective gain of each room [W]
   * @param radiant radiant gain of each room [W]
   */
  public SettledHouse(HouseModel model, double outdoor, double[] convective, double[] radiant) {
    this.model = model;
    this.outdoor = outdoor;
    sweep =
        new RestSweep(model, new SteadyRooms(model.steadyResponse(), outdoor, convective, radiant));
    state = sweep.state;
    controls = new ControlsAtRest(model, outdoor, sweep, outcome);
  }

  /**
   * Settles with the flow temperature that controls and source bring about: asked for by weather
   * compensation or setting, as far as the source can and its least output lets it; stopped by room
   * thermostat, interlock or want of flow.
   */
  public SettledHouse asControlled() {
    begin();
    controls.settleAsControlled();
    return this;
  }

  /**
   * Settles with a given flow temperature, whatever controls and source would say.
   *
   * @param flow [°C]
   */
  public SettledHouse at(double flow) {
    begin();
    controls.settleAt(flow);
    return this;
  }

  private void begin() {
    range = null;
    state.play = 0;
  }

  /** Whether the house comes to rest as found, and what keeps it from that. */
  public RestStatus status() {
    if (range == null) {
      range = new RangeAtRest(model, outdoor, sweep, outcome, controls);
      status = range.find();
    }
    return status;
  }

  /**
   * Lowest operative temperature that a room may come to rest at, heads standing as far shut as
   * their play lets them [°C].
   */
  public double lowest(int room) {
    status();
    return range.lowest[room];
  }

  /**
   * Highest operative temperature that a room may come to rest at, heads standing as far open as
   * their play lets them [°C].
   */
  public double highest(int room) {
    status();
    return range.highest[room];
  }

  /**
   * Operative temperature of a branch's room were its emitter to give such a heat, everything else
   * being as it has settled [°C]: the room's load line.
   *
   * @param branch which
   * @param watts heat of its emitter [W]
   */
  public double operativeWith(int branch, double watts) {
    return sweep.operativeWith(branch, watts);
  }

  /**
   * What a branch's emitter would give in a room as warm as {@link #operativeWith} such a heat, its
   * valve answering to that warmth, the pressure over the branch and everything else being as it
   * has settled [W]. Room and valve agree where this is the heat itself: there they have settled.
   *
   * @param branch which
   * @param watts heat that makes the room so warm [W]
   */
  public double heatOffered(int branch, double watts) {
    return sweep.heatOffered(branch, watts);
  }

  /** Flow through a branch while water flows [kg/s]. */
  public double massFlow(int branch) {
    return state.massFlow[branch];
  }

  /** How far a branch's valve is open, K_v/K_vs [-]; 0 for one that cannot open. */
  public double opening(int branch) {
    return controls.opening(branch);
  }

  /** Air temperature of a room [°C]. */
  public double air(int room) {
    return sweep.air(room);
  }

  /** Operative temperature of a room [°C]. */
  public double operative(int room) {
    return sweep.operative(room);
  }

  /** Mean output of a branch's emitter [W]. */
  public double heat(int branch) {
    return state.heat[branch];
  }

  /** Heats that enter the rooms, of each branch's emitter and then of pipes [W]; a new array. */
  public double[] heats() {
    return state.heat.clone();
  }

  /** Heat that pipes give to a room [W]. */
  public double pipeHeat(int room) {
    int input = model.pipeHeatInput(room);
    return input >= 0 ? state.heat[input] : 0;
  }

  /** Heat lost by mains outside the rooms [W]. */
  public double outsideLoss() {
    return state.duty * sweep.pipes.outsideLoss();
  }

  /** Mean heat taken from the source by the mains [W]. */
  public double sourceHeat() {
    return outcome.sourceHeat;
  }

  /**
   * Return temperature at the source while water flows, flows mixed [°C]; that of the flow where
   * none does.
   */
  public double returnTemperature() {
    double perFlow = model.house().water().specificHeat();
    double capacityFlow = state.duty * totalFlow() * perFlow;
    double drop = capacityFlow > 0 ? outcome.sourceHeat / capacityFlow : 0;
    return outcome.flowTemperature - drop;
  }

  /** Flow through the mains while the pump runs [kg/s]. */
  public double totalFlow() {
    return controls.totalFlow();
  }

  /** Electrical power of the pump of the mains while it runs [W]. */
  public double pumpPower() {
    Distribution pipes = model.house().distribution();
    double through = Math.max(totalFlow(), model.leastThroughPump());
    double left = totalFlow() > 0 ? sweep.network.head() : 0;
    return pipes.pumpPlace().power(pipes.pump(), left, through, model.house().water().density());
  }

  /** Share of the time in which heat is called for and the source may run [-]. */
  public double duty() {
    return state.duty;
  }

  /** Temperature of the water that goes into the mains while it flows [°C]. */
  public double flowTemperature() {
    return outcome.flowTemperature;
  }
}
