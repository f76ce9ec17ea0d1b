package settle.sim.measure;

import java.util.List;
import java.util.Optional;
import settle.sim.house.House;

/**
 * One thing changed about a house. Values are such as can be set, bought or fitted; what is printed
 * of one is what it does to the house.
 */
public interface Measure {

  /** What is changed, in order of effort; the order is common practice, no source. */
  enum Kind {
    /** Thermostatic or motor heads, set higher [°C]. */
    HEADS,
    /** Lockshields of the cold room, opened [turns]. */
    LOCKSHIELD,
    /** Lockshields of rooms that are warmer than they need be, throttled [turns]. */
    THROTTLE,
    /** Lockshields and pump, set by a balance: least share of its design flow a branch has [-]. */
    BALANCE,
    /** The room thermostat, put in another room. */
    REFERENCE_ROOM,
    /** Heating begun before the programme: lead [s]. */
    PREHEAT,
    /** Weather compensation: flow temperature in design weather [°C]. */
    CURVE,
    /** Flow temperature asked of the source [°C]. */
    FLOW_TEMPERATURE,
    /** Pressure of the pump [Pa]. */
    PUMP,
    /** Air change of a room [1/h]. */
    AIR_CHANGE,
    /** A bypass between flow and return: pressure at which it opens [Pa]. */
    BYPASS,
    /** A vessel of water between source and mains: volume [m³]. */
    BUFFER,
    /** Output of the profile of a room's skirting [W/m]. */
    PROFILE,
    /** Length of skirting in a room [m]. */
    LENGTH,
    /** Rated output of an emitter that stands in one place, of whatever kind [W]. */
    RADIATOR,
    /** U-value of a room's glazing [W/(m² K)]. */
    WINDOW,
    /** Power of the source in design weather [W]. */
    SOURCE
  }

  /** What is changed. */
  Kind kind();

  /** As it is, in the kind's unit; not a number where there is none yet. */
  double from();

  /** As it is to be. */
  double to();

  /**
   * The house with it carried out.
   *
   * @param house the house as it is
   * @param arrangement name of the arrangement that is changed, where it belongs to one
   */
  House on(House house, String arrangement);

  /** The room that it concerns; empty for one that concerns the whole house. */
  default String room() {
    return "";
  }

  /** What the trade calls the emitter of which a larger one is fitted; empty where none is. */
  default Optional<String> emitterNoun() {
    return Optional.empty();
  }

  /**
   * What follows from a measure, where some say more of themselves than a number.
   *
   * @param <R> what that is
   */
  interface Cases<R> {
    /** From one that is said by its kind and its number. */
    R plain(Measure measure);

    R lockshields(LockshieldsTurned measure);

    R thermostat(ThermostatMoved measure);

    R curve(CurveChanged measure);

    R vessel(BufferFitted measure);

    R emitter(LargerEmitter measure);
  }

  /** What follows from this one. */
  default <R> R fold(Cases<R> cases) {
    return cases.plain(this);
  }

  /** The house with several measures carried out, one after the other. */
  static House all(List<Measure> measures, House house, String arrangement) {
    House with = house;
    for (Measure measure : measures) {
      with = measure.on(with, arrangement);
    }
    return with;
  }
}
