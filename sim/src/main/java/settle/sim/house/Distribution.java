package settle.sim.house;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import settle.sim.hydraulics.Bypass;
import settle.sim.hydraulics.LockshieldScale;
import settle.sim.hydraulics.Main;
import settle.sim.hydraulics.Pump;
import settle.sim.hydraulics.PumpPlace;
import settle.sim.units.Range;

/**
 * What moves the water and where it runs, up to the branches.
 *
 * @param pump the circulator
 * @param mains the tree of mains, each after the one it is fed from; empty if every branch begins
 *     at the source
 * @param bypass automatic bypass, if there is one
 * @param designDrop fall of temperature over the emitters that design flows are for [K]
 * @param lockshields scale of the lockshields, by which a balance sets them
 * @param pumpPlace what the source takes of the pump's head, and what the pump draws at least
 */
public record Distribution(
    Pump pump,
    List<Main> mains,
    Optional<Bypass> bypass,
    double designDrop,
    LockshieldScale lockshields,
    PumpPlace pumpPlace) {

  public Distribution {
    mains = List.copyOf(mains);
    Range.positive("design drop", designDrop, "K");
    Set<String> names = new HashSet<>();
    for (Main main : mains) {
      if (main.fedFrom() != null && !names.contains(main.fedFrom())) {
        throw new IllegalArgumentException(
            "mains '" + main.name() + "' are fed from '" + main.fedFrom() + "', not named before");
      }
      if (!names.add(main.name())) {
        throw new IllegalArgumentException("two mains are called '" + main.name() + "'");
      }
    }
    bypass.ifPresent(b -> requireKnown(names, b.fedFrom()));
  }

  /** Mains whose pump takes nothing but what it moves, its head being what is left outside. */
  public Distribution(
      Pump pump,
      List<Main> mains,
      Optional<Bypass> bypass,
      double designDrop,
      LockshieldScale lockshields) {
    this(pump, mains, bypass, designDrop, lockshields, PumpPlace.FREE);
  }

  /** A pump to which every branch is connected directly. */
  public static Distribution direct(Pump pump) {
    return new Distribution(pump, List.of(), Optional.empty(), 10, LockshieldScale.TYPICAL);
  }

  /** This distribution with its pump set otherwise. */
  public Distribution withPump(Pump other) {
    return new Distribution(other, mains, bypass, designDrop, lockshields, pumpPlace);
  }

  /** This distribution with other mains of the same names. */
  public Distribution withMains(List<Main> others) {
    return new Distribution(pump, others, bypass, designDrop, lockshields, pumpPlace);
  }

  /** This distribution with a bypass. */
  public Distribution withBypass(Bypass fitted) {
    return new Distribution(pump, mains, Optional.of(fitted), designDrop, lockshields, pumpPlace);
  }

  /** This distribution with its pump elsewhere. */
  public Distribution withPumpPlace(PumpPlace other) {
    return new Distribution(pump, mains, bypass, designDrop, lockshields, other);
  }

  /** The pump as the mains see it, behind the source. */
  public Pump behindSource() {
    return pumpPlace.behind(pump);
  }

  /**
   * Position of mains in {@link #mains()}; -1 for null, which is the source.
   *
   * @throws IllegalArgumentException if there are none of that name
   */
  public int mainIndex(String name) {
    if (name == null) {
      return -1;
    }
    for (int i = 0; i < mains.size(); i++) {
      if (mains.get(i).name().equals(name)) {
        return i;
      }
    }
    throw new IllegalArgumentException("no mains are called '" + name + "'");
  }

  private static void requireKnown(Set<String> names, String name) {
    if (name != null && !names.contains(name)) {
      throw new IllegalArgumentException("no mains are called '" + name + "'");
    }
  }
}
