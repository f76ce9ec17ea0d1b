package settle.sim.house;

import java.util.OptionalDouble;
import settle.sim.emitter.Emitter;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.NetworkFlow;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.Valve;

/**
 * An emitter with its valve, lockshield and pipe, in series between flow and return.
 *
 * @param room name of the room it heats, which its pipe runs in too
 * @param emitter the emitter
 * @param valve the valve at its inlet
 * @param lockshield the balancing valve at its outlet
 * @param pipe flow and return pipe of the branch
 * @param fedFrom name of the mains at whose end it begins; null at the source
 * @param designFlow flow it is to have [kg/s]; empty to reckon it from the room's heat load
 */
public record Branch(
    String room,
    Emitter emitter,
    Valve valve,
    Lockshield lockshield,
    Pipe pipe,
    String fedFrom,
    OptionalDouble designFlow)
    implements NetworkFlow.Leaf {

  /** The same branch with another emitter. */
  public Branch withEmitter(Emitter other) {
    return new Branch(room, other, valve, lockshield, pipe, fedFrom, designFlow);
  }

  /** The same branch with another valve. */
  public Branch withValve(Valve other) {
    return new Branch(room, emitter, other, lockshield, pipe, fedFrom, designFlow);
  }

  /** The same branch with its lockshield set otherwise. */
  public Branch withLockshield(Lockshield other) {
    return new Branch(room, emitter, valve, other, pipe, fedFrom, designFlow);
  }
}
