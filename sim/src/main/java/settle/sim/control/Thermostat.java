package settle.sim.control;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import settle.sim.units.Range;

/** What stops the source in a day period: a room thermostat in the reference room, or nothing. */
public sealed interface Thermostat {

  /** What follows from each kind. */
  <R> R fold(Supplier<R> none, Function<OnOff, R> onOff, Function<TimeProportional, R> cycling);

  /** Lag of its sensor [s]; 0 for none. */
  double timeConstant();

  /** Whether there is one. */
  default boolean isFitted() {
    return true;
  }

  /** This thermostat, if it switches by a differential. */
  default Optional<OnOff> onOff() {
    return fold(Optional::empty, Optional::of, cycling -> Optional.empty());
  }

  /** None: by day heat is always called for, and the valves decide. */
  record None() implements Thermostat {
    @Override
    public <R> R fold(
        Supplier<R> none, Function<OnOff, R> onOff, Function<TimeProportional, R> cycling) {
      return none.get();
    }

    @Override
    public double timeConstant() {
      return 0;
    }

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

    @Override
    public <R> R fold(
        Supplier<R> none, Function<OnOff, R> onOff, Function<TimeProportional, R> cycling) {
      return onOff.apply(this);
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

    @Override
    public <R> R fold(
        Supplier<R> none, Function<OnOff, R> onOff, Function<TimeProportional, R> cycling) {
      return cycling.apply(this);
    }
  }
}
