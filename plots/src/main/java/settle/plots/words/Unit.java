package settle.plots.words;

import settle.sim.units.Times;

/**
 * What figures are measured in: symbol and digits in a table, its one spelling and its decimals in
 * a document.
 */
public enum Unit {
  NONE("", "", 1, 0, 4),
  FACTOR("factor", "Factor", 1, 2, 4),
  /** A share of one, shown in per cent. */
  SHARE("%", "Share", 1, 0, 4),
  /** Likewise, where the name says that it is one: an authority, an opening. */
  RATIO("%", "", 1, 0, 4),
  CELSIUS("°C", "C", 1, 1, 3),
  KELVIN("K", "K", 1, 1, 3),
  DEGREE_HOURS("K h", "DegreeHours", 1, 1, 3),
  WATTS("W", "W", 1, 0, 1),
  KILOWATT_HOURS("kWh", "KWh", Times.KILOWATT_HOUR, 1, 3),
  SECONDS("s", "Seconds", 1, 0, 3),
  MINUTES("min", "Minutes", 60, 0, 2),
  HOURS("h", "Hours", 3600, 1, 2),
  PER_HOUR("1/h", "PerHour", 1, 1, 3),
  PER_DAY("1/d", "PerDay", 1, 0, 3),
  METRES("m", "Metres", 1, 1, 3),
  WATTS_PER_METRE("W/m", "WPerMetre", 1, 0, 1),
  LITRES("l", "Litres", 1e-3, 0, 2),
  /** A flow of water, read in l/h: how heavy a litre is, its house knows. */
  LITRES_PER_HOUR("l/h", "LitresPerHour", 1, 0, 2),
  METRES_PER_SECOND("m/s", "MetresPerSecond", 1, 2, 4),
  KILOPASCALS("kPa", "KPa", 1000, 1, 3),
  KV("m³/h", "Kv", 1, 2, 4),
  TURNS("turns", "Turns", 1, 2, 3),
  KILOGRAMS("kg", "Kg", 1, 0, 2);

  private final String symbol;
  private final String suffix;
  private final double inSi;
  private final int digits;
  private final int decimals;

  Unit(String symbol, String suffix, double inSi, int digits, int decimals) {
    this.symbol = symbol;
    this.suffix = suffix;
    this.inSi = inSi;
    this.digits = digits;
    this.decimals = decimals;
  }

  /** The value as it stands in a table. */
  public String symbol() {
    return symbol;
  }

  /** What the name of a figure in a document ends in. */
  public String suffix() {
    return suffix;
  }

  /** A value in SI, converted to its unit in a document. */
  public double written(double si) {
    return si / inSi;
  }

  /** Decimals in a document, beyond which the model says nothing. */
  public int decimals() {
    return decimals;
  }

  /** A value in SI as people read it: in this unit, without its symbol. */
  public String text(double si) {
    boolean small = (this == LITRES_PER_HOUR || this == LITRES) && si / inSi < 10;
    return text(si, small ? 1 : digits);
  }

  /** Likewise, with other digits behind the point than usual. */
  public String text(double si, int other) {
    return Quantities.number(symbol.equals("%") ? 100 * si : si / inSi, other);
  }
}
