package settle.sim.atrest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import settle.sim.atrest.RestStatus.Kind;
import settle.sim.atrest.RestStatus.Reason;
import settle.sim.control.Control;
import settle.sim.control.FlowCurve;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.room.SteadyRooms;
import settle.sim.valve.Valve;

/**
 * A house at rest: where every room settles under weather, gains and flow temperature that stay as
 * they are. Solved, not run: {@link RestSweep} finds rooms, emitters and flows on water of one
 * temperature, and what is asked for, what the source can do and what the controls let it do choose
 * that temperature.
 *
 * <p>Not every house comes to rest. Where source, thermostat or actuators start and stop, what is
 * found is the mean they go about, as near as it can be told without a run; {@link #status} says so
 * and how far a room's mean may be from it. Heads stand in the middle of their play; {@link
 * #lowest} and {@link #highest} say where rooms are with heads at either end of it.
 */
public final class SettledHouse {

  /** Accuracy asked of a flow temperature [K]. */
  private static final double FLOW_ACCURACY = 1e-5;

  /** Agreement asked of a room with its want [K]. */
  private static final double ROOM_AGREEMENT = 1e-5;

  /** Lift at which an actuator or motor head counts as open, as its drive has it [-]. */
  private static final double OPEN = 0.05;

  /**
   * How far the mean of a room that is switched on and off may be from the middle between on and
   * off, besides half the differential [K]; what emitters hold when they are shut off goes on
   * warming it.
   */
  private static final double AFTERWARDS = 0.3;

  /** Smallest share of the time taken for on at all [-]. */
  private static final double LEAST_DUTY = 1e-3;

  private final HouseModel model;
  private final House house;
  private final RestSweep sweep;
  private final SourceAtRest source;
  private final RootSearch search = new RootSearch();
  private final double outdoor;
  private final int branches;
  private final int rooms;

  private double sourceHeat;
  private double flowTemperature;

  /** How far the flow temperature may be from what was found, to either side [K]. */
  private double flowBelow;

  private double flowAbove;
  private boolean found = true;
  private final List<Reason> reasons = new ArrayList<>();

  /** What vanishes where something stops the source for a share of the time; null where none. */
  private Excess switching;

  /** Whether a room thermostat that calls for good might go on and off instead. */
  private boolean mayStop;

  /** What asks for the state once more, with heads elsewhere in their play. */
  private Runnable again;

