package settle.sim.engine;

import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.room.RoomStepper;
import settle.sim.source.FlowSearch;
import settle.sim.source.SourceStepper;
import settle.sim.valve.ValveStepper;

/**
 * Tries a step until all in it agrees: openings of valves, flow temperature, what emitters refer
 * to, links between rooms. A step that does not agree, or in which something switches, is tried
 * again with another length; no state moves meanwhile.
 */
final class StepTrial {

  /**
   * Agreement asked of the flow temperature between source and emitters [K]; what is left is
   * carried in the source's own heat.
   */
  private static final double FLOW_AGREEMENT = 5e-3;

  /**
   * Agreement asked of each emitter's reference temperature [K]: 0.01 K moves its output by 0.03 %.
   */
  private static final double REFERENCE_AGREEMENT = 0.005;

  /**
   * Agreement asked of the heat the water takes with the heat the source gives it, where much water
   * makes more of it than the flow temperature shows: so much [W], or this share of it [-].
   */
  private static final double HEAT_AGREEMENT = 1;

  private static final double HEAT_AGREEMENT_SHARE = 1e-3;

  /** Rounds after which flow and reference temperatures of a step are given up. */
  private static final int MOST_ROUNDS = 30;

  /**
   * Agreement asked of the opening held with the one the head really takes, as a share of it [-].
   */
  private static final double OPENING_AGREEMENT = 0.003;

  /** Corrections after which the openings of a step are given up. */
  private static final int MOST_CORRECTIONS = 8;

  /** How late after a switching a step ends, so that it surely is one [s]. */
  private static final double MET_WITHIN = 0.1;

  /**
   * How much later each further step may end, of several in a row that were cut at a switching [-]:
   * where things go to and fro about it, steps would else come to nothing.
   */
  private static final double LATER = 2;

  /** Steps without agreement after which none is made shorter than the shortest for it. */
  private static final int MANY = 100;

  // Model
  private final HouseModel model;
  private final double agreement;

  // The parts of the house
  private final RoomStepper rooms;
  private final WaterCircuit circuit;
  private final ValveStepper valves;
  private final SourceStepper source;
  private final Conditions conditions;
  private final CallForHeat call;
  private final TemperatureSpan span;

  // State
  private final StepLadder ladder;
  private double mayBeLate = MET_WITHIN;
  private int unagreed;

  // Scratch of one step
  private final FlowSearch search = new FlowSearch();
  private final double[] valveDrop;
  private double time;
  private double flowSetPoint;
  private double flowTemperature;

  /**
   * @param model the prepared house
   * @param settings start and steps of the run
   * @param agreement how closely all has to agree, as a share of what is usual [-]
   * @param parts what is tried
   * @param conditions weather and gains
   * @param call whether heat is called for
   * @param span sees what is given and asked for
   */
  StepTrial(
      HouseModel model,
      RunSettings settings,
      double agreement,
      Steppers parts,
      Conditions conditions,
      CallForHeat call,
      TemperatureSpan span) {
    this.model = model;
    this.agreement = agreement;
    rooms = parts.rooms();
    circuit = parts.circuit();
    valves = parts.valves();
    source = parts.source();
    this.conditions = conditions;
    this.call = call;
    this.span = span;
    ladder = new StepLadder(settings.shortestStep(), settings.longestStep());
    rooms.prepare(ladder.lengths());
    valveDrop = new double[valves.count()];
    flowTemperature = settings.startTemperature();
  }

  /** Lets the next step be as short as after an event. */
  void beginShort() {
    ladder.reset();
  }

  /**
   * Tries steps until one may stay.
   *
   * @param now its beginning [s]
   * @param steady for how long nothing will change much [s]
   * @param untilEvent time to the next event [s]
   * @return length of the step that was tried last [s]
   */
  double take(double now, double steady, double untilEvent) {
    time = now;
    rooms.keep();
    circuit.keep();
    for (int b = 0; b < valveDrop.length; b++) {
      valveDrop[b] = circuit.network().valveDrop(b);
    }
    int level = ladder.next(steady, untilEvent);
    double h = level >= 0 ? ladder.lengths()[level] : untilEvent;
    double late = mayBeLate;
    mayBeLate = MET_WITHIN;
    while (true) {
      boolean agreed = attempt(level, h);
      double longest = agreed ? mayLast(h, late) : h / 2;
      // A step that ends where it was to is not tried again for ending a hair's breadth later.
      if (h <= longest + late / 2) {
        return h;
      }
      if (agreed && longest < ladder.shortest()) {
        level = -1;
        h = longest;
        ladder.reset();
        mayBeLate = LATER * late;
      } else {
        int shorter = h > leastStep() ? ladder.shorter(longest) : -1;
        if (shorter < 0) {
          unagreed += agreed ? 0 : 1;
          return h;
        }
        level = shorter;
        h = ladder.lengths()[level];
      }
      rooms.restore();
      circuit.restore();
    }
  }

