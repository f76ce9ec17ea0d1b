package settle.sim.study;

import java.util.OptionalDouble;
import settle.sim.source.Boiler;
import settle.sim.source.Defrost;
import settle.sim.source.HeatPump;
import settle.sim.source.SeasonalPerformance;
import settle.sim.source.Source;

/**
 * What a source does with a load that stays as it is.
 *
 * @param capacity most it gives to the water, without electric heaters, icing included [W]
 * @param least least it gives while running, icing included [W]
 * @param backup of the load, what a heat pump leaves to electric heaters [W]
 * @param unmet of the load, what another source cannot give [W]
 * @param input electricity or gas taken [W]; empty for an ideal source
 */
record Delivery(double capacity, double least, double backup, double unmet, OptionalDouble input) {

  /**
   * Delivers.
   *
   * @param source the source
   * @param outdoor outdoor temperature [°C]
   * @param load heat taken by the water [W]
   * @param flow flow temperature while it runs [°C]
   * @param returning return temperature while it runs [°C]
   */
  static Delivery of(Source source, double outdoor, double load, double flow, double returning) {
    if (source instanceof HeatPump pump) {
      return of(pump, outdoor, load, flow);
    }
    if (source instanceof Boiler boiler) {
      return of(boiler, load, flow, returning);
    }
    double most = source.maximumPower(outdoor, flow);
    return new Delivery(most, 0, 0, Math.max(load - most, 0), OptionalDouble.empty());
  }

  /**
   * COP at part load is that at full load, as in a run. Where the coil ices, mean values over
   * running and defrosting take the place of those without frost.
   */
  private static Delivery of(HeatPump pump, double outdoor, double load, double flow) {
    double asked = Math.min(flow, pump.highestFlow());
    double capacity = pump.performance().capacity(outdoor, asked);
    double least = pump.minimumModulation() * capacity;
    double cop = pump.performance().cop(outdoor, asked);
    if (pump.defrost().filter(d -> d.icesAt(outdoor)).isPresent()) {
      Defrost defrost = pump.defrost().get();
      capacity = Math.max(defrost.meanHeat(capacity), 0);
      least = Math.max(defrost.meanHeat(least), 0);
      double mean = Math.min(Math.max(load, least), capacity);
      cop = mean / defrost.meanInput(defrost.powerFor(mean) / cop);
    }
    double input = load > 0 ? SeasonalPerformance.input(load, capacity, least, cop) : 0;
    double backup = SeasonalPerformance.backup(load, capacity);
    return new Delivery(capacity, least, backup, 0, OptionalDouble.of(input));
  }

  /** What the casing loses is made as well; below its least output it burns at least output. */
  private static Delivery of(Boiler boiler, double load, double flow, double returning) {
    double loss = boiler.standingLoss() * Math.max(flow - Boiler.SURROUNDINGS, 0);
    double capacity = boiler.maximumPower() - loss;
    double least = boiler.minimumPower() - loss;
    double unmet = Math.max(load - capacity, 0);
    double made = load > 0 ? load - unmet + loss : 0;
    double burning = Math.max(made, boiler.minimumPower()) / boiler.maximumPower();
    double input = made / boiler.efficiency().at(returning, burning);
    return new Delivery(capacity, least, 0, unmet, OptionalDouble.of(input));
  }
}
