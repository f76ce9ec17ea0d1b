package settle.sim.tuning;

import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.control.FlowCurve;

/** Why a search begins where it does. */
public sealed interface Reason {

  /**
   * What follows from each kind of reason.
   *
   * @param <R> what that is
   */
  interface Cases<R> {
    R asFound();

    R atRest(AtRest reason);

    R leastFlow(LeastFlow reason);

    R leastLine(LeastLine reason);

    R balanced(Balanced reason);

    R warmUp(WarmUp reason);

    R limitCycle(LimitCycle reason);

    R rule(Rule reason);
  }

  /** What follows from this one. */
  <R> R fold(Cases<R> cases);

  /** The least line that holds every room, where the search began with one. */
  default Optional<FlowCurve> leastLine() {
    return Optional.empty();
  }

  /** The least flow temperature that holds every room [°C], where the search began with one. */
  default OptionalDouble leastFlow() {
    return OptionalDouble.empty();
  }

  /** The plant that was identified for it by a step; empty where none was. */
  default Optional<FirstOrderDeadTime> identified() {
    return Optional.empty();
  }

  /** Nothing better is known than what was found. */
  record AsFound() implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.asFound();
    }
  }

  /**
   * Head: where its room settles as found.
   *
   * @param settled operative temperature on a usual day, the head as found [°C]
   * @param want [°C]
   * @param outdoor of that day [°C]
   */
  record AtRest(double settled, double want, double outdoor) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.atRest(this);
    }
  }

  /**
   * Flow temperature: the least that holds every room in design weather, heads open.
   *
   * @param flow [°C]
   */
  record LeastFlow(double flow) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.leastFlow(this);
    }

    @Override
    public OptionalDouble leastFlow() {
      return OptionalDouble.of(flow);
    }
  }

  /**
   * Weather compensation: the least line that holds every room, heads open.
   *
   * @param curve that line
   */
  record LeastLine(FlowCurve curve) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.leastLine(this);
    }

    @Override
    public Optional<FlowCurve> leastLine() {
      return Optional.of(curve);
    }
  }

  /**
   * Lockshield or pump: a balance.
   *
   * @param flow design flow of the branch, or of all for the pump [kg/s]
   * @param index name of the index branch
   */
  record Balanced(double flow, String index) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.balanced(this);
    }
  }

  /**
   * Start: how late a room is warm on a usual day without it, all else as found.
   *
   * @param room the reference room, or the first
   * @param lateness [s]
   */
  record WarmUp(String room, double lateness) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.warmUp(this);
    }
  }

  /**
   * Differential of a thermostat: the limit cycle to be expected.
   *
   * @param plant step of the source, identified, the thermostat's sensor behind it
   * @param cycle what comes of it
   */
  record LimitCycle(FirstOrderDeadTime plant, RelayCycle cycle) implements Reason {
    @Override
    public <R> R fold(Cases<R> cases) {
      return cases.limitCycle(this);
    }

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
    public <R> R fold(Cases<R> cases) {
      return cases.rule(this);
    }

    @Override
    public Optional<FirstOrderDeadTime> identified() {
      return Optional.of(plant);
    }
  }
}
