package settle.cli.benchmark;

import settle.sim.engine.HouseRun;
import settle.sim.house.Arrangement;
import settle.sim.house.House;
import settle.sim.model.HouseModel;
import settle.sim.recording.RoomColumn;
import settle.sim.recording.Trace;

/**
 * How far engine and general integrator are from a tight solution in room temperatures, and how
 * loose the integrator may be to be as good as the engine must be.
 *
 * @param engineError largest error of the engine, air or operative, any room [K]; not a number for
 *     perimeter emitters, whose water the integrator cannot be given in the engine's form
 * @param integratorError largest error of the integrator at its tolerance [K]
 * @param tolerance of the integrator [K]
 */
record Accuracy(double engineError, double integratorError, double tolerance) {

  private static final double DAYS = IntegratorBenchmark.DAYS;

  /**
   * Tolerance of what errors are measured against [K]: ten times tighter changes no room by 1e-3 K.
   */
  private static final double TIGHT = 1e-5;

  /** Time after an event in which errors are judged apart [s], and so left out here. */
  private static final double AFTER_EVENT = 600;

  /** What the engine is held to in room temperatures [K], and the integrator with it. */
  private static final double BUDGET = 0.02;

  private static final double LOOSEST = 1;
  private static final double STEP_DOWN = 10;

  /** Looks for the loosest tolerance that is about as good as the engine. */
  static Accuracy of(BenchmarkCase.Emitters emitters) {
    House house = IntegratorBenchmark.house();
    Arrangement arrangement = emitters.of(house);
    HouseRun run = new HouseRun(new HouseModel(house, arrangement, 1), house.run());
    run.run();
    Trace trace = run.trace();
    double[] at = judged(house, trace.time());

    double[][] exact = integrate(house, arrangement, TIGHT, at);
    double engineError = Double.NaN;
    if (arrangement.emitterKind().equals("radiator")) {
      engineError = error(exact, at(trace, at, house.rooms().size()));
    }
    double tolerance = LOOSEST;
    double error = error(exact, integrate(house, arrangement, tolerance, at));
    while (error > BUDGET && tolerance > TIGHT) {
      tolerance /= STEP_DOWN;
      error = error(exact, integrate(house, arrangement, tolerance, at));
    }
    return new Accuracy(engineError, error, tolerance);
  }

  private static double[] judged(House house, double[] times) {
    return java.util.Arrays.stream(times)
        .filter(t -> t > AFTER_EVENT)
        .filter(t -> sinceEvent(house, t) >= AFTER_EVENT)
        .toArray();
  }

  /** Time since a programme or gain last changed [s]; infinite if not lately. */
  private static double sinceEvent(House house, double time) {
    double since = Double.POSITIVE_INFINITY;
    double from = time - AFTER_EVENT;
    for (var room : house.rooms()) {
      double change =
          Math.min(
              room.want().nextChange(from),
              Math.min(
                  room.convectiveGain().nextChange(from), room.radiantGain().nextChange(from)));
      if (change <= time) {
        since = Math.min(since, time - change);
      }
    }
    return since;
  }

  private static double[][] at(Trace trace, double[] at, int rooms) {
    double[][] seen = new double[at.length][2 * rooms];
    int row = 0;
    for (int i = 0; i < at.length; i++) {
      while (trace.time()[row] < at[i]) {
        row++;
      }
      for (int r = 0; r < rooms; r++) {
        seen[i][2 * r] = trace.column(RoomColumn.AIR, r)[row];
        seen[i][2 * r + 1] = trace.column(RoomColumn.OPERATIVE, r)[row];
      }
    }
    return seen;
  }

  private static double[][] integrate(
      House house, Arrangement arrangement, double tolerance, double[] at) {
    double[][] seen = new double[at.length][2 * house.rooms().size()];
    new GeneralIntegration(house, arrangement, tolerance)
        .run(
            DAYS * 86_400,
            at,
            (index, room, air, operative) -> {
              seen[index][2 * room] = air;
              seen[index][2 * room + 1] = operative;
            });
    return seen;
  }

  private static double error(double[][] exact, double[][] other) {
    double most = 0;
    for (int i = 0; i < exact.length; i++) {
      for (int k = 0; k < exact[i].length; k++) {
        double error = Math.abs(other[i][k] - exact[i][k]);
        most = Math.max(most, Double.isNaN(error) ? Double.POSITIVE_INFINITY : error);
      }
    }
    return most;
  }
}
