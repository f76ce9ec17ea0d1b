package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import settle.sim.control.FlowCurve;
import settle.sim.measure.CurveChanged;
import settle.sim.measure.HeadsRaised;
import settle.sim.measure.HotterFlow;
import settle.sim.measure.Measure;
import settle.sim.measure.Measure.Kind;
import settle.sim.measure.ThermostatMoved;

/**
 * How heads, thermostat and flow temperature could be set otherwise.
 *
 * @param as the house and what was found of it
 */
record ControlLadders(Case as) {

  /** Hottest water that is set [°C]; common practice, no source. */
  private static final double HOTTEST_FLOW = 80;

  /** How far above want a head is set [K], and how high at most [°C]; common practice. */
  private static final double HEAD_REACH = 4;

  private static final double HIGHEST_HEAD = 28;

  /** Steepest weather compensation [K/K] and largest shift [K]; common practice, no source. */
  private static final double STEEPEST = 3;

  private static final double LARGEST_SHIFT = 20;

  List<Ladder> heads(String room) {
    double from =
        as.branchesOf(room)
            .mapToDouble(b -> as.branch(b).valve().setPoint())
            .filter(set -> !Double.isNaN(set))
            .min()
            .orElse(Double.NaN);
    double limit = Math.min(as.house().dayWant(room) + HEAD_REACH, HIGHEST_HEAD);
    return from < limit
        ? Ladder.rising(Kind.HEADS, room, from, 0.5, limit, to -> new HeadsRaised(room, from, to))
        : List.of();
  }

  /** No other room is more than another. */
  List<Ladder> thermostat() {
    if (!as.house().control().thermostat().isFitted()) {
      return List.of();
    }
    String now = as.house().control().referenceRoom();
    List<Measure> rungs = new ArrayList<>();
    for (Judgement.Asked room : as.judged().rooms()) {
      if (!room.name().equals(now)) {
        rungs.add(new ThermostatMoved(now, room.name()));
      }
    }
    return rungs.isEmpty()
        ? List.of()
        : List.of(new Ladder(Kind.REFERENCE_ROOM, "", rungs, Double.NaN, false));
  }

  private double hottest() {
    return Math.floor(Math.min(as.house().source().highestFlow(), HOTTEST_FLOW));
  }

  /** Where no weather compensation sets it. */
  List<Ladder> flow() {
    double from = as.holding().asked(as.house().designOutdoor());
    return as.house().control().flowCurve().isEmpty() && from < hottest()
        ? Ladder.rising(
            Kind.FLOW_TEMPERATURE, "", from, 1, hottest(), to -> new HotterFlow(from, to))
        : List.of();
  }

  /** Shifted; steeper; and both, half a step of each. */
  List<Ladder> curve() {
    if (as.house().control().flowCurve().isEmpty()) {
      return List.of();
    }
    FlowCurve now = as.house().control().flowCurve().get();
    List<FlowCurve> shifted = new ArrayList<>();
    for (double shift = Math.floor(now.shift()) + 1; shift <= LARGEST_SHIFT; shift++) {
      shifted.add(curve(now, now.slope(), shift));
    }
    List<FlowCurve> steeper =
        Ladder.rungs(now.slope(), 0.05, STEEPEST, slope -> curve(now, slope, now.shift()));
    List<FlowCurve> both =
        IntStream.range(0, Math.min(shifted.size(), steeper.size()))
            .mapToObj(k -> curve(now, steeper.get(k).slope(), shifted.get(k).shift()))
            .toList();
    List<Ladder> ladders = new ArrayList<>();
    for (List<FlowCurve> one : List.of(shifted, steeper, both)) {
      int last = one.size();
      // Beyond the hottest water nothing changes at the cold end.
      while (last > 1 && atHottest(one.get(last - 1)) && atHottest(one.get(last - 2))) {
        last--;
      }
      List<Measure> rungs = new ArrayList<>();
      one.subList(0, last)
          .forEach(c -> rungs.add(new CurveChanged(now, c, as.house().designOutdoor())));
      ladders.addAll(Ladder.rising(Kind.CURVE, "", rungs, hottest()));
    }
    return ladders;
  }

  private boolean atHottest(FlowCurve curve) {
    return curve.setPoint(as.house().designOutdoor(), 0) >= curve.highest();
  }

  /** The curve with its upper limit raised as far as it needs, and the source allows. */
  private FlowCurve curve(FlowCurve now, double slope, double shift) {
    double needs = FlowCurve.FOOT + shift + slope * (FlowCurve.FOOT - as.house().designOutdoor());
    double highest = Math.max(now.highest(), Math.min(Math.ceil(needs), hottest()));
    return new FlowCurve(slope, shift, now.lowest(), highest, now.roomInfluence());
  }
}
