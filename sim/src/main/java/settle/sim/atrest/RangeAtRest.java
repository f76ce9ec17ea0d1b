package settle.sim.atrest;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import settle.sim.atrest.RestStatus.Kind;
import settle.sim.atrest.RestStatus.Reason;
import settle.sim.hydraulics.Loops;
import settle.sim.model.HouseModel;
import settle.sim.valve.ValveStepper;

/**
 * Between what temperatures every room may be, where a house does not come to one state: solved
 * with heads and flow temperature at either end, and as slow emitters would have it where water is
 * hot for a share of the time.
 */
final class RangeAtRest {

  // Model
  private final HouseModel model;
  private final double outdoor;

  // What is asked, and comes back to where it stood
  private final RestSweep sweep;
  private final RestState state;
  private final RestOutcome outcome;
  private final ControlsAtRest controls;
  private final RootSearch search = new RootSearch();

  // What comes of it
  final double[] lowest;
  final double[] highest;
  private final List<Reason> said;

  RangeAtRest(
      HouseModel model,
      double outdoor,
      RestSweep sweep,
      RestOutcome outcome,
      ControlsAtRest controls) {
    this.model = model;
    this.outdoor = outdoor;
    this.sweep = sweep;
    state = sweep.state;
    this.outcome = outcome;
    this.controls = controls;
    lowest = operatives();
    highest = operatives();
    said = new ArrayList<>(outcome.reasons);
  }

  /** Looks for it; returns what that says of the house. */
  RestStatus find() {
    double uncertainty = 0;
    if (!outcome.found) {
      said.add(new Reason(Kind.NOT_FOUND, "", sweep.moved(), RestSweep.HEAT_AGREEMENT));
      uncertainty = Double.POSITIVE_INFINITY;
    }
    boolean flowIsOpen = outcome.flowBelow > 0 || outcome.flowAbove > 0;
    if (switchesItself() || flowIsOpen || headsHavePlay()) {
      double[] best = operatives();
      lookAtBothEnds();
      for (int r = 0; r < best.length; r++) {
        uncertainty = Math.max(uncertainty, Math.max(highest[r] - best[r], best[r] - lowest[r]));
      }
    }
    return new RestStatus(uncertainty, said);
  }

  private boolean switchesItself() {
    return (state.duty < 1 && state.duty > 0)
        || outcome.mayStop
        || outcome.has(Kind.ACTUATOR)
        || outcome.has(Kind.INTERLOCK);
  }

  private boolean headsHavePlay() {
    return model.arrangement().branches().stream().anyMatch(b -> b.valve().play() > 0);
  }

  private double[] operatives() {
    double[] all = new double[model.house().rooms().size()];
    for (int r = 0; r < all.length; r++) {
      all[r] = sweep.operative(r);
    }
    return all;
  }

  /** Solves with heads and flow temperature at either end, and comes back to where it stood. */
  private void lookAtBothEnds() {
    double[] kept = sweep.kept();
    double[] at = state.switchesAt.clone();
    double duty = state.duty;
    RestOutcome stood = outcome.copy();
    double hot = stood.flowTemperature;
    end(1, stood.flowBelow);
    end(-1, -stood.flowAbove);
    lookRoundLoops();
    sayPlay();
    if (duty > 0 && duty < 1) {
      switchedAllTheTime(kept, duty, hot);
      if (stood.switching != null) {
        little(kept, stood.switching, hot);
        hardlyOpen(kept, stood.switching, hot);
      }
    }
    state.play = 0;
    state.duty = duty;
    System.arraycopy(at, 0, state.switchesAt, 0, at.length);
    sweep.comeBack(kept);
    if (duty > 0) {
      sweep.at(hot);
    } else {
      sweep.withoutWater();
    }
    outcome.takeOver(stood);
  }

  /**
   * Whoever takes more of a loop's heat leaves the others of it less: each head at either end of
   * its play while the others of its loop are at the other.
   */
  private void lookRoundLoops() {
    Loops loops = model.arrangement().loops();
    for (int b = 0; loops.any() && b < model.branches(); b++) {
      if (loops.has(b) && controls.valve(b).play() > 0) {
        for (int member : loops.members(b)) {
          state.side[member] = model.branchRoom(member) == model.branchRoom(b) ? 1 : -1;
        }
        end(1, 0);
        end(-1, 0);
        Arrays.fill(state.side, 1);
      }
    }
  }

