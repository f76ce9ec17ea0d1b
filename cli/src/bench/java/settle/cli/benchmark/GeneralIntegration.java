package settle.cli.benchmark;

import java.util.Arrays;
import java.util.TreeSet;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import settle.sim.control.Timetable;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.reference.ContinuousHouse;
import settle.sim.room.Room;

/**
 * A general integrator, Commons Math's DormandPrince853, on the continuous model of a house.
 *
 * <p>It starts afresh wherever a programme or a gain jumps. The play of the heads is brought up to
 * date after every step it accepts: within a step a head moves one way or hardly at all, and at the
 * end of a step the derivatives do not jump.
 */
final class GeneralIntegration {

  /**
   * Mixed cells that stand for a perimeter emitter. Fewer than exactness asks for (they miss a room
   * temperature by some 0.05 K), so that the comparison flatters the integrator.
   */
  private static final int CHEAP_CELLS = 20;

  /**
   * Longest step [s]: no longer than the engine's, so that a head does not turn round unseen within
   * one.
   */
  private static final double LONGEST_STEP = 640;

  private static final double SHORTEST_STEP = 1e-6;

  /** Tolerance of states that only count what has passed: they do not steer the step. */
  private static final double FREE = 1e30;

  private final House house;
  private final ContinuousHouse model;
  private final double tolerance;
  private final int rooms;
  private final int branches;
  private long steps;

  /** Takes the temperatures of the rooms at an instant asked for. */
  interface Sink {
    /**
     * @param index of the instant
     * @param room which
     * @param air air temperature [°C]
     * @param operative operative temperature [°C]
     */
    void take(int index, int room, double air, double operative);
  }

  /**
   * @param house its source must be ideal
   * @param arrangement one of its arrangements
   * @param tolerance error per step allowed in a temperature [K]
   */
  GeneralIntegration(House house, Arrangement arrangement, double tolerance) {
    this.house = house;
    this.tolerance = tolerance;
    model = new ContinuousHouse(house, arrangement, 1, CHEAP_CELLS);
    rooms = house.rooms().size();
    branches = arrangement.branches().size();
  }

  /**
   * Runs from 0.
   *
   * @param end [s]
   * @param at instants at which the rooms are looked at [s], ascending
   * @param sink takes what is seen there
   * @return the state at the end
   */
  double[] run(double end, double[] at, Sink sink) {
    double[] y = model.start(house.run().startTemperature());
    double[] absolute = new double[y.length];
    Arrays.fill(absolute, tolerance);
    freeCounters(y, absolute);
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(SHORTEST_STEP, LONGEST_STEP, absolute, new double[y.length]);
    Follower follower = new Follower(at, sink, y.length);
    integrator.addStepHandler(follower);
    double time = 0;
    for (double next : stops(end)) {
      model.settle(time, y);
      integrator.integrate(model, time, y, next, y);
      time = next;
    }
    return y;
  }

  /**
   * Finds the counters of water and heat that have passed: they alone start at zero in a house that
   * starts warm.
   */
  private void freeCounters(double[] y, double[] absolute) {
    int found = 0;
    for (int i = 0; i < y.length; i++) {
      if (y[i] == 0 && found < 2 * branches) {
        absolute[i] = FREE;
        found++;
      }
    }
  }

  /** Instants at which the integration starts afresh, the end included. */
  private TreeSet<Double> stops(double end) {
    TreeSet<Double> stops = new TreeSet<>();
    for (Room room : house.rooms()) {
      addChanges(stops, room.want(), end);
      addChanges(stops, room.convectiveGain(), end);
      addChanges(stops, room.radiantGain(), end);
    }
    stops.add(end);
    return stops;
  }

  private static void addChanges(TreeSet<Double> stops, Timetable timetable, double end) {
    double t = timetable.nextChange(0);
    while (t < end) {
      stops.add(t);
      t = timetable.nextChange(t);
    }
  }

  /** Steps accepted so far. */
  long steps() {
    return steps;
  }

  /** States in use. */
  int states() {
    return model.states();
  }

  /** Keeps the play up to date and looks at the rooms. */
  private final class Follower implements StepHandler {

    private final double[] at;
    private final Sink sink;
    private final double[] derivatives;
    private int next;

    Follower(double[] at, Sink sink, int dimension) {
      this.at = at;
      this.sink = sink;
      derivatives = new double[dimension];
    }

    @Override
    public void init(double time, double[] y, double end) {
      // Nothing is kept from one stretch to the next but the next instant to look at.
    }

    @Override
    public void handleStep(StepInterpolator interpolator, boolean last) {
      steps++;
      double time = interpolator.getCurrentTime();
      while (next < at.length && at[next] <= time + 1e-6) {
        interpolator.setInterpolatedTime(Math.min(at[next], time));
        double[] y = interpolator.getInterpolatedState().clone();
        model.computeDerivatives(at[next], y, derivatives);
        for (int r = 0; r < rooms; r++) {
          double air = model.air(y, r);
          sink.take(next, r, air, (air + model.star(r)) / 2);
        }
        next++;
      }
      if (!last) {
        interpolator.setInterpolatedTime(time);
        model.settle(time, interpolator.getInterpolatedState());
      }
    }
  }
}
