package settle.sim.study;

import java.util.OptionalDouble;

/**
 * What an arrangement holds of one room, at rest or as it was judged.
 *
 * @param room its name
 * @param want day want-temperature [°C]
 * @param load heat it needs in design weather [W]
 * @param output most its emitters give at the flow temperature that the controls ask for in design
 *     weather, the room at want, with what its pipes give there when it has settled on it [W]
 * @param settled operative temperature at which it settles in design weather, as controlled [°C]
 * @param holds whether that holds it
 * @param holdingOutdoor lowest outdoor temperature down to which it is held, as controlled [°C];
 *     empty if not even in mild weather; {@link Holding#coldest} stands for that and below
 * @param leastFlow lowest flow temperature that holds it in design weather [°C]; empty if none up
 *     to {@link Holding#HOTTEST_FLOW} does
 */
public record RoomAnswer(
    String room,
    double want,
    double load,
    double output,
    double settled,
    boolean holds,
    OptionalDouble holdingOutdoor,
    OptionalDouble leastFlow) {

  /**
   * This room as it was judged.
   *
   * @param operative operative temperature it has in design weather [°C]
   * @param held whether it is held all season
   * @param downTo lowest outdoor temperature down to which it is held [°C]; empty if not even in
   *     mild weather
   */
  RoomAnswer judged(double operative, boolean held, OptionalDouble downTo) {
    return new RoomAnswer(room, want, load, output, operative, held, downTo, leastFlow);
  }

  /** What emitters and pipes can give more than the load, as a share of it [-]. */
  public double margin() {
    return output / load - 1;
  }
}
