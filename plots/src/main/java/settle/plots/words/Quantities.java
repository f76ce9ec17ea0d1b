package settle.plots.words;

import java.util.Locale;
import java.util.OptionalDouble;
import settle.sim.units.Times;

/**
 * Figures as people read them: SI in, the trade's units and sensible digits out, always with the
 * unit.
 */
public final class Quantities {

  /** A day, and from when on people count by days [min]. */
  private static final long DAY = 1440;

  private static final long LONG = 14 * DAY;

  private static final String[] EIGHTHS = {"", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"};

  private Quantities() {}

  /**
   * A length of time.
   *
   * @param seconds [s], >= 0
   * @return seconds below two minutes, minutes below two hours with hours split off from one hour,
   *     as in "45 s", "50 min", "1 h 35 min"; whole days from two weeks on
   */
  public static String duration(double seconds) {
    if (seconds < 119.5 && Math.rint(seconds) % 60 != 0) {
      return Math.round(seconds) + " s";
    }
    long minutes = Math.round(seconds / 60);
    if (minutes < 60) {
      return minutes + " min";
    }
    if (minutes >= LONG && minutes % DAY == 0) {
      return minutes / DAY + " days";
    }
    long rest = minutes % 60;
    return minutes / 60 + " h" + (rest == 0 ? "" : " " + rest + " min");
  }

  /** A warm-up time [s], or "never" if there is none. */
  public static String warmUp(OptionalDouble seconds) {
    return seconds.isPresent() ? duration(seconds.getAsDouble()) : "never";
  }

  /** A temperature [°C] to a tenth. */
  public static String temperature(double celsius) {
    return number(celsius, 1) + " °C";
  }

  /**
   * A temperature [°C] that is to be seen beside a limit: to a tenth, or to as many decimals more
   * as show that it is below.
   */
  public static String temperatureBelow(double celsius, double limit) {
    return below(celsius, limit) + " °C";
  }

  /** A set-point without its unit: for table columns headed °C. */
  public static String below(double celsius, double limit) {
    int decimals = 1;
    while (celsius < limit && decimals < 3 && rounded(celsius, decimals) >= limit) {
      decimals++;
    }
    return number(celsius, decimals);
  }

  private static double rounded(double value, int decimals) {
    double parts = Math.pow(10, decimals);
    return Math.rint(value * parts) / parts;
  }

  /** A want-temperature or set-point [°C]: without a needless ".0". */
  public static String setting(double celsius) {
    return brief(celsius) + " °C";
  }

  /** A temperature difference [K] to a tenth. */
  public static String difference(double kelvin) {
    return number(kelvin, 1) + " K";
  }

  /** A tolerance [K]: without a needless ".0". */
  public static String tolerance(double kelvin) {
    return brief(kelvin) + " K";
  }

  /** A heat flow [W], in kilowatts from 1 kW. */
  public static String power(double watts) {
    return Math.abs(watts) < 999.5 ? Math.round(watts) + " W" : number(watts / 1000, 2) + " kW";
  }

  /** An amount of heat [J] in kilowatt hours. */
  public static String energy(double joules) {
    return kilowattHours(joules) + " kWh";
  }

  /** An amount of heat [J] in kilowatt hours, without its unit: for table columns headed kWh. */
  public static String kilowattHours(double joules) {
    return number(joules / Times.KILOWATT_HOUR, 1);
  }

  /** A volume [m³] in litres. */
  public static String litres(double cubicMetres) {
    double litres = 1000 * cubicMetres;
    return number(litres, litres < 10 ? 1 : 0) + " l";
  }

  /** A differential pressure [Pa] in kilopascals. */
  public static String pressure(double pascals) {
    return number(pascals / 1000, 1) + " kPa";
  }

  /** What of a per cent is no more than rounding, which differs from machine to machine. */
  private static final double ROUNDING = 1e-7;

  /** A share [-] in per cent; 0 and 100 only when that is what it is. */
  public static String share(double ratio) {
    double percent = 100 * ratio;
    if (percent > ROUNDING && percent < 0.5) {
      return "under 1 %";
    }
    if (percent < 100 - ROUNDING && percent >= 99.5) {
      return "over 99 %";
    }
    return Math.round(percent) + " %";
  }

  /** Degree-hours [K h] to a tenth. */
  public static String degreeHours(double kelvinHours) {
    return number(kelvinHours, 1) + " K h";
  }

  /** The size of what should be nothing, as in "4e-13". */
  public static String magnitude(double value) {
    int power = value == 0 ? 0 : (int) Math.floor(Math.log10(value));
    long digit = Math.round(value / Math.pow(10, power));
    int tens = digit == 10 ? power + 1 : power;
    return (digit == 10 ? 1 : digit)
        + (tens < 0 ? "e-" : "e+")
        + (Math.abs(tens) < 10 ? "0" : "")
        + Math.abs(tens);
  }

  /** A number with so many decimals, a true minus sign and no "-0". */
  public static String number(double value, int decimals) {
    if (Double.isNaN(value)) {
      return "–";
    }
    String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
    if (text.startsWith("-")) {
      boolean zero = text.chars().skip(1).allMatch(c -> c == '0' || c == '.');
      return zero ? text.substring(1) : "\u2212" + text.substring(1);
    }
    return text;
  }

  /**
   * A number in whole ones and a fraction, as it stands on a scale: "2¾".
   *
   * @param value >= 0
   * @param parts of one: 2, 4 or 8
   * @return empty where it is no multiple of such a part
   */
  public static String fraction(double value, int parts) {
    double all = value * parts;
    long count = Math.round(all);
    if (Math.abs(all - count) > 1e-6) {
      return "";
    }
    String rest = EIGHTHS[(int) (count % parts) * EIGHTHS.length / parts];
    long whole = count / parts;
    return whole == 0 && !rest.isEmpty() ? rest : whole + rest;
  }

  private static String brief(double value) {
    return value == Math.rint(value) ? number(value, 0) : number(value, 1);
  }
}
