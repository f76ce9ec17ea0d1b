package settle.sim.hydraulics;

import java.util.Optional;

/**
 * Where an emitter stands in a loop that passes several of them.
 *
 * @param after position of the branch whose return feeds this one; -1 for one that is fed from
 *     mains or source
 * @param byPass pipe between two tees through which water of the loop passes this emitter by; empty
 *     where all of it passes the emitter
 */
public record InLoop(int after, Optional<Pipe> byPass) {

  /** Of an emitter that has its own flow and return. */
  public static final InLoop NONE = new InLoop(-1, Optional.empty());

  public InLoop {
    if (after < -1) {
      throw new IllegalArgumentException("no branch is at " + after);
    }
    byPass.ifPresent(
        pipe -> {
          if (!(pipe.length() > 0)) {
            throw new IllegalArgumentException(
                "a by-pass without length lets an emitter have none");
          }
        });
  }

  /** Fed by the return of another, all of its water passing this emitter. */
  public static InLoop after(int branch) {
    return new InLoop(branch, Optional.empty());
  }
}
