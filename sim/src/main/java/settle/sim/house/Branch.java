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

  /** A branch whose emitter leaves the air evenly mixed. */
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
    this(room, name, emitter, valve, lockshield, pipe, pipePlace, fedFrom, designFlow, 0);
  }

  /** A branch that has its own flow and return, which reach the emitter as is usual. */
  public Branch(
      String room,
      String name,
      Emitter emitter,
      Valve valve,
      Lockshield lockshield,
      Pipe pipe,
      PipePlace pipePlace,
      String fedFrom,
      OptionalDouble designFlow,
      double stratification) {
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
        stratification,
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
    return with(other, valve, lockshield);
  }

  /** This branch with another valve. */
  public Branch withValve(Valve other) {
    return with(emitter, other, lockshield);
  }

  /** This branch somewhere in a loop. */
  public Branch in(InLoop other) {
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
        other);
  }

  /** This branch fed from other mains, or from the source. */
  public Branch fedFrom(String other) {
    return new Branch(
        room,
        name,
        emitter,
        valve,
        lockshield,
        pipe,
        pipePlace,
        other,
        designFlow,
        stratification,
        tails,
        loop);
  }

  /** This branch with another lockshield setting. */
  public Branch withLockshield(Lockshield other) {
    return with(emitter, valve, other);
  }

  /** This branch with another pipe where its own runs. */
  public Branch withPipe(Pipe other) {
    return new Branch(
        room,
        name,
        emitter,
        valve,
        lockshield,
        other,
        pipePlace,
        fedFrom,
        designFlow,
        stratification,
        tails,
        loop);
  }

  private Branch with(Emitter anEmitter, Valve aValve, Lockshield aLockshield) {
    return new Branch(
        room,
        name,
        anEmitter,
        aValve,
        aLockshield,
        pipe,
        pipePlace,
        fedFrom,
        designFlow,
        stratification,
        tails,
        loop);
  }

  /** This branch with pipes that reach its emitter otherwise. */
  public Branch withTails(Tails other) {
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
        other,
        loop);
  }

  /** Whether it was shut by hand, so that no water ever flows: whoever sets things leaves it so. */
  public boolean isShut() {
    return lockshield.kv() == 0 || valve.kvMaximum() == 0;
  }
}
