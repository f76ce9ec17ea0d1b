package settle.sim.atrest;

import settle.sim.atrest.RestStatus.Kind;
import settle.sim.control.FlowCurve;
import settle.sim.house.House;
import settle.sim.model.HouseModel;

/**
 * The flow temperature that a source keeps up with pump and call always on: asked for by weather
 * compensation or setting, as far as the source can and its least output lets it.
 */
final class FlowAtRest {

  /** Accuracy asked of a flow temperature [K]. */
  static final double ACCURACY = 1e-5;

  private final HouseModel model;
  private final House house;
  private final double outdoor;
  private final RestSweep sweep;
  private final SourceAtRest source;
  private final RestOutcome outcome;
  private final RootSearch search = new RootSearch();

  FlowAtRest(HouseModel model, double outdoor, RestSweep sweep, RestOutcome outcome) {
    this.model = model;
    this.outdoor = outdoor;
    this.sweep = sweep;
    this.outcome = outcome;
    house = model.house();
    source = new SourceAtRest(house, outdoor);
    outcome.flowTemperature = house.source().flowSetPoint();
  }

  /** Lets the water have a temperature [°C]; everything follows. */
  void take(double flow) {
    outcome.flowTemperature = flow;
    outcome.sourceHeat = sweep.at(flow);
  }

  /** Flow through the mains while the pump runs [kg/s]. */
  double total() {
    return sweep.state.duty > 0 ? sweep.network.totalFlow() : 0;
  }

  /** Flow through the source as it stands [kg/s]. */
  double throughSource() {
    source.feed(outcome.flowTemperature, total(), whileHot());
    return source.massFlow();
  }

  /** Flow of water below which the source does not run [kg/s]. */
  double least() {
    return source.leastFlow();
  }

  /** Finds it. */
  void find() {
    source.ask(compensated(house.source().flowSetPoint()));
    double asked = source.setPoint();
    double mains = asked;
    feed(mains);
    // What a vessel loses or mixes in, the source makes up for.
    for (int k = 0; k < 30 && Math.abs(source.temperature() - asked) > ACCURACY; k++) {
      mains += asked - source.temperature();
      feed(mains);
    }
    double lacking = source.power() - source.most() * (1 + 1e-9);
    if (lacking > 0) {
      atMostOutput(mains, lacking);
    } else if (source.power() < source.least() && total() > 0) {
      atLeastOutput(mains);
    }
  }

  /**
   * What weather compensation asks for, room influence included: the root of T = curve(T_e, want -
   * T_room(T)), whose right side falls as T rises.
   */
  private double compensated(double plain) {
    if (house.control().flowCurve().isEmpty()) {
      return plain;
    }
    FlowCurve curve = house.control().flowCurve().get();
    double uninfluenced = curve.setPoint(outdoor, 0);
    if (curve.roomInfluence() == 0 || curve.lowest() == curve.highest()) {
      return uninfluenced;
    }
    double cold = Math.min(outdoor, curve.lowest() - 1);
    double atCold = overAsked(cold, curve);
    double atHighest = overAsked(curve.highest(), curve);
    outcome.found &=
        search.from(
            uninfluenced,
            t -> overAsked(t, curve),
            cold,
            atCold,
            curve.highest(),
            atHighest,
            ACCURACY,
            ACCURACY);
    take(search.root());
    return asked(curve);
  }

  /** How far the source is above what it is asked for, water of a temperature in the mains [K]. */
  private double overAsked(double mains, FlowCurve curve) {
    feed(mains);
    return source.temperature() - asked(curve);
  }

  /** What a curve that heeds a room asks for with the rooms as they are now [°C]. */
  private double asked(FlowCurve curve) {
    int room = house.roomIndex(house.control().referenceRoom());
    return curve.setPoint(outdoor, house.dayWant(room) - sweep.operative(room));
  }

  private double askedNow() {
    return house
        .control()
        .flowCurve()
        .filter(curve -> curve.roomInfluence() != 0)
        .map(this::asked)
        .orElse(source.setPoint());
  }

  private void feed(double mains) {
    take(mains);
    source.feed(mains, total(), whileHot());
  }

  /** Heat that the mains take while water is hot [W]. */
  private double whileHot() {
    return sweep.state.duty > 0 ? outcome.sourceHeat / sweep.state.duty : outcome.sourceHeat;
  }

  private double lackingAt(double mains) {
    feed(mains);
    return source.power() - source.most();
  }

  private double unusedAt(double mains) {
    feed(mains);
    return source.power() - source.least();
  }

  private double madeAt(double mains) {
    feed(mains);
    return source.power();
  }

  /** The water gets as warm as the most output makes it. */
  private void atMostOutput(double mains, double lacking) {
    double cold = Math.min(outdoor, mains - 1);
    double there = lackingAt(cold);
    outcome.found &=
        search.between(
            this::lackingAt, cold, there, mains, lacking, ACCURACY, RestSweep.HEAT_AGREEMENT);
    feed(search.root());
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
      outcome.found &=
          search.between(
              this::unusedAt, mains, unused, top, atTop, ACCURACY, RestSweep.HEAT_AGREEMENT);
      feed(search.root());
      if (source.temperature() <= askedNow() + source.above()) {
        return;
      }
    }
    feed(mains);
    double power = source.power();
    double least = source.least();
    outcome.because(Kind.STARTS_AND_STOPS, power, least);
    outcome.flowBelow = source.below() + warming(power, source.leastRest());
    outcome.flowAbove = source.above() + warming(least - power, source.leastRun());
  }

  /** By how much so much heat warms all the water in such a time [K]. */
  private double warming(double watts, double time) {
    double perVolume = house.water().density() * house.water().specificHeat();
    return Math.max(watts, 0) * time / (model.waterVolume() * perVolume);
  }

  /** Lets the water go round without heat: to the temperature at which none is made. */
  void unheated(double hot) {
    sweep.state.duty = 1;
    double cold = Math.min(outdoor, hot - 1);
    double atCold = madeAt(cold);
    double atHot = madeAt(hot);
    outcome.found &=
        search.between(this::madeAt, cold, atCold, hot, atHot, ACCURACY, RestSweep.HEAT_AGREEMENT);
    feed(search.root());
  }

  /**
   * A defrost takes the water down by what it takes and what the house goes on taking; what lacks
   * is then made up for with what the source can do more. The mean is lower by no more than that
   * depth times its share of the time.
   */
  void defrosts() {
    double duty = sweep.state.duty;
    boolean runs = !outcome.has(Kind.NEVER_RUNS);
    if (duty == 0 || !runs || !source.ices() || total() == 0 || outcome.sourceHeat <= 0) {
      return;
    }
    double time = source.defrost().duration();
    double taken = source.defrost().heatTaken() + whileHot();
    double through = throughSource() * house.water().specificHeat();
    double depth = taken / through + warming(taken, time);
    double spare = source.mostRunning() - whileHot();
    double period = source.defrost().runningTime() + time;
    double back = spare > 0 ? Math.min(taken * time / spare, period) : period;
    double lower = depth * Math.min((time + back) / period, 1);
    outcome.because(Kind.DEFROSTS, lower, 0);
    outcome.flowBelow += lower;
    outcome.flowAbove += lower;
  }
}
