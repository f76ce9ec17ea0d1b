package settle.sim.engine;

import static org.assertj.core.api.Assertions.assertThat;

import settle.sim.house.House;
import settle.sim.house.RunSettings;
import settle.sim.model.HouseModel;
import settle.sim.recording.Trace;

/** Runs of one house with steps of several lengths, every step agreed. */
final class Steps {

  private Steps() {}

  /** With steps as they are if nothing else is asked for. */
  static Trace usual(House house, int arrangement) {
    return of(
        house, arrangement, RunSettings.DEFAULT_SHORTEST_STEP, RunSettings.DEFAULT_LONGEST_STEP);
  }

  /**
   * With steps of one's own.
   *
   * @param shortest after an event [s]
   * @param longest where nothing happens [s]
   */
  static Trace of(House house, int arrangement, double shortest, double longest) {
    HouseRun run =
        new HouseRun(
            new HouseModel(house, house.arrangements().get(arrangement), 1),
            house.run().withSteps(shortest, longest));
    run.run();
    assertThat(run.stepsUnagreed()).isZero();
    return run.trace();
  }

  /** First position of a trace at which an instant is reached [s]. */
  static int at(Trace trace, double time) {
    int i = 0;
    while (trace.time()[i] < time - 1e-6) {
      i++;
    }
    return i;
  }
}
