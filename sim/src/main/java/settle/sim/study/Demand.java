package settle.sim.study;

import java.util.ArrayList;
import java.util.List;
import settle.sim.atrest.DesignFlows;
import settle.sim.atrest.FullOutput;
import settle.sim.atrest.SettledHouse;
import settle.sim.house.House;

/**
 * Need and delivery at one outdoor temperature.
 *
 * @param outdoor [°C]
 * @param need heat that holds every heated room at its want [W]
 * @param delivery most that its emitters give at the flow temperature asked for, valves open, with
 *     what pipes give to the rooms, limited by the source [W]
 */
public record Demand(double outdoor, double need, double delivery) {

  /** How much colder than design weather need and delivery are compared [K]. */
  private static final double COLDER = 10;

  /** Up to which outdoor temperature [°C]. */
  private static final double MILDEST = 16;

  private static final int POINTS = 13;

  /** From colder than design weather to mild weather. */
  static List<Demand> over(House house, Holding holding) {
    double coldest = house.designOutdoor() - COLDER;
    double mildest = Math.max(MILDEST, house.designOutdoor());
    List<Demand> demand = new ArrayList<>();
    for (int i = 0; i < POINTS; i++) {
      double outdoor = coldest + (mildest - coldest) * i / (POINTS - 1);
      double flow = holding.asked(outdoor);
      DesignFlows needs = new DesignFlows(holding.model(), outdoor);
      FullOutput full = new FullOutput(holding.model(), flow);
      SettledHouse settled = holding.settled(outdoor).at(flow);
      double need = 0;
      double delivery = 0;
      for (int r : holding.model().heatedRooms()) {
        need += Math.max(needs.load(r), 0);
        delivery += full.of(r) + settled.pipeHeat(r);
      }
      double source = house.shareForRooms() * house.source().maximumPower(outdoor, flow);
      demand.add(new Demand(outdoor, need, Math.min(delivery, source)));
    }
    return demand;
  }
}
