package settle.sim.house;

import settle.sim.source.Carrier;
import settle.sim.units.Range;

/**
 * What energy costs and what it emits.
 *
 * @param currency symbol put before an amount
 * @param electricityPrice per kilowatt hour
 * @param gasPrice per kilowatt hour (gross)
 * @param electricityCarbon CO2 per kilowatt hour [kg]
 * @param gasCarbon CO2 per kilowatt hour (gross) [kg]
 */
public record Tariffs(
    String currency,
    double electricityPrice,
    double gasPrice,
    double electricityCarbon,
    double gasCarbon) {

  /** Of the order of the middle of the 2020s; common practice, no source. */
  public static final Tariffs USUAL = new Tariffs("", 0.27, 0.07, 0.15, 0.20);

  /** Price per kilowatt hour of what a source takes; heat from nowhere is priced as gas. */
  public double price(Carrier carrier) {
    return carrier == Carrier.ELECTRICITY ? electricityPrice : gasPrice;
  }

  /** CO2 per kilowatt hour of what a source takes [kg]. */
  public double carbon(Carrier carrier) {
    return carrier == Carrier.ELECTRICITY ? electricityCarbon : gasCarbon;
  }

  public Tariffs {
    Range.notNegative("price of electricity", electricityPrice, "1/kWh");
    Range.notNegative("price of gas", gasPrice, "1/kWh");
    Range.notNegative("CO2 of electricity", electricityCarbon, "kg/kWh");
    Range.notNegative("CO2 of gas", gasCarbon, "kg/kWh");
  }
}
