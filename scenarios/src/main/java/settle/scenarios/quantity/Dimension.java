package settle.scenarios.quantity;

import java.util.ArrayList;
import java.util.List;
import settle.sim.units.Times;

/**
 * What a quantity measures, with the units it may be written in. The first unit is the one messages
 * and lists of defaults use.
 *
 * <p>Temperatures (°C) and temperature differences (K) are different dimensions, so that one can
 * never be taken for the other.
 */
public enum Dimension {
  /** A temperature, inside [°C]. */
  TEMPERATURE("a temperature", "21", unit("°C", 1, "C", "℃")),
  /** A temperature difference, inside [K]. */
  TEMPERATURE_DIFFERENCE("a temperature difference", "2", unit("K", 1)),
  /** A length, inside [m]. */
  LENGTH("a length", "4.2", unit("m", 1), unit("mm", 1e-3), unit("cm", 1e-2)),
  /** An area, inside [m2]. */
  AREA("an area", "18", unit("m²", 1, "sqm")),
  /** A volume, inside [m3]. */
  VOLUME("a volume", "12", unit("l", 1e-3, "litre", "litres", "L"), unit("m³", 1)),
  /** A length of time, inside [s]. */
  DURATION(
      "a length of time",
      "30",
      unit("min", 60, "minutes"),
      unit("h", 3600, "hour", "hours"),
      unit("s", 1, "seconds"),
      unit("d", Times.DAY, "day", "days")),
  /** Air changes per time, inside [1/h], the trade's unit. */
  AIR_CHANGE("an air change rate", "0.8", unit("/h", 1, "1/h", "h-1", "ach")),
  /** A power, inside [W]. */
  POWER("a power", "1200", unit("W", 1), unit("kW", 1000)),
  /** An amount of energy, inside [J]. */
  ENERGY("an amount of energy", "80", unit("kJ", 1000), unit("J", 1), unit("MJ", 1e6)),
  /** Emitter output per metre, inside [W/m]. */
  POWER_PER_LENGTH("an output per metre", "130", unit("W/m", 1)),
  /** Power per area, inside [W/m2]. */
  POWER_PER_AREA("a power per area", "5", unit("W/m²", 1)),
  /** A heat transfer coefficient, inside [W/(m2 K)]. */
  TRANSMITTANCE("a U-value", "0.35", unit("W/m²K", 1)),
  /** A thermal resistance, inside [m2 K/W]. */
  RESISTANCE("a thermal resistance", "0.18", unit("m²K/W", 1)),
  /** A heat conductance, inside [W/K]. */
  CONDUCTANCE("a heat conductance", "20", unit("W/K", 1)),
  /** A thermal conductivity, inside [W/(m K)]. */
  CONDUCTIVITY("a thermal conductivity", "0.77", unit("W/mK", 1)),
  /** A density, inside [kg/m3]. */
  DENSITY("a density", "1700", unit("kg/m³", 1)),
  /** A specific heat capacity, inside [J/(kg K)]. */
  SPECIFIC_HEAT("a specific heat", "1000", unit("J/kgK", 1), unit("kJ/kgK", 1000)),
  /** A heat capacity, inside [J/K]. */
  HEAT_CAPACITY("a heat capacity", "15", unit("kJ/K", 1000), unit("J/K", 1)),
  /** A heat capacity per area, inside [J/(m2 K)]. */
  AREAL_CAPACITY("a heat capacity per area", "110", unit("kJ/m²K", 1000), unit("J/m²K", 1)),
  /** A mass, inside [kg]. */
  MASS("a mass", "20", unit("kg", 1)),
  /** A mass per metre, inside [kg/m]. */
  MASS_PER_LENGTH("a mass per metre", "1.5", unit("kg/m", 1)),
  /** A water content per metre, inside [m3/m]. */
  VOLUME_PER_LENGTH("a water content per metre", "0.3", unit("l/m", 1e-3)),
  /** A heat capacity per metre, inside [J/(m K)]. */
  CAPACITY_PER_LENGTH("a heat capacity per metre", "710", unit("J/mK", 1), unit("kJ/mK", 1000)),
  /** A heat loss per metre, inside [W/(m K)]. */
  CONDUCTANCE_PER_LENGTH("a heat loss per metre", "0.47", unit("W/mK", 1)),
  /** A volume flow, inside [m3/s]. */
  FLOW(
      "a flow",
      "90",
      unit("l/h", 1e-3 / 3600),
      unit("m³/h", 1.0 / 3600),
      unit("l/min", 1e-3 / 60),
      unit("l/s", 1e-3)),
  /**
   * A valve's flow coefficient: flow in m3/h at 1 bar. The unit may be left out, as on valve
   * bodies.
   */
  FLOW_COEFFICIENT("a flow coefficient Kv", "0.5", unit("m³/h", 1), unit("", 1)),
  /**
   * A pressure difference, inside [Pa]; a metre is a metre of water at 9.80665 kPa, as pump heads
   * are stated.
   */
  PRESSURE(
      "a pressure",
      "20",
      unit("kPa", 1000),
      unit("Pa", 1),
      unit("mbar", 100),
      unit("bar", 1e5),
      unit("m", 9806.65)),
  /** A shift of temperature with pressure, inside [K/bar]. */
  SHIFT_PER_PRESSURE("a shift per pressure", "0.5", unit("K/bar", 1)),
  /** A share of a whole, inside [1]; 0.3 and 30 % are the same. */
  SHARE("a share", "30", unit("%", 0.01, "percent"), unit("", 1)),
  /** A length of time per temperature difference, inside [s/K]. */
  DURATION_PER_KELVIN(
      "a time per kelvin", "30", unit("min/K", 60), unit("h/K", 3600), unit("s/K", 1)),
  /** A gain: share of the lift per temperature difference, inside [1/K]. */
  SHARE_PER_KELVIN("a gain", "0.5", unit("/K", 1, "1/K", "K-1"), unit("%/K", 0.01)),
  /** A number without a unit. */
  NUMBER("a number", "1.3", unit("", 1)),
  /** A temperature change per temperature change, inside [1]: the slope of a curve. */
  SLOPE("a change in kelvin per kelvin", "0.023", unit("K/K", 1), unit("", 1)),
  /** A price of energy, inside [1/kWh], whatever the currency. */
  ENERGY_PRICE("a price of energy", "0.27", unit("/kWh", 1, "1/kWh", "kWh-1")),
  /** CO2 emitted per energy, inside [kg/kWh]. */
  ENERGY_CARBON("CO2 per energy", "0.15", unit("kg/kWh", 1), unit("g/kWh", 1e-3)),
  /** Irradiance, inside [W/m2]. */
  IRRADIANCE("an irradiance", "150", unit("W/m²", 1));

