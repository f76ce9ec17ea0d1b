package settle.sim.atrest;

import java.util.List;

/**
 * Whether a house comes to the rest that {@link SettledHouse} found, and what keeps it from that.
 *
 * @param uncertainty how far a room's mean may be from what was found [K]; infinite where nothing
 *     was
 * @param reasons what source, controls and heads do otherwise than to stand still; those that move
 *     no room are named too
 */
public record RestStatus(double uncertainty, List<Reason> reasons) {

  /** Uncertainty of a room's temperature up to which the rest holds [K]. */
  public static final double HOLDS_WITHIN = 0.05;

  public RestStatus {
    reasons = List.copyOf(reasons);
  }

  /** What keeps a house from standing still. */
  public enum Kind {
    /** The state at rest was not found: agreement reached [W] instead of asked [W]. */
    NOT_FOUND,
    /**
     * The source never runs: flow through it with every valve as far open as in the unheated house
     * [kg/s], least flow it needs [kg/s]. This is a rest of its own.
     */
    NEVER_RUNS,
    /** The source stops for lack of flow: flow left at rest [kg/s], least flow it needs [kg/s]. */
    BLOCKED,
    /** The source starts and stops: heat taken [W], least it makes while running [W]. */
    STARTS_AND_STOPS,
    /** Hot water takes the source away: share of the time [-]; 1. */
    HOT_WATER,
    /** The source defrosts: mean of what that lowers the flow temperature by, at most [K]; 0. */
    DEFROSTS,
    /** The room thermostat stops the source: share of the time that it calls [-]; 1. */
    THERMOSTAT,
    /** No actuator or motor head is open for good: share of the time that heat is called for; 1. */
    INTERLOCK,
    /** An actuator opens and shuts: mean opening [-]; differential of its thermostat [K]. */
    ACTUATOR,
    /**
     * A head stands anywhere within its play: room with the head at one end of it, other end [°C].
     */
    PLAY
  }

  /**
   * One reason.
   *
   * @param kind what it is
   * @param room the room concerned; empty where it is the whole house
   * @param value the first number that {@link Kind} names
   * @param limit the second
   */
  public record Reason(Kind kind, String room, double value, double limit) {}

  /** Whether every room's mean is known to {@link #HOLDS_WITHIN}. */
  public boolean holds() {
    return uncertainty <= HOLDS_WITHIN;
  }

  /** Whether the house settles, if only somewhere in the play of its heads. */
  public boolean standsStill() {
    return holds()
        || (Double.isFinite(uncertainty)
            && reasons.stream()
                .allMatch(r -> r.kind() == Kind.PLAY || r.kind() == Kind.NEVER_RUNS));
  }

  /** Whether a reason of such a kind is there. */
  public boolean has(Kind kind) {
    return reasons.stream().anyMatch(r -> r.kind() == kind);
  }
}
