package settle.sim.engine;

import settle.sim.hydraulics.Pipe;
import settle.sim.hydraulics.PipeWater;

/** Flow and return of one run of pipes: their water, and where they lie. */
final class PipePair {

  /** Heat input by which it heats the room it runs in; -1 where it runs in none. */
  final int input;

  /** That room; -1 where it runs in none. */
  final int room;

  private final double surroundings;

  /** The half that goes out; null where the pipe's delay is neglected. */
  final PipeWater flow;

  /** The half that comes back; likewise. */
  final PipeWater back;

  /**
   * @param pipe what it is made of
   * @param room it runs in; -1 if in none
   * @param input heat input by which it heats that room
   * @param surroundings temperature about it where it runs in none [°C]
   * @param start temperature of its water [°C]
   * @param parcels how finely its water is kept, as a share of what is usual [-]
   */
  PipePair(Pipe pipe, int room, int input, double surroundings, double start, double parcels) {
    this.room = room;
    this.input = input;
    this.surroundings = surroundings;
    flow = pipe.delays() ? new PipeWater(pipe, pipe.length() / 2, start, parcels) : null;
    back = pipe.delays() ? new PipeWater(pipe, pipe.length() / 2, start, parcels) : null;
  }

  /**
   * Temperature about it [°C].
   *
   * @param reference of every heat input of the rooms [°C]
   */
  double around(double[] reference) {
    return room >= 0 ? reference[input] : surroundings;
  }

  /** Makes the attempted step the state. */
  void accept() {
    if (flow != null) {
      flow.accept();
      back.accept();
    }
  }

  /** Heat stored in both, above 0 °C [J]. */
  double stored() {
    return flow == null ? 0 : flow.stored() + back.stored();
  }
}
