package settle.sim.engine;

import java.util.ArrayList;
import java.util.List;
import settle.sim.emitter.Emitter;
import settle.sim.emitter.EmitterStepper;
import settle.sim.house.Branch;
import settle.sim.result.Profile;

/** Keeps the temperatures along all emitters at chosen times after the first call for heat. */
final class ProfileKeeper {

  /** Points at which a profile is kept. */
  private static final int POINTS = 101;

  private final List<Branch> branches;
  private final double firstCall;
  private final double[] marks;
  private final List<Profile> profiles = new ArrayList<>();
  private int next;

  /**
   * @param branches the arrangement's branches
   * @param firstCall time of the first call for heat [s]; not a number if there is none
   * @param times how long after it profiles are kept [s]
   * @param end end of the run [s]
   */
  ProfileKeeper(List<Branch> branches, double firstCall, List<Double> times, double end) {
    this.branches = branches;
    this.firstCall = firstCall;
    marks =
        times.stream()
            .mapToDouble(since -> firstCall + since)
            .filter(at -> at > 0 && at <= end)
            .sorted()
            .toArray();
  }

  /** When the next profiles are due [s]; infinite if no more are. */
  double nextMark() {
    return next < marks.length ? marks[next] : Double.POSITIVE_INFINITY;
  }

  /** Keeps what is due at an instant [s]. */
  void keepDue(double time, EmitterStepper[] emitters) {
    while (time >= nextMark() - 1e-6) {
      for (int b = 0; b < emitters.length; b++) {
        profiles.add(profile(b, emitters[b]));
      }
      next++;
    }
  }

  private Profile profile(int branch, EmitterStepper emitter) {
    double[] positions = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      positions[i] = i / (POINTS - 1.0);
    }
    double[] temperatures = new double[POINTS];
    emitter.profile(positions, temperatures);
    double length = branches.get(branch).emitter().run().map(Emitter.Run::way).orElse(1.0);
    for (int i = 0; i < POINTS; i++) {
      positions[i] *= length;
    }
    return new Profile(branch, marks[next] - firstCall, positions, temperatures);
  }

  List<Profile> profiles() {
    return List.copyOf(profiles);
  }
}
