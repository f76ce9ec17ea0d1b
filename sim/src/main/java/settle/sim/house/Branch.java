package settle.sim.house;

import settle.sim.emitter.Emitter;
import settle.sim.hydraulics.Lockshield;
import settle.sim.hydraulics.Pipe;
import settle.sim.valve.Valve;

/**
 * An emitter with its valve, lockshield and pipe, in series between flow and return.
 *
 * @param room name of the room it heats
 * @param emitter the emitter
 * @param valve the valve at its inlet
 * @param lockshield the balancing valve at its outlet
 * @param pipe flow and return pipe of the branch
 */
public record Branch(String room, Emitter emitter, Valve valve, Lockshield lockshield, Pipe pipe) {}
