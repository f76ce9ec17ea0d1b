package settle.sim.tuning;

import java.util.List;
import settle.sim.house.House;

/** Where heads begin: where each holds its room at want on a usual day. */
final class HeadsStart {

  private static final int SWEEPS = 6;

  /** A head that cannot bring its room closer than this has nothing to do with it [K]. */
  private static final double CLOSE = 0.3;

  private HeadsStart() {}

  /** Moves every head by what its room is off, until none is. */
  static void set(StartValues start) {
    List<Setting> heads = start.of(Setting.Kind.HEAD);
    if (heads.isEmpty()) {
      return;
    }
    House house = start.plant().house();
    double[] asFound = start.settled();
    for (Setting head : heads) {
      double want = house.dayWant(head.where());
      double settled = asFound[house.roomIndex(head.where())];
      start.reasons().put(head, new Reason.AtRest(settled, want, start.usualOutdoor()));
      start.move(head, usual(start.plant(), head.where()));
    }
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      double[] settled = start.settled();
      for (Setting head : heads) {
        double value = head.of(start.plant()) + off(house, head, settled);
        double lowest = head.lowest(start.plant());
        start.move(head, Math.min(Math.max(value, lowest), head.highest(start.plant())));
      }
    }
    double[] settled = start.settled();
    for (Setting head : heads) {
      boolean close = Math.abs(off(house, head, settled)) <= CLOSE;
      double value = close ? head.of(start.plant()) : usual(start.plant(), head.where());
      start.move(head, head.settable(start.plant(), value));
    }
  }

  /** How much colder than wanted a head's room settles [K]. */
  private static double off(House house, Setting head, double[] settled) {
    return house.dayWant(head.where()) - settled[house.roomIndex(head.where())];
  }

  /** What a head is usually set to: want, or for a thermostatic valve half its band below. */
  private static double usual(Plant plant, String room) {
    double want = plant.house().dayWant(room);
    return plant.arrangement().branches().stream()
        .filter(b -> b.room().equals(room) && b.valve().hasHead())
        .findFirst()
        .map(b -> want - b.valve().proportionalBand() / 2)
        .orElse(want);
  }
}
