package settle.sim.hydraulics;

import java.util.List;
import settle.sim.notice.Notice;

/**
 * What the flows of an arrangement are with every valve open, as an installer balances it: heads
 * off, pump running.
 *
 * @param balanced whether lockshields and pump were set by the balance; otherwise they are as given
 *     and flow and flowAsGiven are the same
 * @param indexBranch position of the branch that needs most pressure at its design flow
 * @param headNeeded pressure that branch needs at the pump, its lockshield open [Pa]
 * @param head pressure the pump makes with every valve open [Pa]
 * @param branches in the arrangement's order
 * @param notices limits passed
 */
public record Balance(
    boolean balanced,
    int indexBranch,
    double headNeeded,
    double head,
    List<BranchBalance> branches,
    List<Notice> notices) {

  public Balance {
    branches = List.copyOf(branches);
    notices = List.copyOf(notices);
  }

  /**
   * One branch.
   *
   * @param name "room: emitter"
   * @param designFlow [kg/s]
   * @param flowAsGiven with lockshields and pump as the scenario gives them [kg/s]
   * @param flow with lockshields and pump as they are run [kg/s]
   * @param lockshield as it is run
   * @param velocity of the water in its pipe [m/s]
   * @param pressure between flow and return where it is connected [Pa]
   * @param authority of its valve: share of the pressure over the branch that it takes at nominal
   *     opening [-]; not a number without flow, and where the valve does not throttle
   */
  public record BranchBalance(
      String name,
      double designFlow,
      double flowAsGiven,
      double flow,
      Lockshield lockshield,
      double velocity,
      double pressure,
      double authority) {}
}
