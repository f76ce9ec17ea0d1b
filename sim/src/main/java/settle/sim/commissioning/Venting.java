package settle.sim.commissioning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How air is driven out of a house that was filled cold: room by room, every other room shut.
 *
 * @param turns one for each emitter that is not shut by hand, in the order in which they are opened
 * @param keptOpen branches that stay open meanwhile, since air gathers there: radiators and towel
 *     rails of the highest storey where others are skirting
 * @param forSource branches that stay open besides, since the source does not run on what a single
 *     emitter passes
 * @param highest the branch at which air gathers last
 */
public record Venting(
    List<Turn> turns, List<Integer> keptOpen, List<Integer> forSource, int highest) {

  /**
   * How much closer than that to where it ends up a temperature counts as there [K]: a hand tells
   * no less.
   */
  public static final double CLOSE = 3;

  /** Speed below which water leaves air where it is [m/s]; common practice, no source. */
  public static final double LEAST_SPEED = 0.2;

  /** Speed from which water carries air along surely [m/s]; common practice, no source. */
  public static final double SURE_SPEED = 0.5;

  /** For how long a passage is waited for [s]. */
  public static final double LONGEST = 2700;

  public Venting {
    turns = List.copyOf(turns);
    keptOpen = List.copyOf(keptOpen);
    forSource = List.copyOf(forSource);
  }

  /**
   * One emitter's turn.
   *
   * @param branch its position in the arrangement
   * @param place its room, and which emitter where the room has several
   * @param storey that its room is in, counted from the lowest
   * @param keptOpen whether it stays open during the turns of others
   * @param asSet with its lockshield as it is set, from cold
   * @param open with its lockshield fully open, from cold
   * @param inTurn how long it takes with its lockshield open in its place in the order, source and
   *     mains warm from the turns before [s]; empty if it is not there within {@link #LONGEST}
   */
  public record Turn(
      int branch,
      String place,
      int storey,
      boolean keptOpen,
      Passage asSet,
      Passage open,
      OptionalDouble inTurn) {}

  /**
   * Hot water on its way to an emitter's far end and back.
   *
   * @param massFlow through the branch [kg/s]
   * @param speed of the water in the run, the slower where there are two, or in the branch's pipe
   *     where it has no run [m/s]
   * @param front for how long the front passes the emitter, metal warmed too, going by its flow
   *     alone [s]
   * @param stages what it takes from cold; empty if it is not there within {@link #LONGEST}
   */
  public record Passage(double massFlow, double speed, double front, Optional<Stages> stages) {

    /** Whether the water carries air along, going by its speed. */
    public Carrying carries() {
      return speed < LEAST_SPEED
          ? Carrying.NO
          : speed < SURE_SPEED ? Carrying.MOSTLY : Carrying.SURELY;
    }
  }

  /** Whether water carries air along. */
  public enum Carrying {
    NO,
    MOSTLY,
    SURELY
  }

  /**
   * What takes how long, one after the other.
   *
   * @param source until what leaves the source is within {@link #CLOSE} of where it ends up [s]
   * @param pipes from then until what enters the emitter is: mains and branch [s]
   * @param run from then until far end and return are [s]
   */
  public record Stages(double source, double pipes, double run) {

    /** All of it [s]. */
    public double total() {
      return source + pipes + run;
    }
  }
}