  /**
   * How long a step that was tried and agrees may last [s]. One across a valve's seat would hold a
   * mean of dry and wet; water reaches the head at once. A long one in which a head takes up its
   * play would hold a mean of still and moving. What switches by temperature or lift does so
   * between two steps.
   *
   * @param h its length [s]
   * @param late how late after a switching it may end [s]
   */
  private double mayLast(double h, double late) {
    double starts = Math.min(valves.leavesSeatAfter(), valves.longestAcrossPlay());
    double switched = call.switchesAfter(h) + late;
    return Math.min(switched, Math.max(starts, ladder.shortest()));
  }

  /**
   * The shortest step that is tried for the sake of agreement [s]; once many came to none, that is
   * no matter of length, and the run is to come to its end.
   */
  private double leastStep() {
    return unagreed < MANY ? ladder.lengths()[0] : ladder.shortest();
  }

  /** Tries a step; returns whether all that has to agree in it does. */
  private boolean attempt(int level, double h) {
    ask(h);
    if (level >= 0) {
      rooms.beginPrepared(level);
    } else {
      rooms.begin(h);
    }
    circuit.expectHeats(h, rooms);
    rooms.settleLinks();
    circuit.begin(rooms);
    circuit.flows(valves.lookAhead(h, valveDrop), valves, call.pumping());
    for (int k = 0; k < MOST_CORRECTIONS; k++) {
      boolean agreed = agree(h, k == 0 ? circuit.expectedReturn(h) : circuit.returnTemperature());
      double off = feel(h);
      if (!agreed || off < agreement * OPENING_AGREEMENT) {
        return agreed;
      }
      circuit.flows(valves.correct(), valves, call.pumping());
    }
    return false;
  }

  /** Gives rooms and source what holds over the step: weather, gains, what is asked for. */
  private void ask(double h) {
    double outdoor = conditions.meanOver(time, h, span);
    flowSetPoint = call.flowSetPoint(outdoor);
    source.begin(outdoor, flowSetPoint);
    span.see(outdoor, flowSetPoint, call.called());
  }

  /**
   * Brings flow temperature, emitters and rooms into agreement: T_f = source(T_ret(T_f)); the rooms
   * follow at the same time, their influence mostly being some hundred times weaker.
   *
   * @return whether they agree
   */
  private boolean agree(double h, double expectedReturn) {
    double capacityFlow = circuit.capacityFlow();
    double guess = source.attempt(h, capacityFlow, expectedReturn, call.called());
    search.begin();
    for (int round = 1; ; round++) {
      circuit.attempt(h, guess);
      double off = circuit.give(rooms);
      double returned = circuit.returnTemperature();
      double answer = source.attempt(h, capacityFlow, returned, call.called());
      flowTemperature = guess;
      double flowOff = Math.abs(answer - guess);
      double allowed =
          HEAT_AGREEMENT + HEAT_AGREEMENT_SHARE * capacityFlow * Math.abs(answer - returned);
      if (off < agreement * REFERENCE_AGREEMENT
          && flowOff < agreement * FLOW_AGREEMENT
          && flowOff * capacityFlow <= agreement * allowed) {
        return circuit.agreed() && source.agreed();
      }
      if (round == MOST_ROUNDS) {
        return false;
      }
      circuit.foresee(round, h, rooms, agreement * REFERENCE_AGREEMENT / 2);
      guess = search.next(guess, answer);
    }
  }

  /**
   * Tries all heads with the rooms' mean temperatures; returns how far the worst opening is from
   * the one held [-].
   */
  private double feel(double h) {
    double worst = 0;
    for (int b = 0; b < valveDrop.length; b++) {
      int r = model.branchRoom(b);
      double flow = circuit.network().flow(b);
      double drop = circuit.network().valveDrop(b);
      double off =
          valves.feel(
              b, h, rooms.settledAir(r), rooms.settledOperative(r), flow, circuit.inlet(b), drop);
      worst = Math.max(worst, off);
    }
    return worst;
  }

  /** Flow temperature asked for in the step that was tried last [°C]. */
  double flowSetPoint() {
    return flowSetPoint;
  }

  /** Mean temperature of the water that leaves the source in that step [°C]. */
  double flowTemperature() {
    return flowTemperature;
  }

  /** Steps so far that came to no agreement however short they were made. */
  int unagreed() {
    return unagreed;
  }
}
