package settle.plots.gallery;

import java.util.ArrayList;
import java.util.List;
import settle.sim.house.Branch;
import settle.sim.house.House;
import settle.sim.hydraulics.Balance.BranchBalance;
import settle.sim.hydraulics.LoopFlow;
import settle.sim.hydraulics.Loops;
import settle.sim.recording.BranchColumn;
import settle.sim.recording.Trace;
import settle.sim.result.RunResult;

/**
 * Flow through the pipe of each branch in one step. What passes an emitter by is not recorded: it
 * follows from the pressure over its loop and how far its valves were open.
 *
 * @param house whose water it is
 * @param result its run
 * @param at the step, by position in the trace
 */
record RoundLoops(House house, RunResult result, int at) {

  /** All of them [kg/s]. */
  double[] flows() {
    List<Branch> branches = asRun();
    Loops loops = new Loops(branches);
    Trace trace = result.trace();
    double[] flows = new double[branches.size()];
    for (int b = 0; b < flows.length; b++) {
      flows[b] = trace.column(BranchColumn.MASS_FLOW, b)[at];
    }
    for (int b = 0; b < flows.length; b++) {
      int[] members = loops.members(b);
      boolean passedBy = false;
      for (int member : members) {
        passedBy |= branches.get(member).loop().byPass().isPresent();
      }
      if (passedBy && loops.after(b) < 0) {
        double round = round(branches, members);
        for (int member : members) {
          flows[member] = round;
        }
      }
    }
    return flows;
  }

  /** With the lockshields as they were run. */
  private List<Branch> asRun() {
    List<Branch> branches = new ArrayList<>(result.arrangement().branches());
    List<BranchBalance> balanced = result.balance().branches();
    for (int b = 0; b < balanced.size(); b++) {
      branches.set(b, branches.get(b).withLockshield(balanced.get(b).lockshield()));
    }
    return branches;
  }

  private double round(List<Branch> branches, int[] members) {
    Trace trace = result.trace();
    double[] kv = new double[branches.size()];
    for (int member : members) {
      kv[member] =
          trace.column(BranchColumn.OPENING, member)[at] * branches.get(member).valve().kvMaximum();
    }
    LoopFlow loop =
        new LoopFlow(members, branches, house.water().density(), house.water().viscosity());
    double pressure = trace.column(BranchColumn.PRESSURE, members[0])[at];
    return loop.set(kv) && pressure > 0 ? loop.under(pressure) : 0;
  }
}
