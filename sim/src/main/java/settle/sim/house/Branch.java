package settle.sim.house;

import java.util.Optional;
import java.util.OptionalDouble;
import settle.sim.emitter.Emitter;
import settle.sim.hydraulics.InLoop;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipePlace;
import settle.sim.valve.Valve;

/**
 * An emitter with its valve, lockshield and pipe, in series between flow and return.
 *
 * @param room name of the room it heats
 * @param name what it is called beside others in that room; null for its emitter's name
 * @param emitter the emitter
 * @param valve the valve at its inlet
 * @param lockshield the balancing valve at its outlet
 * @param pipe flow and return pipe of the branch
 * @param pipePlace where that pipe runs
 * @param fedFrom name of the mains at whose end it begins; null at the source
 * @param designFlow flow it is to have [kg/s]; empty to derive it from the room's heat load
 * @param stratification how much warmer the air along walls, windows and roof is than people feel,
 *     at an excess of 50 K of this emitter [K]: by that the room loses more, in proportion to the
 *     excess
 * @param tails how its pipes reach the emitter
 * @param loop where it stands in a loop that passes several emitters: its pipe is then what lies
 *     before and behind its emitter, half of it each, and its own flow and return there are none
 */
public record Branch(
    String room,
    String name,
    Emitter emitter,
    Valve valve,
    Lockshield lockshield,
    Pipe pipe,
    PipePlace pipePlace,
    String fedFrom,
    OptionalDouble designFlow,
    double stratification,
    Tails tails,
    InLoop loop)
    implements NetworkFlow.Leaf {

  /**
   * A branch that has its own flow and return, which reach the emitter as is usual, and whose
   * emitter leaves the air evenly mixed.
   */
  public Branch(
      String room,
      String name,
      Emitter emitter,
      Valve valve,
      Lockshield lockshield,
      Pipe pipe,
      PipePlace pipePlace,
      String fedFrom,
      OptionalDouble designFlow) {
    this(
        room,
        name,
        emitter,
        valve,
        lockshield,
        pipe,
        pipePlace,
        fedFrom,
        designFlow,
        0,
        Tails.USUAL,
        InLoop.NONE);
  }

  /** A branch that goes by its emitter's name and whose pipe runs in the room it heats. */
  public Branch(
      String room,
      Emitter emitter,
      Valve valve,
      Lockshield lockshield,
      Pipe pipe,
      String fedFrom,
      OptionalDouble designFlow) {
    this(room, null, emitter, valve, lockshield, pipe, PipePlace.in(room), fedFrom, designFlow);
  }

  @Override
  public Optional<Pipe> within() {
    return emitter.way();
  }

  /** This branch with another emitter. */
  public Branch withEmitter(Emitter other) {
    Copy copy = new Copy(this);
    copy.emitter = other;
    return copy.branch();
  }

  /** This branch with another valve. */
  public Branch withValve(Valve other) {
    Copy copy = new Copy(this);
    copy.valve = other;
    return copy.branch();
  }

  /** This branch with another lockshield setting. */
  public Branch withLockshield(Lockshield other) {
    Copy copy = new Copy(this);
    copy.lockshield = other;
    return copy.branch();
  }

  /** This branch with another pipe where its own runs. */
  public Branch withPipe(Pipe other) {
    Copy copy = new Copy(this);
    copy.pipe = other;
    return copy.branch();
  }

  /** This branch fed from other mains, or from the source. */
  public Branch fedFrom(String other) {
    Copy copy = new Copy(this);
    copy.fedFrom = other;
    return copy.branch();
  }

  /** This branch whose emitter leaves the air along walls so much warmer [K]. */
  public Branch withStratification(double other) {
    Copy copy = new Copy(this);
    copy.stratification = other;
    return copy.branch();
  }

  /** This branch with pipes that reach its emitter otherwise. */
  public Branch withTails(Tails other) {
    Copy copy = new Copy(this);
    copy.tails = other;
    return copy.branch();
  }

  /** This branch somewhere in a loop. */
  public Branch in(InLoop other) {
    Copy copy = new Copy(this);
    copy.loop = other;
    return copy.branch();
  }

  /** Whether it was shut by hand, so that no water ever flows: whoever sets things leaves it so. */
  public boolean isShut() {
    return lockshield.kv() == 0 || valve.kvMaximum() == 0;
  }

  /** Its parts, to be changed one by one. */
  private static final class Copy {
    private final String room;
    private final String name;
    private final PipePlace pipePlace;
    private final OptionalDouble designFlow;
    private Emitter emitter;
    private Valve valve;
    private Lockshield lockshield;
    private Pipe pipe;
    private String fedFrom;
    private double stratification;
    private Tails tails;
    private InLoop loop;

    Copy(Branch branch) {
      room = branch.room;
      name = branch.name;
      pipePlace = branch.pipePlace;
      designFlow = branch.designFlow;
      emitter = branch.emitter;
      valve = branch.valve;
      lockshield = branch.lockshield;
      pipe = branch.pipe;
      fedFrom = branch.fedFrom;
      stratification = branch.stratification;
      tails = branch.tails;
      loop = branch.loop;
    }

    Branch branch() {
      return new Branch(
          room,
          name,
          emitter,
          valve,
          lockshield,
          pipe,
          pipePlace,
          fedFrom,
          designFlow,
          stratification,
          tails,
          loop);
    }
  }
}