  private RestStatus status;
  private double[] lowest;
  private double[] highest;

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
    house = model.house();
    sweep =
        new RestSweep(model, new SteadyRooms(model.steadyResponse(), outdoor, convective, radiant));
    source = new SourceAtRest(house, outdoor);
    flowTemperature = house.source().flowSetPoint();
    this.outdoor = outdoor;
    branches = model.branches();
    rooms = house.rooms().size();
  }

  /**
   * Settles with the flow temperature that controls and source bring about: asked for by weather
   * compensation or setting, as far as the source can and its least output lets it; stopped by room
   * thermostat, interlock or want of flow.
   */
  public SettledHouse asControlled() {
    return settle(this::controlled);
  }

  /**
   * Settles with a given flow temperature, whatever controls and source would say.
   *
   * @param flow [°C]
   */
  public SettledHouse at(double flow) {
    return settle(() -> solveAt(flow));
  }

  private SettledHouse settle(Runnable how) {
    again = how;
    status = null;
    sweep.valves.play = 0;
    solve();
    return this;
  }

  /**
   * Solves; an actuator stays open where its room does not even come to the upper edge of its
   * differential, and opens and shuts about its set-point otherwise.
   */
  private void solve() {
    boolean any = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches()) {
        sweep.switchesAt[b] = valve(b).differential() / 2;
        any = true;
      }
    }
    begin();
    again.run();
    if (!any) {
      return;
    }
    boolean switching = false;
    for (int b = 0; b < branches; b++) {
      if (valve(b).switches() && opening(b) < 1) {
        double edge = valve(b).differential() / 2 + AFTERWARDS;
        sweep.switchesAt[b] = -sweep.valves.play * edge;
        switching = true;
      }
    }
    if (switching) {
      begin();
      again.run();
      for (int b = 0; b < branches; b++) {
        if (valve(b).switches() && opening(b) > 0 && opening(b) < 1) {
          because(Kind.ACTUATOR, room(b), opening(b), valve(b).differential());
        }
      }
    }
  }

  private void begin() {
    reasons.clear();
    found = true;
    switching = null;
    mayStop = false;
    flowBelow = 0;
    flowAbove = 0;
    sweep.valves.duty = 1;
  }

  private void because(Kind kind, String room, double value, double limit) {
    reasons.add(new Reason(kind, room, value, limit));
  }

  private Valve valve(int b) {
    return model.arrangement().branches().get(b).valve();
  }

  private String room(int b) {
    return model.arrangement().branches().get(b).room();
  }

  private void solveAt(double flow) {
    take(flow);
    found &= sweep.found();
  }

  /** Lets the water have a temperature; everything follows. */
  private void take(double flow) {
    flowTemperature = flow;
    sourceHeat = sweep.at(flow);
  }

  private void controlled() {
    source.ask(compensated(house.source().flowSetPoint()));
    bySource();
    double hot = flowTemperature;
    boolean pumpRuns = byThermostat(hot) && byInterlock(hot);
    if (pumpRuns) {
      byFlow(hot);
    }
    defrosts();
    found &= sweep.found();
  }

  /**
   * What weather compensation asks for, room influence included: the root of T = curve(T_e, want -
   * T_room(T)), whose right side falls as T rises.
   */
  private double compensated(double plain) {
    Control control = house.control();
    if (control.flowCurve().isEmpty()) {
      return plain;
    }
    FlowCurve curve = control.flowCurve().get();
    double uninfluenced = curve.setPoint(outdoor, 0);
    if (curve.roomInfluence() == 0 || curve.lowest() == curve.highest()) {
      return uninfluenced;
    }
    int room = house.roomIndex(control.referenceRoom());
    double want = house.rooms().get(room).want().maximum();
    double cold = Math.min(outdoor, curve.lowest() - 1);
    double atCold = overAsked(cold, curve, room, want);
    double atHighest = overAsked(curve.highest(), curve, room, want);
    found &=
        search.from(
            uninfluenced,
            t -> overAsked(t, curve, room, want),
            cold,
            atCold,
            curve.highest(),
            atHighest,
            FLOW_ACCURACY,
            FLOW_ACCURACY);
    take(search.root());
    return curve.setPoint(outdoor, want - operative(room));
  }

  /** How far the source is above what it is asked for, water of a temperature in the mains [K]. */
  private double overAsked(double mains, FlowCurve curve, int room, double want) {
    feed(mains);
    return source.temperature() - curve.setPoint(outdoor, want - operative(room));
  }

  /** Flow temperature that the source keeps up, pump and call always on. */
  private void bySource() {
    double asked = source.setPoint();
    double mains = asked;
    feed(mains);
    // What a vessel loses or mixes in, the source makes up for.
    for (int k = 0; k < 30 && Math.abs(source.temperature() - asked) > FLOW_ACCURACY; k++) {
      mains += asked - source.temperature();
      feed(mains);
    }
    double lacking = source.power() - source.most() * (1 + 1e-9);
    if (lacking > 0) {
      double cold = Math.min(outdoor, mains - 1);
      double there = lackingAt(cold);
      found &=
          search.between(
              this::lackingAt,
              cold,
              there,
              mains,
              lacking,
              FLOW_ACCURACY,
              RestSweep.HEAT_AGREEMENT);
      feed(search.root());
    } else if (source.power() < source.least() && totalFlow() > 0) {
      atLeastOutput(mains);
    }
  }

  private void feed(double mains) {
    take(mains);
    source.feed(mains, totalFlow(), sourceHeat);
  }

  private double lackingAt(double mains) {
    feed(mains);
    return source.power() - source.most();
  }

  private double unusedAt(double mains) {
    feed(mains);
    return source.power() - source.least();
  }

  /**
   * At least output the water gets warmer than asked for; the source runs through if that stays
   * below where it stops. A compensation that heeds a room asks for less as that gets warmer.
   */
  private void atLeastOutput(double mains) {
    double unused = source.power() - source.least();
    double top = mains + source.above();
    double atTop = unusedAt(top);
    if (atTop > 0) {
      found &=
          search.between(
              this::unusedAt, mains, unused, top, atTop, FLOW_ACCURACY, RestSweep.HEAT_AGREEMENT);
      feed(search.root());
      if (source.temperature() <= askedNow() + source.above()) {
        return;
      }
    }
    feed(mains);
    because(Kind.STARTS_AND_STOPS, "", source.power(), source.least());
    flowBelow = source.below() + warming(source.power(), source.leastRest());
    flowAbove = source.above() + warming(source.least() - source.power(), source.leastRun());
  }

  /** What is asked for with the rooms as they are now [°C]. */
  private double askedNow() {
    Control control = house.control();
    if (control.flowCurve().isEmpty() || control.flowCurve().get().roomInfluence() == 0) {
      return source.setPoint();
    }
    int room = house.roomIndex(control.referenceRoom());
    double want = house.rooms().get(room).want().maximum();
    return control.flowCurve().get().setPoint(outdoor, want - operative(room));
  }

  /** By how much so much heat warms all the water in such a time [K]. */
  private double warming(double watts, double time) {
    double perVolume = house.water().density() * house.water().specificHeat();
    return Math.max(watts, 0) * time / (model.waterVolume() * perVolume);
  }

  /** Lets the pump run and the water be hot for a share of the time only. */
  private void share(double duty, double hot) {
    if (duty < LEAST_DUTY) {
      sweep.withoutWater();
      sourceHeat = 0;
      flowTemperature = hot;
      return;
    }
    sweep.valves.duty = duty;
    take(hot);
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
    double play = sweep.valves.play;
    mayStop = operative(room) > want - edge;
    return operative(room) <= (play > 0 ? want - edge : want + edge)
        || switched(Kind.THERMOSTAT, d -> operative(room) - want + play * edge, hot);
  }

  private boolean byCycles(int room, double want, double band, double hot) {
    return operative(room) <= want - band / 2
        || switched(Kind.THERMOSTAT, d -> operative(room) - want - band * (0.5 - d), hot);
  }

  /** Something that rises with the share of the time in which water is hot. */
  private interface Excess {
    double at(double duty);
  }

  /** Finds the share of the time at which an excess vanishes; false where that is none. */
  private boolean switched(Kind kind, Excess excess, double hot) {
    double atAll = excess.at(1);
    share(0, hot);
    double atNone = excess.at(0);
    if (atNone >= 0) {
      sweep.valves.duty = 0;
      because(kind, "", 0, 1);
      return false;
    }
    found &=
        search.between(
            d -> {
              share(d, hot);
              return excess.at(d);
            },
            0,
            atNone,
            1,
            atAll,
            1e-6,
            ROOM_AGREEMENT);
    share(search.root(), hot);
    because(kind, "", search.root(), 1);
    switching = excess;
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
        openForGood |= opening(b) > OPEN && (!valve(b).switches() || opening(b) == 1);
      }
    }
    if (most == Double.NEGATIVE_INFINITY || openForGood) {
      return true;
    }
    if (most > OPEN) {
      because(Kind.INTERLOCK, "", most, 1);
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
    double least = source.leastFlow();
    if (least == 0) {
      return;
    }
    double left = throughSource();
    if (left >= least) {
      double shut = throughSourceActuatorsShut();
      if (shut < least) {
        because(Kind.BLOCKED, "", shut, least);
        flowBelow = Math.max(hot - outdoor, 0);
      }
      return;
    }
    unheated(hot);
    double cold = throughSource();
    flowBelow = 0;
    flowAbove = 0;
    reasons.removeIf(r -> r.kind() == Kind.STARTS_AND_STOPS);
    if (cold < least) {
      because(Kind.NEVER_RUNS, "", cold, least);
      return;
    }
    found &=
        search.between(
            d -> {
              share(Math.max(d, LEAST_DUTY), hot);
              return least - throughSource();
            },
            0,
            least - cold,
            1,
            least - left,
            1e-5,
            1e-7);
    share(Math.max(search.root(), LEAST_DUTY), hot);
    because(Kind.BLOCKED, "", left, least);
    flowBelow = Math.max(hot - outdoor, 0);
  }

  /** Lets the water go round without heat: to the temperature at which none is made. */
  private void unheated(double hot) {
    sweep.valves.duty = 1;
    double cold = Math.min(outdoor, hot - 1);
    double atCold = madeAt(cold);
    double atHot = madeAt(hot);
    found &=
        search.between(
            this::madeAt, cold, atCold, hot, atHot, FLOW_ACCURACY, RestSweep.HEAT_AGREEMENT);
    feed(search.root());
  }

  private double madeAt(double mains) {
    feed(mains);
    return source.power();
  }

  /** Flow through the source while actuators that open and shut are shut [kg/s]. */
  private double throughSourceActuatorsShut() {
    double[] kv = sweep.kv.clone();
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
    double through = throughSource();
    sweep.network.solve(sweep.kv, true);
    return through;
  }

  private double throughSource() {
    source.feed(flowTemperature, totalFlow(), sourceHeat);
    return source.massFlow();
  }

  /**
   * A defrost takes the water down by what it takes and what the house goes on taking; what lacks
   * is then made up for with what the source can do more. The mean is lower by no more than that
   * depth times its share of the time.
   */
  private void defrosts() {
    double duty = sweep.valves.duty;
    boolean runs = reasons.stream().noneMatch(r -> r.kind() == Kind.NEVER_RUNS);
    if (duty == 0 || !runs || !source.ices() || totalFlow() == 0 || sourceHeat <= 0) {
      return;
    }
    double time = source.defrost().duration();
    double taken = source.defrost().heatTaken() + sourceHeat / duty;
    double through = throughSource() * house.water().specificHeat();
    double depth = taken / through + warming(taken, time);
    double spare = source.mostRunning() - sourceHeat / duty;
    double period = source.defrost().runningTime() + time;
    double back = spare > 0 ? Math.min(taken * time / spare, period) : period;
    double lower = depth * Math.min((time + back) / period, 1);
    because(Kind.DEFROSTS, "", lower, 0);
    flowBelow += lower;
    flowAbove += lower;
  }

  /** Whether the house comes to rest as found, and what keeps it from that. */
  public RestStatus status() {
    if (status == null) {
      status = asked();
    }
    return status;
  }

  /**
   * Lowest operative temperature that a room may come to rest at, heads standing as far shut as
   * their play lets them [°C].
   */
  public double lowest(int room) {
    status();
    return lowest[room];
  }

  /**
   * Highest operative temperature that a room may come to rest at, heads standing as far open as
   * their play lets them [°C].
   */
  public double highest(int room) {
    status();
    return highest[room];
  }

  private RestStatus asked() {
    lowest = operatives();
    highest = operatives();
    List<Reason> said = new ArrayList<>(reasons);
    double uncertainty = 0;
    if (!found) {
      said.add(new Reason(Kind.NOT_FOUND, "", sweep.moved(), RestSweep.HEAT_AGREEMENT));
      uncertainty = Double.POSITIVE_INFINITY;
    }
    if (switchesItself() || flowBelow > 0 || flowAbove > 0 || headsHavePlay()) {
      double[] best = operatives();
      ends(said);
      for (int r = 0; r < rooms; r++) {
        uncertainty = Math.max(uncertainty, Math.max(highest[r] - best[r], best[r] - lowest[r]));
      }
    }
    return new RestStatus(uncertainty, said);
  }

  private boolean switchesItself() {
    return (sweep.valves.duty < 1 && sweep.valves.duty > 0)
        || mayStop
        || reasons.stream().anyMatch(r -> r.kind() == Kind.ACTUATOR || r.kind() == Kind.INTERLOCK);
  }

  private boolean headsHavePlay() {
    for (Branch branch : model.arrangement().branches()) {
      if (branch.valve().play() > 0) {
        return true;
      }
    }
    return false;
  }

  private double[] operatives() {
    double[] all = new double[rooms];
    for (int r = 0; r < rooms; r++) {
      all[r] = operative(r);
    }
    return all;
  }

  /** Solves with heads and flow temperature at either end, and comes back to where it stood. */
  private void ends(List<Reason> said) {
    double[] kept = sweep.kept();
    double flow = flowTemperature;
    double taken = sourceHeat;
    double duty = sweep.valves.duty;
    double[] at = sweep.switchesAt.clone();
    List<Reason> own = List.copyOf(reasons);
    boolean wasFound = found;
    double below = flowBelow;
    double above = flowAbove;
    double hot = flow;
    Excess wasSwitching = switching;
    end(1, below, said);
    end(-1, -above, said);
    sayPlay(said);
    if (duty > 0 && duty < 1) {
      switchedAllTheTime(kept, duty, hot);
      if (wasSwitching != null) {
        little(kept, wasSwitching, hot);
        hardlyOpen(kept, wasSwitching, hot);
      }
    }
    sweep.valves.play = 0;
    sweep.valves.duty = duty;
    System.arraycopy(at, 0, sweep.switchesAt, 0, at.length);
    sweep.comeBack(kept);
    if (duty > 0) {
      sweep.at(flow);
    } else {
      sweep.withoutWater();
    }
    flowTemperature = flow;
    sourceHeat = taken;
    reasons.clear();
    reasons.addAll(own);
    found = wasFound;
    switching = wasSwitching;
    flowBelow = below;
    flowAbove = above;
  }

  /** One end of what is possible. */
  private void end(double play, double lower, List<Reason> said) {
    sweep.valves.play = play;
    solve();
    double duty = sweep.valves.duty;
    if (lower != 0 && duty > 0) {
      take(flowTemperature - lower);
    }
    for (Reason reason : reasons) {
      if (said.stream().noneMatch(r -> r.kind() == reason.kind())) {
        said.add(reason);
      }
    }
    widen();
  }

  private void sayPlay(List<Reason> said) {
    for (int b = 0; b < branches; b++) {
      int r = model.branchRoom(b);
      boolean moves = highest[r] - lowest[r] > RestStatus.HOLDS_WITHIN;
      if (moves && valve(b).play() > 0) {
        said.add(new Reason(Kind.PLAY, room(b), lowest[r], highest[r]));
      }
    }
  }

  private void widen() {
    for (int r = 0; r < rooms; r++) {
      lowest[r] = Math.min(lowest[r], operative(r));
      highest[r] = Math.max(highest[r], operative(r));
    }
  }

  /**
   * Hot water part of the time is not cooler water all the time; where emitters are slow against
   * the switching the truth lies in between. A switched room goes about its want by half a
   * differential and more.
   */
  private void switchedAllTheTime(double[] kept, double duty, double hot) {
    sweep.comeBack(kept);
    sweep.valves.play = 0;
    sweep.valves.duty = duty;
    double heat = sweep.at(hot);
    sweep.valves.duty = 1;
    double cold = Math.min(outdoor, hot - 1);
    double atCold = sweep.at(cold) - heat;
    double atHot = sweep.at(hot) - heat;
    search.between(
        t -> sweep.at(t) - heat, cold, atCold, hot, atHot, FLOW_ACCURACY, RestSweep.HEAT_AGREEMENT);
    sweep.at(search.root());
    widen();
    for (int r = 0; r < rooms; r++) {
      lowest[r] -= AFTERWARDS;
      highest[r] += AFTERWARDS;
    }
  }

  /**
   * Where emitters are slow against the switching, hot water part of the time is to them a smaller
   * flow of hot water all the time: whoever gets the most water then gets more of the heat.
   */
  private void little(double[] kept, Excess excess, double hot) {
    sweep.comeBack(kept);
    sweep.valves.duty = 1;
    double atAll = littleBy(1, excess, hot);
    double atNone = littleBy(LEAST_DUTY, excess, hot);
    if (atNone < 0 && atAll > 0) {
      search.between(
          f -> littleBy(f, excess, hot), LEAST_DUTY, atNone, 1, atAll, 1e-6, ROOM_AGREEMENT);
      littleBy(search.root(), excess, hot);
      widen();
    }
    sweep.carry(1);
  }

  /**
   * A motor head that stops the source by shutting stands about where it just counts as open while
   * the water flows, and lets that flow the longer.
   */
  private void hardlyOpen(double[] kept, Excess excess, double hot) {
    boolean any = false;
    for (int b = 0; b < branches; b++) {
      if (house.control().interlock() && valve(b).electric() && !valve(b).switches()) {
        sweep.heldAt[b] = Math.min(sweep.kv[b], OPEN * valve(b).kvMaximum());
        any = true;
      }
    }
    if (!any) {
      return;
    }
    sweep.comeBack(kept);
    share(1, hot);
    double atAll = excess.at(1);
    share(LEAST_DUTY, hot);
    double atNone = excess.at(LEAST_DUTY);
    if (atNone < 0 && atAll > 0) {
      search.between(
          d -> {
            share(d, hot);
            return excess.at(d);
          },
          LEAST_DUTY,
          atNone,
          1,
          atAll,
          1e-6,
          ROOM_AGREEMENT);
      share(search.root(), hot);
    } else {
      share(1, hot);
    }
    widen();
    Arrays.fill(sweep.heldAt, Double.NaN);
  }

  private double littleBy(double share, Excess excess, double hot) {
    sweep.carry(share);
    sweep.at(hot);
    return excess.at(share);
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
    return sweep.massFlow[branch];
  }

  /** How far a branch's valve is open, K_v/K_vs [-]; 0 for one that cannot open. */
  public double opening(int branch) {
    double most = valve(branch).kvMaximum();
    return most > 0 ? sweep.kv[branch] / most : 0;
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
    return sweep.heat[branch];
  }

  /** Heats that enter the rooms, of each branch's emitter and then of pipes [W]; a new array. */
  public double[] heats() {
    return sweep.heat.clone();
  }

  /** Heat that pipes give to a room [W]. */
  public double pipeHeat(int room) {
    int input = model.pipeHeatInput(room);
    return input >= 0 ? sweep.heat[input] : 0;
  }

  /** Heat lost by mains outside the rooms [W]. */
  public double outsideLoss() {
    return sweep.valves.duty * sweep.pipes.outsideLoss();
  }

  /** Mean heat taken from the source by the mains [W]. */
  public double sourceHeat() {
    return sourceHeat;
  }

  /**
   * Return temperature at the source while water flows, flows mixed [°C]; that of the flow where
   * none does.
   */
  public double returnTemperature() {
    double capacityFlow = sweep.valves.duty * totalFlow() * house.water().specificHeat();
    return capacityFlow > 0 ? flowTemperature - sourceHeat / capacityFlow : flowTemperature;
  }

  /** Flow through the mains while the pump runs [kg/s]. */
  public double totalFlow() {
    return sweep.valves.duty > 0 ? sweep.network.totalFlow() : 0;
  }

  /** Share of the time in which heat is called for and the source may run [-]. */
  public double duty() {
    return sweep.valves.duty;
  }

  /** Temperature of the water that goes into the mains while it flows [°C]. */
  public double flowTemperature() {
    return flowTemperature;
  }
}
