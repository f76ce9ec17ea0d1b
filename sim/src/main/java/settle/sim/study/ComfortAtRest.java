package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import settle.sim.atrest.SettledHouse;
import settle.sim.comfort.Comfort;
import settle.sim.house.Arrangement;
import settle.sim.house.House;

/**
 * Comfort in a room that has settled in design weather, as controlled, without gains.
 *
 * @param room its name
 * @param comfort of people who sit in it
 * @param window what those feel who sit by its window; empty where no window's height is known
 */
public record ComfortAtRest(String room, Comfort comfort, Optional<BesideWindow> window) {

  /**
   * Every room that has an emitter, in the house's order.
   *
   * @param house the house
   * @param arrangement one of its arrangements
   */
  public static List<ComfortAtRest> of(House house, Arrangement arrangement) {
    Holding holding = new Holding(house, arrangement);
    SettledHouse settled = holding.settled(house.designOutdoor()).asControlled();
    List<ComfortAtRest> rooms = new ArrayList<>();
    for (int r : holding.model().heatedRooms()) {
      // Operative temperature is the mean of air and radiation.
      double air = settled.air(r);
      double radiant = 2 * settled.operative(r) - air;
      rooms.add(
          new ComfortAtRest(
              house.rooms().get(r).name(),
              Comfort.usual(air, radiant),
              BesideWindow.of(settled, holding.model(), r, house.designOutdoor())));
    }
    return rooms;
  }
}
