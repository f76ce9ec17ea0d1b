package settle.plots.words;

import static settle.plots.words.Sentences.say;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.recording.BranchColumn;
import settle.sim.result.RoomFigures;
import settle.sim.result.RunResult;
import settle.sim.units.Times;
import settle.sim.valve.Valve;

/**
 * Why a room is warmer than it is wanted, and what brings it down: that depends on where its heat
 * comes from, and on what its valve is.
 *
 * @param house the house
 * @param result a run
 * @param index position of the room
 */
record WarmerWords(House house, RunResult result, int index) {

  /** Share of a room's heat below which its emitter is not what makes it warm [-]. */
  private static final double HARDLY = 0.2;

  /** A head set further above want than this is what makes the room warm [K]. */
  private static final double SET_ABOVE = 0.05;

  /** Heat from pipes that is worth its words [W]. */
  private static final double NOTABLE_PIPES = 10;

  /** An explanation with a remedy, to follow a colon. */
  String why() {
    RoomFigures room = result.rooms().get(index);
    double emitted = room.lastDay().emitterHeat();
    double piped = room.lastDay().pipeHeat();
    double needed = room.heat().rated();
    if (emitted <= HARDLY * (emitted + piped) || emitted < 0.01 * needed) {
      return say(
          "its emitter gives hardly any of that ({}); {}neighbouring rooms, sun or people {}",
          Quantities.power(emitted),
          piped >= NOTABLE_PIPES ? "pipes in it give " + Quantities.power(piped) + ", and " : "",
          piped >= NOTABLE_PIPES ? "the rest." : "keep it warm.");
    }
    return of(warmest().valve());
  }

  private String of(Valve valve) {
    double want = house.rooms().get(index).want().maximum();
    if (valve.thermostatic()) {
      return valve.setPoint() > want + SET_ABOVE
          ? setTooHigh(valve.setPoint())
          : "at low load a proportional valve does so by design; a lower setting brings it down.";
    }
    if (valve.hasHead()) {
      return electric(valve.setPoint(), want, valve.switches() ? "its actuator" : "its motor head");
    }
    return "its valve does not respond to the room; close it a little, or fit a head.";
  }

  private static String setTooHigh(double set) {
    return "its head is set to " + Quantities.setting(set) + "; turn it down.";
  }

  private static String electric(double set, double want, String named) {
    return set > want + SET_ABOVE
        ? named + " is set to " + Quantities.setting(set) + "; set it lower."
        : say(
            "{} is set to {} and overshoots, since the water is hotter than the room needs.",
            named,
            Quantities.setting(set));
  }

  /** The branch that gives the room most. */
  private Branch warmest() {
    List<Branch> branches = result.arrangement().branches();
    List<Integer> mine = new ArrayList<>();
    for (int b = 0; b < branches.size(); b++) {
      if (branches.get(b).room().equals(result.rooms().get(index).name())) {
        mine.add(b);
      }
    }
    int most = mine.get(0);
    for (int b : mine) {
      most = heat(b) > heat(most) ? b : most;
    }
    return branches.get(most);
  }

  /** Heat of a branch over the last day [J]. */
  private double heat(int branch) {
    double[] time = result.trace().time();
    double[] heat = result.trace().column(BranchColumn.HEAT, branch);
    double from = time[time.length - 1] - Times.DAY;
    double sum = 0;
    for (int i = 1; i < time.length; i++) {
      sum += time[i] > from ? heat[i] * (time[i] - time[i - 1]) : 0;
    }
    return sum;
  }
}
