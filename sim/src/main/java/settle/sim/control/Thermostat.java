package settle.sim.control;

import settle.sim.units.Range;

/** What stops the source in a day period: a room thermostat in the reference room, or nothing. */
public sealed interface Thermostat {

  /** Whether there is one. */
  default boolean isFitted() {
    return true;
  }

  /** None: by day heat is always called for, and the valves decide. */
  record None() implements Thermostat {
    @Override
    public boolean isFitted() {
      return false;
    }
  }

  /**
   * On below want - differential/2, off above want + differential/2.
   *
   * @param differential full switching differential [K]
   * @param timeConstant lag of its sensor [s]; 0 for none
   */
  record OnOff(double differential, double timeConstant) implements Thermostat {
    public OnOff {
      Range.positive("differential of the room thermostat", differential, "K");
      Range.notNegative("time constant of the room thermostat", timeConstant, "s");
    }
  }

  /**
   * Time-proportional: within each cycle on for a share of it, 1 at half a band below want, 0 at
   * half a band above.
   *
   * @param cycle length of a cycle [s]
   * @param band full proportional band [K]
   * @param timeConstant lag of its sensor [s]; 0 for none
   */
  record TimeProportional(double cycle, double band, double timeConstant) implements Thermostat {
    public TimeProportional {
      Range.positive("cycle of the room thermostat", cycle, "s");
      Range.positive("band of the room thermostat", band, "K");
      Range.notNegative("time constant of the room thermostat", timeConstant, "s");
    }
  }
}
