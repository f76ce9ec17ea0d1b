package settle.sim.commissioning;

import java.util.OptionalDouble;
import settle.sim.units.Range;

/**
 * The day on which a heating is started from cold and its temperatures are read: heads off or fully
 * open, nobody at home, no sun.
 *
 * @param outdoor outdoor temperature, all the time alike [°C]
 * @param start temperature of rooms, fabric and water when the source is started [°C]
 * @param readAfter how long after the start is read where nothing else is said [s]
 * @param flow flow temperature that the source is set to for this day, weather compensation out of
 *     the way [°C]; empty to leave it as it is
 */
public record CommissioningDay(
    double outdoor, double start, double readAfter, OptionalDouble flow) {

  /** Earliest time at which readings tell something [s]: before it, fronts are still passing. */
  public static final double EARLIEST = 20 * 60.0;

  /** Latest [s]: by then heads, people and weather have had their way. */
  public static final double LATEST = 4 * 3600.0;

  /** An ordinary day of the heating season, read once after an hour. */
  public static final CommissioningDay USUAL =
      new CommissioningDay(8, 14, 3600, OptionalDouble.empty());

  public CommissioningDay {
    Range.within("outdoor temperature of commissioning day", outdoor, -40, 35, "°C");
    Range.within("temperature at the start", start, -10, 35, "°C");
    Range.within("time of the readings", readAfter, EARLIEST, LATEST, "s");
    flow.ifPresent(f -> Range.within("flow temperature of the day", f, 20, 90, "°C"));
  }
}
