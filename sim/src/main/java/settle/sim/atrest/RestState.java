package settle.sim.atrest;

import java.util.Arrays;
import settle.sim.model.HouseModel;

/** A house at rest as far as it has been found, and what its valves and pump are held to. */
final class RestState {

  /** Heat inputs of the rooms: of each branch's emitter, then of pipes [W]. */
  final double[] heat;

  // Of each branch
  /** Opening of its valve [m³/h at 1 bar]. */
  final double[] kv;

  /** [kg/s] */
  final double[] massFlow;

  /** Pressure over it [Pa]. */
  final double[] pressure;

  // What is held
  /** How far above its set-point an actuator holds its room [K]. */
  final double[] switchesAt;

  /** K_v at which a valve is held whatever its room does; not a number where it is not. */
  final double[] heldAt;

  /** Where heads stand in their play: 0 in the middle, 1 as far shut as it lets them, -1 open. */
  double play;

  /** Which heads stand at the other end of theirs: -1, else 1. */
  final double[] side;

  /** Share of the time in which the pump runs and water is hot [-]. */
  double duty = 1;

  /** Share of the flow that goes round, all the time [-]. */
  double flowShare = 1;

  /** A house whose valves are all open. */
  RestState(HouseModel model) {
    int branches = model.branches();
    heat = new double[model.heatInputs()];
    kv = new double[branches];
    for (int b = 0; b < branches; b++) {
      kv[b] = model.arrangement().branches().get(b).valve().kvMaximum();
    }
    massFlow = new double[branches];
    pressure = new double[branches];
    switchesAt = new double[branches];
    heldAt = new double[branches];
    Arrays.fill(heldAt, Double.NaN);
    side = new double[branches];
    Arrays.fill(side, 1);
  }

  /** Where the head of a branch stands in its play, as {@link #play}. */
  double playOf(int branch) {
    return side[branch] * play;
  }

  /** Heat of all emitters [W]. */
  double emitted() {
    double sum = 0;
    for (int b = 0; b < kv.length; b++) {
      sum += heat[b];
    }
    return sum;
  }
}