  private final String article;
  private final String exampleNumber;
  private final List<Unit> units;

  Dimension(String article, String exampleNumber, Unit... units) {
    this.article = article;
    this.exampleNumber = exampleNumber;
    this.units = List.of(units);
  }

  private static Unit unit(String symbol, double inSi, String... otherSpellings) {
    return new Unit(symbol, inSi, List.of(otherSpellings));
  }

  /**
   * What it is, with its article, such as "an area".
   *
   * @return words for a message
   */
  public String article() {
    return article;
  }

  /**
   * The units it may be written in, the usual one first.
   *
   * @return at least one unit
   */
  public List<Unit> units() {
    return units;
  }

  /**
   * Whether a number alone is enough.
   *
   * @return true for shares, plain numbers and flow coefficients
   */
  public boolean allowsBareNumber() {
    return units.stream().anyMatch(u -> u.symbol().isEmpty());
  }

  /**
   * What a correct value looks like, such as "an area such as 18 m²".
   *
   * @return words for a message
   */
  public String expected() {
    return article + " such as " + (exampleNumber + " " + units.get(0).symbol()).strip();
  }

  /**
   * The value of a text.
   *
   * @param text such as {@code 18 m²}
   * @return the value in SI units (as each dimension states)
   * @throws QuantityException where the text is not such a quantity
   */
  public double parse(String text) throws QuantityException {
    return QuantityText.read(text, this);
  }

  /**
   * A value as it would be written in a scenario, four significant digits at most, in the unit that
   * reads best.
   *
   * @param si value in SI units
   * @return such as {@code 18 m²}
   */
  public String show(double si) {
    Unit best = units.get(0);
    if (this == DURATION && si != 0) {
      best = Math.abs(si) < 60 ? units.get(2) : readable(si);
    } else if (this == POWER && Math.abs(si) >= 100_000) {
      best = units.get(1);
    } else if (this == LENGTH && si != 0 && Math.abs(si) < 0.3) {
      best = units.get(1);
    }
    return (NumberText.write(si / best.inSi()) + " " + best.symbol()).strip();
  }

  /** Minutes, unless the time is whole hours or days, or shorter than two minutes. */
  private Unit readable(double seconds) {
    List<Unit> candidates = new ArrayList<>();
    for (Unit unit : units) {
      double n = seconds / unit.inSi();
      if (n >= 1 && n == Math.rint(n)) {
        candidates.add(unit);
      }
    }
    Unit best = units.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Unit unit : candidates) {
      // The unit with the smallest whole number reads best, but days only from three on: heating
      // people think in hours.
      double n = seconds / unit.inSi();
      boolean daysTooFew = unit.inSi() == Times.DAY && n < 3;
      if (!daysTooFew && n < least) {
        least = n;
        best = unit;
      }
    }
    return best;
  }
}
