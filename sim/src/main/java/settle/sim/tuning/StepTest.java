package settle.sim.tuning;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import settle.sim.engine.Simulation;
import settle.sim.house.House;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;
import settle.sim.weather.Weather;

/**
 * A step test by simulation: the same house from the same uniform temperature, once with and once
 * without the step. What the runs share, drift and gains, drops out of their difference.
 */
final class StepTest {

  /** How long the answer is watched [s]: what a room controller has to do with. */
  static final double WATCHED = 8 * 3600;

  private static final double SAMPLE = 120;

  private StepTest() {}

  /**
   * Identifies what a step does to a room.
   *
   * @param without the plant without the step
   * @param with the plant with it
   * @param size of the step, in the unit the gain is wanted per
   * @param room which answers
   * @param outdoor [°C]
   * @param start temperature of everything at the beginning [°C]
   */
  static FirstOrderDeadTime of(
      Plant without, Plant with, double size, String room, double outdoor, double start) {
    PolynomialSplineFunction before = operative(without, room, outdoor, start);
    PolynomialSplineFunction after = operative(with, room, outdoor, start);
    int n = (int) (WATCHED / SAMPLE);
    double[] time = new double[n];
    double[] seen = new double[n];
    for (int i = 0; i < n; i++) {
      time[i] = (i + 1) * SAMPLE;
      seen[i] = (after.value(time[i]) - before.value(time[i])) / size;
    }
    return FirstOrderDeadTime.fitted(time, seen);
  }

  private static PolynomialSplineFunction operative(
      Plant plant, String room, double outdoor, double start) {
    House house =
        plant
            .house()
            .withWeather(new Weather.Constant(outdoor))
            .withRun(plant.house().run().lasting(start, 0, WATCHED + SAMPLE));
    Trace trace = Simulation.run(house, plant.arrangement()).trace();
    double[] operative = trace.column(RoomColumn.OPERATIVE, house.roomIndex(room));
    return new LinearInterpolator().interpolate(trace.time(), operative);
  }
}
