package settle.sim.tuning;

import java.util.Optional;
import settle.sim.control.FlowCurve;

/** Why a search begins where it does. */
public sealed interface Reason {

  /** The plant that was identified for it by a step; empty where none was. */
  default Optional<FirstOrderDeadTime> identified() {
    return Optional.empty();
  }

  /** Nothing better is known than what was found. */
  record AsFound() implements Reason {}

  /**
   * Head: where its room settles as found.
   *
   * @param settled operative temperature on a usual day, the head as found [°C]
   * @param want [°C]
   * @param outdoor of that day [°C]
   */
  record AtRest(double settled, double want, double outdoor) implements Reason {}

  /**
   * Flow temperature: the least that holds every room in design weather, heads open.
   *
   * @param flow [°C]
   */
  record LeastFlow(double flow) implements Reason {}

  /**
   * Weather compensation: the least line that holds every room, heads open.
   *
   * @param curve that line
   */
  record LeastLine(FlowCurve curve) implements Reason {}

  /**
   * Lockshield or pump: a balance.
   *
   * @param flow design flow of the branch, or of all for the pump [kg/s]
   * @param index name of the index branch
   */
  record Balanced(double flow, String index) implements Reason {}

  /**
   * Start: how late a room is warm on a usual day without it, all else as found.
   *
   * @param room the reference room, or the first
   * @param lateness [s]
   */
  record WarmUp(String room, double lateness) implements Reason {}

  /**
   * Differential of a thermostat: the limit cycle to be expected.
   *
   * @param plant step of the source, identified, the thermostat's sensor behind it
   * @param cycle what comes of it
   */
  record LimitCycle(FirstOrderDeadTime plant, RelayCycle cycle) implements Reason {

    @Override
    public Optional<FirstOrderDeadTime> identified() {
      return Optional.of(plant);
    }
  }

  /**
   * Gains: SIMC.
   *
   * @param plant step of the lift, identified [K per full lift]
   * @param rule what the rule gives
   */
  record Rule(FirstOrderDeadTime plant, Simc rule) implements Reason {

    @Override
    public Optional<FirstOrderDeadTime> identified() {
      return Optional.of(plant);
    }
  }
}
