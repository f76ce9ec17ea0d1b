package settle.sim.sizing;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Skirting of one profile for one room.
 *
 * @param room its name
 * @param want operative temperature it is to be held at [°C]
 * @param load heat that holds it there in design weather [W]
 * @param freeWall wall along which skirting may run [m]
 * @param leastFlow lowest flow temperature at which that much wall suffices [°C]; empty if none
 *     does
 * @param at what it takes at one flow temperature after another
 */
public record SizedRoom(
    String room,
    double want,
    double load,
    double freeWall,
    OptionalDouble leastFlow,
    List<AtFlow> at) {

  public SizedRoom {
    at = List.copyOf(at);
  }

  /**
   * What it takes at one flow temperature.
   *
   * @param flow at the source [°C]
   * @param length of skirting that holds the room [m]; infinite if no length does
   * @param withPipes of it where what pipes give is counted too [m]
   * @param massFlow through all of it, valves open [kg/s]
   * @param inlet temperature at which water comes to it [°C]
   * @param outlet temperature at which it leaves, the room held [°C]
   * @param others what the room's other emitters give [W]
   * @param pipes what pipes give there [W]
   * @param wall what skirting along all of the free wall would give [W]
   */
  public record AtFlow(
      double flow,
      double length,
      double withPipes,
      double massFlow,
      double inlet,
      double outlet,
      double others,
      double pipes,
      double wall) {}

  /** Whether the wall suffices at one of the flow temperatures. */
  public boolean fits(AtFlow one) {
    return one.length <= freeWall;
  }

  /** Heat that the skirting has to give [W]. */
  public double need(AtFlow one) {
    return Math.max(load - one.others, 0);
  }
}
