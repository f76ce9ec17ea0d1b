package settle.sim.house;

/**
 * How the pipes of a branch reach its emitter.
 *
 * @param side end of a run at which it is connected, seen from inside the room
 * @param from where its pipes come from
 * @param flowAbove whether the flow is the upper of two connections
 */
public record Tails(Side side, From from, boolean flowAbove) {

  /** An end of a run. */
  public enum Side {
    LEFT,
    RIGHT,
    /** The end at which the first wall of the run lies; left where it has one wall. */
    AS_IT_RUNS
  }

  /** Where pipes come from. */
  public enum From {
    BELOW,
    WALL,
    ABOVE
  }

  /** Common practice, no source. */
  public static final Tails USUAL = new Tails(Side.AS_IT_RUNS, From.BELOW, true);
}