  /** One end of what is possible. */
  private void end(double play, double lower) {
    state.play = play;
    controls.solve();
    if (lower != 0 && state.duty > 0) {
      controls.take(outcome.flowTemperature - lower);
    }
    for (Reason reason : outcome.reasons) {
      if (said.stream().noneMatch(r -> r.kind() == reason.kind())) {
        said.add(reason);
      }
    }
    widen();
  }

  private void sayPlay() {
    for (int b = 0; b < model.branches(); b++) {
      int r = model.branchRoom(b);
      boolean moves = highest[r] - lowest[r] > RestStatus.HOLDS_WITHIN;
      if (moves && controls.valve(b).play() > 0) {
        said.add(new Reason(Kind.PLAY, controls.room(b), lowest[r], highest[r]));
      }
    }
  }

  private void widen() {
    for (int r = 0; r < lowest.length; r++) {
      lowest[r] = Math.min(lowest[r], sweep.operative(r));
      highest[r] = Math.max(highest[r], sweep.operative(r));
    }
  }

  /**
   * Hot water part of the time is not cooler water all the time; where emitters are slow against
   * the switching the truth lies in between. A switched room goes about its want by half a
   * differential and more.
   */
  private void switchedAllTheTime(double[] kept, double duty, double hot) {
    sweep.comeBack(kept);
    state.play = 0;
    state.duty = duty;
    double heat = sweep.at(hot);
    state.duty = 1;
    double cold = Math.min(outdoor, hot - 1);
    double atCold = sweep.at(cold) - heat;
    double atHot = sweep.at(hot) - heat;
    search.between(
        t -> sweep.at(t) - heat,
        cold,
        atCold,
        hot,
        atHot,
        FlowAtRest.ACCURACY,
        RestSweep.HEAT_AGREEMENT);
    sweep.at(search.root());
    widen();
    for (int r = 0; r < lowest.length; r++) {
      lowest[r] -= ControlsAtRest.AFTERWARDS;
      highest[r] += ControlsAtRest.AFTERWARDS;
    }
  }

  /**
   * Where emitters are slow against the switching, hot water part of the time is to them a smaller
   * flow of hot water all the time: whoever gets the most water then gets more of the heat.
   */
  private void little(double[] kept, DoubleUnaryOperator excess, double hot) {
    sweep.comeBack(kept);
    state.duty = 1;
    DoubleUnaryOperator little =
        share -> {
          carry(share, hot);
          return excess.applyAsDouble(share);
        };
    double atAll = little.applyAsDouble(1);
    double atNone = little.applyAsDouble(ControlsAtRest.LEAST_DUTY);
    if (atNone < 0 && atAll > 0) {
      carry(vanishes(little, atNone, atAll), hot);
      widen();
    }
    state.flowShare = 1;
  }

  private void carry(double share, double hot) {
    state.flowShare = share;
    sweep.at(hot);
  }

  /**
   * A motor head that stops the source by shutting stands about where it just counts as open while
   * the water flows, and lets that flow the longer.
   */
  private void hardlyOpen(double[] kept, DoubleUnaryOperator excess, double hot) {
    boolean any = false;
    for (int b = 0; b < model.branches(); b++) {
      boolean motor = controls.valve(b).electric() && !controls.valve(b).switches();
      if (model.house().control().interlock() && motor) {
        double open = ValveStepper.OPEN * controls.valve(b).kvMaximum();
        state.heldAt[b] = Math.min(state.kv[b], open);
        any = true;
      }
    }
    if (!any) {
      return;
    }
    sweep.comeBack(kept);
    DoubleUnaryOperator shared =
        duty -> {
          controls.share(duty, hot);
          return excess.applyAsDouble(duty);
        };
    double atAll = shared.applyAsDouble(1);
    double atNone = shared.applyAsDouble(ControlsAtRest.LEAST_DUTY);
    boolean between = atNone < 0 && atAll > 0;
    controls.share(between ? vanishes(shared, atNone, atAll) : 1, hot);
    widen();
    Arrays.fill(state.heldAt, Double.NaN);
  }

  /** The share of the time, or of the flow, at which an excess vanishes [-]. */
  private double vanishes(DoubleUnaryOperator excess, double atNone, double atAll) {
    search.between(
        excess, ControlsAtRest.LEAST_DUTY, atNone, 1, atAll, 1e-6, ControlsAtRest.ROOM_AGREEMENT);
    return search.root();
  }
}
